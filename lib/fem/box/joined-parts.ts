/**
 * Parts joined by springs at their fittings: sections stacked and latched, doors on hinges and latches, casters on
 * the floor. Each part is factored by itself, once; the forces of the springs are the unknowns of one small system
 * for every load case (the force method of structural mechanics), so that supports and latches can be exchanged, and
 * those that only push or only pull left out where they would do the other.
 */

import { at as entry, sumOf } from "../../algebra/lists.js";
import { axes, crossProduct, difference, unitVector, vector3 } from "../../algebra/matrix3.js";
import { keptByLists } from "../../kept/index.js";
import { Refusal } from "../../refusal.js";
import { spaceDofs } from "../element/index.js";
import { type Factors, factorPieces, type HalfMoved, UnconstrainedDof, workOn } from "../solve/index.js";
import type { BoxProblem, BoxSpot } from "./box-problem.js";
import { boxStructure } from "./box-structure.js";
import { type Fitting, type Pull, pullOn } from "./fitting.js";
import { halfOnce, halvesOfPulls, keepHalves } from "./kept-movements.js";
import { type BoxStructure, distance, piecesOf, unconstrainedMessage } from "./meshed-box.js";

/** One end of a spring: a fitting of a part. */
export interface LinkEnd {
  /** The part's number. */
  readonly part: number;
  /** The fitting the spring pulls at. */
  readonly fitting: Fitting;
}

/** A spring between two fittings at one place, or between a fitting and the ground. */
export interface Link {
  /** What messages and results call it; the springs of one latch share a name. */
  readonly name: string;
  /** Where the spring begins. */
  readonly from: LinkEnd;
  /** The ground when left out. */
  readonly to?: LinkEnd;
  /** The way it holds, from `from` towards `to`, of length 1. */
  readonly along: BoxSpot;
  /** N/m */
  readonly stiffness: number;
  /** Left out where it would do the other; it does both when left out. */
  readonly only?: "push" | "pull";
}

/** Parts with the springs that may join them. */
export interface JoinedParts {
  /** The parts, in the order of their numbers. */
  readonly parts: readonly FreePart[];
  /** The springs that any load case may use. */
  readonly links: readonly PreparedLink[];
  /** How much longer spring i gets when spring j pulls with -1, the parts held where they were factored. */
  readonly give: (i: number, j: number) => number;
}

/** A spring and how the parts give way to it. */
export interface PreparedLink {
  /** The spring. */
  readonly link: Link;
  /** Its ends: one where it ends on the ground. */
  readonly ends: readonly PreparedEnd[];
}

/** An end of a spring where a force of 1 pulls at a part, towards +`along` at `to`, against it at `from`. */
export interface PreparedEnd extends LinkEnd {
  /** 1 at `to`, -1 at `from`. */
  readonly sign: 1 | -1;
  /** That force, half solved. */
  readonly half: HalfMoved;
  /** Its share in the rigid movements of the part. */
  readonly rigid: readonly number[];
}

/** Two ends farther apart than this do not touch, m. */
const touching = 1e-4;

/**
 * Works out how the parts give way at every spring.
 *
 * @param parts free
 * @param links springs that any load case may use
 * @throws Refusal that names a spring whose ends do not touch, with their distance, or whose stiffness is nothing
 */
export function joinedParts(parts: readonly FreePart[], links: readonly Link[]): JoinedParts {
  const prepared = preparedLinks(parts, links);
  return { parts, links: prepared, give: giveTable(prepared) };
}

/**
 * The same parts with other springs in place of some.
 *
 * @param others by number of the spring whose place they take
 * @throws Refusal as joinedParts
 */
