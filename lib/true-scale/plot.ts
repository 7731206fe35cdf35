/**
 * A drawing at true scale as paths, circles and words on layers: the one description that every kind of file is
 * written from. Lengths in millimetres, x to the right and y up.
 */
import { type DrawingMark, type DrawingView, dimensionLine, type ShapeRole } from "../page/index.js";
import {
  type Box2,
  between,
  boundsOf,
  circleOf,
  line,
  type Point2,
  polygon,
  rectangle,
  type Shape,
  type Side,
} from "../shape/index.js";

/** What is done along a line: saw it out, cut it out, drill it, leave it for what comes later, or only read it. */
export const layers = ["OUTLINE", "CUT", "DRILL", "LATER", "WASTE", "NOTES"] as const;
/** The layer that a mark is on. */
export type Layer = (typeof layers)[number];

/** A path of lines and arcs. */
export interface PathMark {
  /** A path. */
  readonly kind: "path";
  /** Its layer. */
  readonly layer: Layer;
  /** In order, each beginning where the one before ends. */
  readonly sides: readonly Side[];
  /** Whether it ends where it begins. */
  readonly closed: boolean;
  /** Whether its inside is black. */
  readonly filled?: boolean;
}

/** A whole circle. */
export interface RoundMark {
  /** A circle. */
  readonly kind: "circle";
  /** Its layer. */
  readonly layer: Layer;
  /** Its centre. */
  readonly centre: Point2;
  /** Its radius. */
  readonly radius: number;
}

/** One line of words; always among the notes. */
export interface WordsMark {
  /** Words. */
  readonly kind: "words";
  /** Where they stand. */
  readonly at: Point2;
  /** The words. */
  readonly text: string;
  /** Height of the letters. */
  readonly size: number;
  /** Which part of the words stands there. */
  readonly anchor: "start" | "middle" | "end";
  /** How far they are turned to the left, degrees. */
  readonly turn: number;
}

/** One mark of a plot. */
export type PlotMark = PathMark | RoundMark | WordsMark;

/** A drawing at true scale. */
export interface Plot {
  /** Stands over it. */
  readonly title: string;
  /** In the order in which they are drawn. */
  readonly marks: readonly PlotMark[];
}

/** Letters where a drawing names no height for its own. */
const usualLetter = 4;

/** A drawing whose millimetres are those of the thing itself, as a plot. */
export function plotOf({ title, marks, letter = usualLetter }: DrawingView): Plot {
  return { title, marks: marks.flatMap((mark) => plotMarks(mark, letter)) };
}

const layerOfRole: Readonly<Record<ShapeRole, Layer>> = {
  panel: "OUTLINE",
  metal: "OUTLINE",
  opening: "NOTES",
  hole: "DRILL",
  hardware: "LATER",
  hidden: "LATER",
  waste: "WASTE",
  attention: "NOTES",
  datum: "NOTES",
  thin: "NOTES",
  laminate: "NOTES",
  foam: "NOTES",
  strap: "NOTES",
  support: "NOTES",
};

function plotMarks(mark: DrawingMark, letter: number): PlotMark[] {
  switch (mark.mark) {
    case "rectangle": {
      const { at, width, height, radius, label } = mark;
      const shape = rectangle({ left: at.x, bottom: at.y, width, height }, radius);
      return [outline(shape, layerOfRole[mark.role]), ...labelIn(shape, label, letter)];
    }
    case "circle": {
      const { at: centre, radius, role, label } = mark;
      return [
        { kind: "circle", layer: layerOfRole[role], centre, radius },
        ...labelAt(centre, label, letter),
      ];
    }
    case "polygon": {
      const shape = polygon(mark.points);
      const filled = mark.role === "datum" || mark.role === "attention";
      return [closedPath(shape, "NOTES", filled), ...labelIn(shape, mark.label, letter)];
    }
    case "shape":
      return [outline(mark.shape, mark.role === "opening" ? "CUT" : layerOfRole[mark.role])];
    case "line":
      return [openPath(mark.points, layerOfRole[mark.role])];
    case "dimension": {
      const [start, stop] = dimensionLine(mark);
      const lines = [
        [mark.from, start],
        [mark.to, stop],
        [start, stop],
      ].map((points) => openPath(points, "NOTES"));
      return [...lines, alongside(mark.text, start, stop, letter)];
    }
    case "text":
      return [words(mark.text, mark.at, letter, { anchor: mark.anchor ?? "start", turn: mark.turn ?? 0 })];
    case "arrow":
      return [
        openPath([mark.from, mark.to], "NOTES"),
        arrowHead(mark.from, mark.to, letter),
        ...(mark.text === undefined ? [] : [alongside(mark.text, mark.from, mark.to, letter)]),
      ];
  }
}

