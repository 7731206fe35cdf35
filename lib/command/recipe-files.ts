import type { ExtraFile } from "../book/index.js";
import { recipeMarkdown, recipePage, reviewCase, writeRecipe } from "../index.js";
import type { Job } from "../job/index.js";

/** The recipe of a job to print and to edit, as files of the book. */
export function recipeFiles(job: Job): ExtraFile[] {
  const { purchases, findings, masses } = reviewCase(job);
  const { timings } = job.measurements;
  const recipe = writeRecipe({ case: job.case, parts: job.parts, purchases, findings, masses, timings });
  return [
    { file: "recipe-to-print.html", title: "The recipe, to print", text: recipePage(recipe) },
    { file: "recipe.md", title: "The recipe as text, to edit", text: recipeMarkdown(recipe) },
  ];
}