export function withOtherLinks(joined: JoinedParts, others: ReadonlyMap<number, Link>): JoinedParts {
  const changed = preparedLinks(joined.parts, [...others.values()]);
  const at = new Map([...others.keys()].map((i, k) => [i, entry(changed, k)]));
  const links = joined.links.map((link, i) => at.get(i) ?? link);
  const rows = new Map([...at].map(([i, link]) => [i, links.map((other) => giveBetween(other, link))]));
  const inRow = (i: number, j: number): number | undefined => rows.get(i)?.[j];
  return { parts: joined.parts, links, give: (i, j) => inRow(i, j) ?? inRow(j, i) ?? joined.give(i, j) };
}

function preparedLinks(parts: readonly FreePart[], links: readonly Link[]): readonly PreparedLink[] {
  const ends = links.map((link) => endsOf(parts, link));
  const halves = parts.map(({ factors }, number) => {
    const pulls = links.flatMap((link, i) =>
      entry(ends, i)
        .filter((end) => end.part === number)
        .map((end) => pullOf(end, link.along)),
    );
    return halvesOfPulls(factors, pulls).values();
  });
  return links.map((link, i) => ({
    link,
    ends: entry(ends, i).map((end): PreparedEnd => {
      const rigid = rigidRow(end.fitting.at, link.along).map((share) => end.sign * share);
      return { ...end, half: entry(halves, end.part).next().value!, rigid };
    }),
  }));
}

/** How much longer one spring gets when another pulls with -1. */
function giveBetween(one: PreparedLink, { ends }: PreparedLink): number {
  return sumOf(ends, ({ part, half }) => stretchUnder(one, (other) => (other === part ? half : undefined)));
}

function giveTable(links: readonly PreparedLink[]): JoinedParts["give"] {
  const size = links.length;
  const table = new Float64Array(size * size);
  links.forEach((link, j) => {
    for (let i = j; i < size; i++) {
      const value = giveBetween(entry(links, i), link);
      table[i * size + j] = value;
      table[j * size + i] = value;
    }
  });
  return (i, j) => entry(table, i * size + j);
}

/** An end of a spring with the sense in which it pulls. */
type SignedEnd = LinkEnd & Pick<PreparedEnd, "sign">;

/** @throws Refusal that names the spring when its stiffness is nothing or its ends do not touch */
function endsOf(parts: readonly FreePart[], { name, from, to, stiffness }: Link): readonly SignedEnd[] {
  if (!(stiffness > 0 && stiffness < Infinity))
    throw new Refusal(`${name}: its stiffness must be positive, got ${stiffness} N/m`);
  const ends: readonly SignedEnd[] = [{ ...from, sign: -1 }, ...(to ? [{ ...to, sign: 1 as const }] : [])];
  const [one, other] = ends.map((end) => placeOfEnd(parts, end));
  if (one && other && distance(one, other) > touching) {
    const [first, second] = ends.map(({ part }) => entry(parts, part).structure.problem.name);
    const apart = (1000 * distance(one, other)).toPrecision(3);
    throw new Refusal(`${name}: ${first} and ${second} do not touch there, they are ${apart} mm apart`);
  }
  return ends;
}

function pullOf({ fitting, sign }: SignedEnd, along: BoxSpot): Pull {
  return pullOn(fitting, [sign * along[0], sign * along[1], sign * along[2]]);
}

/** Where the end of a spring lies among the parts. */
export function placeOfEnd(parts: readonly FreePart[], { part, fitting }: LinkEnd): BoxSpot {
  const { at } = entry(parts, part);
  return vector3((axis) => fitting.at[axis] + at[axis]);
}

/** How much longer a spring gets under loads on its parts, half solved; a part without one stands still. */
export function stretchUnder(
  { ends }: Pick<PreparedLink, "ends">,
  loadOn: (part: number) => HalfMoved | undefined,
): number {
  return sumOf(ends, ({ part, half }) => {
    const load = loadOn(part);
    return load ? workOn(half, load) : 0;
  });
}

/** A box, factored while three of its nodes stand still: forces in balance leave nothing on those. */
export interface FreePart {
  /** The box. */
  readonly structure: BoxStructure;
  /** Where its 0, 0, 0 lies among the other parts. */
  readonly at: BoxSpot;
  /** Its factors, three of its nodes standing still. */
  readonly factors: Factors;
}

