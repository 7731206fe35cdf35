/** A panel with what holds it and what presses on it: seen from outside, and below that edge on. */
import type { PanelPart, PanelSide, PanePart, ShelfPart } from "../../design/index.js";
import type { HeldEdge, HeldEdges } from "../../fem/index.js";
import {
  holdOf,
  type PanelHold,
  type PanelStiffener,
  pressedRoom,
  type ReviewInput,
  type SagCase,
  sagLevels,
  shelfHold,
  shelfMass,
} from "../../model/index.js";
import { Length, Mass, type ShowStyle } from "../../quantity/index.js";
import { type Box2, middleOf, type Point2, rectangle } from "../../shape/index.js";
import { showFine, styleOf } from "../amount.js";
import { boxShape, outlineShape } from "./case-plane.js";
import type { Figure, FigureArrow, FigureLine, FigurePlace, FigureShape } from "./figure.js";

/** A load on a panel, in words. */
export interface DrawnLoad {
  /** Spread over all of it, or pressing on one rectangle. */
  readonly on: "all" | "rectangle";
  /** How much it is: "1 kPa". */
  readonly words: string;
  /** Of a rectangle, m from the lower left corner of the panel. */
  readonly at?: Box2;
  /** Whether a thing stands there, whose name the rectangle has and whose weight the arrow. */
  readonly isThing?: true;
}

/** What a picture needs to know of a panel or a pane. */
export type DrawnPanel = Pick<
  PanelPart,
  "id" | "outline" | "openings" | "clearLow" | "clearWidth" | "clearHeight" | "width" | "height" | "face"
>;

/** Down. */
const down = -Math.PI / 2;

/** Arrows of a load that is spread. */
const spread = 5;

/** A panel as it is cut, with its openings and stiffeners. */
function panelShapes(panel: DrawnPanel, { parts }: ReviewInput): readonly FigureShape[] {
  const still = { x: 0, y: 0 };
  return [
    outlineShape("sheet", panel.outline, still),
    ...panel.openings.map(({ outline }) => outlineShape("opening", outline, still)),
    ...parts.stiffeners
      .filter((one) => one.panel === panel.id)
      .flatMap(({ zones }) => zones.map((zone) => boxShape("hidden", zone))),
  ];
}

/** What is between its supports, m from the lower left corner of its cut size. */
function spanOf({ clearLow, clearWidth, clearHeight, width, height }: DrawnPanel): Box2 {
  const [left, bottom] = [Math.max(0, clearLow.x), Math.max(0, clearLow.y)];
  return {
    left,
    bottom,
    width: Math.min(width, clearLow.x + clearWidth) - left,
    height: Math.min(height, clearLow.y + clearHeight) - bottom,
  };
}

/** An edge that is held as a thick line, with strokes where it is held stiffly; a free one as a broken line. */
function edgeLines(span: Box2, edges: HeldEdges): readonly FigureLine[] {
  const { left, bottom, width, height } = span;
  const [right, top] = [left + width, bottom + height];
  // Each runs with the panel at its left, so that strokes lie outside.
  const sides: Readonly<Record<PanelSide, readonly [Point2, Point2]>> = {
    bottom: [
      { x: left, y: bottom },
      { x: right, y: bottom },
    ],
    right: [
      { x: right, y: bottom },
      { x: right, y: top },
    ],
    top: [
      { x: right, y: top },
      { x: left, y: top },
    ],
    left: [
      { x: left, y: top },
      { x: left, y: bottom },
    ],
  };
  return (Object.keys(sides) as PanelSide[]).flatMap((side): readonly FigureLine[] => {
    const points = sides[side];
    if (edges[side] === "free") return [{ what: "reach", points }];
    const held: FigureLine = { what: "held", points };
    return edges[side] === "clamped" ? [{ what: "ground", points }, held] : [held];
  });
}

/** The panel edge on, below it: its ends on their supports, and the loads from above. */
interface EdgeOn {
  /** Its lines. */
  readonly lines: readonly FigureLine[];
  /** Its loads. */
  readonly arrows: readonly FigureArrow[];
  /** Its supports. */
  readonly places: readonly FigurePlace[];
}

/** Room above the panel edge on, over the panel's size: for arrows and their words. */
const roomAbove = 0.32;

/** How deep it is drawn to sag, over its length. */
const drawnSag = 0.05;

