import { type Formula, formula } from "../formula.js";
import { Mass, Ratio } from "../quantity/index.js";
import { cite } from "../source.js";

/** A loaded case and how roughly it is used. */
export interface CasterDuty {
  /** Case and all that is in it. */
  readonly mass: Mass;
  /** 1 for a smooth indoor floor, up to 1.5 for thresholds, yards and ramps. */
  readonly serviceFactor: Ratio;
}

/**
 * The rating each of four casters should have: a third of the loaded case, since one of the four may hang,
 * times a service factor.
 *
 * @source common practice in the trade
 * @throws Refusal unless the mass is positive and the factor from 1 to 3
 * @example casterRating({ mass: kg(90), serviceFactor: ratio(1.5) }) // 45 kg
 */
export const casterRating: Formula<CasterDuty, Mass> = formula({
  id: "caster.rating",
  title: "Rating needed of each of four casters",
  equation: String.raw`m_c = \tfrac13\, m\, k`,
  inputs: {
    mass: { symbol: "m", kind: Mass, meaning: "loaded case", above: 0 },
    serviceFactor: { symbol: "k", kind: Ratio, meaning: "service factor", min: 1, max: 3 },
  },
  result: { symbol: "m_c", kind: Mass, meaning: "rating of one caster, at least" },
  source: [cite("common-practice", "a third of the load a caster")],
  validity:
    "Weight near the middle; compare it with the worst three-caster load, which can be more than a third.",
  compute: ({ mass, serviceFactor }) => (mass * serviceFactor) / 3,
});
