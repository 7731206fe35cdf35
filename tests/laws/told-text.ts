/** All that a builder reads of a job outside a notebook's kernel, text by text, with the place where it stands. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { chapterAnswers } from "../../lib/command/reference/cases/chapter-answers.js";
import { type Finding, styleOf } from "../../lib/findings/index.js";
import type { Job } from "../../lib/job/index.js";
import { recipeOf } from "../../lib/job/recipe-of.js";
import { firstPageOf } from "../../lib/page/first-page/index.js";
import { findingView } from "../../lib/page/index.js";
import type { Problem } from "../../lib/problem.js";
import type { Recipe, RecipeBlock } from "../../lib/recipe/index.js";

/** A text, and where a builder reads it. */
export interface Told {
  /** The finding or page, and the part of it. */
  readonly where: string;
  /** What stands there. */
  readonly text: string;
  /** Whether it is made of whole sentences, or of words in a table, a list or a heading. */
  readonly as: "sentences" | "words";
}

const sentences = (where: string, ...texts: readonly string[]): readonly Told[] =>
  texts.filter((text) => text !== "").map((text) => ({ where, text, as: "sentences" }));

const words = (where: string, ...texts: readonly string[]): readonly Told[] =>
  texts.filter((text) => text !== "").map((text) => ({ where, text, as: "words" }));

/** All that the findings, the first page, the answers of the chapters and the recipe of a job say. */
export function toldOf(job: Job): readonly Told[] {
  return [
    ...job.review.findings.flatMap((finding) => toldByFinding(finding, job)),
    ...toldByFirstPage(job),
    ...chapterAnswers(job).flatMap(([name, answer]) => sentences(`answer of ${name}`, answer())),
    // What the case is for stands as its builder wrote it.
    ...toldByRecipe(recipeOf(job)).filter(({ text }) => text !== job.case.purpose),
  ];
}

/** All that a finding says. */
function toldByFinding(finding: Finding, { case: build }: Pick<Job, "case">): readonly Told[] {
  const { id, question, answer, cautions, assumes, remedies, missing, demand, capacity } = finding;
  const style = styleOf(build);
  const amounts = [demand, capacity, ...remedies.flatMap(({ gives = [] }) => gives)];
  return [
    ...sentences(`${id} question`, question),
    ...sentences(`${id} answer`, answer),
    ...sentences(`${id} caution`, ...cautions),
    ...sentences(`${id} assumes`, ...assumes),
    ...sentences(`${id} remedy`, ...remedies.map((remedy) => remedy.words)),
    ...words(`${id} to measure`, missing?.measure ?? "", missing?.how ?? ""),
    ...words(`${id} amount`, ...amounts.map((one) => (one ? `${one.meaning}: ${one.show(style)}` : ""))),
  ];
}

function toldByFirstPage(job: Job): readonly Told[] {
  const style = styleOf(job.case);
  const page = firstPageOf(
    job,
    job.review.findings.map((finding) => findingView(finding, style)),
  );
  const { release, facts, settle, measure } = page;
  return [
    ...sentences("first page, release", release),
    ...words("first page, facts", ...facts.map(({ name, value }) => `${name}: ${value}`)),
    ...sentences("first page, to settle", ...settle.flatMap(({ sentence, remedy }) => [sentence, remedy])),
    ...sentences("first page, to measure", ...measure.flatMap(({ sentence, how }) => [sentence, how])),
  ];
}

/** All that a recipe says, as it stands on paper. */
function toldByRecipe({ title, stamp, sections, labels }: Recipe): readonly Told[] {
  return [
    ...words("recipe, head", title, stamp),
    ...sections.flatMap((section) => [
      ...words("recipe, heading", section.title),
      ...section.blocks.flatMap((block) => toldByBlock(`recipe, ${section.title}`, block)),
    ]),
    ...words(
      "labels",
      ...labels.flatMap((label) => Object.values(label).filter((one) => typeof one === "string")),
    ),
  ];
}

function toldByBlock(where: string, block: RecipeBlock): readonly Told[] {
  switch (block.kind) {
    case "group":
      return [...words(where, block.title), ...block.blocks.flatMap((inner) => toldByBlock(where, inner))];
    case "checklist":
      return words(where, block.title, ...block.items);
    case "blanks":
      return words(
        where,
        ...block.columns.map(({ heading }) => heading),
        ...block.blanks,
        ...block.rows.flat(),
      );
    case "table":
      return words(
        where,
        block.caption ?? "",
        ...block.columns.map(({ heading }) => heading),
        ...block.rows.flat(),
      );
    case "list":
      return [...words(where, block.title ?? ""), ...block.items.flatMap((item) => toldByItem(where, item))];
    case "cautions":
      return sentences(where, ...block.items);
    case "sentence":
    case "answer":
      return sentences(where, block.text);
    case "drawing":
    case "picture":
    case "chart":
      return words(where, block.title);
    case "finding":
      return sentences(where, block.question, block.answer, ...block.cautions);
    case "worked":
      return words(where, block.title);
  }
}

/** An item of a list is a name, or else sentences with a mark at their end. */
function toldByItem(where: string, item: string): readonly Told[] {
  return /[.?!:]$/.test(item) ? sentences(where, item) : words(where, item);
}

/** What check says of a spoilt job. */
export function toldByProblems(where: string, problems: readonly Problem[]): readonly Told[] {
  return problems.flatMap(({ file, column = "", expected }) =>
    words(`${where}: ${file} ${column}`, expected),
  );
}

const notebooks = join(import.meta.dirname, "../../notebooks");

/** The prose of every notebook. */
export function toldByNotebooks(): readonly Told[] {
  return readdirSync(notebooks)
    .filter((file) => file.endsWith(".ipynb"))
    .flatMap((file) => {
      const { cells } = JSON.parse(readFileSync(join(notebooks, file), "utf8")) as {
        readonly cells: readonly {
          readonly cell_type: string;
          readonly source: string | readonly string[];
        }[];
      };
      return cells
        .filter(({ cell_type }) => cell_type === "markdown")
        .flatMap(({ source }) => toldByMarkdown(file, typeof source === "string" ? source : source.join("")));
    });
}

/** Headings are words, paragraphs and points are sentences; what stands in a fence is code. */
function toldByMarkdown(where: string, text: string): readonly Told[] {
  return text
    .replace(/^```[\s\S]*?^```/gm, "")
    .split("\n")
    .map((line) =>
      line
        .replace(/\[([^\]]*)\]\([^)]*\)/g, "$1")
        .replace(/\*\*|`|^\*|\*$/g, "")
        .trim(),
    )
    .flatMap((line) =>
      /^#/.test(line)
        ? words(where, line.replace(/^#+\s*/, ""))
        : /^\|/.test(line)
          ? words(where, ...line.split("|").map((cell) => cell.trim()))
          : sentences(where, line.replace(/^(-|\d+\.)\s+/, "")),
    );
}
