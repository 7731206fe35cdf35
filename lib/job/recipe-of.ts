/** The recipe of a job: for its notebook, the files beside the book, and the live page. */
import { caseOrder, workTimes } from "../plan/index.js";
import { type Recipe, type RecipeInput, writeRecipe } from "../recipe/index.js";
import type { Job } from "./open-job.js";

/** What a recipe is written from. */
export type RecipeJob = Pick<Job, "case" | "stock" | "offers" | "measurements" | "parts" | "review">;

/** What a job knows for its recipe, but for the order of the work. */
export function recipeInputOf(job: RecipeJob): RecipeInput {
  return { ...workInputOf(job), findings: job.review.findings };
}

/** The same without asking any question. */
function workInputOf(job: RecipeJob): RecipeInput {
  const { purchases, bill, masses, solids } = job.review;
  const { case: build, parts, stock } = job;
  const times = workTimes(job, purchases);
  return { case: build, parts, stock, purchases, bill, findings: [], masses, solids, times };
}

/** Writes the recipe from everything the job knows. */
export function recipeOf(job: RecipeJob): Recipe {
  return writeRecipe({ ...recipeInputOf(job), order: caseOrder(job) });
}

/** The same before any question is answered: the work alone, without what is to be decided, and lines numbered without it. */
export function workPapersOf(job: RecipeJob): Recipe {
  return writeRecipe({ ...workInputOf(job), order: caseOrder(job) });
}
