/** What the builder measured: each table of measurements with its columns, its rules and its row. */
import type { TableRow } from "../measure/index.js";
import {
  Area,
  Count,
  choice,
  Force,
  Length,
  Mass,
  Money,
  Name,
  Power,
  Pressure,
  Ratio,
  Temperature,
  Time,
} from "../quantity/index.js";
import {
  type DeclaredColumns,
  type DeclaredTable,
  eachRow,
  inMillimetres,
  type LineRule,
  nameIn,
  needed,
  optional,
  type RowOf,
  type RowRule,
  table,
} from "./table.js";

/** A table of measurements; without rows the findings that need them are unknown. */
function measured<Columns extends DeclaredColumns>(
  file: string,
  columns: Columns,
  rulesOf?: DeclaredTable<Columns>["rulesOf"],
): DeclaredTable<Columns> {
  return table(file, columns, { mayBeEmpty: true, ...(rulesOf ? { rulesOf } : {}) });
}

const positive = { above: 0 };
const zeroOrMore = { min: 0 };
const testNamed = (what: string) => needed("test", Name, `What ${what} is called.`, { unique: true });

const bendColumns = {
  strip: needed("strip", Name, "What the strip is called; its rows stand in the order they were read."),
  sheet: nameIn("sheet", ["sheets"], "The sheet it was cut from."),
  direction: needed("direction", choice("direction", ["along", "across"]), "Direction of its face grain."),
  faced: needed("faced", choice("faced", ["bare", "one face", "both faces"]), "Faces that carry laminate."),
  span: needed("span", Length, "Distance between its two rests.", positive),
  width: needed("width", Length, "Width of the strip.", positive),
  thickness: needed("thickness", Length, "Thickness of the strip with its laminate.", positive),
  load: needed("load", Force, "Load at the middle.", zeroOrMore),
  sag: needed("sag", Length, "Sag at the middle.", zeroOrMore),
  rests: optional("rests", Length, "How far the rests gave under this load, the mean of both.", zeroOrMore),
  piece: optional("piece", Name, "The piece that two strips are, one over a long and one over a short span."),
};

/** A row of bend-tests.csv: one load on one strip. */
export interface BendTest extends RowOf<typeof bendColumns> {}

const breakColumns = {
  strip: needed("strip", Name, "What the strip is called.", { unique: true }),
  sheet: nameIn("sheet", ["sheets"], "The bare sheet it was cut from."),
  direction: needed("direction", choice("direction", ["along", "across"]), "Direction of its face grain."),
  span: needed("span", Length, "Distance between its two rests.", positive),
  width: needed("width", Length, "Width of the strip.", positive),
  thickness: needed("thickness", Length, "Thickness of the strip.", positive),
  load: needed("load", Force, "Load at the middle at which it broke.", positive),
};

/** A row of strength-tests.csv: a bare strip bent over two rests until it broke. */
export interface BreakTest extends RowOf<typeof breakColumns> {}

/** A strip over a short span shears before it breaks. */
function breakRules({ span, thickness }: BreakTest): RowRule[] {
  const expected = `at least 10 times the thickness, ${inMillimetres(10 * thickness)}`;
  return [
    { keeps: span >= 10 * thickness * (1 - 1e-12), column: "span", value: inMillimetres(span), expected },
  ];
}

const weightColumns = {
  sample: needed("sample", Name, "What the offcut is called.", { unique: true }),
  material: nameIn("material", ["sheets", "facings"], "The sheet or laminate it was cut from."),
  length: needed("length", Length, "Length of the offcut.", positive),
  width: needed("width", Length, "Width of the offcut.", positive),
  thickness: needed("thickness", Length, "Thickness of the offcut.", positive),
  mass: needed("mass", Mass, "Mass of the offcut.", positive),
};

/** A row of weights.csv: an offcut, measured and weighed. */
export interface WeightTest extends RowOf<typeof weightColumns> {}

const spreadColumns = {
  trial: needed("trial", Name, "What the trial is called.", { unique: true }),
  adhesive: nameIn("adhesive", ["adhesives"], "The glue that was spread."),
  area: needed("area", Area, "Area of one face of the trial panel.", positive),
  faces: needed("faces", Count, "Faces covered.", { min: 1, max: 2 }),
  before: needed("before", Mass, "Mass of the container and the roller before.", positive),
  after: needed("after", Mass, "Mass of the container and the roller after.", zeroOrMore),
  gained: optional("gained", Mass, "What the trial panel gained, weighed at once.", positive),
};

/** A row of spread-trials.csv: adhesive used on a trial panel. */
export interface SpreadTrial extends RowOf<typeof spreadColumns> {}

