/** The columns of the tables of what the builder measured. */
import { column, optionalColumn, type TableRow, type TableSchema, tableSchema } from "../../measure/index.js";
import {
  Area,
  Count,
  choice,
  Force,
  Length,
  Mass,
  Name,
  Power,
  Pressure,
  Ratio,
  Temperature,
  Time,
} from "../../quantity/index.js";
import type { Measurements } from "../stock.js";

/** A row of a table of measurements, with its line. */
export type MeasuredRow<Table extends keyof Measurements> = Measurements[Table][number] & TableRow;

/** Without measurements the findings that need them are unknown. */
const mayBeEmpty = { mayBeEmpty: true };
const positive = { above: 0 };
const zeroOrMore = { min: 0 };

/** The columns of each file, by table. */
export const measuredTables: { readonly [Table in keyof Measurements]: TableSchema<MeasuredRow<Table>> } = {
  bends: tableSchema<MeasuredRow<"bends">>(
    {
      strip: column("strip", Name),
      sheet: column("sheet", Name),
      direction: column("direction", choice("direction", ["along", "across"])),
      faced: column("faced", choice("faced", ["bare", "one face", "both faces"])),
      span: column("span", Length, positive),
      width: column("width", Length, positive),
      thickness: column("thickness", Length, positive),
      load: column("load", Force, zeroOrMore),
      sag: column("sag", Length, zeroOrMore),
      rests: optionalColumn("rests", Length, zeroOrMore),
      piece: optionalColumn("piece", Name),
    },
    mayBeEmpty,
  ),
  weights: tableSchema<MeasuredRow<"weights">>(
    {
      sample: column("sample", Name, { unique: true }),
      material: column("material", Name),
      length: column("length", Length, positive),
      width: column("width", Length, positive),
      thickness: column("thickness", Length, positive),
      mass: column("mass", Mass, positive),
    },
    mayBeEmpty,
  ),
  spreads: tableSchema<MeasuredRow<"spreads">>(
    {
      trial: column("trial", Name, { unique: true }),
      adhesive: column("adhesive", Name),
      area: column("area", Area, positive),
      faces: column("faces", Count, { min: 1, max: 2 }),
      before: column("before", Mass, positive),
      after: column("after", Mass, zeroOrMore),
      gained: optionalColumn("gained", Mass, positive),
    },
    mayBeEmpty,
  ),
  pulls: tableSchema<MeasuredRow<"pulls">>(
    {
      test: column("test", Name, { unique: true }),
      fastener: column("fastener", Name),
      sheet: column("sheet", Name),
      washer: column("washer", choice("washer", ["yes", "no"])),
      direction: column("direction", choice("direction", ["pull", "shear"])),
      load: column("load", Force, positive),
    },
    mayBeEmpty,
  ),
  kerfs: tableSchema<MeasuredRow<"kerfs">>(
    {
      blade: column("blade", Name),
      before: column("before", Length, positive),
      after: column("after", Length, zeroOrMore),
      offcuts: column("offcuts", Length, zeroOrMore),
      cuts: column("cuts", Count, positive),
      use: column("use", choice("use", ["sheets", "bars", "both"])),
    },
    mayBeEmpty,
  ),
  twists: tableSchema<MeasuredRow<"twists">>(
    {
      sample: column("sample", Name),
      sheet: column("sheet", Name),
      width: column("width", Length, positive),
      height: column("height", Length, positive),
      thickness: column("thickness", Length, positive),
      load: column("load", Force, zeroOrMore),
      drop: column("drop", Length, zeroOrMore),
    },
    mayBeEmpty,
  ),
  tilts: tableSchema<MeasuredRow<"tilts">>(
    {
      test: column("test", Name, { unique: true }),
      what: column("what", Name),
      on: column("on", Name),
      rise: column("rise", Length, positive),
      run: column("run", Length, positive),
    },
    mayBeEmpty,
  ),
  timings: tableSchema<MeasuredRow<"timings">>(
    {
      work: column("work", Name),
      unit: column(
        "unit",
        choice("unit", ["panel", "cut", "hole", "rivet", "bar", "hardware", "square metre", "case"]),
      ),
      tool: column("tool", Name),
      pieces: column("pieces", Count, positive),
      time: column("time", Time, positive),
    },
    mayBeEmpty,
  ),
  cushions: tableSchema<MeasuredRow<"cushions">>(
    {
      foam: column("foam", Name),
      thickness: column("thickness", Length, positive),
      drop: column("drop", Length, positive),
      stress: column("stress", Pressure, positive),
      deceleration: column("deceleration", Ratio, { above: 1 }),
    },
    mayBeEmpty,
  ),
  temperatures: tableSchema<MeasuredRow<"temperatures">>(
    {
      section: column("section", Name),
      time: column("time", Time, zeroOrMore),
      inside: column("inside", Temperature),
      outside: column("outside", Temperature),
      power: column("power", Power, zeroOrMore),
    },
    mayBeEmpty,
  ),
  profiles: tableSchema<MeasuredRow<"profiles">>(
    {
      bar: column("bar", Name),
      fromX: column("from x", Length),
      fromY: column("from y", Length),
      toX: column("to x", Length),
      toY: column("to y", Length),
      wall: column("wall", Length, positive),
    },
    mayBeEmpty,
  ),
};
