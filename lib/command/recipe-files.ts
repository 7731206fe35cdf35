import type { ExtraFile } from "../book/index.js";
import { recipeMarkdown, recipeOf, recipePage } from "../index.js";
import type { Job } from "../job/index.js";

/** The recipe of a job to print and to edit, as files of the book. */
export function recipeFiles(job: Job): ExtraFile[] {
  const recipe = recipeOf(job);
  return [
    { file: "recipe-to-print.html", title: "The recipe, to print", text: recipePage(recipe) },
    { file: "recipe.md", title: "The recipe as text, to edit", text: recipeMarkdown(recipe) },
  ];
}
