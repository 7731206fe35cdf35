import { type Formula, formula } from "../formula.js";
import { Mass, Ratio } from "../quantity/index.js";
import { cite } from "../source.js";

/** What is lifted, and what may be. */
export interface LoadAndLimit {
  /** The heaviest load lifted. */
  readonly load: Mass;
  /** The lower of the limits at the two ends of the lift. */
  readonly limit: Mass;
}

/**
 * The lifting index LI = load / recommended weight limit. Up to 1 is the aim for every lift; above 1 some
 * people are at more risk of a hurt back, above 3 nearly all are.
 *
 * @source NIOSH 94-110 (2021), 1.1.2 and 1.4
 * @throws Refusal where the limit is nothing, for a negative load
 * @example liftIndex({ load: kg(20), limit: kg(16) }) // 1.25
 */
export const liftIndex: Formula<LoadAndLimit, Ratio> = formula({
  id: "lift.index",
  title: "Lifting index",
  equation: String.raw`\mathrm{LI} = \frac{L}{\mathrm{RWL}}`,
  inputs: {
    load: { symbol: "L", kind: Mass, meaning: "load", min: 0 },
    limit: { symbol: String.raw`\mathrm{RWL}`, kind: Mass, meaning: "recommended weight limit", above: 0 },
  },
  result: { symbol: String.raw`\mathrm{LI}`, kind: Ratio, meaning: "lifting index" },
  source: [cite("niosh-lifting", "1.1.2 and 1.4")],
  validity: "As the limit it is compared with.",
  compute: ({ load, limit }) => load / limit,
});
