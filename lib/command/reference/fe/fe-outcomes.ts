import type { ReferenceOutcome } from "../outcome.js";
import { panelCase } from "./case-file.js";
import { panelOutcomes } from "./panel-outcomes.js";

/**
 * Runs a file of finite-element cases, compared with its values for a sheet that shears (theory "mindlin").
 *
 * @throws TypeError for a case of another kind
 */
export function finiteElementOutcomes(content: unknown): readonly ReferenceOutcome[] {
  const { cases } = content as { readonly cases: readonly { readonly kind: string }[] };
  return cases.flatMap((found) => {
    if (found.kind !== "panel") throw new TypeError(`expected cases of kind panel, got "${found.kind}"`);
    return panelOutcomes(panelCase.parse(found));
  });
}
