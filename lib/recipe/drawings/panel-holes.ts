/**
 * One panel as it lies on the bench, outside up: openings hatched, holes as large as their bits, what will lie on it in
 * broken line, and running marks from the one black corner.
 */
import type { Case, Face, Fastening, PanelPart, Parts, PlacedOpening } from "../../design/index.js";
import {
  type DrawingMark,
  type DrawingView,
  drawing,
  placedLabels,
  textBox,
  type WantedLabel,
} from "../../page/index.js";
import { Length } from "../../quantity/index.js";
import {
  type Box2,
  boundsOf,
  circleOf,
  circlesOf,
  distanceTo,
  type Point2,
  roundedBoxOf,
  type Shape,
} from "../../shape/index.js";
import { drillFor } from "../drilling.js";
import type { Rule } from "../rule.js";
import { counted } from "../words.js";
import { boxPicture, lookWords } from "./box-picture.js";
import { coversOf } from "./covers.js";
import { hatching } from "./hatching.js";
import { drawnOutline, millimetres, openingMark } from "./marks.js";
import { type RunningMark, scaleBelow, scaleLeft } from "./running-scale.js";

/** A group of holes under its letter. */
export interface LetteredGroup {
  /** The letter that stands beside the holes. */
  readonly letter: string;
  /** The fasteners that go into the holes. */
  readonly fastening: Fastening;
}

/** How a drawing lies on paper. */
export interface PaperRoom {
  /** How wide it is printed, mm. */
  readonly width: number;
  /** How high it may be, mm. */
  readonly height: number;
  /** Height of its letters on paper, mm; 9 points are 3.18 mm. */
  readonly letter: number;
}

/** As wide as a sheet of A4 or Letter, with room for a table below. */
const sheetRoom: PaperRoom = { width: 180, height: 98, letter: 3.3 };

/** Room for the marks at the left and the column at the right, in letters. */
const besideIt = 24;

/** Room for the marks below and a margin above, in letters. */
const belowIt = 14;

/** Room in which a panel is drawn as large as it is. */
export function trueRoom({ width, height }: PanelPart, letter: number): PaperRoom {
  return {
    width: millimetres(width) + besideIt * letter,
    height: millimetres(height) + belowIt * letter,
    letter,
  };
}

/**
 * Draws a panel as it lies on the bench, outside up.
 *
 * @param parts the whole case, for what lies on the panel and the small picture; neither is drawn without it
 * @param room on paper; letters are made as large as it asks
 */
export function panelHolesDrawing(
  panel: PanelPart,
  groups: readonly LetteredGroup[],
  rule: Rule,
  parts?: Parts,
  room: PaperRoom = sheetRoom,
): DrawingView {
  const [width, height] = [millimetres(panel.width), millimetres(panel.height)];
  const scale = Math.min(
    (room.width - besideIt * room.letter) / width,
    (room.height - belowIt * room.letter) / height,
  );
  const letter = room.letter / scale;
  const origin = { x: 0, y: 0 };
  const fixed: DrawingMark[] = [
    { mark: "shape", role: "panel", shape: drawnOutline(panel.outline, origin) },
    ...panel.openings.map((opening) => openingMark(opening, origin)),
    ...panel.openings.flatMap(({ outline }) => hatching(drawnOutline(outline, origin), 1.6 * letter)),
    ...(parts ? coversOf(panel, parts).map(coverMark) : []),
    ...groups.flatMap((group) => holeMarks(group, rule)),
    ...scaleBelow(runningMarks(panel, "x"), rule, letter),
    ...scaleLeft(runningMarks(panel, "y"), rule, letter),
    ...datumMarks(letter),
    ...columnMarks(panel, parts, letter),
  ];
  const taken = fixed.flatMap((mark) =>
    mark.mark === "text" ? [textBox(mark, letter)] : mark.mark === "circle" ? [circleBox(mark)] : [],
  );
  const labels = placedLabels(wantedLabels(panel, groups, rule), { boxes: taken }, letter);
  const view = drawing(panel.id, describe(panel, groups, rule), [...fixed, ...labels], letter);
  return { ...view, printedWidth: room.width };
}

function describe(
  { openings, face, outline }: PanelPart,
  groups: readonly LetteredGroup[],
  { unit }: Rule,
): string {
  const holes = groups.reduce((sum, { fastening }) => sum + fastening.at.length, 0);
  const cuts = [
    ...(openings.length > 0 ? [counted(openings.length, "opening")] : []),
    ...(holes > 0 ? [counted(holes, "hole")] : []),
  ];
  const up = face ? "OUTSIDE FACE UP" : "Seen from above";
  const rounded =
    distanceTo(outline, { x: 0, y: 0 }) === 0
      ? ""
      : " That corner is rounded off: measure from its two edges.";
  return `${[up, ...(cuts.length > 0 ? [cuts.join(", ")] : [])].join(". ")}. Marks in ${unit === "in" ? "inches" : "millimetres"} from the black corner, 0. Broken lines: what will lie on it.${rounded}`;
}

function coverMark({ left, bottom, width, height }: Box2): DrawingMark {
  return {
    mark: "rectangle",
    role: "hidden",
    at: { x: 1000 * left, y: 1000 * bottom },
    width: 1000 * width,
    height: 1000 * height,
  };
}

/** The units of a case, as its rule says them. */
const unitsOf = ({ unit }: Rule): Case["units"] => (unit === "in" ? "inch" : "metric");

