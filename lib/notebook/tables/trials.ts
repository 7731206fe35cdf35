/** Bent strips and the other trials that a builder makes: points, residuals and tables. */
import type { BendTest } from "../../design/index.js";
import { fitWarmUp, TemperatureRise } from "../../inside/index.js";
import type { Job } from "../../job/index.js";
import {
  bentStrips,
  characteristicStrength,
  lineFit,
  residuals,
  type SpannedPiece,
  type SpreadResult,
  tiltFriction,
  timePerPiece,
  twistedSamples,
} from "../../measure/index.js";
import {
  facingModuli,
  type KnownModulus,
  modulusHalfWidth,
  sheetModuli,
  sheetPiecesBent,
} from "../../model/index.js";
import { type TableView, tableOf } from "../../page/index.js";
import { Force, Length, Pressure, Ratio, ratio, showNumber, Time } from "../../quantity/index.js";

/** One reading of a bend test, in the units of a shop. */
export interface BendPoint {
  /** Name of the strip. */
  readonly strip: string;
  /** Which way it was cut, in words. */
  readonly cut: string;
  /** kgf */
  readonly load: number;
  /** mm */
  readonly sag: number;
}

/** Readings of all bare strips of a sheet. */
export function bendPoints({ measurements }: Job, sheet: string): readonly BendPoint[] {
  return bareRows(measurements.bends, sheet).map(({ strip, direction, load, sag }) => ({
    strip,
    cut: `${direction} the grain`,
    load: Force.in(load, "kgf"),
    sag: Length.in(sag, "mm"),
  }));
}

/** How far each reading of a strip lies from its own straight line. */
export interface BendResidual {
  /** Weight hung on it, kgf. */
  readonly load: number;
  /** mm */
  readonly off: number;
}

/** Readings of one strip against its fitted line. */
export function bendResiduals({ measurements }: Job, strip: string): readonly BendResidual[] {
  const rows = measurements.bends.filter((row) => row.strip === strip);
  return residualsOf(rows);
}

/** Readings against the straight line through them. */
function residualsOf(rows: readonly Pick<BendTest, "load" | "sag">[]): readonly BendResidual[] {
  const points = { x: rows.map(({ load }) => ratio(load)), y: rows.map(({ sag }) => ratio(sag)) };
  const off = residuals(points, lineFit(points));
  return rows.map(({ load }, i) => ({ load: Force.in(load, "kgf"), off: (off[i] ?? 0) * 1000 }));
}

/** Modulus of one strip with its interval, GPa. */
export interface StripModulus {
  /** Name of the strip and which way it was cut. */
  readonly strip: string;
  /** Modulus, GPa. */
  readonly modulus: number;
  /** Lower end of the interval, GPa. */
  readonly low: number;
  /** Upper end of the interval, GPa. */
  readonly high: number;
}

/** Modulus of each bare strip of a sheet. */
export function stripModuli({ measurements }: Job, sheet: string): readonly StripModulus[] {
  const rows = bareRows(measurements.bends, sheet);
  return bentStrips(rows).strips.map(({ strip, modulus }) => ({
    strip: `${strip}, ${rows.find((row) => row.strip === strip)?.direction ?? ""}`,
    modulus: Pressure.in(modulus.value, "GPa"),
    low: Pressure.in(modulus.interval.low, "GPa"),
    high: Pressure.in(modulus.interval.high, "GPa"),
  }));
}

/** Measured bending moduli of every sheet, beside what its veneers promise. */
export function moduliTable(job: Job): TableView {
  const sheets = job.stock.sheets;
  const rows = sheets.flatMap((sheet) => {
    const own = sheetModuli(sheet, job.measurements);
    const promised = sheetModuli(sheet, { ...job.measurements, bends: [] });
    return (["along", "across"] as const).map((way) => ({
      sheet,
      way,
      own: own[way],
      promised: promised[way],
    }));
  });
  return tableOf(
    rows,
    [
      { heading: "Sheet", cell: ({ sheet }) => sheet.name },
      { heading: "Strips cut", cell: ({ way }) => `${way} the grain` },
      { heading: "Strips", cell: ({ own }) => own.strips },
      { heading: "Measured", cell: ({ own }) => (own.from === "measured" ? plusMinus(own) : "not yet") },
      { heading: "From its veneers", cell: ({ promised }) => Pressure.show(promised.modulus, { digits: 3 }) },
    ],
    "Bending modulus: the higher, the stiffer. After ± is half the 95 % interval.",
  );
}

