/** The columns of the tables of what can be bought. */
import { elasticRatios, type VeneerSpecies } from "../../material/index.js";
import { column, optionalColumn, type TableRow, type TableSchema, tableSchema } from "../../measure/index.js";
import {
  AreaDensity,
  Count,
  choice,
  Density,
  Force,
  Length,
  LinearDensity,
  Mass,
  Money,
  Name,
  Pressure,
  Ratio,
  Time,
  Volume,
} from "../../quantity/index.js";
import type { Stock } from "../stock.js";
import { joinedColumn } from "./joined-column.js";

/** A row of a table of the stock, with its line. */
export type StockRow<Table extends keyof Stock> = Stock[Table][number] & TableRow;

const positive = { above: 0 };
const veneerSpecies = choice("veneer species", Object.keys(elasticRatios) as VeneerSpecies[]);
const zeroOrMore = { min: 0 };
const share = { min: 0, max: 1 };
const name = column("name", Name, { unique: true });
const price = column("price", Money, zeroOrMore);
const supplier = column("supplier", Name);

/** The columns of each file, by table. */
export const stockTables: { readonly [Table in keyof Stock]: TableSchema<StockRow<Table>> } = {
  sheets: tableSchema<StockRow<"sheets">>({
    name,
    length: column("length", Length, positive),
    width: column("width", Length, positive),
    thickness: column("thickness", Length, positive),
    density: column("density", Density, positive),
    price,
    supplier,
    veneers: joinedColumn("veneers", Length, positive),
    species: column("species", veneerSpecies),
  }),
  bars: tableSchema<StockRow<"bars">>({
    name,
    length: column("length", Length, positive),
    massPerLength: column("mass per length", LinearDensity, positive),
    price,
    supplier,
    leg: column("leg", Length, positive),
    wall: column("wall", Length, positive),
    seat: column("seat", Length, zeroOrMore),
  }),
  hardware: tableSchema<StockRow<"hardware">>({
    name,
    kind: column(
      "kind",
      choice("kind", [
        "handle",
        "latch",
        "keeper",
        "corner",
        "caster",
        "hinge",
        "slide",
        "hook",
        "pass-through",
        "other",
      ]),
    ),
    mass: column("mass", Mass, positive),
    price,
    supplier,
    width: column("width", Length, positive),
    height: column("height", Length, positive),
    flange: column("flange", Length, positive),
    cutWidth: column("cut width", Length, zeroOrMore),
    cutHeight: column("cut height", Length, zeroOrMore),
    standing: column("standing", Length, zeroOrMore),
    fastener: column("fastener", Name),
    fasteners: column("fasteners", Count, positive),
    holeColumns: column("hole columns", Count, positive),
    holeRows: column("hole rows", Count, positive),
    holeWidth: column("hole width", Length, zeroOrMore),
    holeHeight: column("hole height", Length, zeroOrMore),
    rated: optionalColumn("rated", Force, positive),
  }),
  fasteners: tableSchema<StockRow<"fasteners">>({
    name,
    kind: column("kind", choice("kind", ["rivet", "screw", "bolt", "insert"])),
    diameter: column("diameter", Length, positive),
    headDiameter: column("head diameter", Length, positive),
    length: column("length", Length, positive),
    gripMin: column("grip min", Length, zeroOrMore),
    gripMax: column("grip max", Length, positive),
    shear: optionalColumn("shear", Force, positive),
    tension: optionalColumn("tension", Force, positive),
    packOf: column("pack of", Count, positive),
    price,
    supplier,
    mass: column("mass", Mass, positive),
    washerDiameter: column("washer diameter", Length, positive),
    washerThickness: column("washer thickness", Length, positive),
    washerPrice: column("washer price", Money, zeroOrMore),
    insertDiameter: optionalColumn("insert diameter", Length, positive),
    insertLength: optionalColumn("insert length", Length, positive),
    insertHole: optionalColumn("insert hole", Length, positive),
  }),
  adhesives: tableSchema<StockRow<"adhesives">>({
    name,
    kind: column("kind", choice("kind", ["contact", "spray contact", "wood glue", "epoxy", "construction"])),
    content: column("content", Volume, positive),
    price,
    supplier,
    density: column("density", Density, positive),
    labelRate: column("label rate", AreaDensity, positive),
    faces: column("faces", choice("faces", ["one", "both"])),
    solids: column("solids", Ratio, { above: 0, max: 1 }),
    waste: column("waste", Ratio, share),
    openTime: column("open time", Time, positive),
    pressTime: column("press time", Time, zeroOrMore),
    cureTime: column("cure time", Time, positive),
    solvent: column("solvent", choice("solvent", ["none", "flammable", "non-flammable"])),
  }),
  facings: tableSchema<StockRow<"facings">>({
    name,
    form: column("form", choice("form", ["sheet", "roll"])),
    length: column("length", Length, positive),
    width: column("width", Length, positive),
    thickness: column("thickness", Length, positive),
    density: column("density", Density, positive),
    modulus: column("modulus", Pressure, positive),
    price,
    supplier,
  }),
};
