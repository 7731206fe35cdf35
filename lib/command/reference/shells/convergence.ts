/** The order at which results come nearer to their limit as elements are halved, against theory. */
import { z } from "zod";
import type { ReferenceOutcome } from "../outcome.js";
import {
  nodeAt,
  plainSheet,
  type ShellMesh,
  type ShellProblem,
  type SolvedShell,
  shellMesh,
  solvedShell,
  stressAt,
} from "./solve-shell.js";

/** A plate of side 1 under a pressure, thin enough that its theory is that of thin plates. */
const sheet = plainSheet(1e-3, 1e10, 0.3);
const near = (a: number, b: number): boolean => Math.abs(a - b) < 1e-9;

/** A square mesh of so many elements each way. */
function square(elements: number): ShellMesh {
  return shellMesh({ along: elements, across: elements, at: (s, t) => [s, t, 0] });
}

/** All of the square but its upper right quarter. */
function notched(elements: number): ShellMesh {
  const whole = square(elements);
  const cut = (nodes: readonly number[]): boolean =>
    whole.nodes[nodes[8]!]!.slice(0, 2).every((at) => at > 0.5);
  return { ...whole, elements: whole.elements.filter((nodes) => !cut(nodes)) };
}

const all: readonly number[] = [0, 1, 2, 3, 4];

/** Turns 3 and 4 are about x and y: along a hinged side the fibres stay upright. */
const held: Readonly<Record<string, ShellProblem["held"]>> = {
  "hinged square": (_, [s, t]) => [
    0,
    1,
    ...(near(s, 0) || near(s, 1) ? [2, 3] : []),
    ...(near(t, 0) || near(t, 1) ? [2, 4] : []),
  ],
  "clamped square": (_, [s, t]) => ([s, t].some((at) => near(at, 0) || near(at, 1)) ? all : [0, 1]),
  "re-entrant corner": (_, [s, t]) => (near(s, 0) || (s > 0.5 && t > 0.5) ? all : [0, 1]),
};

const values: Readonly<Record<string, (solved: SolvedShell) => number>> = {
  deflection: ({ mesh, movement }) => movement(nodeAt(mesh, [0.5, 0.5]))[2],
  "strain energy": ({ energy }) => energy,
  moment: (solved) => stressAt(solved, [0.5, 0.5], sheet, sheet.faces[0]).x,
};

/** Elements each way of the meshes: fine enough that the highest order is seen. */
const meshes = [8, 16, 32];

function solvedAt(problem: string, elements: number): SolvedShell {
  const mesh = problem === "re-entrant corner" ? notched(elements) : square(elements);
  return solvedShell({ mesh, sheet, tangent: () => [1, 0, 0], held: held[problem]!, pressure: [0, 0, 1] });
}

/** Solutions on the meshes by problem, worked out once. */
function solutions(): (problem: string) => readonly SolvedShell[] {
  const known = new Map<string, readonly SolvedShell[]>();
  return (problem) => {
    const found = known.get(problem) ?? meshes.map((elements) => solvedAt(problem, elements));
    known.set(problem, found);
    return found;
  };
}

/**
 * From three meshes, each with elements half as large: of its steps, the second is 2^-order of the first.
 *
 * @throws RangeError for a problem or a result that is not known
 */
function observedOrder(problem: string, result: string, solved: ReturnType<typeof solutions>): number {
  const value = values[result];
  if (!held[problem] || !value)
    throw new RangeError(
      `no order of "${problem}", "${result}", expected ${Object.keys(held).join(", ")} with ${Object.keys(values).join(", ")}`,
    );
  const [a, b, c] = solved(problem).map(value) as [number, number, number];
  return Math.log2(Math.abs((b - a) / (c - b)));
}

const number: z.ZodNumber = z.number();
const file: z.ZodType<{
  readonly rows: readonly {
    readonly problem: string;
    readonly result: string;
    readonly order: number;
    readonly below: number;
    readonly known: string;
  }[];
}> = z.looseObject({
  rows: z.array(
    z.looseObject({
      problem: z.string(),
      result: z.string(),
      order: number,
      below: number,
      known: z.string(),
    }),
  ),
});

/** Runs a table of orders: each must be at least what theory promises, less what the row allows. */
export function convergenceOutcomes(content: unknown): readonly ReferenceOutcome[] {
  const solved = solutions();
  return file.parse(content).rows.map(({ problem, result, order, below, known }) => {
    const ours = observedOrder(problem, result, solved);
    return {
      item: problem,
      result: `order of ${result}`,
      expected: `at least ${order}`,
      ours: ours.toFixed(2),
      error: (ours - order).toFixed(2),
      tolerance: `-${below}`,
      holds: ours >= order - below,
      known,
    };
  });
}