function edgeOn(panel: DrawnPanel, { edges, points }: PanelHold, loads: readonly DrawnLoad[]): EdgeOn {
  const span = spanOf(panel);
  const across =
    edges.left !== "free" || edges.right !== "free" || (edges.bottom === "free" && edges.top === "free");
  const [low, high] = across ? [edges.left, edges.right] : [edges.bottom, edges.top];
  const [from, length] = [span.left, across ? span.width : span.height];
  const y = -roomAbove * Math.max(panel.width, panel.height);
  const begin = across ? span.left : span.bottom;
  const at = (place: number): number => from + Math.min(length, Math.max(0, place - begin));
  const held = [low, high].map((edge): HeldEdge => (edge === "free" && points.length > 0 ? "hinged" : edge));
  return {
    lines: [
      {
        what: "held",
        points: [
          { x: from, y },
          { x: from + length, y },
        ],
      },
      ...sagLine(from, length, y, held),
      ...held.flatMap((edge, i) => (edge === "clamped" ? [wallAt(from + i * length, y, i, length)] : [])),
    ],
    arrows: loads.flatMap((load) => pressing(load, { from, length, y, at, across })),
    places: held.flatMap((edge, i) =>
      edge === "hinged" ? [{ what: "edge" as const, at: { x: from + i * length, y } }] : [],
    ),
  };
}

/** How it bends between two held ends, or beyond one that is held stiffly. */
function sagLine(
  from: number,
  length: number,
  y: number,
  [low, high]: readonly HeldEdge[],
): readonly FigureLine[] {
  const depth = drawnSag * length;
  const shares = Array.from({ length: 13 }, (_, i) => i / 12);
  const both = low !== "free" && high !== "free";
  if (!both && low !== "clamped" && high !== "clamped") return [];
  const sag = (share: number): number =>
    both ? Math.sin(Math.PI * share) : (low === "clamped" ? share : 1 - share) ** 2;
  return [
    {
      what: "reach",
      points: shares.map((share) => ({ x: from + share * length, y: y - depth * sag(share) })),
    },
  ];
}

/** A wall that holds an end stiffly. */
function wallAt(x: number, y: number, end: number, length: number): FigureLine {
  const half = 0.06 * length;
  const [up, low] = [
    { x, y: y + half },
    { x, y: y - half },
  ];
  return { what: "ground", points: end === 0 ? [up, low] : [low, up] };
}

/** The arrows of a load on the panel edge on. */
function pressing(
  { on, words, at: box, isThing }: DrawnLoad,
  line: { from: number; length: number; y: number; at: (place: number) => number; across: boolean },
): readonly FigureArrow[] {
  const { from, length, y } = line;
  if (on === "rectangle" && box) {
    const middle = middleOf(box);
    return [
      {
        at: { x: line.at(line.across ? middle.x : middle.y), y },
        way: down,
        acts: "pushing",
        share: 0.6,
        ...(isThing ? { words } : {}),
      },
    ];
  }
  const half = Math.floor(spread / 2);
  return Array.from({ length: spread }, (_, i) => ({
    at: { x: from + ((i + 0.5) / spread) * length, y },
    way: down,
    acts: "pushing",
    share: 0.45,
    ...(i === half ? { words } : {}),
  }));
}

const legend =
  "Thick edges are held, broken ones are free. Below it is seen edge on, with what presses on it.";

/** A face or a leaf under its loads. */
export function loadedPanelFigure(input: ReviewInput, panel: PanelPart, loads: readonly DrawnLoad[]): Figure {
  return panelUnder(input, panel, holdOf(panel, input), loads);
}

/** A panel held in some way under its loads. */
export function panelUnder(
  input: ReviewInput,
  panel: DrawnPanel,
  hold: PanelHold,
  loads: readonly DrawnLoad[],
): Figure {
  const below = edgeOn(panel, hold, loads);
  const span = spanOf(panel);
  const pressed = loads.flatMap(({ on, at, words }) =>
    on === "rectangle" && at ? [boxShape("pressed", at, words)] : [],
  );
  const latches = hold.points.map(
    ({ x, y }): FigurePlace => ({
      what: "point",
      at: { x: span.left + x, y: span.bottom + y },
      words: "latch",
    }),
  );
  return {
    title: `What presses on ${panel.id}`,
    description: `${panel.face ? "Seen from outside." : "Seen from above."} ${legend}`,
    shapes: [...panelShapes(panel, input), ...pressed],
    lines: [...edgeLines(span, hold.edges), ...below.lines],
    arrows: below.arrows,
    places: [...latches, ...below.places],
  };
}

/** A panel that a force presses on where it gives most. */
export function pressedPanelFigure(
  input: ReviewInput,
  panel: PanelPart,
  patch: { readonly length: Length; readonly width: Length; readonly words: string },
): Figure {
  const hold = holdOf(panel, input);
  const { x, y, length, width } = pressedRoom(panel, hold, patch, input);
  const span = spanOf(panel);
  const at = { left: span.left + x, bottom: span.bottom + y, width: length, height: width };
  return panelUnder(input, panel, hold, [{ on: "rectangle", words: patch.words, at }]);
}

