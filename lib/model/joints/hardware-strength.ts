/** What a piece of hardware itself allows, and what it comes to with the fasteners that hold it. */
import type { Fastening, HardwarePart } from "../../design/index.js";
import { groupShear, groupStrength, type Position } from "../../fastening/index.js";
import type { WorkedLine } from "../../formula.js";
import { type Force, newton, type Ratio, ratio } from "../../quantity/index.js";
import type { MissingMeasurement } from "../../refusal.js";
import { Refusal } from "../../refusal.js";
import type { RatioInterval } from "../ratio-interval.js";
import type { ReviewInput } from "../review-input.js";
import { type KnownStrength, strengthInterval, testedStrength } from "./known-strength.js";

/**
 * Load that a piece of hardware allows: what its maker states, or what 95 of 100 of it held in the builder's own
 * tests, over the safety factor.
 */
export function hardwareStrength(
  { stock: { name, rated } }: HardwarePart,
  { measurements, case: { demands } }: ReviewInput,
): KnownStrength | MissingMeasurement {
  if (rated !== undefined) return { strength: rated, because: [] };
  const loads = measurements.pulls.filter(({ fastener }) => fastener === name).map(({ load }) => load);
  const tested = testedStrength(loads, `pull tests of ${name}`);
  if (!tested?.uncertainty) {
    return {
      measure: `the load rating of ${name}`,
      how: `ask its maker and put it in hardware.csv, column "rated". Or pull at least three to the end on an offcut, with a lever and a luggage scale, and stand clear. Write the loads into pull-tests.csv under its name`,
    };
  }
  const { safetyFactor } = demands;
  const allowed = groupStrength.worked({ each: tested.strength, count: 1, safetyFactor });
  const { standard, degreesOfFreedom } = tested.uncertainty;
  return {
    ...tested,
    strength: allowed.value,
    because: [...tested.because, allowed],
    uncertainty: { standard: standard / safetyFactor, ...(degreesOfFreedom ? { degreesOfFreedom } : {}) },
  };
}

/** A piece of hardware with the fasteners that hold it. */
export interface FastenedHardware {
  /** The piece of hardware. */
  readonly part: HardwarePart;
  /** One group of the fasteners that hold it. */
  readonly fastening: Fastening;
  /** What the hardware itself allows. */
  readonly own: KnownStrength;
  /** What one of its fasteners holds in shear, before the safety factor. */
  readonly each: KnownStrength;
}

/** What a load along the panel makes of a piece of hardware. */
export interface HardwareUse {
  /** Load over what is allowed, of the weaker. */
  readonly used: Ratio;
  /** Which of the two is the weaker. */
  readonly limit: "itself" | "its fasteners";
  /** What the scatter of tests leaves open about the use. */
  readonly interval?: RatioInterval;
  /** The worked lines behind it. */
  readonly because: readonly WorkedLine[];
}

/** A load along the panel through the middle of a piece of hardware: on itself, and on its most loaded fastener. */
export function useAlongPanel(
  { part, fastening, own, each }: FastenedHardware,
  force: Force,
  safetyFactor: Ratio,
): HardwareUse {
  const group = groupShear.worked({
    positions: fastening.at,
    load: { x: newton(0), y: force },
    at: middleOf(part),
  });
  const allowed = groupStrength.worked({ each: each.strength, count: 1, safetyFactor });
  const { largest } = group.value;
  const [ofItself, ofFastener] = [force / own.strength, largest / allowed.value];
  const interval = strengthInterval({ own, each }, (now) =>
    Math.max(force / now.own, largest / (now.each / safetyFactor)),
  );
  return {
    used: ratio(Math.max(ofItself, ofFastener)),
    limit: ofItself >= ofFastener ? "itself" : "its fasteners",
    ...(interval ? { interval } : {}),
    because: [...own.because, ...each.because, group, allowed],
  };
}

/**
 * Hand and hook pull in the middle of the part.
 *
 * @throws Refusal where it lies on no one panel
 */
function middleOf({ id, on }: HardwarePart): Position {
  if (!on) throw new Refusal(`${id} must be placed on one panel to be pulled along it`);
  return on;
}

/** Hardware of one duty, a representative of each item and section. */
export function oneOfEach(input: ReviewInput, duty: HardwarePart["item"]["duty"]): readonly HardwarePart[] {
  const parts = input.parts.hardware.filter(({ item }) => item.duty === duty);
  return parts.filter(
    (part, i) =>
      parts.findIndex((one) => one.stock.name === part.stock.name && one.section === part.section) === i,
  );
}

/** The fastener groups that hold a piece of hardware. */
export function fasteningsOf({ id }: HardwarePart, { parts }: ReviewInput): readonly Fastening[] {
  return parts.fastenings.filter(({ holds }) => holds === id);
}
