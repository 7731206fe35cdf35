import { type CheckTable, runChecks } from "../../index.js";
import type { ReferenceOutcome } from "./outcome.js";

/** Runs one table of published checks, or a list of them. */
export function formulaOutcomes(content: unknown): readonly ReferenceOutcome[] {
  return asTables(content)
    .flatMap(runChecks)
    .map(({ formula, result, expected, ours, error, tolerance, holds, known }) => ({
      item: formula,
      result,
      expected,
      ours,
      error: error.toExponential(1),
      tolerance: String(tolerance),
      holds,
      known,
    }));
}

/** The tables of a file's content. Throws TypeError for anything else. */
export function asTables(content: unknown): CheckTable[] {
  const tables: unknown[] = Array.isArray(content) ? content : [content];
  const stranger = tables.find((table) => !isTable(table));
  if (stranger !== undefined) {
    throw new TypeError(
      `expected { kind: "formula", source, rows: [...] }, got ${JSON.stringify(stranger).slice(0, 80)}`,
    );
  }
  return tables as CheckTable[];
}

function isTable(value: unknown): boolean {
  const { kind, rows } = (value ?? {}) as { readonly kind?: unknown; readonly rows?: unknown };
  return kind === "formula" && Array.isArray(rows);
}
