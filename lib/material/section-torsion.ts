/** The torsion constant of a bar: from its outline, and of single shapes in closed form. */
import { type Formula, formula } from "../formula.js";
import { Area, Length, SecondMoment } from "../quantity/index.js";
import { boundsOf, closed, type Point2, perimeterOf, type Shape } from "../shape/index.js";
import { cite } from "../source.js";
import { outlineCorners, outlineFaults, outlineSection } from "./section-outline.js";
import { torsion } from "./section-walls.js";

/** A profile without hollows. */
export interface SolidProfile {
  /** The corners of the outline. */
  readonly outline: readonly Point2<Length>[];
}

/** Grid cells across the mean wall: the coarse grid, and twice as many. */
const cells = 12;

/**
 * Torsion constant of any solid profile: J = 2 x the volume under Prandtl's function, which is zero on the outline
 * and whose curvature is -2 everywhere. Five-point differences with shortened arms at the outline (Shortley and
 * Weller), two grids, extrapolated; good to about a thousandth.
 *
 * @throws Refusal for an outline that encloses nothing, crosses itself, or is too long for its thickness
 * @example solidTorsion(solidTorsion.read({ outline: [{ x: "0 mm", y: "0 mm" }, { x: "20 mm", y: "0 mm" },
 *   { x: "10 mm", y: "17.3205080756888 mm" }] })) // 3464 mm4
 */
export const solidTorsion: Formula<SolidProfile, SecondMoment> = formula({
  id: "section.torsion.solid",
  title: "Torsion constant of a drawn solid profile",
  equation: String.raw`\nabla^2\varphi = -2,\quad \varphi = 0 \text{ on the outline},\quad J = 2\iint\varphi\,dA`,
  inputs: {
    outline: { symbol: "(x_i, y_i)", kind: outlineCorners, meaning: "corners of the outline" },
  },
  result: { symbol: "J", kind: SecondMoment, meaning: "torsion constant" },
  source: [
    cite("stress-strain", "ch. 10, membrane analogy"),
    cite("strength-of-materials", "Prandtl's function"),
  ],
  validity: "Profiles without hollows; a closed tube is far stiffer, see the tube's own formula.",
  refuse: ({ outline }) => {
    const faults = outlineFaults(outline, "outline");
    return faults.length > 0 ? faults : tooSlender(outline);
  },
  compute: ({ outline }) => {
    const { area } = outlineSection({ outlines: [outline] });
    const wall = (2 * area) / perimeterOf(closed(outline));
    const [coarse, fine] = [volumeOn(outline, wall / cells), volumeOn(outline, wall / (2 * cells))] as const;
    return 2 * (fine + (fine - coarse) / 3);
  },
});

/** A profile is at most so many times as long round as its mean wall is thick, so that its grid has an end. */
const mostSlender = 500;

function tooSlender(outline: SolidProfile["outline"]): string[] {
  const round = perimeterOf(closed(outline));
  const slender = round ** 2 / (2 * outlineSection({ outlines: [outline] }).area);
  return slender > mostSlender
    ? [
        `an outline is at most ${mostSlender} times as long round as its mean wall is thick, got ${slender.toPrecision(3)}`,
      ]
    : [];
}

/** Where a grid line enters and leaves the profile, in order. */
function crossings({ sides }: Shape, along: "x" | "y", across: "x" | "y", at: number): readonly number[] {
  return sides
    .filter(({ from: a, to: b }) => a[across] > at !== b[across] > at)
    .map(
      ({ from: a, to: b }) => a[along] + ((at - a[across]) / (b[across] - a[across])) * (b[along] - a[along]),
    )
    .sort((a, b) => a - b);
}

/** A grid point inside, with its four arms as neighbour (or -1, the outline) and length. */
interface Node {
  /** The neighbours by their numbers, with the length of the way to each in metres. */
  readonly arms: readonly { readonly to: number; readonly length: number }[];
  /** Length of the row that counts for it. */
  readonly reach: number;
}

function volumeOn(outline: readonly Point2[], step: number): number {
  const nodes = nodesOf(outline, step);
  const heights = new Float64Array(nodes.length);
  const factor = 2 / (1 + Math.sin(Math.PI / (4 * cells)));
  for (let sweep = 0; sweep < 4000; sweep++) {
    if (sweepOnce(nodes, heights, factor) < 1e-9 * step ** 2) break;
  }
  return nodes.reduce((sum, { reach }, i) => sum + (heights[i] ?? 0) * reach * step, 0);
}

/** One sweep of over-relaxation; returns the largest change. */
function sweepOnce(nodes: readonly Node[], heights: Float64Array, factor: number): number {
  let most = 0;
  for (const [i, { arms }] of nodes.entries()) {
    let [pull, weight] = [2, 0];
    for (const [k, { to, length }] of arms.entries()) {
      const share = 2 / (length * (length + (arms[k ^ 1]?.length ?? length)));
      pull += to < 0 ? 0 : share * (heights[to] ?? 0);
      weight += share;
    }
    const change = factor * (pull / weight - (heights[i] ?? 0));
    heights[i] = (heights[i] ?? 0) + change;
    most = Math.max(most, Math.abs(change));
  }
  return most;
}

