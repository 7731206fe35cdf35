/** Bent strips in the notebook about the builder's own stock: points, residuals, moduli. */
import type { BendTest } from "../../design/index.js";
import type { Job } from "../../job/index.js";
import { bentStrips, lineFit, residuals, type SpannedPiece, type SpreadResult } from "../../measure/index.js";
import { type KnownModulus, modulusHalfWidth, sheetModuli, sheetPiecesBent } from "../../model/index.js";
import { type TableView, tableOf } from "../../page/index.js";
import { Force, Length, Pressure, ratio, showNumber } from "../../quantity/index.js";

/** One reading of a bend test, in the units of a shop. */
export interface BendPoint {
  readonly strip: string;
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
export function residualsOf(rows: readonly Pick<BendTest, "load" | "sag">[]): readonly BendResidual[] {
  const points = { x: rows.map(({ load }) => ratio(load)), y: rows.map(({ sag }) => ratio(sag)) };
  const off = residuals(points, lineFit(points));
  return rows.map(({ load }, i) => ({ load: Force.in(load, "kgf"), off: (off[i] ?? 0) * 1000 }));
}

/** Modulus of one strip with its interval, GPa. */
export interface StripModulus {
  readonly strip: string;
  readonly modulus: number;
  readonly low: number;
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
      { heading: "Degrees of freedom", cell: ({ own }) => own.uncertainty?.degreesOfFreedom ?? "" },
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
      { heading: "Degrees of freedom", cell: ({ shearModulus }) => shearModulus.degreesOfFreedom },
    ],
    "One piece over two spans: the shorter, the more of its sag is shear",
  );
}

/** A value with half of its 95 % interval. */
export function spreadText({ value, interval }: SpreadResult<Pressure>, unit: "GPa" | "MPa"): string {
  const half = Pressure.si((interval.high - interval.low) / 2);
  return `${Pressure.show(value, { unit, digits: 3 })} ± ${showNumber(Pressure.in(half, unit), 2)}`;
}

/** Strips bent over one span; pieces bent over two have a table of their own. */
function bareRows(bends: readonly BendTest[], sheet: string): readonly BendTest[] {
  return bends.filter((row) => row.sheet === sheet && row.faced === "bare" && row.piece === undefined);
}
