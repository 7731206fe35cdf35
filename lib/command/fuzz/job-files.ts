/** A job's files with mistakes in them: they are read with problems told, or reviewed without a fault. */
import { designReader, type Problem } from "../../index.js";
import { textsOf } from "../reference/cases/case-content.js";
import { designFaults } from "../reference/cases/case-faults.js";
import { type Draws, drawsOf } from "../reference/cases/draws.js";
import { randomCase } from "../reference/cases/random-case.js";
import { errorWords, type Fuzzer, shortened } from "./fuzzer.js";
import { oddNumber, oddTexts } from "./odd-values.js";

type Texts = Readonly<Record<string, string>>;

/** One mistake: a line of a file as it was, and what stands there instead; undefined takes it away. */
export interface Mistake {
  /** The file. */
  readonly file: string;
  /** The line, from 0. */
  readonly line: number;
  /** What stands there now. */
  readonly now: string | undefined;
}

/** The files of random cases, with one to four mistakes. */
export const jobFiles: Fuzzer = {
  attack: (seed) => {
    const draws = drawsOf(seed, "mm");
    const texts = textsOf(randomCase(seed, { sections: 2 }));
    const mistakes = Array.from({ length: draws.whole(1, 4) }, () => mistakeIn(texts, draws));
    const first = faultOfTexts(mistaken(texts, mistakes));
    if (first === undefined) return undefined;
    const few = shortened(mistakes, (fewer) => faultOfTexts(mistaken(texts, fewer)) !== undefined);
    const words = faultOfTexts(mistaken(texts, few)) ?? first;
    return { words, input: few.map((one) => mistakeWords(texts, one)).join("\n") };
  },
};

function mistakeIn(texts: Texts, draws: Draws): Mistake {
  const file = draws.often(6) ? "case.yaml" : draws.pick(Object.keys(texts));
  const lines = linesOf(texts, file);
  const line = draws.whole(0, lines.length - 1);
  const text = lines[line] ?? "";
  return { file, line, now: otherLine(text, lines, draws) };
}

function otherLine(text: string, lines: readonly string[], draws: Draws): string | undefined {
  const odd = draws.pick(oddTexts);
  switch (draws.whole(0, 9)) {
    case 0:
      return undefined;
    case 1:
      return `${text}\n${text}`;
    case 2:
      return draws.pick(lines);
    case 3:
      return text.slice(0, draws.whole(0, text.length));
    case 4:
      return `${draws.pick(["  ", "\t", " "])}${text}`;
    case 5:
    case 6:
      return oddNumber(text, draws);
    case 7:
      return text.replace(/:.*$/, `: ${odd}`);
    default:
      return cellReplaced(text, odd, draws);
  }
}

/** One comma-separated piece of a line replaced. */
function cellReplaced(text: string, odd: string, draws: Draws): string {
  const cells = text.split(",");
  const at = draws.whole(0, cells.length - 1);
  return cells.map((cell, i) => (i === at ? odd : cell)).join(",");
}

function linesOf(texts: Texts, file: string): readonly string[] {
  return (texts[file] ?? "").split("\n");
}

function mistaken(texts: Texts, mistakes: readonly Mistake[]): Texts {
  return Object.fromEntries(
    Object.entries(texts).map(([file, text]) => {
      const here = new Map(mistakes.filter((one) => one.file === file).map(({ line, now }) => [line, now]));
      const lines = text.split("\n").flatMap((line, i) => (here.has(i) ? (here.get(i) ?? []) : line));
      return [file, lines.join("\n")];
    }),
  );
}

function mistakeWords(texts: Texts, { file, line, now }: Mistake): string {
  return `${file}, row ${line + 1}: ${JSON.stringify(linesOf(texts, file)[line])} becomes ${JSON.stringify(now)}`;
}

/** Read again and again, so that what is kept between readings is tried too. */
const readAgain = designReader();

/** What is wrong with how files are taken; undefined where they are refused in words, or reviewed without a fault. */
export function faultOfTexts(texts: Texts): string | undefined {
  try {
    const read = readAgain(texts);
    if ("problems" in read) return problemFault(read.problems);
    const written = Object.values(texts).join("\n");
    // A word that the builder wrote may stand on a page.
    const [fault] = designFaults(read.design, false).filter(
      ({ word }) => word === undefined || !written.includes(word),
    );
    return fault?.words;
  } catch (error) {
    return errorWords(error);
  }
}

/** A parser's own words, which a builder cannot read, or a problem without a place. */
const notForBuilders =
  /\bat Object\.|\bundefined\b|\[object |Maximum call stack|Cannot read propert|is not a function/;

function problemFault(problems: readonly Problem[]): string | undefined {
  const bad = problems.find((one) => one.file === "" || notForBuilders.test(one.expected));
  return bad && `a problem in no words of a builder: ${JSON.stringify(bad)}`;
}