/** A panel under what presses on it, with the stiffener that bears its share. */
export function stiffenerFigure(
  input: ReviewInput,
  { stiffener, panel }: PanelStiffener,
  words: string,
): Figure {
  const shelf = input.parts.shelves.find((one) => one.panel.id === panel.id);
  const hold = shelf ? shelfHold(shelf) : holdOf(panel, input);
  const figure = panelUnder(input, panel, hold, [{ on: "all", words }]);
  const strips = stiffener.zones.map((zone, i) =>
    boxShape("pressed", zone, i === 0 ? stiffener.kind : undefined),
  );
  return { ...figure, title: `What ${stiffener.id} bears`, shapes: [...figure.shapes, ...strips] };
}

/** A shelf with the things that stand on it. */
export function shelfFigure(input: ReviewInput, part: ShelfPart): Figure {
  const { panel } = part;
  const style = styleOf(input.case);
  const things = part.carries.map(({ content, box }) => ({
    words: Mass.show(content.mass, style),
    name: content.name,
    at: {
      left: box.low.x - panel.box.low.x,
      bottom: box.low.y - panel.box.low.y,
      width: box.size.x,
      height: box.size.y,
    },
  }));
  const figure = panelUnder(
    input,
    panel,
    shelfHold(part),
    things.length > 0
      ? things.map(({ words, at }) => ({ on: "rectangle", words, at, isThing: true }))
      : [{ on: "all", words: Mass.show(shelfMass(part), style) }],
  );
  return {
    ...figure,
    title: `What stands on the ${part.shelf.name}`,
    shapes: [...panelShapes(panel, input), ...things.map(({ name, at }) => boxShape("thing", at, name))],
  };
}

/** No more steps than these from nothing to the most, so that their words find room. */
const mostSteps = 6;

/** 1, 2, 2.5 or 5 times a power of ten in the reader's unit, m: the least step with few enough of them up to a sag. */
export function levelStep(most: number, { system }: ShowStyle): number {
  const unit = system === "inch" ? 0.0254 : 0.001;
  const wanted = most / unit / mostSteps;
  const power = 10 ** Math.floor(Math.log10(wanted));
  const step = [1, 2, 2.5, 5].find((one) => one * power >= wanted) ?? 10;
  return step * power * unit;
}

/** How a panel sags, as lines of equal sag. */
export function sagFigure(input: ReviewInput, sagCase: SagCase, edges: HeldEdges, words: string): Figure {
  const { panel } = sagCase;
  const style = styleOf(input.case);
  const { most, levels, step } = sagLevels(sagCase, edges, input, (sag) => levelStep(sag, style));
  const span = spanOf(panel);
  const onPanel = ({ x, y }: Point2): Point2 => ({ x: span.left + x, y: span.bottom + y });
  const show = (sag: number): string => showFine(Length.si(sag), style);
  const hold: PanelHold = { edges, points: [] };
  const below = edgeOn(panel, hold, [{ on: "all", words }]);
  // Of a step with several lines the longest has the words.
  const longest = new Map(levels.map((level) => [level.sag, level]));
  for (const level of levels)
    if (level.points.length > (longest.get(level.sag)?.points.length ?? 0)) longest.set(level.sag, level);
  return {
    title: `Where ${panel.id} sags`,
    description: `Lines of equal sag, ${show(step)} from one to the next, alone on its edges; ${show(most.sag)} at most. ${legend}`,
    shapes: panelShapes(panel, input),
    lines: [
      ...edgeLines(span, edges),
      ...levels.map(
        (level): FigureLine => ({
          what: "level",
          points: level.points.map(onPanel),
          ...(longest.get(level.sag) === level ? { words: show(level.sag) } : {}),
        }),
      ),
      ...below.lines,
    ],
    arrows: below.arrows,
    places: [{ what: "point", at: onPanel(most.at), words: show(most.sag) }, ...below.places],
  };
}

/** A pane held all round its rim, pressed in its middle. */
export function paneFigure(
  input: ReviewInput,
  { id, clearWidth, clearHeight }: PanePart,
  load: { readonly side?: Length; readonly words: string },
): Figure {
  const whole = { left: 0, bottom: 0, width: clearWidth, height: clearHeight };
  const pane: DrawnPanel = {
    ...{ id, clearWidth, clearHeight, width: clearWidth, height: clearHeight, openings: [], face: "front" },
    ...{ outline: rectangle(whole), clearLow: { x: Length.si(0), y: Length.si(0) } },
  };
  const [width, height] = [
    Math.min(load.side ?? clearWidth, clearWidth),
    Math.min(load.side ?? clearHeight, clearHeight),
  ];
  const at = { left: (clearWidth - width) / 2, bottom: (clearHeight - height) / 2, width, height };
  const on = load.side === undefined ? "all" : "rectangle";
  const edges: HeldEdges = { left: "hinged", right: "hinged", bottom: "hinged", top: "hinged" };
  return panelUnder(input, pane, { edges, points: [] }, [{ on, words: load.words, at }]);
}