function plusMinus(known: KnownModulus): string {
  const half = modulusHalfWidth(known);
  return `${Pressure.show(known.modulus, { unit: "GPa", digits: 3 })} ± ${showNumber(Pressure.in(half, "GPa"), 2)}`;
}

/** A piece that was bent over two spans, with its sheet. */
type BentPiece = SpannedPiece & { readonly sheet: string; readonly way: "along" | "across" };

/** Pieces bent over a long and a short span: what is bending and what is shear. */
export function twoSpanTable({ stock, measurements }: Job): TableView {
  const pieces = stock.sheets.flatMap((sheet) =>
    (["along", "across"] as const).flatMap((way): BentPiece[] =>
      sheetPiecesBent(sheet, measurements, way).map((piece) => ({ ...piece, sheet: sheet.name, way })),
    ),
  );
  return tableOf(
    pieces,
    [
      { heading: "Piece", cell: ({ piece, strips }) => `${piece} (${strips.join(" and ")})` },
      { heading: "Sheet", cell: ({ sheet }) => sheet },
      { heading: "Cut", cell: ({ way }) => `${way} the grain` },
      { heading: "Modulus without shear", cell: ({ modulus }) => spreadText(modulus, "GPa") },
      { heading: "Shear modulus through it", cell: ({ shearModulus }) => spreadText(shearModulus, "MPa") },
    ],
    "One piece over two spans: the shorter, the more of its sag is shear",
  );
}

/** A value with half of its 95 % interval. */
function spreadText({ value, interval }: SpreadResult<Pressure>, unit: "GPa" | "MPa"): string {
  const half = Pressure.si((interval.high - interval.low) / 2);
  return `${Pressure.show(value, { unit, digits: 3 })} ± ${showNumber(Pressure.in(half, unit), 2)}`;
}

/** Strips bent over one span; pieces bent over two have a table of their own. */
function bareRows(bends: readonly BendTest[], sheet: string): readonly BendTest[] {
  return bends.filter((row) => row.sheet === sheet && row.faced === "bare" && row.piece === undefined);
}

/** Twisted offcuts with the shear modulus each gives. */
export function twistTable({ measurements }: Job): TableView {
  return tableOf(
    twistedSamples(measurements.twists).samples,
    [
      { heading: "Offcut", cell: ({ sample }) => sample },
      { heading: "Shear modulus", cell: ({ modulus }) => spreadText(modulus, "GPa") },
    ],
    "Shear modulus in the plane of the sheet, from twisted offcuts. After ± is half the 95 % interval.",
  );
}

/** How far each reading of a twisted offcut lies from its own straight line. */
export function twistResiduals({ measurements }: Job, sample: string): readonly BendResidual[] {
  const rows = measurements.twists.filter((row) => row.sample === sample);
  return residualsOf(rows.map(({ load, drop }) => ({ load, sag: drop })));
}

/** Facings as bent strips, bare and faced, show them. */
export function facingModulusTable({ measurements, stock }: Job): TableView {
  return tableOf(
    facingModuli(stock.sheets, measurements),
    [
      { heading: "Strips of", cell: ({ sheet }) => sheet },
      { heading: "Cut", cell: ({ direction }) => `${direction} the grain` },
      { heading: "Faced on", cell: ({ faced }) => faced },
      { heading: "Modulus of the facing", cell: ({ modulus }) => Pressure.show(modulus.value, gigapascals) },
      {
        heading: "95 % interval",
        cell: ({ modulus: { interval } }) =>
          `${showNumber(Pressure.in(interval.low, "GPa"), 2)} to ${Pressure.show(interval.high, gigapascals)}`,
      },
    ],
    "What the facing adds: strips bent bare against strips bent faced",
  );
}

