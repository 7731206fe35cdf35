/** The recipe of a job: for its notebook, the files beside the book, and the live page. */
import { caseOrder, workTimes } from "../plan/index.js";
import { type Recipe, type RecipeInput, writeRecipe } from "../recipe/index.js";
import type { Job } from "./open-job.js";

/** What a job knows for its recipe, but for the order of the work. */
export function recipeInputOf(job: Parameters<typeof recipeOf>[0]): RecipeInput {
  const { purchases, bill, findings, masses, solids } = job.review;
  const { case: build, parts, stock } = job;
  const times = workTimes(job, purchases);
  return { case: build, parts, stock, purchases, bill, findings, masses, solids, times };
}

/** Writes the recipe from everything the job knows. */
export function recipeOf(
  job: Pick<Job, "case" | "stock" | "offers" | "measurements" | "parts" | "review">,
): Recipe {
  return writeRecipe({ ...recipeInputOf(job), order: caseOrder(job) });
}