function holeMarks({ fastening }: LetteredGroup, rule: Rule): DrawingMark[] {
  if (fastening.at.length === 0) return [];
  const [bit] = drillFor(fastening, unitsOf(rule)).bits;
  const radius = millimetres((bit ?? fastening.fastener).diameter) / 2;
  return fastening.at.map((hole) => ({ mark: "circle", role: "hole", at: inMillimetres(hole), radius }));
}

function inMillimetres({ x, y }: Point2<Length>): Point2 {
  return { x: millimetres(x), y: millimetres(y) };
}

function circleBox({ at, radius }: { readonly at: Point2; readonly radius: number }): Box2 {
  return { left: at.x - radius, bottom: at.y - radius, width: 2 * radius, height: 2 * radius };
}

/** 0, the edges of every opening (the centre of a round one), and the far edge. */
function runningMarks(panel: PanelPart, axis: "x" | "y"): RunningMark[] {
  const size = axis === "x" ? panel.width : panel.height;
  const ofOpening = ({ outline, low, width, height }: PlacedOpening): RunningMark[] => {
    const long = axis === "x" ? width : height;
    if (circleOf(outline)) return [{ at: Length.si(low[axis] + long / 2), what: "centre" }];
    return [{ at: low[axis] }, { at: Length.si(low[axis] + long) }];
  };
  return [{ at: Length.si(0) }, ...panel.openings.flatMap(ofOpening), { at: size }];
}

/** The black corner. */
function datumMarks(letter: number): DrawingMark[] {
  const side = 1.1 * letter;
  const points = [
    { x: 0, y: 0 },
    { x: side, y: 0 },
    { x: 0, y: side },
  ];
  return [{ mark: "polygon", role: "datum", points }];
}

/** Right of the panel: the boxes with this face shaded, and an arrow to the top or the back of the case. */
function columnMarks(panel: PanelPart, parts: Parts | undefined, letter: number): DrawingMark[] {
  const { face, section } = panel;
  const left = millimetres(panel.width) + 2 * letter;
  const top = millimetres(panel.height);
  const middle = left + 4.5 * letter;
  const words = upWords(face);
  const arrow: DrawingMark[] = [
    {
      mark: "arrow",
      from: { x: middle, y: top - 15 * letter },
      to: { x: middle, y: top - 12.4 * letter },
    },
    { mark: "text", at: { x: middle, y: top - 12 * letter }, text: words, anchor: "middle" },
  ];
  if (!parts || !face) return arrow;
  const frame = { left, bottom: top - 8.4 * letter, width: 9 * letter, height: 8.4 * letter };
  const seenFrom = lookWords(face).split(", ");
  return [
    ...boxPicture(parts.sections, { section, face }, frame),
    ...seenFrom.map(
      (text, i): DrawingMark => ({
        mark: "text",
        at: { x: middle, y: top - (9.6 + 1.15 * i) * letter },
        text,
        anchor: "middle",
      }),
    ),
    ...arrow,
  ];
}

function upWords(face: Face | undefined): string {
  return face && face !== "top" && face !== "bottom" ? "TOP" : "BACK";
}

/** The names of openings, their radii, and the letters of the groups of holes. */
function wantedLabels(panel: PanelPart, groups: readonly LetteredGroup[], rule: Rule): WantedLabel[] {
  return [
    ...panel.openings.map(({ name, outline }) => ({ text: name, at: middleOfBox(drawnBounds(outline)) })),
    ...[panel, ...panel.openings].flatMap(({ outline }) => radiusLabels(outline, rule)),
    ...groups.flatMap((group) => letterLabels(group, panel)),
  ];
}

function drawnBounds(outline: Shape): Box2 {
  return boundsOf(drawnOutline(outline, { x: 0, y: 0 }));
}

function middleOfBox({ left, bottom, width, height }: Box2): Point2 {
  return { x: left + width / 2, y: bottom + height / 2 };
}

/** The radius of a round outline or of the corners of another, once for each that differs. */
function radiusLabels(outline: Shape, rule: Rule): WantedLabel[] {
  const written = (radius: number): string => `R ${rule.running(Length.si(radius))}`;
  const round = circleOf(outline);
  const box = roundedBoxOf(outline);
  if (!round && box && box.radius > 0) {
    const { left, bottom, width, height } = drawnBounds(outline);
    return [{ text: written(box.radius), at: { x: left + 0.85 * width, y: bottom + 0.85 * height } }];
  }
  const each = new Map(circlesOf(outline).map(({ centre, radius }) => [written(radius), centre]));
  return [...each].map(([text, { x, y }]) => ({ text, at: { x: 1000 * x, y: 1000 * y } }));
}

/** The letter beside the middle of its group, towards the middle of the panel. */
function letterLabels({ letter: text, fastening: { at } }: LetteredGroup, panel: PanelPart): WantedLabel[] {
  if (at.length === 0) return [];
  const mean = (axis: "x" | "y"): number =>
    at.reduce((sum, hole) => sum + millimetres(hole[axis]), 0) / at.length;
  const middle = { x: millimetres(panel.width) / 2, y: millimetres(panel.height) / 2 };
  const towards = (axis: "x" | "y"): number => mean(axis) + 0.03 * (middle[axis] - mean(axis));
  return [{ text, at: { x: towards("x"), y: towards("y") } }];
}
