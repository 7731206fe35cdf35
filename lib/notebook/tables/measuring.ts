/** Weights, kerfs, glue, odd readings and what all measurements leave open: the notebook about the builder's own stock. */
import type { SheetStock } from "../../design/index.js";
import { measuredReview, styleOf } from "../../findings/index.js";
import type { Job } from "../../job/index.js";
import {
  bentStrips,
  type Correlation,
  kerfFromCuts,
  measuredMean,
  monteCarlo,
  oversprayShare,
  propagate,
  type ScatterShare,
  sheetDensity,
  soundHysteresis,
  spannedPieces,
  spreadTrialRate,
  twistedSamples,
} from "../../measure/index.js";
import { modulusHalfWidth, type ReviewInput, sectionBalance, sheetModuli } from "../../model/index.js";
import { type TableView, tableOf } from "../../page/index.js";
import { AreaDensity, Density, Length, Mass, Pressure, Ratio, ratio } from "../../quantity/index.js";
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

/** Something odd about a test, and what to do. */
export interface OddReading {
  /** The test, and the strip or row. */
  readonly where: string;
  /** What is odd, and what to do. */
  readonly odd: string;
}

/** Everything odd about the bend and twist tests: rows that do not belong, strips that creep, tests that cannot be used. */
export function oddReadings({ measurements: { bends, twists } }: Job): readonly OddReading[] {
  const bent = bentStrips(bends);
  const unusable = [...bent.problems, ...spannedPieces(bends).problems, ...twistedSamples(twists).problems];
  return [
    ...unusable.map(({ file, row, expected }) => ({
      where: `${file}, row ${row ?? ""}`,
      odd: `not used: expected ${expected}`,
    })),
    ...bent.strips.flatMap(({ strip, oddLines }) =>
      oddLines.map((line) => ({
        where: `bend-tests.csv, row ${line}`,
        odd: `off the line of strip ${strip}: read it again, or strike it out`,
      })),
    ),
    ...bent.strips.flatMap(({ strip, hysteresis = ratio(0) }) =>
      hysteresis > soundHysteresis
        ? [
            {
              where: `strip ${strip}`,
              odd: `sags ${Ratio.show(hysteresis, { unit: "%", digits: 2 })} more on the way back: look at rests and gauge`,
            },
          ]
        : [],
    ),
  ];
}

/** What is odd about the tests, as a table. */
export function oddTable(job: Job): TableView {
  return tableOf(
    oddReadings(job),
    [
      { heading: "Where", cell: ({ where }) => where },
      { heading: "What is odd", cell: ({ odd }) => odd },
    ],
    "Readings to look at again",
  );
}

/** Share of each measured size and of the readings in the scatter of a strip's modulus, the largest first. */
export function scatterShares({ measurements }: Job, strip: string): readonly ScatterShare[] {
  const rows = measurements.bends.filter((row) => row.strip === strip);
  const words: Readonly<Record<string, string>> = { slope: "sag and load" };
  const shares = bentStrips(rows).strips[0]?.modulus.shares ?? [];
  return shares.map(({ input, share }) => ({ input: words[input] ?? input, share }));
}

/** What to measure better next, in a sentence. */
export function nextMeasurement(job: Job, strip: string): string {
  const [largest] = scatterShares(job, strip);
  const thickness = job.measurements.bends.find((row) => row.strip === strip)?.thickness;
  if (!largest || thickness === undefined)
    return "Bend a strip first: then its scatter tells what to measure better.";
  const remedies: Readonly<Record<string, string>> = {
    "sag and load": "a dial gauge instead of a ruler, and heavier or more weights",
    thickness: `calipers that read hundredths: thickness counts three times over, here at ${Length.show(thickness, { unit: "mm" })}`,
    span: "a steel rule between the rests, read to half a millimetre, or a longer span",
    width: "calipers on the width, at three places",
  };
  return `Most of the scatter of strip ${strip} comes from ${largest.input} (${Ratio.show(ratio(largest.share), { unit: "%", digits: 2 })}). What helps next: ${remedies[largest.input] ?? "more readings"}.`;
}

/** One way of carrying scatter to an answer. */
interface Way {
  /** First order, or drawn. */
  readonly way: string;
  /** The answer. */
  readonly value: Mass;
  /** What the scatter leaves open, at 95 %. */
  readonly interval: { readonly low: Mass; readonly high: Mass };
  /** Of each measured input in the scatter. */
  readonly shares: readonly ScatterShare[];
}

/** Draws for a page: its ends are then sure to about a tenth of their distance. */
const draws = 1000;

/**
 * Mass of a section with its interval three ways: first order, each weighing for itself and all on one scale; and drawn.
 *
 * @param sameScale how far weighings on one scale err together, from 0 to 1
 */
export function massIntervalTable(job: Job, section: string, sameScale: number): TableView {
  const style = { ...styleOf(job.case), digits: 4 };
  return tableOf(
    massIntervals(job, section, sameScale),
    [
      { heading: "Carried", cell: ({ way }) => way },
      { heading: `Mass of ${section}`, cell: ({ value }) => Mass.show(value, style) },
      {
        heading: "95 % interval",
        cell: ({ interval: { low, high } }) =>
          low === high ? "not known: weigh offcuts" : `${Mass.show(low, style)} to ${Mass.show(high, style)}`,
      },
      { heading: "Most of it from", cell: ({ shares }) => largest(shares) },
    ],
    "What the scatter of your measurements leaves open about a mass",
  );
}

function massIntervals(job: Job, section: string, sameScale: number): readonly Way[] {
  const massOf = (input: ReviewInput): Mass => sectionBalance(input, section).value.mass;
  const { compute, at, uncertainties } = measuredReview(job, massOf);
  const together = onOneScale(Object.keys(at), sameScale);
  const first = (correlations: readonly Correlation[]) =>
    propagate(compute, at, uncertainties, ratio(0.95), correlations);
  const shared = Ratio.show(ratio(sameScale), { digits: 2 });
  return [
    { way: "first order, each weighing for itself", ...first([]) },
    { way: `first order, one scale (correlation ${shared})`, ...first(together) },
    {
      way: `drawn, one scale (correlation ${shared})`,
      ...monteCarlo(compute, at, uncertainties, { draws, correlations: together }),
    },
  ];
}

/** Whatever was put on the kitchen scale errs with it. */
function onOneScale(names: readonly string[], coefficient: number): readonly Correlation[] {
  const weighed = names.filter((name) => /^(weights|spread trials) of /.test(name));
  return weighed.flatMap((name, i) =>
    weighed.slice(i + 1).map((other): Correlation => ({ between: [name, other], coefficient })),
  );
}

function largest(shares: readonly ScatterShare[]): string {
  return shares
    .filter(({ share }) => share > 0.05)
    .map(({ input, share }) => `${input} ${Ratio.show(ratio(share), { unit: "%", digits: 2 })}`)
    .join(", ");
}
