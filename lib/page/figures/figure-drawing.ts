/** The picture of a question as a drawing: its marks in order, and its words where nothing runs through them. */
import type {
  Figure,
  FigureArrow,
  FigureLineKind,
  FigurePlace,
  FigureShape,
  FigureSize,
  FigureStuff,
} from "../../findings/index.js";
import { type Box2, between, middleOf, type Point2 } from "../../shape/index.js";
import {
  type DimensionMark,
  type DrawingMark,
  type DrawingView,
  drawing,
  type LineMark,
  type ShapeRole,
} from "../drawing.js";
import { dimensionLine } from "../drawing-frame.js";
import { placedLabels, textBox, type WantedLabel } from "../placed-labels.js";

/** Letters across all of it and up what is drawn: so many are legible on a phone. */
const [lettersAcross, lettersUp] = [28.5, 22];

/** Letters across what is drawn without words: no fewer, and no more. */
const [leastAcross, mostAcross] = [9, 17];

/** Of the longest arrow, in letters. */
const longestArrow = 4;

/** The shortest arrow over the longest that is still seen as one. */
const leastShare = 0.45;

/** Letters in a line of words before it is broken. */
const lineLength = 17;

/** Of words beside a shape, which take from its width. */
const shortLine = 13;

const roles: Readonly<Record<FigureStuff, ShapeRole>> = {
  sheet: "panel",
  opening: "opening",
  inside: "opening",
  laminate: "laminate",
  metal: "metal",
  wheel: "metal",
  thing: "hardware",
  hidden: "hidden",
  pressed: "attention",
  ground: "waste",
  foam: "foam",
};

const lineRoles: Readonly<Record<FigureLineKind, ShapeRole>> = {
  ground: "datum",
  strap: "strap",
  level: "hardware",
  reach: "hidden",
  air: "strap",
  held: "support",
};

/** A drawing of the picture of a question. */
export function figureDrawing(figure: Figure): DrawingView {
  const letter = letterOf(figure);
  const { shapes, lines = [], arrows = [], places = [], sizes = [] } = figure;
  const drawn = arrows.map((arrow) => drawnArrow(arrow, letter));
  const fixed: DrawingMark[] = [
    ...shapes.map(shapeMark),
    ...lines.flatMap(({ what, points }) => lineMarks(what, points.map(inMillimetres), letter)),
    ...drawn.map(({ from, to }): DrawingMark => ({ mark: "arrow", from, to, isForce: true })),
    ...places.flatMap((place) => placeMarks(place, letter)),
    ...sizes.map((size) => sizeMark(size, letter)),
  ];
  const wanted: WantedLabel[] = [
    ...places.flatMap(({ at, words }) =>
      wantedAt(words, beside(inMillimetres(at), letter), inMillimetres(at)),
    ),
    ...sizes.flatMap((size) => wantedBeside(size, letter)),
    ...arrows.flatMap((arrow, i) => wantedBeyond(arrow, drawn[i]!.free, letter)),
    ...shapes.flatMap((shape) => wantedOf(shape, letter)),
    ...lines.flatMap(({ points, words }) => wantedAlong(words, points.map(inMillimetres), letter)),
  ];
  const cut = shapes
    .filter(({ what }) => what === "opening")
    .map(({ points }) => boxOf(points.map(inMillimetres)));
  const taken = {
    boxes: [...cut, ...boxesOf(fixed, letter)],
    lines: linesOf(fixed),
    width: lettersAcross * letter,
  };
  const labels = placedLabels(wanted, taken, letter);
  const marks = [...fixed, ...labels].map((mark) => rounded(mark, letter));
  return drawing(figure.title, figure.description, marks, letter);
}

/** Places finer than a fiftieth of a letter make a page larger and nothing clearer. */
const finest = 50;

