/** A number for every line that is filled in, so that what is written down can be named and read back. */
import type { RecipeBlock, RecipeSection } from "./recipe.js";

/** The sections with a number M1, M2 ... beside the blanks of every row. */
export function numberBlanks(sections: readonly RecipeSection[]): readonly RecipeSection[] {
  let last = 0;
  const numbered = (block: RecipeBlock): RecipeBlock => {
    if (block.kind === "group") return { ...block, blocks: block.blocks.map(numbered) };
    if (block.kind !== "blanks") return block;
    return {
      ...block,
      columns: [...block.columns, { heading: "No.", align: "left" }],
      rows: block.rows.map((row) => {
        last++;
        return [...row, `M${last}`];
      }),
    };
  };
  return sections.map((section) => ({ ...section, blocks: section.blocks.map(numbered) }));
}