/** Things tilted on a board until they slid. */
export function tiltTable({ measurements }: Job): TableView {
  const pairs = [...new Set(measurements.tilts.map(({ what, on }) => `${what} on ${on}`))];
  return tableOf(
    pairs.map((pair) => ({
      pair,
      friction: measurements.tilts
        .filter(({ what, on }) => `${what} on ${on}` === pair)
        .map((row) => tiltFriction(row)),
    })),
    [
      { heading: "What on what", cell: ({ pair }) => pair },
      { heading: "Trials", cell: ({ friction }) => friction.length },
      { heading: "Lowest", cell: ({ friction }) => Ratio.show(ratio(Math.min(...friction)), { digits: 2 }) },
      {
        heading: "Mean",
        cell: ({ friction }) =>
          Ratio.show(ratio(friction.reduce((sum, one) => sum + one, 0) / friction.length), { digits: 2 }),
      },
    ],
    "Friction from a tilted board; count on the lowest",
  );
}

/** Work against the clock, a row a work and tool, hand beside powered. */
export function pieceTimes({ measurements }: Job): TableView {
  return tableOf(
    [...measurements.timings].sort((a, b) => a.work.localeCompare(b.work)),
    [
      { heading: "Work", cell: ({ work }) => work },
      { heading: "Tool", cell: ({ tool }) => tool },
      { heading: "A piece is a", cell: ({ unit }) => unit },
      { heading: "One takes", cell: (row) => Time.show(timePerPiece(row), { unit: "min", digits: 2 }) },
      { heading: "Timed", cell: ({ pieces }) => pieces },
    ],
    "Minutes a piece",
  );
}

/** Fasteners by how they were set, with the strength that 95 of 100 exceed. */
export function strengthTable({ measurements }: Job): TableView {
  const name = ({ fastener, sheet, washer, direction }: Job["measurements"]["pulls"][number]): string =>
    `${fastener} in ${sheet}, ${direction === "shear" ? "sheared" : `pulled, ${washer === "yes" ? "with" : "no"} washer`}`;
  const groups = [...new Set(measurements.pulls.map(name))].map((group) => ({
    group,
    loads: measurements.pulls.filter((row) => name(row) === group).map(({ load }) => load),
  }));
  return tableOf(
    groups,
    [
      { heading: "Fastener", cell: ({ group }) => group },
      { heading: "Tests", cell: ({ loads }) => loads.length },
      { heading: "Lowest", cell: ({ loads }) => newtons(Math.min(...loads)) },
      {
        heading: "95 of 100 hold",
        cell: ({ loads }) =>
          loads.length < 3 ? "pull at least 3" : newtons(characteristicStrength({ loads }).strength),
      },
    ],
    "Strength to count on: exceeded by 95 of 100, at 75 % confidence",
  );
}

function newtons(force: number): string {
  return Force.show(Force.si(force), { unit: "N", digits: 3 });
}

const gigapascals = { unit: "GPa", digits: 3 } as const;

/** What the log of thermometers in a closed box comes to, a row a section. */
export function warmUpTable({ measurements: { temperatures } }: Job): TableView {
  const sections = [...new Set(temperatures.map(({ section }) => section))];
  const fits = sections.flatMap((section) => {
    const rows = temperatures.filter((row) => row.section === section);
    const readings = rows.map(({ time, inside, outside }) => ({
      time,
      rise: TemperatureRise.si(inside - outside),
    }));
    return readings.length < 3 ? [] : [{ section, readings: readings.length, fit: fitWarmUp({ readings }) }];
  });
  return tableOf(
    fits,
    [
      { heading: "Section", cell: ({ section }) => section },
      { heading: "Readings", cell: ({ readings }) => readings },
      {
        heading: "Warmer in the end by",
        cell: ({ fit }) => `${kelvins(fit.finalRise)} ± ${kelvins(fit.riseWithin)}`,
      },
      {
        heading: "To 63 % of it in",
        cell: ({ fit }) => Time.show(fit.timeConstant, { unit: "min", digits: 2 }),
      },
    ],
    "A closed box with a known load inside, from its log; three readings at least",
  );
}

function kelvins(rise: TemperatureRise): string {
  return TemperatureRise.show(rise, { digits: 2 });
}
