/** What can be bought: each table of stock with its columns, its rules and its row. */
import { AdhesiveKind } from "../bonding/index.js";
import { FastenerKind, fastenerTraits } from "../fastening/index.js";
import { ClearPlastic, elasticRatios, type VeneerSpecies } from "../material/index.js";
import type { TableRow } from "../measure/index.js";
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
} from "../quantity/index.js";
import {
  eachRow,
  inMillimetres,
  joined,
  nameIn,
  needed,
  optional,
  type RowOf,
  type RowRule,
  table,
} from "./table.js";

const positive = { above: 0 };
const zeroOrMore = { min: 0 };
const share = { min: 0, max: 1 };
/** What is bent, glued and riveted here; more is a slip of the unit. */
const thin = { above: 0, reach: 0.1 };
/** Holes of a pattern along one way. */
const holes = { above: 0, reach: 200 };
const name = needed("name", Name, "What the case and other tables call it.", { unique: true });
const supplier = needed("supplier", Name, "Where it is bought.");
const priceOf = (what: string) => needed("price", Money, `Price of ${what}.`, zeroOrMore);

/** A wood whose elastic ratios are tabulated. */
const veneerSpecies = choice("veneer species", Object.keys(elasticRatios) as VeneerSpecies[]);

const sheetColumns = {
  name,
  length: needed("length", Length, "Length of a sheet, along the face grain.", positive),
  width: needed("width", Length, "Width of a sheet, across the face grain.", positive),
  thickness: needed("thickness", Length, "Thickness as measured.", thin),
  density: needed("density", Density, "Density of the sheet.", positive),
  price: priceOf("a sheet"),
  supplier,
  veneers: joined(
    "veneers",
    Length,
    "Thicknesses of the veneers from face to back, for a lay-up estimate; their grain alternates.",
    positive,
  ),
  species: needed("species", veneerSpecies, "A wood of the species table."),
};

/** A row of sheet-stock.csv: plywood and other sheets. */
export interface SheetStock extends RowOf<typeof sheetColumns> {
  /** Thickness of its table, where as-built.csv has the real one; absent where it has none. */
  readonly planned?: Length;
}

/** Veneers may differ from the sheet's thickness by what sanding and gluing take, a tenth at most. */
const veneerAllowance = 0.1;

function sheetRules({ thickness, veneers }: SheetStock): RowRule[] {
  const total = veneers.reduce((sum: number, veneer) => sum + veneer, 0);
  const cell = { column: "veneers", value: veneers.map(inMillimetres).join(" + ") };
  return [
    { ...cell, keeps: veneers.length % 2 === 1, expected: "an odd number of veneers" },
    {
      ...cell,
      keeps: Math.abs(total - thickness) <= veneerAllowance * thickness,
      expected: `veneers that add up to ${inMillimetres(thickness)} within a tenth`,
    },
  ];
}

const barColumns = {
  name,
  length: needed("length", Length, "Length of a bar.", positive),
  massPerLength: needed("mass per length", LinearDensity, "Mass of a bar over its length.", positive),
  price: priceOf("a bar"),
  supplier,
  leg: needed("leg", Length, "Width of each leg.", positive),
  wall: needed("wall", Length, "Thickness of each leg.", positive),
  seat: needed(
    "seat",
    Length,
    "How far short of the inside corner each panel stops when neither runs through and both sit in this bar.",
    zeroOrMore,
  ),
};

/** A row of bar-stock.csv: edge extrusions. */
export interface BarStock extends RowOf<typeof barColumns> {}

