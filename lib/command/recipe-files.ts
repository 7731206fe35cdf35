import type { ExtraFile, Notebook } from "../book/index.js";
import { type Recipe, recipeMarkdown, recipeMime, recipePage } from "../index.js";

/** A recipe to print and to edit, as files of the book. */
export function recipeFiles(recipe: Recipe): ExtraFile[] {
  return [
    { file: "recipe-to-print.html", title: "The recipe, to print", text: recipePage(recipe) },
    { file: "recipe.md", title: "The recipe as text, to edit", text: recipeMarkdown(recipe) },
  ];
}

/** The recipe that one of the executed notebooks showed; nothing is worked out twice. */
export function recipeShown(notebooks: readonly Notebook[]): Recipe | undefined {
  const outputs = notebooks.flatMap(({ cells }) =>
    cells.flatMap((cell) => (cell.cell_type === "code" ? cell.outputs : [])),
  );
  const shown = outputs.find((output) => "data" in output && recipeMime in output.data);
  return shown && "data" in shown ? (shown.data[recipeMime] as Recipe) : undefined;
}