/** A mark with its numbers no finer than can be seen. */
function rounded(mark: DrawingMark, letter: number): DrawingMark {
  const step = 10 ** Math.floor(Math.log10(letter / finest));
  const digits = Math.max(0, Math.ceil(-Math.log10(step)));
  const coarse = (value: unknown): unknown => {
    if (typeof value === "number") return Number((Math.round(value / step) * step).toFixed(digits));
    if (Array.isArray(value)) return value.map(coarse);
    if (typeof value !== "object" || value === null) return value;
    return Object.fromEntries(
      Object.entries(value).map(([key, one]) => [key, key === "turn" ? one : coarse(one)]),
    );
  };
  return coarse(mark) as DrawingMark;
}

function inMillimetres({ x, y }: Point2): Point2 {
  return { x: 1000 * x, y: 1000 * y };
}

/** As large as leaves room for so many of them along and up what is drawn. */
function letterOf(figure: Figure): number {
  const { shapes, lines = [], places = [], arrows = [] } = figure;
  const points = [
    ...shapes.flatMap((shape) => shape.points),
    ...lines.flatMap((line) => line.points),
    ...[...places, ...arrows].map(({ at }) => at),
  ];
  const { width, height } = boxOf(points.map(inMillimetres));
  const beside = lettersBeside(figure, -1) + lettersBeside(figure, 1);
  const across = Math.min(mostAcross, Math.max(leastAcross, lettersAcross - beside));
  return Math.max(width / across, height / lettersUp);
}

/** Letters that words at the left (-1) or at the right take beside what is drawn. */
function lettersBeside({ shapes, arrows = [], sizes = [] }: Figure, side: -1 | 1): number {
  const long = (words: string, most: number): number =>
    0.6 *
      Math.max(
        ...broken(words, most)
          .split("\n")
          .map(({ length }) => length),
      ) +
    0.8;
  const ofShapes = shapes.flatMap(({ points, words, wordsAt }) => {
    if (words === undefined || !wordsAt) return [];
    const middle = middleOf(boxOf(points)).x;
    return Math.sign(wordsAt.x - middle) === side ? [long(words, shortLine)] : [];
  });
  const ofArrows = arrows.flatMap(({ way, acts, words, share = 1 }) => {
    const out = (acts === "pulling" ? 1 : -1) * Math.cos(way) * side;
    return words !== undefined && out > 0.9 ? [longestArrow * share + long(words, lineLength)] : [];
  });
  const ofSizes = sizes.flatMap(({ from, to, off }) => {
    const isUpright = Math.abs(to.x - from.x) < Math.abs(to.y - from.y);
    const left = off * Math.sign(to.y - from.y);
    return isUpright && left * side < 0 ? [Math.abs(off) + 1] : [];
  });
  return Math.max(0, ...ofShapes, ...ofArrows, ...ofSizes);
}

function boxOf(points: readonly Point2[]): Box2 {
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  const [left, bottom] = [Math.min(...xs), Math.min(...ys)];
  return { left, bottom, width: Math.max(...xs) - left, height: Math.max(...ys) - bottom };
}

function shapeMark({ what, points }: FigureShape): DrawingMark {
  return { mark: "polygon", role: roles[what], points: points.map(inMillimetres) };
}

/** A line; under one of the ground, and beside one that is held, short slanted strokes. */
function lineMarks(what: FigureLineKind, points: readonly Point2[], letter: number): readonly LineMark[] {
  const line: LineMark = { mark: "line", role: lineRoles[what], points };
  if (what !== "ground") return [line];
  return [line, ...points.slice(1).flatMap((to, i) => strokesUnder(points[i]!, to, letter))];
}

function strokesUnder(from: Point2, to: Point2, step: number): readonly LineMark[] {
  const long = Math.hypot(to.x - from.x, to.y - from.y);
  const [ux, uy] = [(to.x - from.x) / long, (to.y - from.y) / long];
  const count = Math.floor(long / step);
  return Array.from({ length: count }, (_, i) => {
    const at = between(from, to, (i + 0.5) / count);
    // Down and back along the line: to the right of the way that it runs.
    const end = { x: at.x + 0.5 * step * (uy - ux), y: at.y - 0.5 * step * (ux + uy) };
    return { mark: "line", role: "thin", points: [at, end] };
  });
}