function spreadRules({ before, after, gained }: SpreadTrial): RowRule[] {
  const expected = `less than the ${Mass.show(before)} before`;
  return [
    { keeps: after < before, column: "after", value: Mass.show(after), expected },
    {
      keeps: gained === undefined || gained <= before - after,
      column: "gained",
      value: gained === undefined ? "" : Mass.show(gained),
      expected: "at most what the container lost",
    },
  ];
}

const pullColumns = {
  test: testNamed("the test"),
  fastener: nameIn(
    "fastener",
    ["fasteners", "hardware"],
    "The fastener, or the piece of hardware pulled whole.",
  ),
  sheet: nameIn("sheet", ["sheets"], "The sheet it was set in."),
  washer: needed("washer", choice("washer", ["yes", "no"]), "Whether a washer lay at the back."),
  direction: needed("direction", choice("direction", ["pull", "shear"]), "Direction of the load."),
  load: needed("load", Force, "Load at which it gave way.", positive),
};

/** A row of pull-tests.csv: a fastener pulled until it gave way. */
export interface PullTest extends RowOf<typeof pullColumns> {}

const kerfColumns = {
  blade: needed("blade", Name, "What the blade is called."),
  before: needed("before", Length, "Length of the board before.", positive),
  after: needed("after", Length, "Length of the board that was left.", zeroOrMore),
  offcuts: needed("offcuts", Length, "Lengths of the pieces cut off, added up.", zeroOrMore),
  cuts: needed("cuts", Count, "How many cuts were made.", positive),
  use: needed("use", choice("use", ["sheets", "bars", "both"]), "What the blade cuts."),
};

/** A row of kerfs.csv: a board cut so many times. */
export interface KerfTest extends RowOf<typeof kerfColumns> {}

function kerfRules({ before, after, offcuts }: KerfTest): RowRule[] {
  const left = before - offcuts;
  const expected = `less than before less offcuts, ${inMillimetres(left)}`;
  return [{ keeps: after < left, column: "after", value: inMillimetres(after), expected }];
}

const timingColumns = {
  work: needed("work", Name, "What was done."),
  unit: needed(
    "unit",
    choice("unit", ["panel", "cut", "hole", "rivet", "bar", "hardware", "square metre", "case"]),
    "What a piece of it is.",
  ),
  tool: needed("tool", Name, "The tool it was done with."),
  pieces: needed("pieces", Count, "How many pieces were done.", positive),
  time: needed("time", Time, "Time for all of them.", positive),
};

/** A row of timings.csv: the time a piece of work took. */
export interface Timing extends RowOf<typeof timingColumns> {
  /** Time of one piece as it was planned, where as-built.csv has the real one; absent where it has none. */
  readonly planned?: Time;
}

const toolColumns = {
  tool: needed("tool", Name, "What the tool is called.", { unique: true }),
  use: needed(
    "use",
    choice("use", ["rivet", "screw", "bolt", "insert", "hand", "arm", "stick"]),
    "What it sets; a hand or an arm goes through openings, a stick holds the washer of a rivet beyond the hand.",
  ),
  diameter: needed(
    "diameter",
    Length,
    "Width that must be free round its middle line; of a hand or an arm, of the opening that it passes.",
    positive,
  ),
  length: needed(
    "length",
    Length,
    "How far it must be free off the fastener's head; of a hand or an arm, how far it reaches from the opening; of a stick, how far beyond the hand.",
    positive,
  ),
};

/** A row of tools.csv: the room that a tool takes at a fastener, or how far a hand or an arm reaches. */
export interface ToolRoom extends RowOf<typeof toolColumns> {}

const twistColumns = {
  sample: needed("sample", Name, "What the offcut is called."),
  sheet: nameIn("sheet", ["sheets"], "The sheet it was cut from."),
  width: needed("width", Length, "Width between the corner rests.", positive),
  height: needed("height", Length, "Height between the corner rests.", positive),
  thickness: needed("thickness", Length, "Thickness of the offcut.", positive),
  load: needed("load", Force, "Load on the free corner.", zeroOrMore),
  drop: needed("drop", Length, "Drop of the free corner.", zeroOrMore),
};

/** A row of twist-tests.csv: one load on the free corner of an offcut that rests on the other three. */
export interface TwistTest extends RowOf<typeof twistColumns> {}

const tiltColumns = {
  test: testNamed("the test"),
  what: needed("what", Name, 'What slides, such as "instrument case".'),
  on: needed("on", Name, 'What it slides on, such as "foam" or "van floor".'),
  rise: needed("rise", Length, "Rise of the raised end.", positive),
  run: needed("run", Length, "Run along the floor.", positive),
};

