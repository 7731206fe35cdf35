import type { Content } from "../../design/index.js";
import { type Handling, readCushionCurve, staticStress } from "../../moving/index.js";
import { Area, type Length, type Ratio } from "../../quantity/index.js";
import type { ReviewInput } from "../review-input.js";
import { sectionBalance } from "./balance.js";
import { curveFor } from "./cushioned.js";
import { dropOf, handlingsOf } from "./drop-of.js";

/** A drop, and how hard the content is stopped on its foam; absent where no curve says. */
export interface Drop {
  readonly height: Length;
  readonly deceleration?: Ratio;
}

/** One fragile content on one kind of journey. */
export interface ProtectedOrRemoved {
  readonly content: string;
  readonly fragility: Ratio;
  readonly handling: Handling;
  /** Dropped with its section. */
  readonly inCase: Drop;
  /** Dropped by itself, in a box with the same foam. */
  readonly byItself: Drop;
}

/**
 * Every fragile content, left in the case or carried by itself: a heavy case is dropped from lower, a light box
 * from higher, and the foam decides.
 *
 * @throws RangeError where the case has no mass
 */
export function protectedOrRemoved(input: ReviewInput): readonly ProtectedOrRemoved[] {
  return input.case.contents.flatMap((content) => {
    const { fragility } = content.needs;
    if (fragility === undefined) return [];
    const section = sectionBalance(input, content.section).value.mass;
    return handlingsOf(section).map((handling) => ({
      content: content.name,
      fragility,
      handling,
      inCase: dropOn(input, content, dropOf(section, handling).value),
      byItself: dropOn(input, content, dropOf(content.mass, handling).value),
    }));
  });
}

function dropOn(input: ReviewInput, { mass, needs: { foam } }: Content, height: Length): Drop {
  if (!foam) return { height };
  try {
    const stress = staticStress({ mass, area: Area.si(foam.padWidth * foam.padDepth) });
    return { height, deceleration: readCushionCurve({ points: curveFor(input, foam, height), stress }) };
  } catch (error) {
    if (error instanceof RangeError) return { height };
    throw error;
  }
}
