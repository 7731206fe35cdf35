/** What the chapter of the recipe answers. */

import { keepsFromRelease } from "../../findings/index.js";
import type { Job } from "../../job/index.js";

/** What stands between the recipe and the first cut. */
export function recipeAnswer({ review: { findings } }: Job): string {
  const open = findings.filter(({ verdict }) => verdict !== "holds");
  if (open.length === 0)
    return "Every question asked of this case is answered with yes: it can be built as written.";
  const kept = open.filter(keepsFromRelease).length;
  return kept === 0
    ? `${open.length} of ${findings.length} questions are not answered with yes, none of safety or strength: the recipe is released, and they stand at its head.`
    : `${kept} of ${findings.length} questions, of safety or strength, do not hold or are not known: the recipe is not released until they are settled. They stand at its head.`;
}