/** A row of tilt-tests.csv: a board raised until what lies on it slides. */
export interface TiltTest extends RowOf<typeof tiltColumns> {}

const cushionColumns = {
  foam: needed("foam", Name, "Kind of foam."),
  thickness: needed("thickness", Length, "Thickness of the foam.", positive),
  drop: needed("drop", Length, "Height it was dropped from.", positive),
  stress: needed("stress", Pressure, "Pressure on the foam at rest.", positive),
  deceleration: needed("deceleration", Ratio, "Greatest deceleration, in gravities.", { above: 1 }),
};

/** A row of cushion-curves.csv: one point of one cushion curve, measured or published. */
export interface CushionPoint extends RowOf<typeof cushionColumns> {}

/** A curve is the rows of one foam, thickness and drop: at least two, at rising pressures. */
function curveRules(rows: readonly (CushionPoint & TableRow)[]): readonly LineRule[] {
  const nameOf = ({ foam, thickness, drop }: CushionPoint): string =>
    `${foam}, ${inMillimetres(thickness)}, drop ${inMillimetres(drop)}`;
  return [...new Set(rows.map(nameOf))].flatMap((name) =>
    rows
      .filter((row) => nameOf(row) === name)
      .map((point, i, curve): LineRule => {
        const before = curve[i - 1];
        if (!before) {
          const expected = `at least 2 points of the curve ${name}, at different pressures`;
          return { line: point.line, keeps: curve.length > 1, column: "foam", value: point.foam, expected };
        }
        return {
          line: point.line,
          keeps: point.stress > before.stress,
          column: "stress",
          value: Pressure.show(point.stress),
          expected: `more than ${Pressure.show(before.stress)}, the point before on the curve ${name}`,
        };
      }),
  );
}

const temperatureColumns = {
  section: needed("section", Name, "The section whose thermometers were read."),
  time: needed("time", Time, "Time since it was switched on.", zeroOrMore),
  inside: needed("inside", Temperature, "Air inside."),
  outside: needed("outside", Temperature, "Air outside."),
  power: needed("power", Power, "Power turned to heat inside all that time.", zeroOrMore),
};

/** A row of temperature-log.csv: thermometers inside and outside, some time after switching on. */
export interface TemperatureReading extends RowOf<typeof temperatureColumns> {}

/** A log of a section is one warm-up: the same power all the time, each reading later than the one before. */
function logRules(rows: readonly (TemperatureReading & TableRow)[]): readonly LineRule[] {
  return rows.flatMap(({ section, line, time, power }, i): LineRule[] => {
    const before = rows.slice(0, i).findLast((row) => row.section === section);
    if (!before) return [];
    return [
      {
        line,
        keeps: time > before.time,
        column: "time",
        value: Time.show(time, { unit: "min" }),
        expected: `later than the ${Time.show(before.time, { unit: "min" })} of the reading before`,
      },
      {
        line,
        keeps: power === before.power,
        column: "power",
        value: Power.show(power),
        expected: `the ${Power.show(before.power)} of the reading before: a log is one warm-up with one load`,
      },
    ];
  });
}

const wallColumns = {
  bar: nameIn("bar", ["bars"], "The bar whose cross section it is."),
  fromX: needed("from x", Length, "Where the middle of the wall begins."),
  fromY: needed("from y", Length, "Where the middle of the wall begins."),
  toX: needed("to x", Length, "Where the middle of the wall ends."),
  toY: needed("to y", Length, "Where the middle of the wall ends."),
  wall: needed("wall", Length, "Thickness of the wall.", positive),
};

/** A row of bar-profiles.csv: one straight wall of an edge bar's cross section, measured along its middle line. */
export interface BarWall extends RowOf<typeof wallColumns> {}

function wallRules({ fromX, fromY, toX, toY, wall }: BarWall): RowRule[] {
  const length = Math.hypot(toX - fromX, toY - fromY);
  const expected = `a wall longer than its thickness, ${inMillimetres(wall)}`;
  return [{ keeps: length > wall, column: "to x", value: inMillimetres(length), expected }];
}

/** What is measured on the finished case or paid for it, and the column that its figure stands in. */
export const asBuiltMeasures = {
  thickness: "length",
  kerf: "length",
  width: "length",
  height: "length",
  "diagonals apart": "length",
  "bar length": "length",
  "opening width": "length",
  "opening height": "length",
  "outside width": "length",
  "outside depth": "length",
  "outside height": "length",
  gap: "length",
  "can before": "can",
  "can after": "can",
  "weight empty": "mass",
  "weight loaded": "mass",
  time: "time",
  "price paid": "price",
} as const satisfies Readonly<Record<string, "length" | "can" | "mass" | "time" | "price">>;
/** What is measured on the finished case or paid for it. */
export type AsBuiltMeasure = keyof typeof asBuiltMeasures;
const measureNames = Object.keys(asBuiltMeasures) as AsBuiltMeasure[];

