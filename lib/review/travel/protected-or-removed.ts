import type { Content } from "../../design/index.js";
import { dropHeight, readCushionCurve, rotationalDrop, staticStress } from "../../moving/index.js";
import { Area, type Length, type Mass, pound, type Ratio } from "../../quantity/index.js";
import type { ReviewInput } from "../review-input.js";
import { sectionBalance } from "./balance.js";
import { curveFor } from "./drop-findings.js";

/** Words for how roughly a case is handled. */
export type HandlingWord = "careful" | "usual" | "rough";
const handlings: readonly HandlingWord[] = ["careful", "usual", "rough"];

/** A drop, and how hard the content is stopped on its foam; absent where no curve says. */
export interface Drop {
  readonly height: Length;
  readonly deceleration?: Ratio;
}

/** One fragile content on one kind of journey. */
export interface ProtectedOrRemoved {
  readonly content: string;
  readonly fragility: Ratio;
  readonly handling: HandlingWord;
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
    return handlings.map((handling) => ({
      content: content.name,
      fragility,
      handling,
      inCase: dropOn(input, content, handHeight(section, handling)),
      byItself: dropOn(input, content, handHeight(content.mass, handling)),
    }));
  });
}

/** By hand up to 200 lb, else one edge let fall. */
function handHeight(mass: Mass, handling: HandlingWord): Length {
  return mass <= pound(200) ? dropHeight({ mass, handling }) : rotationalDrop({ mass, handling });
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
