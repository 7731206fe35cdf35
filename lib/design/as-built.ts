/** What as-built.csv says of a case, put where plans stood before: real thickness, kerf, times and glue. */
import { didYouMean, type Problem } from "../problem.js";
import { Area, Length, Mass, Time } from "../quantity/index.js";
import type { Case } from "./case.js";
import { type AsBuiltMeasure, type AsBuiltRow, isFilledIn, type Measurements } from "./measured.js";
import { type Parts, sheetPieces } from "./parts.js";
import type { Stock } from "./stock.js";

/** Mean of the lengths measured of one thing; undefined where none was. */
export function lengthAsBuilt(
  rows: readonly AsBuiltRow[],
  what: AsBuiltMeasure,
  of: string,
): Length | undefined {
  const read = rows.flatMap((row) => (row.what === what && row.of === of ? (row.length ?? []) : []));
  return read.length === 0
    ? undefined
    : Length.si(read.reduce((sum: number, one) => sum + one, 0) / read.length);
}

/** Stock whose sheets and laminates are as thick as they were measured; the same stock where nobody measured. */
export function stockAsBuilt<Rows extends Stock>(stock: Rows, rows: readonly AsBuiltRow[]): Rows {
  if (!rows.some(({ what, length }) => what === "thickness" && length !== undefined)) return stock;
  const real = <Row extends { readonly name: string; readonly thickness: Length }>(row: Row): Row => {
    const thickness = lengthAsBuilt(rows, "thickness", row.name);
    return thickness === undefined ? row : { ...row, thickness, planned: row.thickness };
  };
  return { ...stock, sheets: stock.sheets.map(real), facings: stock.facings.map(real) };
}

/** Measurements in which what the case took stands in place of trials; the same where nothing was filled in. */
export function measurementsAsBuilt<Rows extends Measurements>(
  measurements: Rows,
  parts: Parts,
  { adhesives }: Stock,
): Rows {
  const { asBuilt, kerfs, timings, spreads } = measurements;
  if (!asBuilt.some(isFilledIn)) return measurements;
  const sawn = kerfsOf(asBuilt);
  const timed = timesOf(asBuilt, timings);
  const spread = spreadsOf(asBuilt, parts, adhesives);
  const cuts = new Set(sawn.map(({ use }) => use));
  return {
    ...measurements,
    kerfs: [...sawn, ...kerfs.flatMap((row) => keptUse(row, cuts))],
    timings: [...timed, ...timings.filter(({ work }) => !timed.some((one) => one.work === work))],
    spreads: [
      ...spread,
      ...spreads.filter(({ adhesive }) => !spread.some((one) => one.adhesive === adhesive)),
    ],
  };
}

type Kerf = Measurements["kerfs"][number];

/** A blade for both keeps the use that nobody measured on the case. */
function keptUse(row: Kerf, known: ReadonlySet<Kerf["use"]>): Kerf[] {
  if (known.has(row.use)) return [];
  if (row.use !== "both" || known.size === 0) return [row];
  const left = (["sheets", "bars"] as const).filter((use) => !known.has(use));
  return left.map((use) => ({ ...row, use }));
}

/** Every slot that was measured, as one cut through a board of its own width. */
function kerfsOf(rows: readonly AsBuiltRow[]): Kerf[] {
  const none = Length.si(0);
  return rows.flatMap(({ what, of, length }): Kerf[] => {
    if (what !== "kerf" || length === undefined || length === 0) return [];
    const use = of === "bars" ? "bars" : "sheets";
    return [{ blade: `as built, ${of}`, before: length, after: none, offcuts: none, cuts: 1, use }];
  });
}

/** What each work took, counted as its trial was. */
function timesOf(
  rows: readonly AsBuiltRow[],
  timings: Measurements["timings"],
): Measurements["timings"][number][] {
  return rows.flatMap(({ what, of, at, time, pieces }) => {
    if (what !== "time" || time === undefined || pieces === undefined) return [];
    const before = timings.find(({ work, tool }) => work === of && (at === undefined || tool === at));
    return before ? [{ ...before, pieces, time, planned: Time.si(before.time / before.pieces) }] : [];
  });
}