const asBuiltColumns = {
  number: optional("number", Name, "The number beside the line on the papers, such as M12."),
  what: needed("what", choice("what", measureNames), "What was measured."),
  of: needed("of", Name, "What it was measured of: a sheet, a piece, a section, a work, a supplier."),
  at: optional("at", Name, "Where, of what is measured in several places."),
  length: optional("length", Length, "A length, a thickness or a gap.", zeroOrMore),
  can: optional("can", Mass, "What the can of glue weighs.", zeroOrMore),
  mass: optional("mass", Mass, "What a section weighs.", positive),
  time: optional("time", Time, "How long it took, for all pieces.", positive),
  pieces: optional("pieces", Count, "How many pieces of the work there were.", positive),
  price: optional("price", Money, "What was paid.", zeroOrMore),
};

/** A row of as-built.csv: a line of the papers, filled in; one without a figure was left empty. */
export interface AsBuiltRow extends RowOf<typeof asBuiltColumns> {}

/** The figures of a row, by the column that they stand in. */
function figuresOf({ length, can, mass, time, price }: AsBuiltRow) {
  return Object.entries({ length, can, mass, time, price }).flatMap(([column, value]) =>
    value === undefined ? [] : [column],
  );
}

/** Whether a row has been filled in. */
export function isFilledIn(row: AsBuiltRow): boolean {
  return figuresOf(row).length > 0;
}

function asBuiltRules(row: AsBuiltRow): RowRule[] {
  const { what, pieces } = row;
  const own = asBuiltMeasures[what];
  return [
    ...figuresOf(row)
      .filter((column) => column !== own)
      .map((column) => ({
        keeps: false,
        column,
        value: `a figure for ${what}`,
        expected: `nothing: a ${what} stands in the column ${own}`,
      })),
    {
      keeps: what !== "time" || row.time === undefined || pieces !== undefined,
      column: "pieces",
      value: "",
      expected: "how many pieces of the work the time is for",
    },
  ];
}

/** The tables of measurements; each may be absent or have no rows. */
export const measuredTables = {
  bends: measured("bend-tests.csv", bendColumns),
  breaks: measured("strength-tests.csv", breakColumns, eachRow(breakRules)),
  weights: measured("weights.csv", weightColumns),
  spreads: measured("spread-trials.csv", spreadColumns, eachRow(spreadRules)),
  pulls: measured("pull-tests.csv", pullColumns),
  kerfs: measured("kerfs.csv", kerfColumns, eachRow(kerfRules)),
  timings: measured("timings.csv", timingColumns),
  tools: measured("tools.csv", toolColumns),
  twists: measured("twist-tests.csv", twistColumns),
  tilts: measured("tilt-tests.csv", tiltColumns),
  cushions: measured("cushion-curves.csv", cushionColumns, curveRules),
  temperatures: measured("temperature-log.csv", temperatureColumns, logRules),
  profiles: measured("bar-profiles.csv", wallColumns, eachRow(wallRules)),
  asBuilt: measured("as-built.csv", asBuiltColumns, eachRow(asBuiltRules)),
};

/** Every measurement of a job; a table without rows is allowed and makes findings unknown. */
export interface Measurements {
  /** Rows of bend-tests.csv. */
  readonly bends: readonly BendTest[];
  /** Rows of strength-tests.csv. */
  readonly breaks: readonly BreakTest[];
  /** Rows of weights.csv. */
  readonly weights: readonly WeightTest[];
  /** Rows of spread-trials.csv. */
  readonly spreads: readonly SpreadTrial[];
  /** Rows of pull-tests.csv. */
  readonly pulls: readonly PullTest[];
  /** Rows of kerfs.csv. */
  readonly kerfs: readonly KerfTest[];
  /** Rows of timings.csv. */
  readonly timings: readonly Timing[];
  /** Rows of tools.csv; usual tools where there are none. */
  readonly tools: readonly ToolRoom[];
  /** Rows of twist-tests.csv. */
  readonly twists: readonly TwistTest[];
  /** Rows of tilt-tests.csv. */
  readonly tilts: readonly TiltTest[];
  /** Rows of cushion-curves.csv. */
  readonly cushions: readonly CushionPoint[];
  /** Rows of temperature-log.csv. */
  readonly temperatures: readonly TemperatureReading[];
  /** Rows of bar-profiles.csv. */
  readonly profiles: readonly BarWall[];
  /** Rows of as-built.csv; none before the case is built. */
  readonly asBuilt: readonly AsBuiltRow[];
}