/** An arrow on paper. */
interface DrawnArrow {
  /** Its tail. */
  readonly from: Point2;
  /** Its head. */
  readonly to: Point2;
  /** The end that acts on nothing. */
  readonly free: Point2;
}

function drawnArrow({ at, way, acts, share = 1 }: FigureArrow, letter: number): DrawnArrow {
  const long = longestArrow * letter * Math.max(leastShare, share);
  const sign = acts === "pulling" ? 1 : -1;
  const along = (length: number): Point2 => ({
    x: 1000 * at.x + sign * length * Math.cos(way),
    y: 1000 * at.y + sign * length * Math.sin(way),
  });
  const [own, free] = [along(0), along(long)];
  return acts === "pulling" ? { from: own, to: free, free } : { from: free, to: own, free };
}

/** The words of an arrow, beyond its free end. */
function wantedBeyond(
  { words, way, acts }: FigureArrow,
  free: Point2,
  letter: number,
): readonly WantedLabel[] {
  const sign = acts === "pulling" ? 1 : -1;
  return wantedOn(words, free, { x: sign * Math.cos(way), y: sign * Math.sin(way) }, letter);
}

/** The words of a shape: in its middle, or beyond a place on its rim, to the left or to the right. */
function wantedOf({ points, words, wordsAt }: FigureShape, letter: number): readonly WantedLabel[] {
  const middle = middleOf(boxOf(points.map(inMillimetres)));
  if (!wordsAt) return wantedAt(words, middle);
  const from = inMillimetres(wordsAt);
  return wantedOn(words, from, { x: Math.sign(from.x - middle.x), y: 0 }, letter, shortLine);
}

/** Words beside a place, on one side of it. */
function wantedOn(
  words: string | undefined,
  free: Point2,
  { x: across, y: up }: Point2,
  letter: number,
  most = lineLength,
): readonly WantedLabel[] {
  if (words === undefined) return [];
  const text = broken(words, most);
  const lines = text.split("\n");
  const half = 0.3 * Math.max(...lines.map(({ length }) => length)) + 0.6;
  const at = {
    x: free.x + across * half * letter,
    y: free.y + up * (0.6 * lines.length + 0.5) * letter,
  };
  return [{ text, at, names: free }];
}

/** Whether the words of a size find room on its line. */
function fits({ from, to, words }: FigureSize, letter: number): boolean {
  return 0.6 * letter * (words.length + 1) <= 1000 * Math.hypot(to.x - from.x, to.y - from.y);
}

function sizeMark(size: FigureSize, letter: number): DimensionMark {
  return {
    mark: "dimension",
    from: inMillimetres(size.from),
    to: inMillimetres(size.to),
    offset: size.off * letter,
    text: fits(size, letter) ? size.words : "",
  };
}

/** The words of a size that is too short for them, beside its line. */
function wantedBeside(size: FigureSize, letter: number): readonly WantedLabel[] {
  if (fits(size, letter)) return [];
  const [from, to] = dimensionLine(sizeMark(size, letter));
  const isUpright = Math.abs(to.x - from.x) < Math.abs(to.y - from.y);
  const [away, middle] = [Math.sign(size.off) * letter, between(from, to, 0.5)];
  const left = isUpright ? -Math.sign(to.y - from.y) : 0;
  const up = isUpright ? 0 : Math.sign(to.x - from.x);
  const half = 0.3 * size.words.length + 0.5;
  return [
    { text: size.words, at: { x: middle.x + left * away * half, y: middle.y + up * away }, names: middle },
  ];
}

