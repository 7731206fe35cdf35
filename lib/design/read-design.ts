import { keptLast, share } from "../kept/index.js";
import { type ReadTable, readTable, type TableRow, type TableSchema } from "../measure/index.js";
import { grouped, type Problem, type RawProblem } from "../problem.js";
import { asBuiltProblems, measurementsAsBuilt, stockAsBuilt } from "./as-built.js";
import type { Case, CaseBody, CaseBuild } from "./case.js";
import { placesOf } from "./change-case.js";
import { checkCase } from "./check/check-case.js";
import type { Unsure } from "./check/check-names.js";
import { checkStockSizes } from "./check/check-stock-sizes.js";
import { checkUnread } from "./check/check-unread.js";
import type { Fault } from "./check/fault.js";
import { deriveParts } from "./derive/derive-parts.js";
import type { Measurements } from "./measured.js";
import type { Offers } from "./offers.js";
import type { Parts } from "./parts.js";
import type { CaseText } from "./read/case-text.js";
import { type ReadCase, readCase } from "./read/read-case.js";
import { rulerOf } from "./ruler.js";
import type { Stock, StockRows } from "./stock.js";
import {
  checkTables,
  type ReadOne,
  type ReadTables,
  readTables,
  type SoundStock,
  soundStock,
  type TableTexts,
} from "./tables.js";
import { mentionedTables, usedTables } from "./used-tables.js";

/** A case with everything that belongs to it, read and checked. */
export interface Design {
  /** The case, as its file says it. */
  readonly case: Case;
  /** What can be bought. */
  readonly stock: Stock;
  /** How it is sold, and what lies on the rack. */
  readonly offers: Offers;
  /** What the builder measured. */
  readonly measurements: Measurements;
  /** The case taken apart. */
  readonly parts: Parts;
}

/** Name of the case file. */
export const caseFile = "case.yaml";

/** A design, or everything that is wrong with its texts. */
export type ReadDesign = { readonly design: Design } | { readonly problems: readonly Problem[] };

/**
 * Reads and checks a job from its texts: the design, or every problem. What a problem hides is reported once that is
 * mended: names are not looked up in tables that do not say theirs, and only what has no problem is laid out.
 *
 * @param texts by file name: case.yaml and the tables
 */
export function readDesign(texts: TableTexts): ReadDesign {
  return designReader()(texts);
}

/**
 * A way to read one job again and again. What its texts still say is the same object as when it was last read, so
 * that what was worked out from it stands.
 */
export function designReader(): (texts: TableTexts) => ReadDesign {
  const caseOf = keptLast((text: string) => readCase(text, caseFile));
  const readOne = keptTables();
  const checkedOf = keptLast(checkCase);
  const partsOf = keptLast(deriveParts);
  const thickOf = keptLast((rows: StockRows, asBuilt: Measurements["asBuilt"]) =>
    stockAsBuilt(rows, asBuilt),
  );
  const realOf = keptLast(realTables);
  let tables: ReadTables | undefined;
  let build: CaseBuild | undefined;
  let before: Design | undefined;
  return (texts) => {
    const read = caseOf(texts[caseFile] ?? "");
    tables = share(tables, readTables(texts, readOne, tablesNeeded(read)));
    const { offers } = tables;
    const description = read.case && share(before?.case, read.case);
    build = description && share(build, buildOf(description));
    const ofTables = [...tables.problems, ...checkTables(tables, read.currency)];
    const planned = soundStock(tables, ofTables);
    const sound = { ...planned, stock: thickOf(planned.stock, tables.measurements.asBuilt) };
    const body = build ?? read.body;
    const checked = body && checkedOf(body, sound.stock, unsureOf(read, sound));
    const faults = checked?.faults ?? [];
    const aside = checkUnread(read.written.content, read.unread, sound.stock, unsureOf(read, sound));
    const parts =
      checked && faults.length === 0
        ? partsOf(checked.sound, checked.stock, tables.measurements.tools)
        : undefined;
    const ofCase = [
      ...(texts[caseFile] === undefined ? [{ file: caseFile, expected: "this file" }] : read.problems),
      ...distinct([...faults, ...aside].map((fault) => atItsRow(fault, read.written))),
      ...strangeKeeps(read, texts),
    ];
    const { stock, measurements, problems: ofAsBuilt } = realOf(tables, parts, description);
    const problems = grouped([
      ...ofAsBuilt,
      ...(unitSlip(texts[caseFile] ?? "", read, grouped(ofCase).length, sound) ?? ofCase),
      ...ofTables,
      ...(parts ? checkStockSizes(parts, sound.stock, rulerOf(body ?? { units: "metric" })) : []),
    ]);
    if (problems.length > 0 || !description || !parts) return { problems };
    before = { case: description, stock, offers, measurements, parts: share(before?.parts, parts) };
    return { design: before };
  };
}

