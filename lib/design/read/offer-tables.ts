/** The columns of the tables of how things are sold; both files may be absent. */
import { column, optionalColumn, type TableRow, type TableSchema, tableSchema } from "../../measure/index.js";
import { Count, Length, Money, Name, Ratio } from "../../quantity/index.js";
import type { Offers } from "../stock.js";

/** A row of a table of offers, with its line. */
export type OfferRow<Table extends keyof Offers> = Offers[Table][number] & TableRow;

const mayBeEmpty = { mayBeEmpty: true };

/** The columns of each file, by table. */
export const offerTables: { readonly [Table in keyof Offers]: TableSchema<OfferRow<Table>> } = {
  priceBreaks: tableSchema<OfferRow<"priceBreaks">>(
    {
      item: column("item", Name),
      from: column("from", Count, { min: 2 }),
      price: column("price", Money, { min: 0 }),
    },
    mayBeEmpty,
  ),
  suppliers: tableSchema<OfferRow<"suppliers">>(
    {
      name: column("name", Name, { unique: true }),
      shipping: column("shipping", Money, { min: 0 }),
      perKilogram: optionalColumn("shipping per kg", Money, { min: 0 }),
      freeFrom: optionalColumn("free from", Money, { min: 0 }),
      tax: column("tax", Ratio, { min: 0, max: 1 }),
    },
    mayBeEmpty,
  ),
  leftovers: tableSchema<OfferRow<"leftovers">>(
    {
      name: column("name", Name, { unique: true }),
      stock: column("stock", Name),
      length: column("length", Length, { above: 0 }),
      width: optionalColumn("width", Length, { above: 0 }),
      count: column("count", Count, { min: 1 }),
    },
    mayBeEmpty,
  ),
};
