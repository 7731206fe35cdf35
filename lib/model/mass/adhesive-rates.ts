/** How much of an adhesive goes where: by the builder's own trials, or by its label. */
import type { AdhesiveNeedInputs } from "../../bonding/index.js";
import type { Adhesive, SpreadTrial } from "../../design/index.js";
import type { WorkedLine } from "../../formula.js";
import { memoize } from "../../kept/index.js";
import {
  type Interval,
  measuredMean,
  oversprayShare,
  spreadTrialRate,
  studentFactor,
  type Uncertainty,
} from "../../measure/index.js";
import { AreaDensity, Mass, Ratio } from "../../quantity/index.js";
import type { ReviewInput } from "../review-input.js";

/** Wet spread on one face, and where the figure comes from. */
export interface KnownRate {
  /** Wet mass on a square metre of one face. */
  readonly rate: AreaDensity;
  /** The builder's own trial, or the label. */
  readonly from: "trial" | "label";
  /** The worked lines of the trials. */
  readonly because: readonly WorkedLine[];
  /** From two trials on. */
  readonly uncertainty?: Uncertainty;
}

/** The builder's own trials of an adhesive, or else its label. */
export function knownRate(stock: Adhesive, { measurements }: ReviewInput): KnownRate {
  return keptRate(measurements.spreads, stock);
}

const keptRate = memoize((spreads: readonly SpreadTrial[], stock: Adhesive): KnownRate => {
  const trials = spreads.filter(({ adhesive }) => adhesive === stock.name);
  const lines = trials.map((trial) => spreadTrialRate.worked(onPanel(trial)));
  const rates = lines.map(({ value }) => value);
  const [only, ...others] = rates;
  if (only === undefined) return { rate: stock.labelRate, from: "label", because: [] };
  if (others.length === 0) return { rate: only, from: "trial", because: lines };
  const { mean, standardUncertainty: standard, degreesOfFreedom } = measuredMean(rates);
  return { rate: mean, from: "trial", because: lines, uncertainty: { standard, degreesOfFreedom } };
});

/** A weighed panel tells what is on it; without, all that left the container counts. */
function onPanel({ gained, ...trial }: SpreadTrial): SpreadTrial {
  return gained === undefined ? trial : { ...trial, before: gained, after: Mass.si(0) };
}

/** Share of an adhesive that ends elsewhere: from the builder's trials whose panel was weighed, or else the table's. */
export function knownWaste(stock: Adhesive, { measurements }: ReviewInput): Ratio {
  const weighed = measurements.spreads.flatMap(({ adhesive, before, after, gained }) =>
    adhesive === stock.name && gained !== undefined ? oversprayShare({ before, after, gained }) : [],
  );
  if (weighed.length === 0) return Ratio.si(stock.waste);
  return Ratio.si(weighed.reduce((sum: number, share) => sum + share, 0) / weighed.length);
}

/** Wet rates on the two faces of a bond. */
export function ratesOf(
  stock: Adhesive,
  input: ReviewInput,
): Pick<AdhesiveNeedInputs, "sheetRate" | "facingRate"> {
  return onFaces(stock, knownRate(stock, input).rate);
}

/** A wet rate on the faces that its adhesive is spread on. */
export function onFaces(
  { faces }: Adhesive,
  rate: AreaDensity,
): Pick<AdhesiveNeedInputs, "sheetRate" | "facingRate"> {
  return { sheetRate: rate, facingRate: faces === "both" ? rate : AreaDensity.si(0) };
}

/** The rate's interval at 95 %, from the scatter of the trials; nothing from fewer than two, or where it reaches zero. */
export function rateRange({ rate, uncertainty }: KnownRate): Interval<AreaDensity> | undefined {
  const degreesOfFreedom = uncertainty?.degreesOfFreedom;
  if (!uncertainty || degreesOfFreedom === undefined) return undefined;
  const off = studentFactor({ confidence: Ratio.si(0.95), degreesOfFreedom }) * uncertainty.standard;
  return off < rate ? { low: AreaDensity.si(rate - off), high: AreaDensity.si(rate + off) } : undefined;
}
