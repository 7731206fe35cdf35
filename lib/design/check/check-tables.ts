/** What a table alone cannot know: names in other tables, currencies, figures that must agree. */
import { species } from "../../material/index.js";
import type { Problem } from "../../problem.js";
import { Mass, type Money } from "../../quantity/index.js";
import type { MeasuredRows, StockRows } from "../read/read-tables.js";
import { tableFiles } from "../table-files.js";

type TableName = keyof typeof tableFiles;

/** A problem of one row. */
function problem(table: TableName, line: number, column: string, value: string, expected: string): Problem {
  return { file: tableFiles[table], row: line, column, value, expected };
}

/**
 * Every disagreement between tables.
 *
 * @param currency of the case, when it could be read
 */
export function checkTables(
  stock: StockRows,
  measurements: MeasuredRows,
  currency: string | undefined,
): Problem[] {
  return [
    ...(currency === undefined ? [] : checkCurrencies(stock, currency)),
    ...checkNamesAcross(stock, measurements),
    ...stock.sheets.flatMap(checkSheet),
    ...stock.hardware.flatMap(checkHardware),
    ...stock.fasteners.flatMap(checkFastener),
    ...measurements.spreads.flatMap(checkSpread),
    ...measurements.kerfs.flatMap(checkKerf),
  ];
}

function checkCurrencies(stock: StockRows, currency: string): Problem[] {
  const wrong = (
    table: TableName,
    line: number,
    column: string,
    { amount, currency: found }: Money,
  ): Problem[] =>
    found === currency
      ? []
      : [
          problem(
            table,
            line,
            column,
            `${amount} ${found}`,
            `a price in ${currency}, the currency of the case`,
          ),
        ];
  const priced = (["sheets", "bars", "hardware", "fasteners", "adhesives", "facings"] as const).flatMap(
    (table) => stock[table].flatMap(({ line, price }) => wrong(table, line, "price", price)),
  );
  return [
    ...priced,
    ...stock.fasteners.flatMap(({ line, washerPrice }) =>
      wrong("fasteners", line, "washer price", washerPrice),
    ),
  ];
}

interface Named {
  readonly name: string;
}

function checkNamesAcross(stock: StockRows, measurements: MeasuredRows): Problem[] {
  const { sheets, fasteners, adhesives, facings } = stock;
  const among = (
    table: TableName,
    line: number,
    column: string,
    value: string,
    rows: readonly Named[],
    where: string,
  ): Problem[] => {
    const names = rows.map(({ name }) => name);
    return names.includes(value)
      ? []
      : [problem(table, line, column, value, `a name in ${where} (${names.join(", ")})`)];
  };
  const materials = [...sheets, ...facings];
  const materialFiles = `${tableFiles.sheets} or ${tableFiles.facings}`;
  return [
    ...stock.hardware.flatMap(({ line, fastener }) =>
      among("hardware", line, "fastener", fastener, fasteners, tableFiles.fasteners),
    ),
    ...measurements.bends.flatMap(({ line, sheet }) =>
      among("bends", line, "sheet", sheet, sheets, tableFiles.sheets),
    ),
    ...measurements.weights.flatMap(({ line, material }) =>
      among("weights", line, "material", material, materials, materialFiles),
    ),
    ...measurements.spreads.flatMap(({ line, adhesive }) =>
      among("spreads", line, "adhesive", adhesive, adhesives, tableFiles.adhesives),
    ),
    ...measurements.pulls.flatMap(({ line, fastener, sheet }) => [
      ...among("pulls", line, "fastener", fastener, fasteners, tableFiles.fasteners),
      ...among("pulls", line, "sheet", sheet, sheets, tableFiles.sheets),
    ]),
  ];
}

/** Veneers may differ from the sheet's thickness by what sanding and gluing take, a tenth at most. */
const veneerAllowance = 0.1;

function checkSheet({ line, thickness, veneers, species: wood }: StockRows["sheets"][number]): Problem[] {
  const total = veneers.reduce((sum: number, veneer) => sum + veneer, 0);
  const shown = veneers.map((veneer) => (veneer * 1000).toFixed(2)).join("+");
  const woods = Object.keys(species);
  return [
    ...(veneers.length % 2 === 1
      ? []
      : [problem("sheets", line, "veneers", shown, "an odd number of veneers")]),
    ...(Math.abs(total - thickness) <= veneerAllowance * thickness
      ? []
      : [
          problem(
            "sheets",
            line,
            "veneers",
            shown,
            `veneers that add up to ${(thickness * 1000).toFixed(2)} mm within a tenth`,
          ),
        ]),
    ...(woods.includes(wood) ? [] : [problem("sheets", line, "species", wood, `one of ${woods.join(", ")}`)]),
  ];
}

function checkHardware(row: StockRows["hardware"][number]): Problem[] {
  const { line, kind, fasteners, holeColumns, holeRows, holeWidth, holeHeight, width, height } = row;
  const faces = kind === "corner" ? 3 : 1;
  const holes = holeColumns * holeRows * faces;
  const counted = kind === "corner" ? `hole columns x hole rows x 3 faces` : `hole columns x hole rows`;
  return [
    ...(holes === fasteners
      ? []
      : [problem("hardware", line, "fasteners", String(fasteners), `${holes}, which is ${counted}`)]),
    ...(holeWidth < width && holeHeight < height
      ? []
      : [
          problem(
            "hardware",
            line,
            "hole width",
            `${mm(holeWidth)} x ${mm(holeHeight)}`,
            `holes inside the part, ${mm(width)} x ${mm(height)}`,
          ),
        ]),
    ...(row.cutWidth > 0 === row.cutHeight > 0
      ? []
      : [
          problem(
            "hardware",
            line,
            "cut width",
            `${mm(row.cutWidth)} x ${mm(row.cutHeight)}`,
            "a cut-out with both sizes, or both zero",
          ),
        ]),
  ];
}

function mm(length: number): string {
  return `${Number((length * 1000).toFixed(2))} mm`;
}

function checkFastener({ line, gripMin, gripMax, length }: StockRows["fasteners"][number]): Problem[] {
  return [
    ...(gripMin < gripMax
      ? []
      : [problem("fasteners", line, "grip min", mm(gripMin), `less than the grip max of ${mm(gripMax)}`)]),
    ...(gripMax < length
      ? []
      : [problem("fasteners", line, "grip max", mm(gripMax), `less than the length of ${mm(length)}`)]),
  ];
}

function checkSpread({ line, before, after }: MeasuredRows["spreads"][number]): Problem[] {
  return after < before
    ? []
    : [problem("spreads", line, "after", Mass.show(after), `less than the ${Mass.show(before)} before`)];
}

function checkKerf({ line, before, after, offcuts }: MeasuredRows["kerfs"][number]): Problem[] {
  return before - after - offcuts > 0
    ? []
    : [problem("kerfs", line, "after", mm(after), `less than before less offcuts, ${mm(before - offcuts)}`)];
}
