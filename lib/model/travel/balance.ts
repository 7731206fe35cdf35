import type { SectionPart } from "../../design/index.js";
import type { WorkedLine } from "../../formula.js";
import { type Balance, centreOfMass } from "../../moving/index.js";
import { Length } from "../../quantity/index.js";
import { massItems } from "../mass/masses.js";
import type { ReviewInput } from "../review-input.js";

/** A mass with its centre, and the worked line. */
export type BalanceLine = WorkedLine & { readonly value: Balance };

const caseOrigin = { x: Length.si(0), y: Length.si(0), z: Length.si(0) };

/** The whole stacked case, loaded, from the outside lower left front corner of its lowest section. */
export function stackedBalance(input: ReviewInput): BalanceLine {
  return balanceOf(input, () => true);
}

/** One section with what is in it. */
export function sectionBalance(input: ReviewInput, section: string): BalanceLine {
  return balanceOf(input, (name) => name === section);
}

/** How high the casters hold the case above the floor. */
export function standingHeight({ parts }: ReviewInput): Length {
  return Length.si(Math.max(0, ...parts.hardware.map(({ stock }) => stock.standing)));
}

/** The section that stands on the floor. */
export function lowestSection({ parts }: ReviewInput): SectionPart {
  const [lowest] = [...parts.sections].sort((a, b) => a.outside.low.z - b.outside.low.z);
  if (!lowest) throw new RangeError("balance: a case needs at least one section");
  return lowest;
}

function balanceOf(input: ReviewInput, belongs: (section: string) => boolean): BalanceLine {
  const masses = massItems(input)
    .filter(({ section }) => belongs(section))
    .map(({ name, mass, centre }) => ({ name, mass, ...centre }));
  return centreOfMass.worked({ masses, origin: caseOrigin });
}