/** A quartered disc for a centre of gravity, a triangle under an edge, a dot for a point. */
function placeMarks({ what, at }: FigurePlace, letter: number): readonly DrawingMark[] {
  const { x, y } = inMillimetres(at);
  if (what === "point") return [{ mark: "circle", role: "datum", at: { x, y }, radius: 0.3 * letter }];
  if (what === "edge") {
    const points = [
      { x, y },
      { x: x - 0.55 * letter, y: y - letter },
      { x: x + 0.55 * letter, y: y - letter },
    ];
    return [{ mark: "polygon", role: "datum", points }];
  }
  const radius = 0.55 * letter;
  const quarter = (start: number): DrawingMark => ({
    mark: "polygon",
    role: "datum",
    points: [
      { x, y },
      ...Array.from({ length: 5 }, (_, i) => {
        const angle = start + (i * Math.PI) / 8;
        return { x: x + radius * Math.cos(angle), y: y + radius * Math.sin(angle) };
      }),
    ],
  });
  return [{ mark: "circle", role: "opening", at: { x, y }, radius }, quarter(0), quarter(Math.PI)];
}

function wantedAt(words: string | undefined, at: Point2, names = at): readonly WantedLabel[] {
  return words === undefined ? [] : [{ text: broken(words), at, names }];
}

/** Words on lines short enough for a phone. */
function broken(words: string, most = lineLength): string {
  const lines: string[] = [];
  // A number and its unit stay together.
  const tied = words.replace(/(\d) (?=[A-Za-z°%²/·]+(?:[ ,]|$))/g, "$1\u00a0");
  for (const word of tied.split(" ")) {
    const last = lines.at(-1);
    if (last === undefined || last.length + 1 + word.length > most) lines.push(word);
    else lines[lines.length - 1] = `${last} ${word}`;
  }
  return lines.join("\n").replaceAll("\u00a0", " ");
}

function beside({ x, y }: Point2, letter: number): Point2 {
  return { x: x + 0.4 * letter, y: y + 1.2 * letter };
}

/** The words of a line, which may stand anywhere along it: it is tried from its middle out. */
function wantedAlong(
  words: string | undefined,
  points: readonly Point2[],
  letter: number,
): readonly WantedLabel[] {
  if (words === undefined) return [];
  const places = points.slice(1).flatMap((to, i) => {
    const from = points[i]!;
    const count = Math.max(1, Math.round(Math.hypot(to.x - from.x, to.y - from.y) / letter));
    return Array.from({ length: count }, (_, j) => between(from, to, j / count));
  });
  const half = Math.floor(places.length / 2);
  const along = [...places.slice(half), ...places.slice(0, half)];
  return [{ text: broken(words), at: along[0]!, along }];
}

/** Room that words already take, and marks that none may cover. */
function boxesOf(marks: readonly DrawingMark[], letter: number): readonly Box2[] {
  return marks.flatMap((mark): Box2[] => {
    if (mark.mark === "circle") {
      const { at, radius } = mark;
      return [{ left: at.x - radius, bottom: at.y - radius, width: 2 * radius, height: 2 * radius }];
    }
    if (mark.mark === "dimension" && mark.text !== "") {
      const [from, to] = dimensionLine(mark);
      const at = between(from, to, 0.5);
      const isUpright = Math.abs(to.x - from.x) < Math.abs(to.y - from.y);
      const text = { mark: "text", text: mark.text, anchor: "middle" } as const;
      return [
        isUpright
          ? textBox({ ...text, at: { x: at.x - 0.35 * letter, y: at.y }, turn: 90 }, letter)
          : textBox({ ...text, at: { x: at.x, y: at.y + 0.35 * letter } }, letter),
      ];
    }
    return [];
  });
}

function linesOf(marks: readonly DrawingMark[]): readonly (readonly [Point2, Point2])[] {
  return marks.flatMap((mark) => {
    switch (mark.mark) {
      case "polygon":
        return mark.points.map((from, i) => [from, mark.points[(i + 1) % mark.points.length]!] as const);
      case "line":
        return mark.points.slice(1).map((to, i) => [mark.points[i]!, to] as const);
      case "arrow":
        return [[mark.from, mark.to] as const];
      case "dimension": {
        const [from, to] = dimensionLine(mark);
        return [[from, to] as const, [mark.from, from] as const, [mark.to, to] as const];
      }
      default:
        return [];
    }
  });
}
