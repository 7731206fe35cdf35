import type { TableView, View } from "../page/index.js";
import { markdownText } from "./markdown-text.js";
import type { BlanksBlock, Recipe, RecipeBlock } from "./recipe.js";

/** The recipe as views, for a notebook: headings as Markdown, blanks as lines to write on. */
export function recipeViews({ title, invented, sections }: Recipe): View[] {
  const note = invented ? "\n\nAn invented example." : "";
  return [
    heading(1, `${title}: recipe`, note),
    ...sections.flatMap(({ title: name, blocks }, i) => [
      heading(2, `${i + 1}. ${name}`),
      ...blocks.flatMap(blockViews),
    ]),
  ];
}

function heading(level: number, text: string, after = ""): View {
  return { kind: "markdown", text: `${"#".repeat(level)} ${markdownText(text)}${after}` };
}

function blockViews(block: RecipeBlock): View[] {
  if (block.kind === "group") return [heading(3, block.title), ...block.blocks.flatMap(blockViews)];
  return [block.kind === "blanks" ? ruledTable(block) : block];
}

/** Blanks as a table whose empty cells are ruled with underscores. */
export function ruledTable({ columns, rows, blanks }: BlanksBlock): TableView {
  return {
    kind: "table",
    columns: [...columns, ...blanks.map((name) => ({ heading: name, align: "left" as const }))],
    rows: rows.map((row) => [...row, ...blanks.map(() => "________")]),
  };
}
