/** What is wrong with what the library makes of a case: its reading, its review, its recipe and its first page. */
import { contentsPage } from "../../../book/index.js";
import {
  type Design,
  designReader,
  type Finding,
  type FindingView,
  type Job,
  type Review,
  recipeMarkdown,
  recipeOf,
  recipePage,
  reviewCase,
  type Showable,
  showProblem,
  styleOf,
  toViews,
} from "../../../index.js";
import { type CaseContent, textsOf } from "./case-content.js";
import { chapterAnswers } from "./chapter-answers.js";
import { mirroredCase, otherSide } from "./mirrored-case.js";

/** One thing that is wrong: of which kind, so that a smaller case can be known to have the same, and in full. */
export interface CaseFault {
  /** The kind: where it arose and what it is, without the numbers of the case. */
  readonly kind: string;
  /** All of it. */
  readonly words: string;
  /** The word that no page may have, of a fault that is one. */
  readonly word?: string;
}

/** How a case is tried. */
export interface CaseTrial {
  /** Whether its mirror image is reviewed too, and must answer the same. */
  readonly mirrored: boolean;
  /** Whether panels and boxes are bent by finite elements, which takes a hundred times longer than all the rest. */
  readonly bent: boolean;
}

/** Tables that cases share are read once. */
const readTexts = designReader();

/** Everything that is wrong with a case. */
export function faultsOf(given: CaseContent, { mirrored, bent }: CaseTrial): readonly CaseFault[] {
  const read = readTexts(textsOf(given));
  if ("problems" in read)
    return read.problems.map((problem) => fault("problem", problem.expected, showProblem(problem)));
  const [findings, faults] = reviewed(read.design, bent);
  return [...faults, ...(mirrored ? mirrorFaults(given, findings, bent) : [])];
}

function fault(where: string, what: string, words = what): CaseFault {
  return {
    kind: `${where}: ${what.replace(/"[^"]*"|[\d.,]+/g, "#").slice(0, 160)}`,
    words: `${where}: ${words}`,
  };
}

/** The review of a design, without what takes finite elements unless it is wanted. */
export function reviewOf(design: Design, bent: boolean): Review {
  const review = reviewCase(design);
  if (bent) return review;
  return {
    findings: [...review.travel, ...review.fitOut, ...review.assembly, ...review.money],
    stiffness: [],
    strength: [],
    joints: [],
    travel: review.travel,
    fitOut: review.fitOut,
    assembly: review.assembly,
    money: review.money,
    steps: review.steps.filter(({ id }) => /^(travel|fit-out|assembly|money)\b/.test(id)),
    get box() {
      return review.box;
    },
    get purchases() {
      return review.purchases;
    },
    get bill() {
      return review.bill;
    },
    get masses() {
      return review.masses;
    },
    get solids() {
      return review.solids;
    },
    get business() {
      return review.business;
    },
  };
}

/** What is wrong with all that is made of a design. */
export function designFaults(design: Design, bent: boolean): readonly CaseFault[] {
  return reviewed(design, bent)[1];
}

/** The findings of a design, and what is wrong with all that is made of it. */
function reviewed(design: Design, bent: boolean): readonly [readonly Finding[], readonly CaseFault[]] {
  const review = reviewOf(design, bent);
  const tried = <Made>(
    where: string,
    make: () => Made,
  ): { readonly made?: Made; readonly faults: readonly CaseFault[] } => {
    try {
      return { made: make(), faults: [] };
    } catch (error) {
      const { message, stack = "" } = error as Error;
      return { faults: [fault(where, message, `${message}\n${stack.split("\n").slice(1, 6).join("\n")}`)] };
    }
  };
  const style = styleOf(design.case);
  const findings = tried("review", () => review.findings);
  const views = tried("findings", () => toViews((findings.made ?? []) as Showable, style));
  const job: Job = { ...design, name: "random", folder: "random", texts: {}, review, with: () => job };
  const answers = chapterAnswers(job).map(([title, answer]) => ({ title, ...tried(title, answer) }));
  const recipe = tried("recipe", () => {
    const written = recipeOf(job);
    return `${recipeMarkdown(written)}\n${recipePage(written)}`;
  });
  const page = tried("first page", () =>
    firstPage(
      design.case.name,
      answers.map(({ title, made = "" }) => [title, made]),
      (views.made ?? []).filter((view) => view.kind === "finding"),
    ),
  );
  const texts = [
    ...(views.made ?? []).map((view) => [`finding ${"id" in view ? view.id : ""}`, wordsIn(view)] as const),
    ["recipe", recipe.made ?? ""] as const,
    ["first page", page.made ?? ""] as const,
  ];
  return [
    findings.made ?? [],
    [
      ...[findings, views, ...answers, recipe, page].flatMap(({ faults }) => faults),
      ...(findings.made ?? []).flatMap(brokenFault),
      ...texts.flatMap(([where, text]) => wordFaults(where, text)),
    ],
  ];
}