/**
 * Factors a box that nothing holds.
 *
 * @param structure the box
 * @param at where its 0, 0, 0 lies among the other parts
 * @throws Refusal when a part of it is loose in itself, naming where and how
 */
export function freePart(structure: BoxStructure, at: BoxSpot): FreePart {
  const pieces = piecesOf(structure);
  const held = new Uint8Array(spaceDofs * structure.nodes.length).fill(1);
  for (const { dofs } of pieces) for (const dof of dofs) held[dof] = 0;
  for (const dof of sixHolds(structure.nodes)) held[dof] = 1;
  try {
    return { structure, at, factors: factorPieces(pieces, held) };
  } catch (error) {
    if (error instanceof UnconstrainedDof) throw new Refusal(unconstrainedMessage(structure, error.dof));
    throw error;
  }
}

/** The cases asked for last, each on two meshes: an edit leaves most of a case's boxes as they were. */
const mostCases = 2;

/**
 * Boxes that nothing holds, meshed and factored; the same again for a box that says the same.
 *
 * @param boxes each with the size of its elements, m
 * @throws Refusal when a part of one is loose in itself, naming where and how
 */
export const freeBoxes: (
  boxes: readonly { readonly problem: BoxProblem; readonly size: number }[],
) => readonly FreePart[] = keptByLists(2 * mostCases, ({ problem, size }) =>
  freePart(boxStructure(problem, size), [0, 0, 0]),
);

/** A load on a part, half solved. */
export function halfMoved({ factors }: FreePart, load: Float64Array): HalfMoved {
  return halfOnce(factors, load);
}

/** Gets ready to move a part under several loads, one after another; they are worked out together. */
export function prepareMoves({ factors }: FreePart, loads: readonly Float64Array[]): void {
  keepHalves(factors, loads);
}

/** How a place moves along an axis when its body moves by 1 along x, y, z or turns by 1 about them at 0, 0, 0. */
export function rigidRow(spot: BoxSpot, along: BoxSpot): readonly number[] {
  return [...along, ...crossProduct(spot, along)];
}

/** Six degrees of freedom of three nodes far apart that leave no rigid movement. */
function sixHolds(nodes: readonly BoxSpot[]): readonly number[] {
  const start = entry(nodes, 0);
  const from = (node: number): BoxSpot => difference(entry(nodes, node), start);
  const second = farthest(nodes, (spot) => distance(spot, start));
  const line = from(second);
  const third = farthest(nodes, (spot) => Math.hypot(...crossProduct(line, difference(spot, start))));
  const reach = Math.hypot(...line);
  const kept: (readonly number[])[] = [];
  const holds = [0, 0, 0, second, second, third].map((node) => {
    const arm = from(node);
    const spot = vector3((k) => arm[k] / reach);
    // What each axis stops that the holds before it do not.
    const rows = axes.map((axis) => withoutOthers(rigidRow(spot, unitVector(axis)), kept));
    const best = axes.reduce((most, axis) => (sizeOf(rows, axis) > sizeOf(rows, most) ? axis : most));
    kept.push(entry(rows, best).map((value) => value / sizeOf(rows, best)));
    return spaceDofs * node + best;
  });
  return holds;
}

function sizeOf(rows: readonly (readonly number[])[], axis: 0 | 1 | 2): number {
  return Math.hypot(...entry(rows, axis));
}

function farthest(nodes: readonly BoxSpot[], away: (spot: BoxSpot) => number): number {
  return nodes.reduce((best, spot, node) => (away(spot) > away(entry(nodes, best)) ? node : best), 0);
}

function withoutOthers(row: readonly number[], kept: readonly (readonly number[])[]): readonly number[] {
  return kept.reduce((rest, other) => {
    const share = rest.reduce((sum, value, i) => sum + value * entry(other, i), 0);
    return rest.map((value, i) => value - share * entry(other, i));
  }, row);
}
