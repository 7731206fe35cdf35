import type { Lashing } from "../../design/index.js";
import {
  blockingForce,
  type RideWay,
  rideWays,
  strapCount,
  tieDownTension,
  tieDownTilt,
} from "../../moving/index.js";
import { Force, Length, type Mass } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { styleOf } from "../amount.js";
import { compared } from "../compared.js";
import type { Finding } from "../finding.js";
import { guarded, type Question, type Reply, unknown } from "../guarded.js";
import type { ReviewInput } from "../review-input.js";
import { sectionBalance } from "./balance.js";

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

/** The four lines of one way. */
function linesOf(input: ReviewInput, section: string, lashing: Lashing, way: RideWay) {
  const balance = sectionBalance(input, section);
  const { mass } = balance.value;
  const slide = tieDownTension.worked({ mass, friction: lashing.friction, strapAngle: lashing.angle, way });
  const tilt = tieDownTilt.worked({
    mass,
    ...tiltOf(input, section, balance.value, way),
    strapAngle: lashing.angle,
    way,
  });
  return { way, balance, slide, tilt, tension: Force.si(Math.max(slide.value, tilt.value)) };
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

function lashingReply(input: ReviewInput, section: string, lashing: Lashing): Reply {
  const ways = rideWays.map((way) => linesOf(input, section, lashing, way));
  const [worst] = [...ways].sort((a, b) => b.tension - a.tension);
  if (!worst) throw new RangeError("lashing: no way was found");
  const straps = strapCount.worked({ tension: worst.tension, each: lashing.tension });
  const there = Force.si(lashing.straps * lashing.tension);
  const blocked = blockingForce.worked({
    mass: worst.balance.value.mass as Mass,
    friction: lashing.friction,
    way: "forward",
  });
  const style = styleOf(input.case);
  return compared({
    kind: Force,
    asked: [`tension needed, ${worst.way}`, worst.tension],
    there: [`tension of ${lashing.straps} straps`, there],
    facts: `${worst.way === "sideways" ? "Sideways" : worst.way === "forward" ? "Braking" : "Starting"} asks for ${Force.show(worst.tension, style)} of tension: ${straps.value} of these straps. Against a bulkhead it would press ${Force.show(blocked.value, style)}.`,
    remedy: `Take ${straps.value} straps, an anti-slip mat under it, or set it hard against a bulkhead.`,
    because: [worst.balance, ...ways.flatMap(({ slide, tilt }) => [slide, tilt]), straps, blocked],
    cautions: [lashingCaution],
    source: [cite("en-12195", "tie-down lashing, sliding and tilting"), cite("ctu-code", "annex 7")],
  });
}
