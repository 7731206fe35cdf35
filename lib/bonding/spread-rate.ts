/** How much glue goes on one face, and where that figure comes from. */
import { type Formula, formula } from "../formula.js";
import { Area, AreaDensity, Density, Ratio, Volume } from "../quantity/index.js";
import { cite } from "../source.js";

/** Coverage as labels state it: so much area from so much glue. */
export interface CoverageInputs {
  /** One face. */
  readonly covered: Area;
  readonly from: Volume;
  /** Of the wet glue. */
  readonly density: Density;
}

/**
 * Wet spread rate from a label's coverage: r = rho V / A.
 *
 * @example rateFromCoverage(rateFromCoverage.read({ covered: "8 m2", from: "1 L", density: "800 kg/m3" })) // 100 g/m2
 */
export const rateFromCoverage: Formula<CoverageInputs, AreaDensity> = formula({
  id: "adhesive.rate.from.coverage",
  title: "Spread rate from a label's coverage",
  equation: String.raw`r = \frac{\rho\,V}{A}`,
  inputs: {
    covered: { symbol: "A", kind: Area, meaning: "area covered, one face", above: 0 },
    from: { symbol: "V", kind: Volume, meaning: "glue used", above: 0 },
    density: { symbol: String.raw`\rho`, kind: Density, meaning: "density of the wet glue", above: 0 },
  },
  result: { symbol: "r", kind: AreaDensity, meaning: "wet spread rate on one face" },
  source: [cite("geometry", "mass over area")],
  validity: "Ask whether the label means one face or the finished bond: the bond takes two faces.",
  compute: ({ covered, from, density }) => (density * from) / covered,
});

/** What the label says and what the builder found. */
export interface OwnRateInputs {
  readonly label: AreaDensity;
  /** From a trial panel. */
  readonly trial: AreaDensity;
}

/** A label that is this far off is worth a second trial. */
const muchOff = 0.2;

/**
 * Own spread rate over the label's: trial / label. The trial is what to buy by: it knows the builder's
 * roller and this ply.
 *
 * @example ownRate(ownRate.read({ label: "125 g/m2", trial: "150 g/m2" })) // 1.2
 */
export const ownRate: Formula<OwnRateInputs, Ratio> = formula({
  id: "adhesive.rate.own",
  title: "Own spread rate against the label's",
  equation: String.raw`k = \frac{r_{trial}}{r_{label}}`,
  inputs: {
    label: { symbol: "r_{label}", kind: AreaDensity, meaning: "rate on the label", above: 0 },
    trial: { symbol: "r_{trial}", kind: AreaDensity, meaning: "rate of the trial panel", above: 0 },
  },
  result: { symbol: "k", kind: Ratio, meaning: "own rate over the label's" },
  source: [cite("common-practice", "buy by a trial on the real sheet")],
  validity: "Both for one face, both wet.",
  warn: (_inputs, own) => {
    if (own > 1 + muchOff) return ["the trial used far more than the label says: porous sheet or heavy hand"];
    if (own < 1 - muchOff) return ["the trial used far less than the label says: look for dry, dull spots"];
    return [];
  },
  compute: ({ label, trial }) => trial / label,
});

/** Wet contact adhesive on one face, by custom. */
const usualContact = { low: 0.1, high: 0.15 } as const;

/** Warns of a contact adhesive's rate outside 100 to 150 g/m2 on one face (common practice). */
export function unusualContactRate(face: string, rate: AreaDensity): string[] {
  if (rate >= usualContact.low * (1 - 1e-9) && rate <= usualContact.high * (1 + 1e-9)) return [];
  return [
    `${AreaDensity.show(rate, { unit: "g/m2" })} on the ${face} is outside the usual 100 to 150 g/m2 of wet contact adhesive`,
  ];
}
