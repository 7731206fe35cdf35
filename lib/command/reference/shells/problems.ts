/**
 * The published problems, each by its name: geometry, supports and load as its source has them. What a source leaves
 * to symmetry is a quarter or an eighth here too.
 *
 * Our element is flat, as panels are. Shells curved one way come out well as facets; those curved both ways (the
 * pinched hemisphere) or warped (the twisted bar) do not, and are left out.
 */

import { z } from "zod";
import type { Sheet } from "../../../fem/element/index.js";
import { meshChange } from "../../../fem/index.js";
import type { ReferenceOutcome } from "../outcome.js";
import {
  dot,
  nodeAt,
  plainSheet,
  planeStrain,
  plus,
  type ShellMesh,
  type ShellProblem,
  type SolvedShell,
  scaled,
  shellMesh,
  solvedShell,
  stressAt,
  type Vector,
} from "./solve-shell.js";

/** A problem at a mesh: its unknowns and the value that the source gives. */
interface ShellAnswer {
  /** Number of degrees of freedom. */
  readonly free: number;
  /** The value asked for, in the unit of the problem. */
  readonly value: number;
}

/** A published problem. */
type PublishedShell = (along: number, across: number) => ShellAnswer;

const inX: Vector = [1, 0, 0];
const inZ: Vector = [0, 0, 1];
const near = (a: number, b: number): boolean => Math.abs(a - b) < 1e-9;
const degrees = Math.PI / 180;

function answered(problem: ShellProblem, value: (solved: SolvedShell) => number): ShellAnswer {
  const solved = solvedShell(problem);
  return { free: solved.free, value: value(solved) };
}

/** Movement in a direction of the node with these parameters. */
function way(parameters: readonly [number, number], direction: Vector): (solved: SolvedShell) => number {
  return ({ mesh, movement }) => dot(movement(nodeAt(mesh, parameters)), direction);
}

/** A roof on end diaphragms under its own weight; a quarter, the straight axis along y. */
const roof: PublishedShell = (along, across) =>
  answered(
    {
      mesh: shellMesh({
        along,
        across,
        at: (s, t) => [25 * Math.sin(40 * s * degrees), 25 * t, 25 * Math.cos(40 * s * degrees)],
      }),
      sheet: plainSheet(0.25, 4.32e8, 0),
      tangent: () => [0, 1, 0],
      held: (_, [s, t]) => [
        ...(near(s, 0) ? [0, 3] : []),
        ...(near(t, 0) ? [1, 4] : []),
        ...(near(t, 1) ? [0, 2] : []),
      ],
      pressure: [0, 0, -90],
    },
    (solved) => -way([1, 0], inZ)(solved),
  );

/** A cylinder on end diaphragms pinched in its middle; an eighth, its axis along y. */
const pinchedCylinder: PublishedShell = (along, across) =>
  answered(
    {
      mesh: shellMesh({
        along,
        across,
        at: (s, t) => [300 * Math.sin(90 * s * degrees), 300 * t, 300 * Math.cos(90 * s * degrees)],
      }),
      sheet: plainSheet(3, 3e6, 0.3),
      tangent: () => [0, 1, 0],
      held: (_, [s, t]) => [
        ...(near(s, 0) ? [0, 3] : []),
        ...(near(s, 1) ? [2, 3] : []),
        ...(near(t, 0) ? [1, 4] : []),
        ...(near(t, 1) ? [0, 2] : []),
      ],
      points: [{ at: [0, 0], force: [0, 0, -0.25] }],
    },
    (solved) => -way([0, 0], inZ)(solved),
  );

/** A flat plate, its mesh drawn towards corners or not. */
function plate(
  at: (s: number, t: number) => Vector,
  along: number,
  across: number,
  sheet: Sheet,
): Pick<ShellProblem, "mesh" | "sheet" | "tangent"> {
  return { mesh: shellMesh({ along, across, at, follows: true }), sheet, tangent: () => inX };
}