/** What left the cans over the faces that it went to; waste is in it, so the label's share is taken off. */
function spreadsOf(
  rows: readonly AsBuiltRow[],
  { facings }: Parts,
  adhesives: Stock["adhesives"],
): Measurements["spreads"][number][] {
  const weighed = facings.flatMap((facing) => {
    const used = glueUsed(rows, `${facing.panel}, ${facing.side}`);
    return used === undefined ? [] : [{ facing, used }];
  });
  return adhesives.flatMap((adhesive) => {
    const mine = weighed.filter(({ facing }) => facing.adhesive.name === adhesive.name);
    const area = mine.reduce((sum, { facing }) => sum + facing.gluedArea, 0);
    const used = mine.reduce((sum, one) => sum + one.used, 0);
    if (area === 0 || used <= 0) return [];
    const faces = adhesive.faces === "both" ? 2 : 1;
    const before = Mass.si(used * (1 - adhesive.waste));
    const trial = `as built, ${adhesive.name}`;
    return [{ trial, adhesive: adhesive.name, area: Area.si(area), faces, before, after: Mass.si(0) }];
  });
}

/** What left the can for one face; undefined unless it was weighed before and after. */
export function glueUsed(rows: readonly AsBuiltRow[], face: string): Mass | undefined {
  const read = (which: AsBuiltMeasure): Mass | undefined =>
    rows.find(({ what, of, can }) => what === which && of === face && can !== undefined)?.can;
  const [before, after] = [read("can before"), read("can after")];
  return before === undefined || after === undefined ? undefined : Mass.si(before - after);
}

/** Lines of what the case does not have, and cans that grew heavier: every one at once. */
export function asBuiltProblems(
  rows: readonly (AsBuiltRow & { readonly line: number })[],
  described: Pick<Case, "sections">,
  parts: Parts,
  stock: Stock,
  timings: Measurements["timings"],
): Problem[] {
  const file = "as-built.csv";
  return rows.filter(isFilledIn).flatMap((row): Problem[] => {
    const names = namesFor(row.what, described, parts, stock, timings);
    if (names && !names.includes(row.of)) {
      const expected =
        names.length === 0
          ? `no row: the papers have no line for ${row.what}`
          : `what the papers name for ${row.what}: ${names.slice(0, 12).join(", ")}${didYouMean(row.of, names)}`;
      return [{ file, row: row.line, column: "of", value: row.of, expected }];
    }
    const used = row.what === "can after" ? glueUsed(rows, row.of) : undefined;
    if (used === undefined || used > 0) return [];
    const value = Mass.show(row.can ?? Mass.si(0));
    return [{ file, row: row.line, column: "can", value, expected: "less than the can weighed before" }];
  });
}

function namesFor(
  what: AsBuiltMeasure,
  { sections }: Pick<Case, "sections">,
  parts: Parts,
  { sheets, facings }: Stock,
  timings: Measurements["timings"],
): readonly string[] | undefined {
  const pieces = sheetPieces(parts);
  const ofSections = sections.map(({ name }) => name);
  const opened = pieces.flatMap(({ id, openings }) => openings.map(({ name }) => `${id}.${name}`));
  const faces = parts.facings.map(({ panel, side }) => `${panel}, ${side}`);
  const names: Readonly<Record<AsBuiltMeasure, readonly string[] | undefined>> = {
    thickness: [...sheets, ...facings].map(({ name }) => name),
    kerf: ["sheets", "bars"],
    width: pieces.map(({ id }) => id),
    height: pieces.map(({ id }) => id),
    "diagonals apart": [...pieces.map(({ id }) => id), ...ofSections],
    "bar length": parts.bars.map(({ id }) => id),
    "opening width": opened,
    "opening height": opened,
    "outside width": ofSections,
    "outside depth": ofSections,
    "outside height": ofSections,
    gap: parts.panels.flatMap(({ id, leaf }) => (leaf ? [id] : [])),
    "can before": faces,
    "can after": faces,
    "weight empty": ofSections,
    "weight loaded": ofSections,
    time: timings.map(({ work }) => work),
    "price paid": undefined,
  };
  return names[what];
}
