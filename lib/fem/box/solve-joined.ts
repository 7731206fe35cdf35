import { symmetricEigen } from "../../algebra/eigenvalues.js";
import { solveSquare } from "../../algebra/linear-systems.js";
import { add, at as entry, sumOf } from "../../algebra/lists.js";
import { unitVector } from "../../algebra/matrix3.js";
import { Refusal } from "../../refusal.js";
import { spaceDofs } from "../element/index.js";
import type { BoxSpot } from "./box-problem.js";
import { type JoinedParts, movedFree, type PreparedLink, rigidRow, stretchOf } from "./joined-parts.js";
import { waysToMove } from "./meshed-box.js";

/** Parts under one load case. */
export interface JoinedAnswer {
  /** Of each part, its degrees of freedom in order. */
  readonly displacements: readonly Float64Array[];
  /** Force of each spring of the system, N: positive where it pulls its ends together; zero where it is left out. */
  readonly forces: readonly number[];
}

/** Rounds in which springs that push or pull only are left out or taken back. */
const mostRounds = 40;

/**
 * Moves joined parts under forces.
 *
 * @param joined the parts with all springs
 * @param loads forces on the degrees of freedom of each part
 * @param inUse which springs this load case has; all when left out
 * @throws Refusal that names a part that nothing holds, or when springs that only push or pull come to no rest
 */
export function movedJoined(
  joined: JoinedParts,
  loads: readonly Float64Array[],
  inUse: (link: PreparedLink["link"]) => boolean = () => true,
): JoinedAnswer {
  const free = joined.parts.map((part, i) => movedFree(part, entry(loads, i)));
  const wrenches = joined.parts.map((part, i) => wrenchOf(part.structure.nodes, entry(loads, i)));
  const candidates = [...joined.links.keys()].filter((i) => inUse(entry(joined.links, i).link));
  const gaps = joined.links.map((link) => stretchOf(link, (part) => entry(free, part)));
  let active = candidates;
  for (let round = 0; round < mostRounds; round++) {
    refuseUnconstrained(joined, active);
    const found: Round = { active, gaps, ...balanced(joined, active, gaps, wrenches) };
    const stretches = candidates.map((i) => stretchUnder(joined, i, found));
    const next = candidates.filter((i, k) => works(entry(joined.links, i).link.only, entry(stretches, k)));
    if (next.length === active.length && next.every((i, k) => i === active[k]))
      return answer(joined, free, found);
    active = next;
  }
  throw new Refusal(
    `${joined.parts.map(({ structure }) => structure.problem.name).join(" and ")}: what only pushes or pulls comes to no rest; is it about to tip?`,
  );
}

function works(only: "push" | "pull" | undefined, stretch: number): boolean {
  return only === undefined || (only === "push" ? stretch <= 0 : stretch >= 0);
}

/** Force and moment about the part's 0, 0, 0 of the forces on its nodes. */
function wrenchOf(nodes: readonly BoxSpot[], load: Float64Array): Float64Array {
  const wrench = new Float64Array(6);
  nodes.forEach((spot, node) => {
    const from = spaceDofs * node;
    for (const axis of [0, 1, 2] as const) {
      const force = entry(load, from + axis);
      add(wrench, 3 + axis, entry(load, from + 3 + axis));
      if (force === 0) continue;
      rigidRow(spot, unitVector(axis)).forEach((share, k) => {
        add(wrench, k, force * share);
      });
    }
  });
  return wrench;
}

/** Force of each active spring, and the rigid movement of each part. */
interface Balance {
  /** One force an active spring, N. */
  readonly forces: Float64Array;
  /** Six numbers a part: along x, y, z, m, and about them, rad. */
  readonly rigid: Float64Array;
}

/** A round of the search for the springs that act. */
interface Round extends Balance {
  /** Numbers of the springs that act. */
  readonly active: readonly number[];
  /** How much longer each spring got before any force, m. */
  readonly gaps: readonly number[];
}