const hardwareColumns = {
  name,
  kind: needed(
    "kind",
    choice("kind", [
      "handle",
      "latch",
      "keeper",
      "corner",
      "caster",
      "foot",
      "skid",
      "hinge",
      "slide",
      "stay",
      "hook",
      "pass-through",
      "other",
    ]),
    "What it is.",
  ),
  mass: needed("mass", Mass, "Mass of one.", { above: 0, reach: 200 }),
  price: priceOf("one"),
  supplier,
  width: needed("width", Length, "Width of the part on the panel.", positive),
  height: needed("height", Length, "Height of the part on the panel.", positive),
  flange: needed("flange", Length, "Thickness of its flange, which the fastener must span.", positive),
  cutWidth: needed(
    "cut width",
    Length,
    "Width of the cut-out it needs, zero for surface-mounted.",
    zeroOrMore,
  ),
  cutHeight: needed(
    "cut height",
    Length,
    "Height of the cut-out it needs, zero for surface-mounted.",
    zeroOrMore,
  ),
  dish: optional(
    "dish",
    Length,
    "How far it reaches through its cut-out, from the panel's outside inwards; blank where nobody measured it.",
    positive,
  ),
  standing: needed(
    "standing",
    Length,
    "Height of a caster, foot or skid under the case; zero for others.",
    zeroOrMore,
  ),
  offset: optional(
    "offset",
    Length,
    "Level distance from a caster's swivel axis to its wheel's axle; 0 for one that does not swivel.",
    zeroOrMore,
  ),
  grip: optional("grip", Ratio, "Friction of a foot or skid on the floor.", { above: 0, max: 2 }),
  sideRoom: optional(
    "side room",
    Length,
    "Room that a slide takes between a drawer and the wall.",
    zeroOrMore,
  ),
  extension: optional("extension", Length, "How far a pair of slides pulls out.", positive),
  fastener: nameIn("fastener", ["fasteners"], "The fastener it is held by."),
  fasteners: needed("fasteners", Count, "How many fasteners hold one.", positive),
  holeColumns: needed("hole columns", Count, "Columns of its hole pattern, evenly spread.", holes),
  holeRows: needed("hole rows", Count, "Rows of its hole pattern, evenly spread.", holes),
  holeWidth: needed("hole width", Length, "Width of its hole pattern, between hole centres.", zeroOrMore),
  holeHeight: needed("hole height", Length, "Height of its hole pattern, between hole centres.", zeroOrMore),
  rated: optional(
    "rated",
    Force,
    "Load its maker allows; where it is blank the finding is unknown.",
    positive,
  ),
};

/**
 * A row of hardware.csv: handles, latches and the keepers they pull on, corners, casters, hinges, hooks. A corner's
 * width and height are its legs on each face; its rows and columns are the holes of one of its three faces,
 * spread evenly from the point holeWidth and holeHeight off the face's two outer edges to the point with
 * the two swapped.
 */
export interface Hardware extends RowOf<typeof hardwareColumns> {}

function hardwareRules(row: Hardware): RowRule[] {
  const { kind, fasteners, holeColumns, holeRows, holeWidth, holeHeight, width, height } = row;
  const isCorner = kind === "corner";
  const holes = holeColumns * holeRows * (isCorner ? 3 : 1);
  return [
    {
      keeps: holes === fasteners,
      column: "fasteners",
      value: String(fasteners),
      expected: `${holes}, which is hole columns x hole rows${isCorner ? " x 3 faces" : ""}`,
    },
    {
      keeps: holeWidth < width && holeHeight < height,
      column: "hole width",
      value: `${inMillimetres(holeWidth)} x ${inMillimetres(holeHeight)}`,
      expected: `holes inside the part, ${inMillimetres(width)} x ${inMillimetres(height)}`,
    },
    {
      keeps: row.cutWidth > 0 === row.cutHeight > 0,
      column: "cut width",
      value: `${inMillimetres(row.cutWidth)} x ${inMillimetres(row.cutHeight)}`,
      expected: "a cut-out with both sizes, or both zero",
    },
  ];
}

const fastenerColumns = {
  name,
  kind: needed("kind", FastenerKind, "What it is."),
  diameter: needed(
    "diameter",
    Length,
    "Diameter of its body or shank; of an insert, of its screw.",
    positive,
  ),
  headDiameter: needed("head diameter", Length, "Diameter of its head.", positive),
  length: needed("length", Length, "Overall length under the head.", positive),
  gripMin: needed("grip min", Length, "Thinnest stack it closes.", zeroOrMore),
  gripMax: needed(
    "grip max",
    Length,
    "Thickest stack it closes; of a screw, the thickest before its thread bites.",
    positive,
  ),
  shear: optional("shear", Force, "Shear strength of one, as its maker states it.", positive),
  tension: optional("tension", Force, "Tensile strength of one, as its maker states it.", positive),
  packOf: needed("pack of", Count, "How many are in a pack.", positive),
  price: priceOf("a pack"),
  supplier,
  mass: needed("mass", Mass, "Mass of one.", positive),
  washerDiameter: optional("washer diameter", Length, "Diameter of the washer that fits it.", positive),
  washerThickness: optional("washer thickness", Length, "Thickness of the washer that fits it.", positive),
  washerPrice: optional("washer price", Money, "Price of one washer that fits it.", zeroOrMore),
  insertDiameter: optional(
    "insert diameter",
    Length,
    "Diameter of an insert over its outer thread.",
    positive,
  ),
  insertLength: optional("insert length", Length, "Length of an insert in the sheet.", positive),
  insertHole: optional("insert hole", Length, "Hole that an insert is run into.", positive),
};

/**
 * A row of fasteners.csv: rivets, screws, bolts, washers, and threaded inserts with the machine screw that goes into
 * them: its sizes, grip and strengths are the screw's.
 */
