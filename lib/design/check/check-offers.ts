/** Price breaks, suppliers and leftovers against the stock they speak of. */
import type { Problem } from "../../problem.js";
import { Money } from "../../quantity/index.js";
import type { ReadTables } from "../read/read-tables.js";
import { tableFiles } from "../table-files.js";
import { checkLeftovers } from "./check-leftovers.js";
import { type Cell, cellProblem } from "./table-problem.js";

/**
 * Breaks of nothing that is sold, breaks that do not lower a price, two at one quantity, and amounts in another
 * currency. Names are not looked up where a row of the stock could not be read.
 *
 * @param currency of the case, when it could be read
 */
export function checkOffers(tables: ReadTables, currency: string | undefined): Problem[] {
  const { priceBreaks, suppliers } = tables.offers;
  const stockFiles = Object.keys(tables.stock).map((table) => tableFiles[table as keyof typeof tables.stock]);
  const sound = !tables.problems.some(({ file }) => stockFiles.includes(file));
  return [
    ...priceBreaks.flatMap(({ line, price }) =>
      inCurrency({ table: "priceBreaks", line, column: "price", value: Money.show(price) }, price, currency),
    ),
    ...suppliers.flatMap(({ line, shipping, perKilogram, freeFrom }) =>
      Object.entries({ shipping, "shipping per kg": perKilogram, "free from": freeFrom }).flatMap(
        ([column, amount]) =>
          amount
            ? inCurrency({ table: "suppliers", line, column, value: Money.show(amount) }, amount, currency)
            : [],
      ),
    ),
    ...(sound ? [...checkBreaks(tables), ...checkLeftovers(tables.offers, tables.stock)] : []),
  ];
}

function inCurrency(cell: Cell, { currency: its }: Money, currency: string | undefined): Problem[] {
  if (currency === undefined || its === currency) return [];
  return [cellProblem(cell, `an amount in ${currency}, the currency of the case`)];
}

function checkBreaks({ stock, offers: { priceBreaks } }: ReadTables): Problem[] {
  const prices = new Map(
    Object.values(stock).flatMap((rows) => rows.map((row) => [row.name, row.price.amount])),
  );
  return priceBreaks.flatMap(({ line, item, from, price }, i) => {
    const usual = prices.get(item);
    const cell = { table: "priceBreaks" as const, line };
    if (usual === undefined) {
      return [cellProblem({ ...cell, column: "item", value: item }, "a name of one of the tables of stock")];
    }
    const twice = priceBreaks.slice(0, i).some((one) => one.item === item && one.from === from);
    return [
      ...(price.amount > usual
        ? [
            cellProblem(
              { ...cell, column: "price", value: Money.show(price) },
              `no more than ${usual}, the price of one`,
            ),
          ]
        : []),
      ...(twice
        ? [
            cellProblem(
              { ...cell, column: "from", value: String(from) },
              `each quantity of ${item} only once`,
            ),
          ]
        : []),
    ];
  });
}
