/** How things are sold, and what lies on the rack: each table of offers with its columns, its row and its checks. */
import { sheetEdgeTrim } from "../cutting/index.js";
import type { TableRow } from "../measure/index.js";
import { Count, Length, Money, Name, Ratio } from "../quantity/index.js";
import type { StockRows } from "./stock.js";
import {
  type DeclaredColumns,
  type DeclaredTable,
  type LineRule,
  needed,
  optional,
  type RowOf,
  table,
} from "./table.js";

/** A table of offers, which may be absent. */
function offered<Columns extends DeclaredColumns>(file: string, columns: Columns): DeclaredTable<Columns> {
  return table(file, columns, { mayBeEmpty: true });
}

const amount = { min: 0 };
const nameOf = (doc: string) => needed("name", Name, doc, { unique: true });

const breakColumns = {
  item: needed("item", Name, "A name of one of the tables of stock."),
  from: needed("from", Count, "From this many on, in what the item is sold by.", { min: 2 }),
  price: needed("price", Money, "Price of one, for all of them.", amount),
};

/** A row of price-breaks.csv: a lower price from some quantity on. */
export interface PriceBreakOffer extends RowOf<typeof breakColumns> {}

const supplierColumns = {
  name: nameOf("The supplier, as in the tables of stock."),
  shipping: needed("shipping", Money, "Shipping of an order of any size.", amount),
  perKilogram: optional(
    "shipping per kg",
    Money,
    "Shipping on top for each kilogram; nothing where blank.",
    amount,
  ),
  freeFrom: optional(
    "free from",
    Money,
    "Goods from this amount on are shipped free; never where blank.",
    amount,
  ),
  tax: needed("tax", Ratio, "Tax on goods and shipping, as a share of them.", { min: 0, max: 1 }),
};

/** A row of suppliers.csv: what a supplier adds to an order. */
export interface Supplier extends RowOf<typeof supplierColumns> {}

const leftoverColumns = {
  name: nameOf('What is written on the piece, such as "rack 3".'),
  stock: needed("stock", Name, "The sheet, laminate or bar that it is left of."),
  length: needed("length", Length, "Length, along the grain of a sheet.", { above: 0 }),
  width: optional("width", Length, "Width of a sheet or a laminate; a bar has none.", { above: 0 }),
  count: needed("count", Count, "How many such pieces there are.", { min: 1 }),
};

/** A row of leftovers.csv: what lies on the rack from other jobs, to be used before anything is bought. */
export interface Leftover extends RowOf<typeof leftoverColumns> {}

/** The tables of offers; each may be absent or have no rows. */
export const offerTables = {
  priceBreaks: offered("price-breaks.csv", breakColumns),
  suppliers: offered("suppliers.csv", supplierColumns),
  leftovers: offered("leftovers.csv", leftoverColumns),
};

/** How things are sold, and what need not be bought; without these tables prices stay and nothing is added. */
export interface Offers {
  /** Rows of price-breaks.csv. */
  readonly priceBreaks: readonly PriceBreakOffer[];
  /** Rows of suppliers.csv. */
  readonly suppliers: readonly Supplier[];
  /** Rows of leftovers.csv. */
  readonly leftovers: readonly Leftover[];
}

/** Rows of the offers, with their lines. */
export type OfferRows = { readonly [Table in keyof Offers]: readonly (Offers[Table][number] & TableRow)[] };

/** Breaks of nothing that is sold, breaks that do not lower a price, and two at one quantity. */
export function breakRules({ priceBreaks: breaks }: OfferRows, stock: StockRows): LineRule[] {
  const prices = new Map(
    Object.values(stock).flatMap((rows) => rows.map((row) => [row.name, row.price.amount])),
  );
  return breaks.flatMap(({ line, item, from, price }, i): LineRule[] => {
    const usual = prices.get(item);
    if (usual === undefined) {
      const expected = "a name of one of the tables of stock";
      return [{ line, keeps: false, column: "item", value: item, expected, cause: `name ${item}` }];
    }
    return [
      {
        line,
        keeps: price.amount <= usual,
        column: "price",
        value: Money.show(price),
        expected: `no more than ${usual}, the price of one`,
      },
      {
        line,
        keeps: !breaks.slice(0, i).some((one) => one.item === item && one.from === from),
        column: "from",
        value: String(from),
        expected: `each quantity of ${item} only once`,
      },
    ];
  });
}

/**
 * Leftovers of nothing that is cut, under the name of a stock, of a bar with a width, of a sheet without one, or
 * so small that trimming its edges takes all of it: one broken rule a row.
 */
export function leftoverRules(
  { leftovers: pieces }: OfferRows,
  { sheets, facings, bars }: StockRows,
): LineRule[] {
  const names = (rows: readonly { readonly name: string }[]): string[] => rows.map(({ name }) => name);
  const flat = names([...sheets, ...facings]);
  const all = [...flat, ...names(bars)];
  return pieces.flatMap(({ line, name, stock, length, width }) => {
    const broken = (column: string, value: string, expected: string): LineRule[] => [
      { line, keeps: false, column, value, expected },
    ];
    if (!all.includes(stock)) {
      const expected = `a sheet, laminate or bar (${all.join(", ")})`;
      return broken("stock", stock, expected).map((rule) => ({ ...rule, cause: `name ${stock}` }));
    }
    if (all.includes(name)) return broken("name", name, "a name of its own, not that of a stock");
    if (!flat.includes(stock)) {
      return width === undefined ? [] : broken("width", Length.show(width), "nothing, for a bar");
    }
    if (width === undefined) return broken("width", "", `a width, for a piece of ${stock}`);
    const least = names(sheets).includes(stock) ? 2 * sheetEdgeTrim : 0;
    const expected = `both sides above ${Length.show(Length.si(least))}, what trimming takes`;
    return Math.min(length, width) > least ? [] : broken("width", Length.show(width), expected);
  });
}
