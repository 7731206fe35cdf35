import { z } from "zod";
import { meshChange } from "../../../fem/index.js";
import type { ReferenceOutcome } from "../outcome.js";
import { publishedShells } from "./problems.js";

/** One published value. */
interface ShellRow {
  readonly problem: string;
  /** Elements along and across. */
  readonly mesh: [number, number];
  readonly expect: number;
  /** As a share of the value. */
  readonly tolerance: number;
  readonly where: string;
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