/** Stock and measurements as the case was built, and lines about what it does not have. */
function realTables(
  { stock: planned, measurements }: ReadTables,
  parts: Parts | undefined,
  described: Case | undefined,
) {
  const stock = stockAsBuilt(planned, measurements.asBuilt);
  if (!parts || !described) return { stock, measurements, problems: [] };
  const { asBuilt, timings } = measurements;
  const problems = asBuiltProblems(asBuilt, described, parts, planned, timings);
  return { stock, measurements: measurementsAsBuilt(measurements, parts, planned), problems };
}

/** The tables that must be there. */
function tablesNeeded({ case: whole, written }: ReadCase): ReadonlySet<keyof Stock> {
  return whole ? usedTables(whole) : mentionedTables(written.content);
}

/** What there is to build, whatever it earns. */
function buildOf({ business: _, keep: _keep, ...build }: Case): CaseBuild {
  return build;
}

/** Places that are to be kept and that the job does not have. */
function strangeKeeps({ case: whole, written }: ReadCase, texts: TableTexts): RawProblem[] {
  const keep = whole?.keep ?? [];
  return keep.flatMap((place, i): RawProblem[] => {
    const isThere = place in texts || placesOf(texts[caseFile] ?? "", place).length > 0;
    return isThere ? [] : [written.problemAt(["keep", i], keepExpected, place)];
  });
}

const keepExpected = 'a place that this file has, such as "sections" or "hardware", or a table of the job';

/** One and the same while nothing is unsure, so that what was worked out stands. */
const sure: Unsure = { tables: new Map(), sections: new Set(), shelves: new Set() };

function unsureOf({ hidden }: ReadCase, { unsure }: SoundStock): Unsure {
  const { sections, shelves } = hidden;
  return unsure.size + sections.size + shelves.size === 0 ? sure : { tables: unsure, sections, shelves };
}

/** So many mistakes at once have a common cause more likely than not. */
const many = 6;

/** The longest side of a section that is built as a case lies between these, in metres. */
const believable = { least: 0.1, most: 3 };

function isBelievable({ sections }: CaseBody): boolean {
  const longest = Math.max(...sections.flatMap(({ inside }) => Object.values(inside)));
  return longest >= believable.least && longest <= believable.most;
}

/** One problem in place of many: that bare lengths are in the other unit, where nearly all fits together in it. */
function unitSlip(
  text: string,
  { length, written }: ReadCase,
  mistakes: number,
  sound: SoundStock,
): Problem[] | undefined {
  if (length === undefined || mistakes < many) return undefined;
  const other = length === "in" ? "mm" : "in";
  const read = readCase(text, caseFile, other);
  const body = read.case ?? read.body;
  if (!body || !isBelievable(body)) return undefined;
  const { faults } = checkCase(body, sound.stock, unsureOf(read, sound));
  const left = grouped([...read.problems, ...faults.map((fault) => atItsRow(fault, read.written))]).length;
  if (4 * left > mistakes) return undefined;
  const expected = `${other}, if sizes are written in it: ${left === 0 ? "all" : `all but ${left}`} of ${mistakes} mistakes with ${length} go away`;
  return [written.problemAt(["lengths"], expected)];
}

/** Reads tables, each again only when its text is another one. */
function keptTables(): ReadOne {
  const last = new Map<
    string,
    { readonly text: string; readonly mayBeEmpty: boolean; readonly read: ReadTable<TableRow> }
  >();
  return <Row extends TableRow>(text: string, file: string, schema: TableSchema<Row>): ReadTable<Row> => {
    const known = last.get(file);
    if (known?.text === text && known.mayBeEmpty === schema.mayBeEmpty) return known.read as ReadTable<Row>;
    const read = readTable(text, file, schema);
    last.set(file, { text, mayBeEmpty: schema.mayBeEmpty, read });
    return read;
  };
}

function atItsRow(
  { path, inheritedFrom = [], expected, value, cause }: Fault,
  written: CaseText,
): RawProblem {
  const standing = [path, ...inheritedFrom].find((one) => written.has(one)) ?? path;
  return { ...written.problemAt(standing, expected, value), ...(cause === undefined ? {} : { cause }) };
}

/** One wrong value in a build is wrong for every panel that inherits it, and is reported once. */
function distinct(problems: readonly RawProblem[]): RawProblem[] {
  return [...new Map(problems.map((problem) => [JSON.stringify(problem), problem])).values()];
}
