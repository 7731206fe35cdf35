import { type Formula, formula } from "../formula.js";
import { choice, Force, Ratio } from "../quantity/index.js";
import { cite } from "../source.js";

/** One fastener pushed sideways and pulled out at once. */
export interface CombinedInputs {
  readonly shear: Force;
  readonly pull: Force;
  readonly shearStrength: Force;
  readonly pullStrength: Force;
  /** Rivets and smooth nails add straight; threaded screws as the sides of a right angle. */
  readonly shank: "smooth" | "threaded";
}

/**
 * Share of a fastener's strength used by shear and pull together: V/V_R + T/T_R for a smooth shank,
 * sqrt((V/V_R)^2 + (T/T_R)^2) for a threaded one; 1 is the limit.
 *
 * @throws RangeError for a negative force or a strength that is not positive
 * @example combinedUse(combinedUse.read({ shear: "300 N", pull: "100 N", shearStrength: "1000 N", pullStrength: "500 N", shank: "smooth" })) // 0.5
 */
export const combinedUse: Formula<CombinedInputs, Ratio> = formula({
  id: "fastener.combined",
  title: "Shear and pull together on one fastener",
  equation: String.raw`u = \frac{V}{V_R} + \frac{T}{T_R}\ \text{(smooth)},\quad
    u = \sqrt{\left(\frac{V}{V_R}\right)^2 + \left(\frac{T}{T_R}\right)^2}\ \text{(threaded)}`,
  inputs: {
    shear: { symbol: "V", kind: Force, meaning: "shear force", min: 0 },
    pull: { symbol: "T", kind: Force, meaning: "pull", min: 0 },
    shearStrength: { symbol: "V_R", kind: Force, meaning: "shear strength", above: 0 },
    pullStrength: { symbol: "T_R", kind: Force, meaning: "pull-out strength", above: 0 },
    shank: {
      symbol: String.raw`\text{shank}`,
      kind: choice("shank", ["smooth", "threaded"]),
      meaning: "shank",
    },
  },
  result: { symbol: "u", kind: Ratio, meaning: "share of the strength used" },
  source: [cite("en-1995", "8.3.3, eq. 8.27 and 8.28")],
  validity: "Both strengths of the same kind: both ultimate or both allowable.",
  compute: ({ shear, pull, shearStrength, pullStrength, shank }) => {
    const shares = [shear / shearStrength, pull / pullStrength] as const;
    return shank === "smooth" ? shares[0] + shares[1] : Math.hypot(...shares);
  },
});
