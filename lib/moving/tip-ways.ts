import type { WorkedLine } from "../formula.js";
import { type Angle, Length } from "../quantity/index.js";
import { Refusal } from "../refusal.js";
import { tipAngle } from "./tip-angle.js";

/** The base a case stands on and where it balances, from the base's front left corner at floor level. */
export interface StandingCase {
  /** Left to right, between the outermost points that touch the floor. */
  readonly baseWidth: Length;
  /** Front to back, between the same. */
  readonly baseDepth: Length;
  /** From the left edge of the base to the centre of gravity. */
  readonly fromLeft: Length;
  /** From the front edge of the base to the centre of gravity. */
  readonly fromFront: Length;
  /** Of the centre of gravity above the floor. */
  readonly height: Length;
}

/** The four ways a case can fall. */
export type TipWay = "left" | "right" | "front" | "back";

/** One way with its worked line. */
export interface TipOver {
  /** The side it falls to. */
  readonly way: TipWay;
  /** The tip angle that way. */
  readonly worked: WorkedLine & { readonly value: Angle };
}

/**
 * The tip angle each way, the least first.
 *
 * @throws Refusal where the centre of gravity does not stand over the base
 * @example tipWays({ baseWidth: mm(600), baseDepth: mm(500), fromLeft: mm(300), fromFront: mm(200), height: mm(700) })[0]?.way // front
 */
export function tipWays({ baseWidth, baseDepth, fromLeft, fromFront, height }: StandingCase): TipOver[] {
  const halves: readonly (readonly [TipWay, number])[] = [
    ["left", fromLeft],
    ["right", baseWidth - fromLeft],
    ["front", fromFront],
    ["back", baseDepth - fromFront],
  ];
  const outside = halves.find(([, half]) => !(half > 0));
  if (outside)
    throw new Refusal(
      `tip angle: the centre of gravity does not stand over the base, it falls to the ${outside[0]}`,
    );
  return halves
    .map(([way, half]) => ({ way, worked: tipAngle.worked({ halfBase: Length.si(half), height }) }))
    .sort((a, b) => a.worked.value - b.worked.value);
}