export interface Fastener extends RowOf<typeof fastenerColumns> {}

/** Diameter of what sits in the sheet: an insert over its outer thread, of all else the shank. */
export function bodyDiameter({ diameter, insertDiameter }: Fastener): Length {
  return insertDiameter ?? diameter;
}

/** The washer that fits a fastener. */
export interface Washer {
  /** Over its rim. */ readonly diameter: Length;
  /** Of its metal. */ readonly thickness: Length;
}

/** The washer of a fastener; undefined of a screw or an insert that has none in its row. */
export function washerFor({ washerDiameter, washerThickness }: Fastener): Washer | undefined {
  if (washerDiameter === undefined || washerThickness === undefined) return undefined;
  return { diameter: washerDiameter, thickness: washerThickness };
}

function fastenerRules(row: Fastener): RowRule[] {
  const { gripMin, gripMax, length, diameter, insertDiameter, insertHole } = row;
  return [
    insertSizesRule(row),
    washerRule(row),
    {
      keeps: !insertDiameter || !insertHole || (diameter < insertHole && insertHole < insertDiameter),
      column: "insert hole",
      value: inMillimetres(insertHole ?? 0),
      expected: `more than the screw's ${inMillimetres(diameter)}, less than the insert's ${inMillimetres(insertDiameter ?? 0)}`,
    },
    {
      keeps: gripMin < gripMax,
      column: "grip min",
      value: inMillimetres(gripMin),
      expected: `less than the grip max of ${inMillimetres(gripMax)}`,
    },
    {
      keeps: gripMax < length,
      column: "grip max",
      value: inMillimetres(gripMax),
      expected: `less than the length of ${inMillimetres(length)}`,
    },
  ];
}

function insertSizesRule({ kind, insertDiameter, insertLength, insertHole }: Fastener): RowRule {
  const sizes = [insertDiameter, insertLength, insertHole];
  const given = givenOf(sizes);
  const { hasInsert } = fastenerTraits[kind];
  return {
    keeps: given === (hasInsert ? sizes.length : 0),
    column: "insert diameter",
    value: `${given} of ${sizes.length} sizes`,
    expected: hasInsert
      ? "insert diameter, insert length and insert hole of an insert"
      : `insert sizes only of an insert, this is a ${kind}`,
  };
}

/** What ends behind the stack needs its washer; all else may have one, whole. */
function washerRule({ kind, washerDiameter, washerThickness, washerPrice }: Fastener): RowRule {
  const columns: Readonly<Record<string, unknown>> = {
    "washer diameter": washerDiameter,
    "washer thickness": washerThickness,
    "washer price": washerPrice,
  };
  const blank = Object.keys(columns).filter((column) => columns[column] === undefined);
  const { endsBehind } = fastenerTraits[kind];
  return {
    keeps: blank.length === 0 || (blank.length === Object.keys(columns).length && !endsBehind),
    column: blank[0] ?? "washer diameter",
    value: "",
    expected: `washer diameter, washer thickness and washer price of a ${kind}${endsBehind ? "" : ", or all three blank"}`,
  };
}

function givenOf(values: readonly unknown[]): number {
  return values.filter((value) => value !== undefined).length;
}

const adhesiveColumns = {
  name,
  kind: needed("kind", AdhesiveKind, "What it is."),
  content: needed("content", Volume, "Content of one container.", positive),
  price: priceOf("a container"),
  supplier,
  density: needed("density", Density, "Density of the wet glue.", positive),
  labelRate: needed("label rate", AreaDensity, "Wet spread that the label asks for on one face.", positive),
  faces: needed("faces", choice("faces", ["one", "both"]), "Faces that get glue: the panel alone, or both."),
  solids: needed("solids", Ratio, "Share that stays after drying.", { above: 0, max: 1 }),
  waste: needed("waste", Ratio, "Share lost as overspray, in the roller or the pot.", share),
  openTime: needed("open time", Time, "Time from spreading within which the parts must be joined.", positive),
  pressTime: needed("press time", Time, "Time under clamps; zero for none.", zeroOrMore),
  cureTime: needed("cure time", Time, "Time until it may be trimmed.", positive),
  solvent: needed(
    "solvent",
    choice("solvent", ["none", "flammable", "non-flammable"]),
    "Solvent that leaves it.",
  ),
};

/** A row of adhesives.csv. */
export interface Adhesive extends RowOf<typeof adhesiveColumns> {}

const facingColumns = {
  name,
  form: needed("form", choice("form", ["sheet", "roll"]), "How it is sold."),
  length: needed("length", Length, "Length of a sheet or a roll.", positive),
  width: needed("width", Length, "Width of a sheet or a roll.", positive),
  thickness: needed("thickness", Length, "Thickness of the laminate.", thin),
  density: needed("density", Density, "Density of the laminate.", positive),
  modulus: needed("modulus", Pressure, "Young's modulus of the laminate.", positive),
  price: priceOf("a sheet or a roll"),
  supplier,
};

