/** A joint cut open through one of its fasteners, to scale: what it goes through, its head, and what closes it behind. */
import type { Fastening, Layer } from "../../design/index.js";
import { fastenerTraits } from "../../fastening/index.js";
import {
  type FastenerPiece,
  fastenerPieces,
  gripOf,
  type ReviewInput,
  takesWasher,
} from "../../model/index.js";
import { Length, type ShowStyle } from "../../quantity/index.js";
import { Refusal } from "../../refusal.js";
import type { Point2 } from "../../shape/index.js";
import { showFine, styleOf } from "../amount.js";
import type { Amount } from "../finding.js";
import { boxShape } from "./case-plane.js";
import type { Figure, FigureArrow, FigureShape, FigureSize, FigureStuff } from "./figure.js";

/** What acts on the fastener: out of the sheet, or along it. */
export interface OnFastener {
  /** The way that it acts. */
  readonly way: "pull" | "shear";
  /** How much it is. */
  readonly words: string;
}

/** How wide the layers are drawn, in diameters of the head. */
const wide = 2.6;

/** A piece of a picture between two depths under the head, to both sides of the fastener's axis. */
function slice(
  what: FigureStuff,
  half: number,
  [from, to]: readonly [number, number],
  words?: string,
): FigureShape {
  return boxShape(what, { left: -half, bottom: -to, width: 2 * half, height: to - from }, words);
}

/** A fastener in its stack, with what acts on it. */
export function stackFigure(input: ReviewInput, group: Fastening, acts?: OnFastener): Figure {
  const { fastener, edgeDistance } = group;
  const style = styleOf(input.case);
  const half = (wide * fastener.headDiameter) / 2;
  const toEdge = edgeDistance !== undefined && edgeDistance < half ? edgeDistance : undefined;
  const left = -(toEdge ?? half);
  const layers = layerShapes(group, left, half, style);
  const pieces = fastenerPieces(group).filter(({ piece }) => drawnPieces[piece] !== undefined);
  const tilted = acts?.way === "shear";
  return {
    title: `Cut through ${fastener.name} in ${group.panel}`,
    description: `To scale, the outside at the top. It holds ${group.holds}. ${closedBy(group)}`,
    shapes: [...layers, ...pieces.map((piece) => pieceShape(piece, style))],
    arrows: acts ? [arrowOf(acts, group, half, tilted)] : [],
    sizes: [stackSize(group, left, style), ...(toEdge === undefined ? [] : [edgeSize(group, toEdge, style)])],
  };
}

function closedBy(group: Fastening): string {
  const { endsBehind, hasInsert } = fastenerTraits[group.fastener.kind];
  if (hasInsert) return "Its insert sits in the sheet.";
  if (!endsBehind) return "Its point bites into the wood.";
  return takesWasher(group)
    ? "A washer lies on the bare wood behind."
    : "Nothing lies between its end and the sheet.";
}

/**
 * The first of what holds a thing, with the force that was found on it.
 *
 * @throws Refusal where nothing fastens it
 */
export function heldStack(
  input: ReviewInput,
  [group]: readonly Fastening[],
  way: OnFastener["way"],
  force?: Amount,
): Figure {
  if (!group) throw new Refusal("picture of a joint: nothing fastens it");
  return stackFigure(input, group, { way, words: force ? shown(force, input) : way });
}

function shown(force: Amount, input: ReviewInput): string {
  return force.show(styleOf(input.case));
}

const layerNames: Readonly<Record<Layer["what"], string>> = {
  metal: "metal",
  facing: "laminate",
  ply: "sheet",
};
const layerStuffs: Readonly<Record<Layer["what"], FigureStuff>> = {
  metal: "metal",
  facing: "laminate",
  ply: "sheet",
};

/** The metal over a sheet, by what is held. */
function metalName({ why }: Fastening): string {
  return why === "edge" ? "bar leg" : "flange";
}

function layerShapes(group: Fastening, left: number, half: number, style: ShowStyle): readonly FigureShape[] {
  let depth = 0;
  const shapes = group.stack.map(({ what, thickness }) => {
    const from = depth;
    depth += thickness;
    const name = what === "metal" ? metalName(group) : layerNames[what];
    return layer(layerStuffs[what], left, half, [from, depth], `${name} ${showFine(thickness, style)}`);
  });
  const { into } = group;
  const wood = into
    ? [
        layer(
          "sheet",
          left,
          half,
          [depth, depth + 1.2 * into.depth],
          `wood behind, ${showFine(into.depth, style)} of thread`,
        ),
      ]
    : [];
  return [...shapes, ...wood];
}

/** A layer to the left and to the right of the fastener; the right part has the words. */
function layer(
  what: FigureStuff,
  left: number,
  right: number,
  [from, to]: readonly [number, number],
  words: string,
): FigureShape {
  const corner = (x: number, y: number): Point2 => ({ x, y });
  return {
    what,
    points: [corner(left, -to), corner(right, -to), corner(right, -from), corner(left, -from)],
    words,
    wordsAt: { x: right, y: -(from + to) / 2 },
  };
}

/** What is drawn of a fastener, and its name; nothing of what it was before it was set. */
const drawnPieces: Readonly<Partial<Record<FastenerPiece, string>>> = {
  head: "head",
  body: "",
  tip: "",
  washer: "washer",
  tail: "set tail",
  nut: "nut",
  insert: "insert",
};

function pieceShape(
  { piece, diameter, way }: ReturnType<typeof fastenerPieces>[number],
  style: ShowStyle,
): FigureShape {
  const name = drawnPieces[piece];
  const [from, to] = way;
  const size =
    piece === "washer" ? showFine(Length.si(to - from), style) : showFine(Length.si(diameter), style);
  const shape = slice(piece === "insert" || piece === "washer" ? "laminate" : "metal", diameter / 2, way);
  if (!name) return shape;
  return { ...shape, words: `${name} ${size}`, wordsAt: { x: -diameter / 2, y: -(from + to) / 2 } };
}

/** The thickness that it closes, at the left. */
function stackSize(group: Fastening, left: number, style: ShowStyle): FigureSize {
  const { endsBehind } = fastenerTraits[group.fastener.kind];
  const closed = endsBehind
    ? gripOf(group)
    : Length.si(group.stack.reduce((sum, { thickness }) => sum + thickness, 0));
  return { from: { x: left, y: -closed }, to: { x: left, y: 0 }, off: 4.5, words: showFine(closed, style) };
}

function edgeSize({ fastener: { length } }: Fastening, toEdge: Length, style: ShowStyle): FigureSize {
  const y = -length;
  return { from: { x: -toEdge, y }, to: { x: 0, y }, off: -1.5, words: `edge ${showFine(toEdge, style)}` };
}

function arrowOf(
  { way, words }: OnFastener,
  { fastener, stack }: Fastening,
  half: number,
  shear: boolean,
): FigureArrow {
  if (way === "pull" && !shear) {
    const top = { x: 0, y: 0.7 * fastener.diameter };
    return { at: top, way: Math.PI / 2, acts: "pulling", share: 0.7, words };
  }
  const first = stack[0]?.thickness ?? 0;
  return { at: { x: half, y: -first / 2 }, way: 0, acts: "pulling", share: 0.7, words };
}
