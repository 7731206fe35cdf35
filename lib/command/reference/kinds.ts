/** The kinds of reference files, by the word that tells them apart. */
import { barOutcomes } from "./bar-cases.js";
import { finiteElementOutcomes } from "./fe/fe-outcomes.js";
import { formulaOutcomes } from "./formula-tables.js";
import { regressionOutcomes } from "./linear-regressions.js";
import type { ReferenceRunner } from "./outcome.js";
import { sheetOutcomes } from "./sheet-cases.js";
import { convergenceOutcomes } from "./shells/convergence.js";
import { shellOutcomes } from "./shells/shell-outcomes.js";

/** One runner a kind. */
export const referenceKinds: Readonly<Record<string, ReferenceRunner>> = {
  bars: barOutcomes,
  convergence: convergenceOutcomes,
  formula: formulaOutcomes,
  panel: finiteElementOutcomes,
  box: finiteElementOutcomes,
  "linear-regression": regressionOutcomes,
  sheets: sheetOutcomes,
  shell: shellOutcomes,
};

/** The kind of a file's content: its own word, or that of its first table or case. */
export function kindOf(content: unknown): string {
  const { kind, cases } = (content ?? {}) as { readonly kind?: unknown; readonly cases?: unknown };
  if (typeof kind === "string") return kind;
  const first: unknown = Array.isArray(content) ? content[0] : Array.isArray(cases) ? cases[0] : undefined;
  if (first === undefined)
    throw new TypeError('expected a "kind", or a list of tables or cases that have one');
  return kindOf(first);
}
