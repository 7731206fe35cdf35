import type { Problem } from "../../problem.js";
import type { Case } from "../case.js";
import { checkCase } from "../check/check-case.js";
import { checkStockSizes } from "../check/check-stock-sizes.js";
import { checkTables } from "../check/check-tables.js";
import type { Fault } from "../check/fault.js";
import { deriveParts } from "../derive/derive-parts.js";
import type { Parts } from "../parts.js";
import type { Measurements, Offers, Stock } from "../stock.js";
import { tableFiles } from "../table-files.js";
import type { CaseText } from "./case-text.js";
import { readCase } from "./read-case.js";
import { type ReadTables, readTables, type TableTexts } from "./read-tables.js";

/** A case with everything that belongs to it, read and checked. */
export interface Design {
  readonly case: Case;
  readonly stock: Stock;
  readonly offers: Offers;
  readonly measurements: Measurements;
  readonly parts: Parts;
}

/** Name of the case file. */
export const caseFile = "case.yaml";

/**
 * Reads and checks a job from its texts: the design, or every problem. What a problem hides is reported once
 * that is mended: names are looked up in tables that could be read, and sizes are checked once all names lead
 * somewhere; whether pieces come from their stock is asked last.
 *
 * @param texts by file name: case.yaml and the tables
 */
export function readDesign(
  texts: TableTexts,
): { readonly design: Design } | { readonly problems: readonly Problem[] } {
  const read = readCase(texts[caseFile] ?? "", caseFile);
  const tables = readTables(texts);
  const { stock, offers, measurements } = tables;
  const faults = read.case && isSound(tables) ? checkCase(read.case, stock) : [];
  const problems = [
    ...(texts[caseFile] === undefined ? [{ file: caseFile, expected: "this file" }] : read.problems),
    ...distinct(faults.map((fault) => atItsRow(fault, read.written))),
    ...tables.problems,
    ...checkTables(tables, read.case?.currency),
  ];
  if (problems.length > 0 || !read.case) return { problems };
  const parts = deriveParts(read.case, stock);
  const tooShort = checkStockSizes(parts, stock);
  if (tooShort.length > 0) return { problems: tooShort };
  return { design: { case: read.case, stock, offers, measurements, parts } };
}

/** Was every table of the stock read whole? Measurements have no say in whether a case fits together. */
function isSound({ problems, stock }: ReadTables): boolean {
  const files = (Object.keys(stock) as (keyof Stock)[]).map((table) => tableFiles[table]);
  return !problems.some(({ file }) => files.includes(file));
}

function atItsRow({ path, inheritedFrom = [], expected, value }: Fault, written: CaseText): Problem {
  const standing = [path, ...inheritedFrom].find((one) => written.has(one)) ?? path;
  return written.problemAt(standing, expected, value);
}

/** One wrong value in a build is wrong for every panel that inherits it, and is reported once. */
function distinct(problems: readonly Problem[]): Problem[] {
  return [...new Map(problems.map((problem) => [JSON.stringify(problem), problem])).values()];
}
