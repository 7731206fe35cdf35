/** Runs a file of finite-element cases. */
import type { ReferenceOutcome } from "../outcome.js";
import { boxCase } from "./box-file.js";
import { boxOutcomes } from "./box-outcomes.js";
import { panelCase } from "./case-file.js";
import { panelOutcomes } from "./panel-outcomes.js";

/**
 * Runs a file of finite-element cases, compared with its values for a sheet that shears (theory "mindlin").
 *
 * @throws TypeError for a case that is neither a panel nor a box
 */
export function finiteElementOutcomes(content: unknown): readonly ReferenceOutcome[] {
  const { cases } = content as { readonly cases: readonly { readonly kind: string }[] };
  return cases.flatMap((found) => {
    if (found.kind === "panel") return panelOutcomes(panelCase.parse(found));
    if (found.kind === "box") return boxOutcomes(boxCase.parse(found));
    throw new TypeError(`expected cases of kind panel or box, got "${found.kind}"`);
  });
}
