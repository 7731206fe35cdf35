/** What lies on the rack against the stock it is left of. */
import { sheetEdgeTrim } from "../../cutting/index.js";
import type { Problem } from "../../problem.js";
import { Length } from "../../quantity/index.js";
import type { OfferRows, StockRows } from "../read/read-tables.js";
import { cellProblem } from "./table-problem.js";

/**
 * Leftovers of nothing that is cut, under the name of a stock, of a bar with a width, of a sheet without one, or
 * so small that trimming its edges takes all of it.
 */
export function checkLeftovers({ leftovers }: OfferRows, { sheets, facings, bars }: StockRows): Problem[] {
  const names = (rows: readonly { readonly name: string }[]): string[] => rows.map(({ name }) => name);
  const flat = names([...sheets, ...facings]);
  const all = [...flat, ...names(bars)];
  return leftovers.flatMap(({ line, name, stock, length, width }) => {
    const problem = (column: string, value: string, expected: string): Problem[] => [
      cellProblem({ table: "leftovers", line, column, value }, expected),
    ];
    if (!all.includes(stock)) return problem("stock", stock, `a sheet, laminate or bar (${all.join(", ")})`);
    if (all.includes(name)) return problem("name", name, "a name of its own, not that of a stock");
    if (!flat.includes(stock)) {
      return width === undefined ? [] : problem("width", Length.show(width), "nothing, for a bar");
    }
    if (width === undefined) return problem("width", "", `a width, for a piece of ${stock}`);
    const least = names(sheets).includes(stock) ? 2 * sheetEdgeTrim : 0;
    return Math.min(length, width) > least
      ? []
      : problem(
          "width",
          Length.show(width),
          `both sides above ${Length.show(Length.si(least))}, what trimming takes`,
        );
  });
}
