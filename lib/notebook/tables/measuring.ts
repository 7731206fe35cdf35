/** Tables, chart rows and the answer of the notebook that asks about the builder's own stock. */
import type { BendTest, SheetStock } from "../../design/index.js";
import type { Job } from "../../job/index.js";
import {
  bentStrips,
  kerfFromCuts,
  lineFit,
  measuredMean,
  oversprayShare,
  residuals,
  sheetDensity,
  spreadTrialRate,
} from "../../measure/index.js";
import { type TableView, tableOf } from "../../page/index.js";
import {
  AreaDensity,
  Density,
  Force,
  Length,
  Pressure,
  Ratio,
  ratio,
  showNumber,
} from "../../quantity/index.js";
import { type KnownModulus, modulusHalfWidth, sheetModuli } from "../../review/index.js";

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
  return bentStrips(rows, "bend-tests.csv").strips.map(({ strip, modulus }) => ({
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
    "Bending modulus: the higher, the stiffer. After ± is the 95 % interval.",
  );
}

function plusMinus(known: KnownModulus): string {
  const half = modulusHalfWidth(known);
  return `${Pressure.show(known.modulus, { unit: "GPa", digits: 3 })} ± ${showNumber(Pressure.in(half, "GPa"), 2)}`;
}

/** Weights of offcuts against the densities of the stock tables. */
export function weightTable({ measurements, stock }: Job): TableView {
  const stated = [...stock.sheets, ...stock.facings];
  const materials = [...new Set(measurements.weights.map(({ material }) => material))];
  return tableOf(
    materials.map((material) => {
      const rows = measurements.weights
        .filter((row) => row.material === material)
        .map((row) => sheetDensity(row));
      const densities = rows.map(({ density }) => density);
      return {
        material,
        offcuts: densities.length,
        own: densities.length > 1 ? measuredMean(densities).mean : densities[0],
        stated: stated.find(({ name }) => name === material)?.density,
      };
    }),
    [
      { heading: "Material", cell: ({ material }) => material },
      { heading: "Offcuts", cell: ({ offcuts }) => offcuts },
      { heading: "Weighed", cell: ({ own }) => (own === undefined ? "" : Density.show(own, { digits: 3 })) },
      {
        heading: "Stock table",
        cell: ({ stated: table }) => (table === undefined ? "" : Density.show(table, { digits: 3 })),
      },
    ],
    "Density of the sheets and laminates",
  );
}

/** Blades and what each turns to dust. */
export function kerfTable({ measurements }: Job): TableView {
  return tableOf(
    measurements.kerfs,
    [
      { heading: "Blade", cell: ({ blade }) => blade },
      { heading: "Used for", cell: ({ use }) => use },
      { heading: "Kerf", cell: (row) => Length.show(kerfFromCuts(row), { unit: "mm", digits: 3 }) },
      { heading: "Cuts", cell: ({ cuts }) => cuts },
    ],
    "Width of each blade's cut",
  );
}

/** Adhesives as spread on trial panels, against their labels. */
export function spreadTable({ measurements, stock }: Job): TableView {
  return tableOf(
    measurements.spreads,
    [
      { heading: "Trial", cell: ({ trial }) => trial },
      { heading: "Adhesive", cell: ({ adhesive }) => adhesive },
      {
        heading: "Used on one face, wet",
        cell: (row) => AreaDensity.show(spreadTrialRate(row), { unit: "g/m2", digits: 3 }),
      },
      {
        heading: "Beside the panel",
        cell: ({ gained, ...row }) =>
          gained === undefined
            ? ""
            : Ratio.show(oversprayShare({ ...row, gained }), { unit: "%", digits: 2 }),
      },
      {
        heading: "Label",
        cell: ({ adhesive }) => {
          const label = stock.adhesives.find(({ name }) => name === adhesive)?.labelRate;
          return label === undefined ? "" : AreaDensity.show(label, { unit: "g/m2", digits: 3 });
        },
      },
    ],
    "Adhesive used on trial panels",
  );
}

/** What the measurements say of the sheet most used in the case. */
export function measuringAnswer(job: Job): string {
  const sheet = mostUsed(job);
  const { along, across } = sheetModuli(sheet, job.measurements);
  if (along.from !== "measured" || across.from !== "measured") {
    return `No bend tests of ${sheet.name} yet: every stiffness rests on its veneers and a handbook. Bend two strips along and two across the grain.`;
  }
  const share = Ratio.show(Ratio.si(modulusHalfWidth(along) / along.modulus), { unit: "%", digits: 1 });
  return `Your ${sheet.name} bends like ${Pressure.show(along.modulus, { unit: "GPa", digits: 2 })} along the grain and ${Pressure.show(across.modulus, { unit: "GPa", digits: 2 })} across it, known to about ${share}.`;
}

/** The sheet that most of the case is made of. */
export function mostUsed({ parts }: Job): SheetStock {
  const area = (name: string): number =>
    parts.panels.reduce((sum, { sheet, grossArea }) => (sheet.name === name ? sum + grossArea : sum), 0);
  const [most] = parts.panels.map(({ sheet }) => sheet).sort((a, b) => area(b.name) - area(a.name));
  if (!most) throw new RangeError("measuring: the case has no panels");
  return most;
}

function bareRows(bends: readonly BendTest[], sheet: string): readonly BendTest[] {
  return bends.filter((row) => row.sheet === sheet && row.faced === "bare");
}