/** Springs as long as their forces say, and every part in balance. */
function balanced(
  { parts, links, give }: JoinedParts,
  active: readonly number[],
  gaps: readonly number[],
  wrenches: readonly Float64Array[],
): Balance {
  const [springs, size] = [active.length, active.length + 6 * parts.length];
  const matrix = new Float64Array(size * size);
  const right = new Float64Array(size);
  active.forEach((i, row) => {
    active.forEach((j, column) => {
      matrix[row * size + column] = give(i, j);
    });
    const { link, ends } = entry(links, i);
    add(matrix, row * (size + 1), 1 / link.stiffness);
    for (const { part, rigid } of ends)
      rigid.forEach((share, k) => {
        const other = springs + 6 * part + k;
        add(matrix, row * size + other, -share);
        add(matrix, other * size + row, -share);
      });
    right[row] = entry(gaps, i);
  });
  wrenches.forEach((wrench, part) => {
    wrench.forEach((value, k) => {
      right[springs + 6 * part + k] = -value;
    });
  });
  const unknowns = solveSquare(matrix, right);
  return { forces: unknowns.subarray(0, springs), rigid: unknowns.subarray(springs) };
}

/** How much longer a spring of the load case gets. */
function stretchUnder(
  { links, give }: JoinedParts,
  i: number,
  { active, gaps, forces, rigid }: Round,
): number {
  const carried = sumOf(entry(links, i).ends, (end) =>
    sumOf(end.rigid.entries(), ([k, share]) => share * entry(rigid, 6 * end.part + k)),
  );
  return active.reduce((sum, j, k) => sum - give(i, j) * entry(forces, k), entry(gaps, i) + carried);
}

function answer(
  { parts, links }: JoinedParts,
  free: readonly Float64Array[],
  { active, forces, rigid }: Round,
): JoinedAnswer {
  const displacements = free.map((own) => own.slice());
  const all = new Array<number>(links.length).fill(0);
  active.forEach((i, k) => {
    const force = entry(forces, k);
    all[i] = force;
    for (const { part, displacement } of entry(links, i).ends) {
      const moved = entry(displacements, part);
      for (let dof = 0; dof < displacement.length; dof++) moved[dof]! -= force * displacement[dof]!;
    }
  });
  parts.forEach(({ structure }, part) => {
    addRigid(entry(displacements, part), structure.nodes, rigid.subarray(6 * part, 6 * part + 6));
  });
  return { displacements, forces: all };
}

/** Adds a rigid movement, along and about x, y, z at 0, 0, 0, to the movement of nodes. */
export function addRigid(
  displacement: Float64Array,
  nodes: readonly BoxSpot[],
  rigid: ArrayLike<number>,
): void {
  nodes.forEach(([x, y, z], node) => {
    const from = spaceDofs * node;
    const [tx = 0, ty = 0, tz = 0, rx = 0, ry = 0, rz = 0] = Array.from(rigid);
    [tx + ry * z - rz * y, ty + rz * x - rx * z, tz + rx * y - ry * x, rx, ry, rz].forEach((value, k) => {
      add(displacement, from + k, value);
    });
  });
}

/** Share of the stiffest rigid movement below which one is not held at all. */
const looseShare = 1e-12;

/**
 * Names the part that moves most in the rigid movement that no spring resists.
 *
 * @throws Refusal that names the part and how it moves
 */
function refuseUnconstrained({ parts, links }: JoinedParts, active: readonly number[]): void {
  const size = 6 * parts.length;
  const matrix = new Float64Array(size * size);
  for (const i of active) {
    const { link, ends } = entry(links, i);
    const row = new Float64Array(size);
    for (const { part, rigid } of ends)
      rigid.forEach((share, k) => {
        add(row, 6 * part + k, share);
      });
    row.forEach((a, p) => {
      if (a !== 0)
        row.forEach((b, q) => {
          add(matrix, p * size + q, link.stiffness * a * b);
        });
    });
  }
  const { values, vectors } = symmetricEigen(matrix, size);
  const loose = values.indexOf(Math.min(...values));
  if (entry(values, loose) > looseShare * Math.max(...values)) return;
  const shares = Array.from({ length: size }, (_, k) => Math.abs(entry(vectors, k * size + loose)));
  const most = shares.indexOf(Math.max(...shares));
  const { name } = entry(parts, Math.floor(most / 6)).structure.problem;
  throw new Refusal(`${name} is loose: it ${waysToMove[most % 6]} without resistance; hold it better`);
}
