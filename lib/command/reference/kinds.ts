/** The kinds of reference files, by the word that tells them apart. */

import { type CheckTable, runChecks } from "../../index.js";
import { orderOutcomes } from "./assembly/order-cases.js";
import { overlapOutcomes } from "./assembly/overlap-cases.js";
import { passageOutcomes } from "./assembly/passage-cases.js";
import { barOutcomes, sheetOutcomes } from "./cutting-cases.js";
import { finiteElementOutcomes } from "./fe/fe-cases.js";
import { regressionOutcomes } from "./linear-regressions.js";
import type { ReferenceOutcome, ReferenceRunner } from "./outcome.js";
import { convergenceOutcomes } from "./shells/convergence.js";
import { shellOutcomes } from "./shells/problems.js";

/** One runner a kind. */
export const referenceKinds: Readonly<Record<string, ReferenceRunner>> = {
  bars: barOutcomes,
  convergence: convergenceOutcomes,
  formula: formulaOutcomes,
  panel: finiteElementOutcomes,
  box: finiteElementOutcomes,
  "linear-regression": regressionOutcomes,
  order: orderOutcomes,
  overlap: overlapOutcomes,
  passage: passageOutcomes,
  sheets: sheetOutcomes,
  shell: shellOutcomes,
};

/**
 * The kind of a file's content: its own word, or that of its first table or case.
 *
 * @throws TypeError when it has none
 */
export function kindOf(content: unknown): string {
  const { kind, cases } = (content ?? {}) as { readonly kind?: unknown; readonly cases?: unknown };
  if (typeof kind === "string") return kind;
  const first: unknown = Array.isArray(content) ? content[0] : Array.isArray(cases) ? cases[0] : undefined;
  if (first === undefined)
    throw new TypeError('expected a "kind", or a list of tables or cases that have one');
  return kindOf(first);
}

/** Runs one table of published checks, or a list of them. */
function formulaOutcomes(content: unknown): readonly ReferenceOutcome[] {
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

/**
 * The tables of a file's content.
 *
 * @throws TypeError when it holds anything else
 */
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