/** A quarter of a rectangle 2 wide under a pressure or a force in its middle, in units of the source. */
const rectangle =
  (length: number, clamped: boolean, load: "pressure" | "point"): PublishedShell =>
  (along, across) =>
    answered(
      {
        ...plate((s, t) => [(length / 2) * s, t, 0], along, across, plainSheet(1e-4, 1.7472e7, 0.3)),
        held: (_, [s, t]) => [
          ...[0, 1],
          ...(near(s, 0) ? [4] : []),
          ...(near(t, 0) ? [3] : []),
          ...(near(s, 1) || near(t, 1) ? (clamped ? [2, 3, 4] : [2]) : []),
        ],
        ...(load === "pressure"
          ? { pressure: [0, 0, 1e-4] }
          : { points: [{ at: [0, 0], force: [0, 0, 1e-4] }] }),
      },
      way([0, 0], inZ),
    );

/** Drawn towards both ends: obtuse corners of skew plates, where moments have no limit. */
const towardsEnds = (s: number): number => (s < 0.5 ? (2 * s) ** drawn / 2 : 1 - (2 - 2 * s) ** drawn / 2);
const drawn = 5;

/** A rhombus of side 1 under a uniform pressure. */
interface Rhombus {
  /** Of its acute corners. */
  readonly angle: number;
  /** What it is made of. */
  readonly sheet: Sheet;
  /** In Pa. */
  readonly pressure: number;
  /** Whether the sides of constant s are held too. */
  readonly allRound: boolean;
}

/** Hinged sides, fibres upright along them, as in the theory of thin plates that the sources use. */
function bentRhombus(
  { angle, sheet, pressure, allRound }: Rhombus,
  along: number,
  across: number,
): SolvedShell {
  const leaning: Vector = [Math.cos(angle * degrees), Math.sin(angle * degrees), 0];
  const onEnds = (t: number): boolean => near(t, 0) || near(t, 1);
  return solvedShell({
    sheet,
    mesh: shellMesh({
      along,
      across,
      at: (s, t) => plus(scaled(inX, towardsEnds(s)), scaled(leaning, towardsEnds(t))),
    }),
    tangent: (_, [s, t]) => (onEnds(s) && !onEnds(t) ? leaning : inX),
    held: (_, [s, t]) => {
      const corner = onEnds(s) && onEnds(t);
      if (!(onEnds(t) || (allRound && onEnds(s)))) return [0, 1];
      return corner && allRound ? [0, 1, 2, 3, 4] : [0, 1, 2, 4];
    },
    pressure: [0, 0, pressure],
  });
}

/** w D / q L4 in the middle of a thin skew plate of unit stiffness. */
const skew =
  (angle: number, allRound: boolean, poisson: number): PublishedShell =>
  (along, across) => {
    const sheet = plainSheet(1e-3, (12 * (1 - poisson ** 2)) / 1e-9, poisson);
    const solved = bentRhombus({ angle, sheet, pressure: 1, allRound }, along, across);
    return { free: solved.free, value: way([0.5, 0.5], inZ)(solved) };
  };

/** LE6: largest stress on the lower face in the middle, MPa. */
const skewStress: PublishedShell = (along, across) => {
  const sheet = plainSheet(0.01, 210e9, 0.3);
  const solved = bentRhombus({ angle: 30, sheet, pressure: -700, allRound: true }, along, across);
  const { x, y, shear } = stressAt(solved, [0.5, 0.5], sheet, -0.005);
  return { free: solved.free, value: ((x + y) / 2 + Math.hypot((x - y) / 2, shear)) / 1e6 };
};

/**
 * LE1: an elliptic membrane, a quarter, pulled outwards along its outer side; stress along y at its inner end, MPa.
 */
