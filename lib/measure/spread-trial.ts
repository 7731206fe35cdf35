import { type Formula, formula } from "../formula.js";
import { Area, AreaDensity, Count, Mass, Ratio } from "../quantity/index.js";
import { cite } from "../source.js";

/** Glue spread on a trial panel, weighed by what left the container. */
export interface SpreadTrialInputs {
  /** Container with its glue, and the brush or roller, before. */
  readonly before: Mass;
  /** The same after. */
  readonly after: Mass;
  /** One face of the trial panel. */
  readonly area: Area;
  /** Faces of that area that were covered. */
  readonly faces: number;
}

/**
 * Wet spread rate on one face from a trial: r = (before - after) / (A n). What stays in the roller counts
 * as waste only if the roller is not weighed.
 *
 * @throws RangeError when nothing was used
 * @example spreadTrialRate(spreadTrialRate.read({ before: "2 lb", after: "1.9375 lb", area: "2 ft2", faces: 2 })) // 76.29 g/m2
 */
export const spreadTrialRate: Formula<SpreadTrialInputs, AreaDensity> = formula({
  id: "adhesive.trial.rate",
  title: "Spread rate of an adhesive from a trial panel",
  equation: String.raw`r = \frac{m_0 - m_1}{A\,n}`,
  inputs: {
    before: { symbol: "m_0", kind: Mass, meaning: "container before", above: 0 },
    after: { symbol: "m_1", kind: Mass, meaning: "container after", min: 0 },
    area: { symbol: "A", kind: Area, meaning: "area of one face", above: 0 },
    faces: { symbol: "n", kind: Count, meaning: "faces covered", min: 1 },
  },
  result: { symbol: "r", kind: AreaDensity, meaning: "wet spread rate on one face" },
  source: [cite("geometry", "mass over area")],
  validity: "Solvent that leaves between the two weighings counts as spread: weigh at once.",
  refuse: ({ before, after }) =>
    after < before
      ? []
      : [`container after must be lighter than before (${Mass.show(before)}), got ${Mass.show(after)}`],
  compute: ({ before, after, area, faces }) => (before - after) / (area * faces),
});

/** A trial whose panel was weighed too. */
export interface OversprayInputs {
  /** Container with its glue before, and after. */
  readonly before: Mass;
  readonly after: Mass;
  /** What the panel gained, weighed at once. */
  readonly gained: Mass;
}

/**
 * Share of glue that ended beside the panel: w = 1 - g / (before - after).
 *
 * @throws RangeError when the panel gained more than the container lost
 * @example oversprayShare(oversprayShare.read({ before: "2 lb", after: "1 lb", gained: "12 oz" })) // 0.25
 */
export const oversprayShare: Formula<OversprayInputs, Ratio> = formula({
  id: "adhesive.trial.overspray",
  title: "Glue that ended beside the trial panel",
  equation: String.raw`w = 1 - \frac{g}{m_0 - m_1}`,
  inputs: {
    before: { symbol: "m_0", kind: Mass, meaning: "container before", above: 0 },
    after: { symbol: "m_1", kind: Mass, meaning: "container after", min: 0 },
    gained: { symbol: "g", kind: Mass, meaning: "gained by the panel", above: 0 },
  },
  result: { symbol: "w", kind: Ratio, meaning: "share wasted" },
  source: [cite("geometry", "a mass balance")],
  validity: "Weighed within a minute: solvent that has left counts as overspray.",
  refuse: ({ before, after, gained }) =>
    gained <= before - after
      ? []
      : [
          `gained must be at most what the container lost (${Mass.show(Mass.si(before - after))}), got ${Mass.show(gained)}`,
        ],
  compute: ({ before, after, gained }) => 1 - gained / (before - after),
});
