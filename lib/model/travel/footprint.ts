import type { HardwarePart } from "../../design/index.js";
import type { StandingCase } from "../../moving/index.js";
import { Length } from "../../quantity/index.js";
import { type BalanceLine, lowestSection, stackedBalance, standingHeight } from "../mass/balance.js";
import type { ReviewInput } from "../review-input.js";

/** The stacked, loaded case on its feet. */
export interface Footprint extends StandingCase {
  /** Mass and centre of gravity, worked out. */
  readonly balance: BalanceLine;
}

/** Where the case touches the floor, and how it balances over it. */
export function footprint(input: ReviewInput): Footprint {
  const balance = stackedBalance(input);
  const points = feet(input);
  const [left, right] = [Math.min(...points.map(({ x }) => x)), Math.max(...points.map(({ x }) => x))];
  const [front, back] = [Math.min(...points.map(({ y }) => y)), Math.max(...points.map(({ y }) => y))];
  return {
    balance,
    baseWidth: Length.si(right - left),
    baseDepth: Length.si(back - front),
    fromLeft: Length.si(balance.value.x - left),
    fromFront: Length.si(balance.value.y - front),
    height: Length.si(balance.value.z + standingHeight(input)),
  };
}

/** Casters, or the corners of the lowest section where there are none. */
function feet(input: ReviewInput): readonly { readonly x: number; readonly y: number }[] {
  const casters = castersOf(input).map(({ centre }) => centre);
  if (casters.length > 0) return casters;
  const { low, size } = lowestSection(input).outside;
  return [low, { x: low.x + size.x, y: low.y + size.y }];
}

/** The casters it stands on. */
export function castersOf({ parts }: ReviewInput): readonly HardwarePart[] {
  return parts.hardware.filter(({ item }) => item.duty === "roll");
}

/** From the centre of gravity to the nearest edge of the base. */
export function leastTippingArm({ baseWidth, baseDepth, fromLeft, fromFront }: StandingCase): Length {
  return Length.si(Math.min(fromLeft, baseWidth - fromLeft, fromFront, baseDepth - fromFront));
}

/** From the centre of gravity to the edge of the base on one side. */
export function tippingArm(
  { baseWidth, baseDepth, fromLeft, fromFront }: StandingCase,
  side: "left" | "right" | "front" | "back",
): Length {
  const halves = {
    left: fromLeft,
    right: baseWidth - fromLeft,
    front: fromFront,
    back: baseDepth - fromFront,
  };
  return Length.si(halves[side]);
}

/** How far one side of the lowest section stands out past the edge of the base below it. */
export function overhangOf(input: ReviewInput, side: "left" | "right" | "front" | "back"): Length {
  const { low, size } = lowestSection(input).outside;
  const points = feet(input);
  const along = (axis: "x" | "y") => points.map((point) => point[axis]);
  const beyond = {
    left: Math.min(...along("x")) - low.x,
    right: low.x + size.x - Math.max(...along("x")),
    front: Math.min(...along("y")) - low.y,
    back: low.y + size.y - Math.max(...along("y")),
  };
  return Length.si(beyond[side]);
}