const ellipticMembrane: PublishedShell = (along, across) => {
  const sheet = plainSheet(0.1, 210e9, 0.3);
  const solved = solvedShell({
    ...plate(
      (s, t) => {
        const turn = 90 * t * degrees;
        return [(2 + 1.25 * s) * Math.cos(turn), (1 + 1.75 * s) * Math.sin(turn), 0];
      },
      along,
      across,
      sheet,
    ),
    held: (_, [, t]) => [2, 3, 4, ...(near(t, 0) ? [1] : []), ...(near(t, 1) ? [0] : [])],
    forces: (mesh) => outwards(mesh, along, 10e6 * 0.1),
  });
  return { free: solved.free, value: stressAt(solved, [0, 0], sheet, 0).y / 1e6 };
};

/** A pull on each length across the side s = 1, shared by the parabola of its nodes. */
function outwards(
  { nodes, elements }: ShellMesh,
  along: number,
  pull: number,
): readonly { node: number; force: Vector }[] {
  return elements
    .filter((_, e) => e % along === along - 1)
    .flatMap((element) => {
      const side = [element[1]!, element[5]!, element[2]!];
      const [a, m, b] = side.map((node) => nodes[node]!) as [Vector, Vector, Vector];
      return [-1, 0, 1].flatMap((at, k) => {
        const [dx, dy] = [0, 1].map((i) => (at - 0.5) * a[i]! - 2 * at * m[i]! + (at + 0.5) * b[i]!) as [
          number,
          number,
        ];
        const weight = [1 / 3, 4 / 3, 1 / 3][k]! * pull;
        return [{ node: side[k]!, force: [weight * dy, -weight * dx, 0] as const }];
      });
    });
}

/** A thick cylinder from 3 to 9 in plane strain under a pressure of 1 inside, almost incompressible. */
const thickCylinder =
  (poisson: number): PublishedShell =>
  (along, across) =>
    answered(
      {
        ...plate(
          (s, t) => [
            (3 + 6 * s ** 1.5) * Math.cos(90 * t * degrees),
            (3 + 6 * s ** 1.5) * Math.sin(90 * t * degrees),
            0,
          ],
          along,
          across,
          planeStrain(1000, poisson),
        ),
        held: (_, [, t]) => [2, 3, 4, ...(near(t, 0) ? [1] : []), ...(near(t, 1) ? [0] : [])],
        forces: (mesh) => inside(mesh, along),
      },
      way([0, 0], inX),
    );

function inside(mesh: ShellMesh, along: number): readonly { node: number; force: Vector }[] {
  const mirrored = {
    ...mesh,
    elements: mesh.elements
      .filter((_, e) => e % along === 0)
      .map((nodes) => nodes.map((_, i) => nodes[[1, 0, 3, 2, 4, 7, 6, 5, 8][i]!]!)),
  };
  return outwards(mirrored, 1, 1);
}

/**
 * A straight bar 6 x 0.2 x 0.1 held at one end, a force of 1 on the other; how far that end moves along the force.
 */
const straightBar =
  (force: Vector): PublishedShell =>
  (along, across) =>
    answered(
      {
        ...plate((s, t) => [6 * s, 0.2 * t, 0], along, across, plainSheet(0.1, 1e7, 0.3)),
        held: (_, [s]) => (near(s, 0) ? [0, 2, 3, 4] : []).concat(near(s, 0) ? [1] : []),
        forces: (mesh) => endForces(mesh, along, force),
      },
      way([1, 0.5], force),
    );

/** A force shared by the nodes of the side s = 1. */
function endForces(
  { elements }: ShellMesh,
  along: number,
  force: Vector,
): readonly { node: number; force: Vector }[] {
  const last = elements.filter((_, e) => e % along === along - 1);
  return last.flatMap((element) =>
    [element[1]!, element[5]!, element[2]!].map((node, k) => ({
      node,
      force: scaled(force, [1 / 6, 2 / 3, 1 / 6][k]! / last.length),
    })),
  );
}

