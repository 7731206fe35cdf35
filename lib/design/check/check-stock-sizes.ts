/** Whether every piece comes from one of its stock: a bar or a sheet cannot be made longer. */
import { barEndTrim, sheetEdgeTrim } from "../../cutting/index.js";
import type { Problem } from "../../problem.js";
import { Length } from "../../quantity/index.js";
import { type Parts, sheetPieces } from "../parts.js";
import type { Ruler } from "../ruler.js";
import type { StockRows } from "../stock.js";
import { cellProblem, type TableName } from "../tables.js";

/** A piece on its stock: along the length of the stock, and across it. */
interface Cut {
  /** Where its stock stands. */
  readonly table: TableName & ("sheets" | "bars" | "facings" | "strips" | "panes");
  /** The name of its stock. */
  readonly stock: string;
  /** What the piece is called. */
  readonly piece: string;
  /** Along the length of the stock, in metres. */
  readonly length: number;
  /** Across the stock, in metres. */
  readonly width: number;
  /** Which way of the grain a face may have instead. */
  readonly turned?: "across" | "up";
}

/** Taken off both ends or edges of new stock before a piece is cut; laminate is not trimmed. */
const trims = {
  sheets: 2 * sheetEdgeTrim,
  facings: 0,
  bars: 2 * barEndTrim,
  strips: 2 * barEndTrim,
  panes: 0,
} as const;

/** One problem a stock: its length or its width, with the largest piece that asks for more, trimming counted. */
export function checkStockSizes(parts: Parts, stock: StockRows, ruler: Ruler): Problem[] {
  const cuts = cutsOf(parts);
  const rows = [
    ...stock.sheets.map((row) => ({ ...row, table: "sheets" as const })),
    ...stock.facings.map((row) => ({ ...row, table: "facings" as const })),
    ...stock.bars.map((row) => ({ ...row, width: Length.si(0), table: "bars" as const })),
    ...stock.panes.map((row) => ({ ...row, table: "panes" as const })),
    ...stock.strips.map((row) => ({ ...row, table: "strips" as const })),
  ];
  return rows.flatMap(({ table, line, name, length, width }) => {
    const mine = cuts.filter((cut) => cut.table === table && cut.stock === name);
    const short = (column: "length" | "width", size: Length): Problem[] => {
      const [largest] = [...mine].sort((a, b) => b[column] - a[column]);
      if (!largest) return [];
      const needed = Length.si(largest[column] + (largest[column] > 0 ? trims[table] : 0));
      if (needed <= size + 1e-9) return [];
      const tooLarge = mine.filter((cut) => cut[column] + trims[table] > size + 1e-9);
      const mend = turnedWords(largest, tooLarge, { length, width });
      const expected = `at least ${ruler(needed)} for ${largest.piece}, trimming included${mend}`;
      return [cellProblem({ table, line, column, value: ruler(size) }, expected)];
    };
    return [...short("length", length), ...short("width", width)];
  });
}

/** The grain that lets the largest piece fit, with all faces that it lets fit as well. */
function turnedWords(
  largest: Cut,
  tooLarge: readonly Cut[],
  size: { readonly length: Length; readonly width: Length },
): string {
  const fits = (cut: Cut): boolean => {
    const trim = trims[cut.table] + 1e-9;
    return (
      cut.turned === largest.turned && cut.width + trim <= size.length && cut.length + trim <= size.width
    );
  };
  if (!largest.turned || !fits(largest)) return "";
  const faces = tooLarge.filter(fits).map(({ piece }) => piece);
  return `; "grain: ${largest.turned}" under "panels" in case.yaml lets these fit: ${faces.join(", ")}`;
}

function cutsOf(parts: Parts): Cut[] {
  const { facings, bars, strips, panes } = parts;
  return [
    ...sheetPieces(parts).map(
      ({ id, sheet, grain, width, height, role }): Cut => ({
        table: "sheets",
        stock: sheet.name,
        piece: id,
        length: grain === "across" ? width : height,
        width: grain === "across" ? height : width,
        ...(role === "face" ? { turned: grain === "across" ? "up" : "across" } : {}),
      }),
    ),
    // A facing has no grain: its longer side lies along the stock.
    ...facings.map(
      ({ panel, side, stock, width, height }): Cut => ({
        table: "facings",
        stock: stock.name,
        piece: `${panel}, ${side}`,
        length: Math.max(width, height),
        width: Math.min(width, height),
      }),
    ),
    ...panes.map(
      ({ id, stock, width, height }): Cut => ({
        table: "panes",
        stock: stock.name,
        piece: id,
        length: Math.max(width, height),
        width: Math.min(width, height),
      }),
    ),
    ...bars.map(
      ({ id, stock, length }): Cut => ({ table: "bars", stock: stock.name, piece: id, length, width: 0 }),
    ),
    ...strips.map(
      ({ id, stock, length }): Cut => ({ table: "strips", stock: stock.name, piece: id, length, width: 0 }),
    ),
  ];
}
