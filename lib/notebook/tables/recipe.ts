/** The recipe of a job, for its notebook and for the files beside the book. */

import { keepsFromRelease } from "../../findings/index.js";
import type { Job } from "../../job/index.js";
import { workTimes } from "../../plan/index.js";
import { type Recipe, writeRecipe } from "../../recipe/index.js";

/** Writes the recipe from everything the job knows. */
export function recipeOf(job: Job): Recipe {
  const { purchases, bill, findings, masses } = job.review;
  const times = workTimes(job, purchases);
  return writeRecipe({ case: job.case, parts: job.parts, purchases, bill, findings, masses, times });
}

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
