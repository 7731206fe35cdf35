/** What the road asks of the straps over a section, three ways, against sliding and tipping. */
import type { Lashing } from "../../design/index.js";
import {
  type RideWay,
  rideWays,
  strapCount,
  tieDownTension,
  tieDownTilt,
  tippingBraking,
} from "../../moving/index.js";
import { Force, Length } from "../../quantity/index.js";
import { Refusal } from "../../refusal.js";
import { sectionBalance } from "../mass/balance.js";
import type { ReviewInput } from "../review-input.js";

/** What one way of the road asks of the straps over a section. */
export interface LashingWay {
  /** Braking, starting or turning. */
  readonly way: RideWay;
  /** Tension against sliding. */
  readonly slide: ReturnType<typeof tieDownTension.worked>;
  /** Tension against tipping over. */
  readonly tilt: ReturnType<typeof tieDownTilt.worked>;
  /** The larger of the two. */
  readonly tension: Force;
  /** How many straps give it. */
  readonly straps: ReturnType<typeof strapCount.worked>;
  /** The push at which it tips with no strap at all. */
  readonly loose: ReturnType<typeof tippingBraking.worked>;
}

/** Forward, rearward and sideways, each against sliding and tipping. */
export function lashingWays(input: ReviewInput, section: string, lashing: Lashing): readonly LashingWay[] {
  const { value } = sectionBalance(input, section);
  const { friction, angle: strapAngle } = lashing;
  return rideWays.map((way) => {
    const stance = tiltOf(input, section, value, way);
    const slide = tieDownTension.worked({ mass: value.mass, friction, strapAngle, way });
    const tilt = tieDownTilt.worked({ mass: value.mass, ...stance, strapAngle, way });
    const tension = Force.si(Math.max(slide.value, tilt.value));
    return {
      way,
      slide,
      tilt,
      tension,
      straps: strapCount.worked({ tension, each: lashing.tension }),
      loose: tippingBraking.worked({ halfBase: stance.toEdge, height: stance.height }),
    };
  });
}

/**
 * Driven with its front to the front: the least way from the centre of gravity to the edge it would tip over.
 *
 * @throws Refusal for a section that is not there
 */
function tiltOf(
  input: ReviewInput,
  section: string,
  centre: { readonly x: Length; readonly y: Length; readonly z: Length },
  way: RideWay,
) {
  const box = input.parts.sections.find(({ name }) => name === section)?.outside;
  if (!box) throw new Refusal(`lashing: no section ${section}`);
  const axis = way === "sideways" ? "x" : "y";
  const from = centre[axis] - box.low[axis];
  const width = box.size[axis];
  const toEdge = { forward: from, rearward: width - from, sideways: Math.min(from, width - from) }[way];
  return { height: Length.si(centre.z - box.low.z), toEdge: Length.si(toEdge), width };
}
