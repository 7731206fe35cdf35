import { type Formula, formula } from "../formula.js";
import { Count, Force, Ratio } from "../quantity/index.js";
import { cite } from "../source.js";

/** Like fasteners that share a straight pull or a straight shear. */
export interface GroupStrengthInputs {
  /** Strength of one. */
  readonly each: Force;
  readonly count: number;
  /** Wanted strength over load. */
  readonly safetyFactor: Ratio;
}

/**
 * Load that a group may carry through its middle: n F / S.
 *
 * @throws RangeError for no fasteners or a safety factor below 1
 * @example groupStrength(groupStrength.read({ each: "500 N", count: 10, safetyFactor: 3 })) // 1.667 kN
 */
export const groupStrength: Formula<GroupStrengthInputs, Force> = formula({
  id: "group.strength",
  title: "Load a fastener group may carry",
  equation: String.raw`F_{allow} = \frac{n\,F}{S}`,
  inputs: {
    each: { symbol: "F", kind: Force, meaning: "strength of one", above: 0 },
    count: { symbol: "n", kind: Count, meaning: "fasteners", min: 1 },
    safetyFactor: { symbol: "S", kind: Ratio, meaning: "safety factor", min: 1 },
  },
  result: { symbol: "F_{allow}", kind: Force, meaning: "allowed load" },
  source: [cite("statics", "equal shares of a load through the middle")],
  validity: "Like fasteners, load through their middle; overhead loads keep a second hold.",
  compute: ({ each, count, safetyFactor }) => (count * each) / safetyFactor,
});