function brokenFault(finding: Finding): readonly CaseFault[] {
  if (finding.verdict !== "broken") return [];
  return [fault(`broken ${topicOf(finding.id)}`, finding.answer, JSON.stringify(finding))];
}

function topicOf(id: string): string {
  return id.split(".").slice(0, 2).join(".");
}

/** All strings in a view, one a line; a number that is none is told as such. */
function wordsIn(value: unknown): string {
  if (typeof value === "string") return value;
  if (typeof value === "number") return Number.isFinite(value) ? "" : String(value);
  if (typeof value !== "object" || value === null) return "";
  return Object.values(value).map(wordsIn).join("\n");
}

/** Words that no page of anybody's case may have: what is no number or no text, and what only the demo has. */
const wrongWords =
  /\bNaN\b|\bInfinity\b|\bundefined\b|\[object |please report|\bsoil\b|\b(?:a|the|county) fairs?\b|spectrometer|reagent|microscope|exhibit/i;

function wordFaults(where: string, text: string): readonly CaseFault[] {
  const lines = text.split("\n").filter((line) => wrongWords.test(line));
  return lines.slice(0, 1).map((line) => {
    const [word = ""] = wrongWords.exec(line) ?? [];
    const start = Math.max(0, line.search(wrongWords) - 120);
    return { ...fault(topicOf(where), word, line.slice(start, start + 300)), word };
  });
}

/** The first page of a book about the case, with an answer a chapter. */
function firstPage(
  title: string,
  answers: readonly (readonly [string, string])[],
  findings: readonly FindingView[],
): string {
  const chapters = answers.map(([name, text], i) => ({
    name,
    title: name,
    question: undefined,
    answer: { kind: "answer" as const, text },
    findings: i === 0 ? findings : [],
    faults: [],
  }));
  const frame = { title, job: "random", chapters: [], others: [] };
  return String(contentsPage(frame, chapters, {}));
}

/**
 * How far the mirror image of a case may answer from the case itself: by rounding, and where a mesh tells by part of the
 * mesh's own error. A panel and its image are meshed as images of each other, and answer alike but for rounding; one that
 * is its own image has one mesh, which need not be, under whatever bears on its left or its right.
 */
const alikeTo = { rounding: 1e-6, mesh: 0.1 };

function mirrorFaults(given: CaseContent, findings: readonly Finding[], bent: boolean): readonly CaseFault[] {
  const read = readTexts(textsOf(mirroredCase(given)));
  if ("problems" in read)
    return read.problems.map((problem) => fault("mirrored", problem.expected, showProblem(problem)));
  const others = new Map(reviewOf(read.design, bent).findings.map((finding) => [finding.id, finding]));
  return findings.flatMap((finding) => {
    const other = others.get(mirroredId(finding.id));
    const where = `mirrored ${topicOf(finding.id)}`;
    if (!other) return [fault(where, "no such finding", `${finding.id} has no ${mirroredId(finding.id)}`)];
    return alike(finding, other)
      ? []
      : [fault(where, "answers otherwise", `${told(finding)}\n  mirrored: ${told(other)}`)];
  });
}

function mirroredId(id: string): string {
  return id.split(".").map(otherSide).join(".");
}

function alike(one: Finding, other: Finding): boolean {
  if (one.ratio === undefined || other.ratio === undefined) return one.verdict === other.verdict;
  const apart = Math.abs(one.ratio - other.ratio) / Math.max(one.ratio, other.ratio, 1e-3);
  if (apart <= alikeTo.rounding) return one.verdict === other.verdict;
  const isMeshed = /\bmesh\b|joined boxes|The boxes:/.test([one.answer, ...one.assumes].join(" "));
  return isMeshed && apart <= alikeTo.mesh;
}

function told({ id, verdict, ratio, answer }: Finding): string {
  return `${id} ${verdict} ${ratio ?? ""} ${answer}`;
}
