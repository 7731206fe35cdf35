/** One panel with its openings dimensioned from the bottom left corner, and its groups of holes lettered. */
import type { Fastening, PanelPart, PlacedOpening } from "../../design/index.js";
import { type DrawingMark, type DrawingView, drawing } from "../../page/index.js";
import { Length } from "../../quantity/index.js";
import type { Point2 } from "../../shape/index.js";
import type { Rule } from "../rule.js";
import { counted } from "../words.js";
import { drawnOutline, millimetres, openingMark, openingName, wordsFit } from "./marks.js";

/** A group of holes under its letter. */
export interface LetteredGroup {
  /** The letter that stands beside the holes. */
  readonly letter: string;
  /** The fasteners that go into the holes. */
  readonly fastening: Fastening;
}

/** Letters along the drawing's longer side. */
const lettersAcross = 38;

/** Draws a panel as it lies on the bench, outside up. */
export function panelHolesDrawing(
  panel: PanelPart,
  groups: readonly LetteredGroup[],
  rule: Rule,
): DrawingView {
  const [width, height] = [millimetres(panel.width), millimetres(panel.height)];
  const letter = Math.max(width, height) / lettersAcross;
  const origin = { x: 0, y: 0 };
  const marks: DrawingMark[] = [
    { mark: "shape", role: "panel", shape: drawnOutline(panel.outline, origin) },
    ...panel.openings.map((opening) => openingMark(opening, origin)),
    ...panel.openings.flatMap((opening) => openingName(opening, origin, letter)),
    ...groups.flatMap((group) => groupMarks(group, panel, letter)),
    ...overall(panel, rule, letter),
    ...panel.openings.flatMap((opening, level) => openingDimensions(opening, level, rule, letter)),
    { mark: "circle", role: "attention", at: origin, radius: letter / 2 },
  ];
  return drawing(panel.id, describe(panel, groups), marks, letter);
}

function describe({ openings }: PanelPart, groups: readonly LetteredGroup[]): string {
  const holes = groups.reduce((sum, { fastening }) => sum + fastening.at.length, 0);
  const cuts = openings.length > 0 ? `${counted(openings.length, "opening")} and ` : "";
  return `Outside face up, ${cuts}${counted(holes, "hole")}. The ring is the corner to measure from.`;
}

/** The holes, and their letter on the side of the panel's middle. */
function groupMarks(
  { letter: name, fastening }: LetteredGroup,
  panel: PanelPart,
  letter: number,
): DrawingMark[] {
  if (fastening.at.length === 0) return [];
  const centres = fastening.at.map(({ x, y }) => ({ x: millimetres(x), y: millimetres(y) }));
  const radius = Math.max(millimetres(fastening.fastener.diameter) / 2, letter / 5);
  return [
    ...centres.map((at): DrawingMark => ({ mark: "circle", role: "hardware", at, radius })),
    { mark: "text", at: letterPlace(centres, panel, letter), text: name, anchor: "middle" },
  ];
}

/** Beside the middle of the group, towards the middle of the panel. */
function letterPlace(centres: readonly Point2[], panel: PanelPart, letter: number): Point2 {
  const mean = (axis: keyof Point2): number =>
    centres.reduce((sum, centre) => sum + centre[axis], 0) / centres.length;
  const middle = { x: mean("x"), y: mean("y") };
  const aside = (axis: keyof Point2, extent: Length): number => {
    const spread =
      Math.max(...centres.map((centre) => centre[axis])) - Math.min(...centres.map((centre) => centre[axis]));
    const towards = Math.sign(millimetres(extent) / 2 - middle[axis]);
    return spread < letter ? towards * 1.3 * letter : 0;
  };
  return {
    x: middle.x + aside("x", panel.width),
    y: middle.y + aside("y", panel.height) - 0.35 * letter,
  };
}

function overall({ width, height }: PanelPart, rule: Rule, letter: number): DrawingMark[] {
  const [across, up] = [millimetres(width), millimetres(height)];
  const offset = 1.8 * letter;
  return [
    { mark: "dimension", from: { x: 0, y: up }, to: { x: across, y: up }, offset, text: rule.drawn(width) },
    {
      mark: "dimension",
      from: { x: across, y: 0 },
      to: { x: across, y: up },
      offset: -offset,
      text: rule.drawn(height),
    },
  ];
}

/** From the corner to the opening and across it, below and left of the panel, a level for each opening. */
function openingDimensions(
  { low, width, height }: PlacedOpening,
  level: number,
  rule: Rule,
  letter: number,
): DrawingMark[] {
  const offset = (1.8 + 2.1 * level) * letter;
  const stops = (from: Length, size: Length): Length[] => [Length.si(0), from, Length.si(from + size)];
  const chain = (from: Length, size: Length, place: (along: number) => Point2, side: number): DrawingMark[] =>
    pairs(stops(from, size)).flatMap(([a, b]) => {
      const text = rule.drawn(Length.si(b - a));
      const span = millimetres(Length.si(b - a));
      if (span < letter / 10) return [];
      return [
        {
          mark: "dimension",
          from: place(millimetres(a)),
          to: place(millimetres(b)),
          offset: side * offset,
          text: wordsFit(text, span, letter) ? text : "",
        },
      ];
    });
  return [...chain(low.x, width, (x) => ({ x, y: 0 }), -1), ...chain(low.y, height, (y) => ({ x: 0, y }), 1)];
}

function pairs(stops: readonly Length[]): [Length, Length][] {
  return stops.slice(1).map((stop, i) => [stops[i] as Length, stop]);
}
