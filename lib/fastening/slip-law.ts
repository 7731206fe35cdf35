import { type Kind, Length, Ratio, recordOf } from "../quantity/index.js";

/** How the force on one fastener grows with its slip: R = R_u (1 - exp(-s / s_0))^m up to the slip at failure. */
export interface SlipLaw {
  /** Slip at which the curve bends over. */
  readonly bend: Length;
  readonly power: Ratio;
  /** At which the most slipped fastener gives way. */
  readonly largest: Length;
}

/** The slip law of steel bolts in steel: R = R_u (1 - exp(-10 s))^0.55, s in inches, 0.34 in at failure. */
export const steelBoltSlip: SlipLaw = {
  bend: Length.of(0.1, "in"),
  power: Ratio.si(0.55),
  largest: Length.of(0.34, "in"),
};

/** A slip law as text. */
export const SlipLaw: Kind<SlipLaw> = recordOf<SlipLaw>("slip law", {
  bend: Length,
  power: Ratio,
  largest: Length,
});