/** A closed path, or the circle that it is. */
export function outline(shape: Shape, layer: Layer): PathMark | RoundMark {
  const round = circleOf(shape);
  return round ? { kind: "circle", layer, ...round } : closedPath(shape, layer);
}

/** A closed path. */
export function closedPath({ sides }: Shape, layer: Layer, filled = false): PathMark {
  return { kind: "path", layer, sides, closed: true, ...(filled ? { filled } : {}) };
}

/** Straight lines from point to point. */
export function openPath(points: readonly Point2[], layer: Layer): PathMark {
  const sides = points.slice(1).map((to, i) => line(points[i] ?? to, to));
  return { kind: "path", layer, sides, closed: false };
}

/** Words that begin at a place, level, where nothing else is said. */
export function words(
  text: string,
  at: Point2,
  size: number,
  how: Partial<Pick<WordsMark, "anchor" | "turn">> = {},
): WordsMark {
  return { kind: "words", at, text, size, anchor: "start", turn: 0, ...how };
}

function labelIn(shape: Shape, label: string | undefined, letter: number): WordsMark[] {
  const { left, bottom, width, height } = boundsOf(shape);
  return labelAt({ x: left + width / 2, y: bottom + height / 2 }, label, letter);
}

function labelAt({ x, y }: Point2, label: string | undefined, letter: number): WordsMark[] {
  if (label === undefined) return [];
  return [words(label, { x, y: y - 0.35 * letter }, letter, { anchor: "middle" })];
}

/** Words above a line, never upside down. */
function alongside(text: string, start: Point2, stop: Point2, letter: number): WordsMark {
  const turn = (Math.atan2(stop.y - start.y, stop.x - start.x) * 180) / Math.PI;
  const upright = turn > 90.01 ? turn - 180 : turn <= -89.99 ? turn + 180 : turn;
  const middle = between(start, stop, 0.5);
  const above = (upright * Math.PI) / 180 + Math.PI / 2;
  const at = {
    x: middle.x + 0.35 * letter * Math.cos(above),
    y: middle.y + 0.35 * letter * Math.sin(above),
  };
  return words(text, at, letter, { anchor: "middle", turn: upright });
}

function arrowHead(from: Point2, to: Point2, letter: number): PathMark {
  const angle = Math.atan2(to.y - from.y, to.x - from.x);
  const behind = (aside: number): Point2 => ({
    x: to.x - 0.6 * letter * Math.cos(angle) - aside * Math.sin(angle),
    y: to.y - 0.6 * letter * Math.sin(angle) + aside * Math.cos(angle),
  });
  return closedPath(polygon([to, behind(0.3 * letter), behind(-0.3 * letter)]), "NOTES", true);
}

/** Mean width of a letter as a share of its height; a little more than a common sans serif takes. */
const letterWidth = 0.6;

/** The room that marks take, words among them. */
export function roomOf(marks: readonly PlotMark[]): Box2 {
  const points = marks.flatMap(cornersOf);
  const [left, bottom] = [Math.min(...points.map(({ x }) => x)), Math.min(...points.map(({ y }) => y))];
  const [right, top] = [Math.max(...points.map(({ x }) => x)), Math.max(...points.map(({ y }) => y))];
  return { left, bottom, width: right - left, height: top - bottom };
}

function cornersOf(mark: PlotMark): readonly Point2[] {
  if (mark.kind === "words") return wordsCorners(mark);
  if (mark.kind === "path") return mark.sides.flatMap(({ from, to }) => [from, to]);
  const { centre, radius } = mark;
  return [-radius, radius].map((off) => ({ x: centre.x + off, y: centre.y + off }));
}

function wordsCorners({ at, text, size, anchor, turn }: WordsMark): readonly Point2[] {
  const long = letterWidth * size * text.length;
  const back = { start: 0, middle: long / 2, end: long }[anchor];
  const [cos, sin] = [Math.cos((turn * Math.PI) / 180), Math.sin((turn * Math.PI) / 180)];
  return [-back, long - back].flatMap((along) =>
    [-0.25 * size, 0.85 * size].map((up) => ({
      x: at.x + along * cos - up * sin,
      y: at.y + along * sin + up * cos,
    })),
  );
}
