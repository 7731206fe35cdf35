/** The recipe as Markdown text, and as views for a notebook. */
import {
  type FindingView,
  type ListView,
  list,
  type PlainView,
  plainText,
  type TableColumn,
  type TableView,
  type View,
  verdictWords,
} from "../page/index.js";
import type { BlanksBlock, ChecklistBlock, Recipe, RecipeBlock } from "./recipe.js";
import { unbreakableHyphen } from "./rule.js";

/** The recipe as Markdown; drawings are on the page, here only their captions. */
export function recipeMarkdown({ title, sections }: Recipe): string {
  const head = [`# ${markdownText(title)}: recipe`];
  const body = sections.flatMap(({ title: name, blocks }, i) => [
    `## ${i + 1}. ${markdownText(name)}`,
    ...blocks.flatMap((block) => blockText(block, 3)),
  ]);
  return `${[...head, ...body].join("\n\n")}\n`;
}

function blockText(block: RecipeBlock, level: number): string[] {
  switch (block.kind) {
    case "group":
      return [
        `${"#".repeat(level)} ${markdownText(block.title)}`,
        ...block.blocks.flatMap((inner) => blockText(inner, level + 1)),
      ];
    case "checklist":
      return viewText(tickedList(block));
    case "blanks":
      return tableText(ruledTable(block), (cell) => (/^_+$/.test(cell) ? cell : markdownText(cell)));
    default:
      return viewText(block);
  }
}

function viewText(view: PlainView): string[] {
  switch (view.kind) {
    case "table":
      return tableText(view, markdownText);
    case "list":
      return [
        ...(view.title === undefined ? [] : [`**${markdownText(view.title)}**`]),
        view.items.map((item, i) => `${view.ordered ? `${i + 1}.` : "-"} ${markdownText(item)}`).join("\n"),
      ];
    case "cautions":
      return [quoted(view.items.map(cautionLine))];
    case "finding":
      return [quoted(findingLines(view))];
    case "drawing":
      return [`*Drawing: ${markdownText(`${view.title}. ${view.description}`)}*`];
    case "picture":
      return [`*Picture: ${markdownText(view.description)}*`];
    default:
      return [markdownText(plainText(view))];
  }
}

function findingLines({ verdict, question, answer, cautions, missing }: FindingView): string[] {
  return [
    `**${verdictWords[verdict]}:** ${markdownText(question)} ${markdownText(answer)}`,
    ...(missing ? [`**How:** ${markdownText(missing.how)}`] : []),
    ...cautions.map(cautionLine),
  ];
}

function cautionLine(caution: string): string {
  return `**Mind this:** ${markdownText(caution)}`;
}

function quoted(lines: readonly string[]): string {
  return lines.map((line) => `> ${line}`).join("\n>\n");
}

function tableText({ caption, columns, rows }: TableView, cellText: (cell: string) => string): string[] {
  const line = (cells: readonly string[]): string => `| ${cells.join(" | ")} |`;
  return [
    ...(caption === undefined ? [] : [`**${markdownText(caption)}**`]),
    [
      line(columns.map(({ heading }) => cellText(heading))),
      line(columns.map(rulerOf)),
      ...rows.map((row) => line(columns.map((_, i) => cellText(row[i] ?? "")))),
    ].join("\n"),
  ];
}

function rulerOf({ align }: TableColumn): string {
  return { left: "---", right: "---:", center: ":---:" }[align];
}

/** The recipe as views, for a notebook: headings as Markdown, blanks as lines to write on. */
export function recipeViews({ title, sections }: Recipe): View[] {
  return [
    heading(1, `${title}: recipe`),
    ...sections.flatMap(({ title: name, blocks }, i) => [
      heading(2, `${i + 1}. ${name}`),
      ...blocks.flatMap(blockViews),
    ]),
  ];
}

function heading(level: number, text: string): View {
  return { kind: "markdown", text: `${"#".repeat(level)} ${markdownText(text)}` };
}

function blockViews(block: RecipeBlock): View[] {
  if (block.kind === "group") return [heading(3, block.title), ...block.blocks.flatMap(blockViews)];
  if (block.kind === "checklist") return [tickedList(block)];
  return [block.kind === "blanks" ? ruledTable(block) : block];
}

function tickedList({ title, items }: ChecklistBlock): ListView {
  return list(
    items.map((item) => `☐ ${item}`),
    title,
  );
}

/** Blanks as a table whose empty cells are ruled with underscores. */
function ruledTable({ columns, rows, blanks }: BlanksBlock): TableView {
  return {
    kind: "table",
    columns: [...columns, ...blanks.map((name) => ({ heading: name, align: "left" as const }))],
    rows: rows.map((row) => [...row, ...blanks.map(() => "________")]),
  };
}

/** Text so that Markdown shows it as it stands, on one line. */
export function markdownText(text: string): string {
  return text
    .replaceAll(unbreakableHyphen, "-")
    .replace(/\s+/g, " ")
    .trim()
    .replace(/[\\`*_{}[\]<>#|~&]/g, "\\$&")
    .replace(/^[-+=](?=\s|$)/, "\\$&")
    .replace(/^(\d+)([.)])(?=\s|$)/, "$1\\$2");
}