/** A row of facings.csv: laminates in sheets or rolls. */
export interface FacingStock extends RowOf<typeof facingColumns> {
  /** Thickness of its table, where as-built.csv has the real one; absent where it has none. */
  readonly planned?: Length;
}

const stripColumns = {
  name,
  length: needed("length", Length, "Length of a strip as it is sold.", positive),
  width: needed("width", Length, "Its wider side.", positive),
  thickness: needed("thickness", Length, "Its narrower side.", positive),
  density: needed("density", Density, "Density of its wood.", positive),
  modulus: needed("modulus", Pressure, "Young's modulus along it.", positive),
  strength: optional(
    "strength",
    Pressure,
    "Bending strength of its grade, 24 MPa for C24; that of the lowest grade counts where it is blank.",
    positive,
  ),
  price: priceOf("a strip"),
  supplier,
};

/** A row of strip-stock.csv: strips of wood, bought by length, for cleats, corner blocks and battens. */
export interface StripStock extends RowOf<typeof stripColumns> {}

function stripRules({ width, thickness }: StripStock): RowRule[] {
  const expected = `no more than the width of ${inMillimetres(width)}`;
  return [{ keeps: thickness <= width, column: "thickness", value: inMillimetres(thickness), expected }];
}

const paneColumns = {
  name,
  length: needed("length", Length, "Length of a sheet as it is sold.", positive),
  width: needed("width", Length, "Width of a sheet.", positive),
  thickness: needed("thickness", Length, "Thickness as measured.", positive),
  density: needed("density", Density, "Density of the sheet.", positive),
  modulus: needed("modulus", Pressure, "Young's modulus, of a plastic in the long run.", positive),
  poisson: needed("poisson", Ratio, "How much it narrows for its stretch.", { min: 0, max: 0.49 }),
  plastic: optional("plastic", ClearPlastic, "What it is made of, where its data sheet is not at hand."),
  strength: optional("strength", Pressure, "Bending strength that its data sheet states.", positive),
  price: priceOf("a sheet"),
  supplier,
};

/** A row of pane-stock.csv: clear plastic or glass for windows. */
export interface PaneStock extends RowOf<typeof paneColumns> {}

/** The tables of what can be bought; each must be there, with rows, but strips and panes, which few cases need. */
export const stockTables = {
  sheets: table("sheet-stock.csv", sheetColumns, { rulesOf: eachRow(sheetRules) }),
  bars: table("bar-stock.csv", barColumns),
  hardware: table("hardware.csv", hardwareColumns, { rulesOf: eachRow(hardwareRules) }),
  fasteners: table("fasteners.csv", fastenerColumns, { rulesOf: eachRow(fastenerRules) }),
  adhesives: table("adhesives.csv", adhesiveColumns),
  facings: table("facings.csv", facingColumns),
  strips: table("strip-stock.csv", stripColumns, { mayBeEmpty: true, rulesOf: eachRow(stripRules) }),
  panes: table("pane-stock.csv", paneColumns, { mayBeEmpty: true }),
};

/** Every row of what can be bought. */
export interface Stock {
  /** Rows of sheet-stock.csv. */
  readonly sheets: readonly SheetStock[];
  /** Rows of bar-stock.csv. */
  readonly bars: readonly BarStock[];
  /** Rows of hardware.csv. */
  readonly hardware: readonly Hardware[];
  /** Rows of fasteners.csv. */
  readonly fasteners: readonly Fastener[];
  /** Rows of adhesives.csv. */
  readonly adhesives: readonly Adhesive[];
  /** Rows of facings.csv. */
  readonly facings: readonly FacingStock[];
  /** Rows of strip-stock.csv. */
  readonly strips: readonly StripStock[];
  /** Rows of pane-stock.csv. */
  readonly panes: readonly PaneStock[];
}

/** Rows of the stock, with their lines. */
export type StockRows = { readonly [Table in keyof Stock]: readonly (Stock[Table][number] & TableRow)[] };

/**
 * The row of a name.
 *
 * @throws RangeError naming the file when there is none; a case read from files was checked before
 */
export function stockNamed<Table extends keyof Stock>(
  stock: Stock,
  from: Table,
  wanted: string,
): Stock[Table][number] {
  const rows: readonly Stock[Table][number][] = stock[from];
  const found = rows.find((row) => row.name === wanted);
  if (!found) throw new RangeError(`${stockTables[from].file}: no "${wanted}"`);
  return found;
}