/** A quarter of a ring held at one end, a force of 1 on the other. */
const curvedBar =
  (force: Vector): PublishedShell =>
  (along, across) =>
    answered(
      {
        ...plate(
          (s, t) => {
            const [radius, turn] = [4.12 + 0.2 * t, 90 * (1 - s) * degrees];
            return [-radius * Math.sin(turn), radius * Math.cos(turn), 0].map((v) => -v) as unknown as Vector;
          },
          along,
          across,
          plainSheet(0.1, 1e7, 0.25),
        ),
        held: (_, [s]) => (near(s, 0) ? [0, 1, 2, 3, 4] : []),
        forces: (mesh) => endForces(mesh, along, force),
      },
      way([1, 0.5], force),
    );

/** All of them by name. */
const publishedShells: Readonly<Record<string, PublishedShell>> = {
  "straight bar, stretched": straightBar(inX),
  "straight bar, bent in its plane": straightBar([0, 1, 0]),
  "straight bar, bent out of its plane": straightBar(inZ),
  "curved bar, bent in its plane": curvedBar([0, 1, 0]),
  "curved bar, bent out of its plane": curvedBar(inZ),
  "square plate, hinged, pressure": rectangle(2, false, "pressure"),
  "square plate, hinged, point": rectangle(2, false, "point"),
  "square plate, clamped, pressure": rectangle(2, true, "pressure"),
  "square plate, clamped, point": rectangle(2, true, "point"),
  "plate 1:5, hinged, pressure": rectangle(10, false, "pressure"),
  "plate 1:5, hinged, point": rectangle(10, false, "point"),
  "plate 1:5, clamped, pressure": rectangle(10, true, "pressure"),
  "plate 1:5, clamped, point": rectangle(10, true, "point"),
  "roof on end diaphragms": roof,
  "pinched cylinder": pinchedCylinder,
  "thick cylinder, 0.49": thickCylinder(0.49),
  "thick cylinder, 0.499": thickCylinder(0.499),
  "thick cylinder, 0.4999": thickCylinder(0.4999),
  "skew plate 60 degrees, two sides hinged": skew(60, false, 0.31),
  "skew plate 30 degrees, hinged": skew(30, true, 0.3),
  "skew plate 30 degrees, stress": skewStress,
  "elliptic membrane": ellipticMembrane,
};

/** One published value. */
interface ShellRow {
  /** Which problem. */
  readonly problem: string;
  /** Elements along and across. */
  readonly mesh: [number, number];
  /** The published value. */
  readonly expect: number;
  /** As a share of the value. */
  readonly tolerance: number;
  /** Page, table or equation of the source. */
  readonly where: string;
  /** How it is known. */
  readonly known: string;
}

const number: z.ZodNumber = z.number();
const file: z.ZodType<{ readonly rows: readonly ShellRow[] }> = z.looseObject({
  rows: z.array(
    z.looseObject({
      problem: z.string(),
      mesh: z.tuple([number, number]),
      expect: number,
      tolerance: number,
      where: z.string(),
      known: z.string(),
    }),
  ),
});

/**
 * Runs a table of published plates and shells, each on its mesh and on one of half the elements each way, which tells
 * the mesh error.
 */
export function shellOutcomes(content: unknown): readonly ReferenceOutcome[] {
  return file.parse(content).rows.map(outcome);
}

/** @throws RangeError for a problem that is not known */
function outcome({ problem, mesh, expect, tolerance, known }: ShellRow): ReferenceOutcome {
  const run = publishedShells[problem];
  if (!run)
    throw new RangeError(
      `no problem "${problem}", expected one of ${Object.keys(publishedShells).join(", ")}`,
    );
  const { free, value } = run(...mesh);
  const coarse = run(Math.ceil(mesh[0] / 2), Math.ceil(mesh[1] / 2)).value;
  const error = value / expect - 1;
  return {
    item: problem,
    result: `${mesh.join(" x ")}, ${free} unknowns`,
    expected: String(expect),
    ours: String(Number(value.toPrecision(5))),
    error: percent(error),
    meshError: percent(meshChange(value, coarse)),
    tolerance: percent(tolerance),
    holds: Math.abs(error) <= tolerance,
    known,
  };
}

function percent(share: number): string {
  return `${(100 * share).toFixed(2)} %`;
}
