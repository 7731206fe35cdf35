import type { Lashing } from "../../design/index.js";
import { type ReviewInput, sectionBalance } from "../../model/index.js";
import {
  blockingForce,
  type RideWay,
  rideWays,
  strapCount,
  tieDownTension,
  tieDownTilt,
  tippingBraking,
} from "../../moving/index.js";
import { Force, Length, Ratio, standardGravity } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { styleOf } from "../amount.js";
import { compared } from "../compared.js";
import type { Finding } from "../finding.js";
import { guarded, type Question, type Reply, unknown } from "../guarded.js";

const lashingCaution =
  "A case that comes loose in a crash kills the people in front of it: a bulkhead or net behind the seats, straps with a readable label, none cut or knotted, edge protectors, tight again after the first miles. Follow the road rules where you drive; this does not cover a crash.";

/** Whether the straps hold each section in its vehicle, sections standing side by side: three ways, sliding and tipping. */
export function lashingFindings(input: ReviewInput): readonly Finding[] {
  const { lashing, vehicle } = input.case.journey;
  return input.parts.sections.map(({ name }) => {
    const question: Question = {
      id: `travel.lashing.${name}`,
      topic: "travel",
      subject: name,
      question: `Do the straps hold ${name} in the ${vehicle}, braking, turning and starting?`,
    };
    if (lashing) return guarded(question, () => lashingReply(input, name, lashing), [lashingCaution]);
    const how =
      "read STF on the label of a strap, count the straps, pull the empty case with a scale for the friction, and write the block lashing into the journey";
    return unknown(
      question,
      { measure: "the straps, their angle and the friction on the vehicle's floor", how },
      [lashingCaution],
    );
  });
}

/** What one way of the road asks of the straps over a section. */
export interface LashingWay {
  readonly way: RideWay;
  /** Against sliding. */
  readonly slide: ReturnType<typeof tieDownTension.worked>;
  /** Against tipping over. */
  readonly tilt: ReturnType<typeof tieDownTilt.worked>;
  /** The larger of the two. */
  readonly tension: Force;
  readonly straps: ReturnType<typeof strapCount.worked>;
  /** The push at which it tips with no strap at all. */
  readonly loose: ReturnType<typeof tippingBraking.worked>;
}

/** Forward, rearward and sideways, each against sliding and tipping. */
export function lashingWays(input: ReviewInput, section: string, lashing: Lashing): readonly LashingWay[] {
  const { value } = sectionBalance(input, section);
  return rideWays.map((way) => {
    const stance = tiltOf(input, section, value, way);
    const { friction, angle: strapAngle } = lashing;
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

/** Driven with its front to the front: the least way from the centre of gravity to the edge it would tip over. */
function tiltOf(
  input: ReviewInput,
  section: string,
  centre: { readonly x: Length; readonly y: Length; readonly z: Length },
  way: RideWay,
) {
  const box = input.parts.sections.find(({ name }) => name === section)?.outside;
  if (!box) throw new RangeError(`lashing: no section ${section}`);
  const axis = way === "sideways" ? "x" : "y";
  const from = centre[axis] - box.low[axis];
  const width = box.size[axis];
  const toEdge = { forward: from, rearward: width - from, sideways: Math.min(from, width - from) }[way];
  return { height: Length.si(centre.z - box.low.z), toEdge: Length.si(toEdge), width };
}

const roadWords: Readonly<Record<RideWay, string>> = {
  forward: "Braking",
  rearward: "Starting",
  sideways: "Turning",
};

function lashingReply(input: ReviewInput, section: string, lashing: Lashing): Reply {
  const ways = lashingWays(input, section, lashing);
  const [worst] = [...ways].sort((a, b) => b.tension - a.tension);
  const [braking] = ways;
  if (!worst || !braking) throw new RangeError("lashing: no way was found");
  const balance = sectionBalance(input, section);
  const { friction } = lashing;
  const blocked = blockingForce.worked({ mass: balance.value.mass, friction, way: "forward" });
  const style = styleOf(input.case);
  const tips = Ratio.show(Ratio.si(braking.loose.value / standardGravity), { digits: 2 });
  return compared({
    kind: Force,
    asked: [`tension needed, ${worst.way}`, worst.tension],
    there: [`tension of ${lashing.straps} straps`, Force.si(lashing.straps * lashing.tension)],
    facts: `${roadWords[worst.way]} asks for ${Force.show(worst.tension, style)} of tension: ${worst.straps.value} of these straps. Loose, it would tip forward at ${tips} g. Against a bulkhead it would press ${Force.show(blocked.value, style)}.`,
    remedy: `Take ${worst.straps.value} straps, an anti-slip mat under it, or set it hard against a bulkhead.`,
    because: [
      balance,
      ...ways.flatMap(({ slide, tilt }) => [slide, tilt]),
      worst.straps,
      braking.loose,
      blocked,
    ],
    cautions: [lashingCaution],
    source: [cite("en-12195", "tie-down lashing, sliding and tilting"), cite("ctu-code", "annex 7")],
  });
}
