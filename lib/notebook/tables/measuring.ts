/** Weights, kerfs and glue of the notebook about the builder's own stock, and its answer. */
import type { SheetStock } from "../../design/index.js";
import type { Job } from "../../job/index.js";
import {
  kerfFromCuts,
  measuredMean,
  oversprayShare,
  sheetDensity,
  spreadTrialRate,
} from "../../measure/index.js";
import { modulusHalfWidth, sheetModuli } from "../../model/index.js";
import { type TableView, tableOf } from "../../page/index.js";
import { AreaDensity, Density, Length, Pressure, Ratio } from "../../quantity/index.js";
import { Refusal } from "../../refusal.js";

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
  if (!most) throw new Refusal("measuring: the case has no panels");
  return most;
}