function nodesOf(outline: readonly Point2[], step: number): readonly Node[] {
  const shape = closed(outline);
  const { left, bottom, width, height } = boundsOf(shape);
  const [low, size] = [
    { x: left, y: bottom },
    { x: width, y: height },
  ];
  const place = (axis: "x" | "y", i: number): number => low[axis] + (i + 0.5) * step;
  const count = (axis: "x" | "y"): number => Math.ceil(size[axis] / step);
  const rows = Array.from({ length: count("y") }, (_, j) => crossings(shape, "x", "y", place("y", j)));
  const columns = Array.from({ length: count("x") }, (_, i) => crossings(shape, "y", "x", place("x", i)));
  const numbers = new Map<string, number>();
  for (const [j, cuts] of rows.entries()) {
    for (const i of columns.keys()) {
      if (inside(cuts, place("x", i)) && inside(columns[i] ?? [], place("y", j)))
        numbers.set(`${i} ${j}`, numbers.size);
    }
  }
  return [...numbers.keys()].map((key) => {
    const [i = 0, j = 0] = key.split(" ").map(Number);
    const arm = (di: number, dj: number): Node["arms"][number] => {
      const cuts = (di === 0 ? columns[i] : rows[j]) ?? [];
      const at = di === 0 ? place("y", j) : place("x", i);
      const to = numbers.get(`${i + di} ${j + dj}`);
      const edge = edgeFrom(cuts, at, di + dj);
      return to === undefined || edge < step
        ? { to: -1, length: Math.max(edge, 1e-6 * step) }
        : { to, length: step };
    };
    const [left, right] = [arm(-1, 0), arm(1, 0)];
    return { arms: [left, right, arm(0, -1), arm(0, 1)], reach: (left.length + right.length) / 2 };
  });
}

function inside(cuts: readonly number[], at: number): boolean {
  return cuts.filter((cut) => cut < at).length % 2 === 1;
}

/** Distance to the next cut of a grid line, one way. */
function edgeFrom(cuts: readonly number[], at: number, way: number): number {
  const ahead = cuts.map((cut) => (cut - at) * way).filter((distance) => distance >= 0);
  return Math.min(...ahead);
}

/** A closed tube of one wall. */
export interface TubeInputs {
  /** Enclosed by the middle line of the wall. */
  readonly enclosed: Area;
  /** Length of the middle line. */
  readonly round: Length;
  /** The thickness of the wall. */
  readonly thickness: Length;
}

/**
 * Torsion constant of a closed thin tube: J = 4 A^2 t / s.
 *
 * @example tubeTorsion(tubeTorsion.read({ enclosed: "2109 mm2", round: "188 mm", thickness: "3 mm" })) // 28.39 cm4
 */
export const tubeTorsion: Formula<TubeInputs, SecondMoment> = formula({
  id: "section.torsion.tube",
  title: "Torsion constant of a closed tube",
  equation: String.raw`J = \frac{4\,A_m^2\,t}{s}`,
  inputs: {
    enclosed: { symbol: "A_m", kind: Area, meaning: "enclosed by the middle line", above: 0 },
    round: { symbol: "s", kind: Length, meaning: "length of the middle line", above: 0 },
    thickness: { symbol: "t", kind: Length, meaning: "wall", above: 0 },
  },
  result: torsion,
  source: [cite("stress-strain", "ch. 10, closed thin tubes (Bredt)")],
  validity: "One closed wall of even thickness, at most a tenth of the tube's width.",
  refuse: ({ enclosed, round }) =>
    4 * Math.PI * enclosed <= round ** 2 * (1 + 1e-9) ? [] : ["no line of that length encloses so much"],
  compute: ({ enclosed, round, thickness }) => (4 * enclosed ** 2 * thickness) / round,
});

/** A solid bar. */
export interface SolidBar {
  /** The length of one side. */
  readonly width: Length;
  /** The length of the other side. */
  readonly height: Length;
}

/** Terms of the series; they fall with the fifth power. */
const terms = 150;

/**
 * Torsion constant of a rectangle: J = a b^3 (1/3 - (64 b / pi^5 a) sum tanh(n pi a / 2 b) / n^5), n odd, a >= b.
 *
 * @example rectangleTorsion(rectangleTorsion.read({ width: "10 mm", height: "10 mm" })) // 1406 mm4
 */
export const rectangleTorsion: Formula<SolidBar, SecondMoment> = formula({
  id: "section.torsion.rectangle",
  title: "Torsion constant of a rectangular bar",
  equation: String.raw`J = a b^3\left(\frac13 - \frac{64\,b}{\pi^5 a}\sum_{n=1,3,\ldots}\frac{\tanh(n\pi a/2b)}{n^5}\right)`,
  inputs: {
    width: { symbol: "a", kind: Length, meaning: "one side", above: 0 },
    height: { symbol: "b", kind: Length, meaning: "the other", above: 0 },
  },
  result: torsion,
  source: [cite("stress-strain", "table 10.1, rectangle (Saint-Venant)")],
  validity: "Any solid rectangle.",
  compute: ({ width, height }) => {
    const [a, b] = [Math.max(width, height), Math.min(width, height)];
    let sum = 0;
    for (let n = 1; n < 2 * terms; n += 2) sum += Math.tanh((n * Math.PI * a) / (2 * b)) / n ** 5;
    return a * b ** 3 * (1 / 3 - ((64 * b) / (Math.PI ** 5 * a)) * sum);
  },
});
