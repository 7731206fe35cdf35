/** Recipes of made-up jobs, and their words as one text. */
import type { Design } from "../../lib/design/index.js";
import { reviewCase } from "../../lib/findings/index.js";
import { recipeInputOf } from "../../lib/job/recipe-of.js";
import { type Recipe, type RecipeBlock, type RecipeInput, writeRecipe } from "../../lib/recipe/index.js";
import { designOf, smallJob } from "../design/small-job.js";

/** What a recipe is written from, for a design. */
export function recipeInput(design: Design): RecipeInput {
  return recipeInputOf({ ...design, review: reviewCase(design) });
}

/** The small metric job: one box with a little of everything. */
export const smallInput: RecipeInput = recipeInput(designOf(smallJob));

const barePanels = `sections:
  box:
    inside: { width: 600, depth: 400, height: 500 }
demands:`;

/** A box of six bare panels: no openings, laminate, edges, hardware, shelves or contents. */
export const plainInput: RecipeInput = recipeInput(
  designOf({
    ...smallJob,
    "case.yaml": (smallJob["case.yaml"] ?? "")
      .replace(/facing: \{.*\}/, "facing: none")
      .replace(/edges: \{.*\}/, "edges: none")
      .replace(/sections:[\s\S]*demands:/, barePanels),
  }),
);

/** The section of that title. */
export function sectionNamed({ sections }: Recipe, title: string): Recipe["sections"][number] {
  const found = sections.find((one) => one.title === title);
  if (!found) throw new Error(`no section "${title}" in ${sections.map((one) => one.title).join(", ")}`);
  return found;
}

/** Every block, groups opened. */
export function flatBlocks(blocks: readonly RecipeBlock[]): readonly RecipeBlock[] {
  return blocks.flatMap((block) => (block.kind === "group" ? [block, ...flatBlocks(block.blocks)] : [block]));
}

/** Rows of the table whose first heading is given. */
export function rowsOf(recipe: Recipe, title: string, firstHeading: string): readonly (readonly string[])[] {
  return flatBlocks(sectionNamed(recipe, title).blocks).flatMap((block) =>
    (block.kind === "table" || block.kind === "blanks") && block.columns[0]?.heading === firstHeading
      ? block.rows
      : [],
  );
}

/** The small job's recipe. */
export const smallRecipe: Recipe = writeRecipe(smallInput);
