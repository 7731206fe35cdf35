import { parse } from "csv-parse/browser/esm/sync";
import type { Problem } from "../problem.js";

/** One line of a CSV that holds data. */
export interface CsvLine {
  /** Counted from 1, comments and blank lines too. */
  readonly line: number;
  /** Trimmed. */
  readonly cells: readonly string[];
}

/** The lines that could be read, and those that could not. */
export interface CsvLines {
  readonly lines: readonly CsvLine[];
  readonly problems: readonly Problem[];
}

/**
 * Splits CSV text into cells. One row stands on one line, so each line is parsed by itself: a quote left
 * open spoils its own row only. Lines that start with # and blank lines are skipped; a byte-order mark,
 * CRLF and quoted cells are read as spreadsheets write them.
 */
export function readCsv(text: string, file: string): CsvLines {
  const read = text
    .replace(/^\ufeff/, "")
    .split(/\r\n|\n|\r/)
    .map((content, i) => ({ content, line: i + 1 }))
    .filter(
      ({ content }) => content.replaceAll(",", "").trim() !== "" && !content.trimStart().startsWith("#"),
    )
    .map(({ content, line }) => readLine(content, line, file));
  return {
    lines: read.flatMap((one) => ("cells" in one ? [one] : [])),
    problems: read.flatMap((one) => ("expected" in one ? [one] : [])),
  };
}

function readLine(content: string, line: number, file: string): CsvLine | Problem {
  try {
    const [cells = []] = parse(content, { trim: true, relax_quotes: true });
    return { line, cells };
  } catch {
    return {
      file,
      row: line,
      value: content,
      expected: "cells between commas, each opening quote closed on the same line",
    };
  }
}
