/** Whether each content stays where it is when the van brakes: standing loose, strapped, fastened, or in a cradle. */
import type { Content, ContentPart, Fastening, Holding } from "../../design/index.js";
import { groupStrength } from "../../fastening/index.js";
import { heldPull, heldShear, strapTension } from "../../inside/index.js";
import type { ReviewInput } from "../../model/index.js";
import { rideShare } from "../../moving/index.js";
import { Angle, Force, Length, type Ratio, ratio } from "../../quantity/index.js";
import type { MissingMeasurement } from "../../refusal.js";
import { cite } from "../../source.js";
import { amount, styleOf } from "../amount.js";
import { type Answer, type Question, question } from "../question.js";
import { countOf, eachContentPart, groupsHolding, known, says, strengthOf, where } from "../subjects.js";
import { cradled } from "./cradle.js";

/** How an answer is worked out, or what is missing for it. */
type Way = (() => Answer) | MissingMeasurement;

/** Whether each content stays put. */
export const holds: Question = question({
  id: "fit-out.hold",
  about: where(
    says("journey"),
    eachContentPart(() => true),
  ),
  ask: ({ content }, { case: { journey } }) =>
    `Does the ${content.name} stay put when the ${journey.vehicle} brakes?`,
  tier: "safety",
  cautions: [
    "What tears loose in a van flies forward at the speed of the van. Hold every content three ways, and put heavy things low and against the wall that is in front on the road.",
  ],
  needs: { way: known((input, { content }: ContentPart) => wayOf(input, content)) },
  answer: (_, { way }) => way(),
});

function wayOf(input: ReviewInput, content: Content): Way {
  const { held } = content;
  switch (held.by) {
    case "floor":
    case "shelf":
      return loose(input, content, held.by);
    case "strap":
      return strapped(input, content, held);
    case "cradle":
      return cradled(input, content, held);
    default:
      return fastened(input, content);
  }
}

const braking = cite("en-12195", "table 2, 0.8 forward");

/** The share of its weight that braking pushes a thing with. */
function brakingShare() {
  return rideShare.worked({ way: "forward", movement: "sliding" });
}

/** Standing somewhere is not being held. */
function loose(input: ReviewInput, { name, mass, needs: { slidesAt } }: Content, on: "floor" | "shelf"): Way {
  if (slidesAt === undefined)
    return {
      measure: `what holds the ${name} against sliding and lifting off the ${on}`,
      how: `pull it sideways with a luggage scale until it slides and write "slides at" into its needs, or give it straps or screws in its block held`,
    };
  return () => {
    const share = brakingShare();
    const push = heldShear.worked({ mass, share: share.value, count: 1 });
    const style = styleOf(input.case);
    return {
      demand: amount(Force, "push of the road", push.value),
      capacity: amount(Force, "push at which it slides", slidesAt),
      facts: `Braking pushes it with ${Force.show(push.value, style)}; it slides at ${Force.show(slidesAt, style)}.`,
      remedies: [
        { words: "Give it a strap, screws or a cradle lined with foam that it cannot jump out of." },
      ],
      because: [share, push],
      limit: braking,
    };
  };
}

/** Friction of a box on faced ply in a shaking van; nobody measured it, so none is counted. */
const noFriction: Ratio = ratio(0);

function strapped(
  input: ReviewInput,
  { name, mass }: Content,
  { straps, rated }: Extract<Holding, { by: "strap" }>,
): Way {
  if (rated === undefined)
    return {
      measure: `what one strap of the ${name} and its anchors stand`,
      how: 'read the working load off the strap and its anchors, take the lower, and write "rated" into its block held',
    };
  return () => {
    const share = brakingShare();
    const flat = { strapAngle: Angle.si(0), friction: noFriction };
    const line = strapTension.worked({ mass, share: share.value, straps, ...flat });
    const style = styleOf(input.case);
    return {
      demand: amount(Force, "in each strap", line.value),
      capacity: amount(Force, "one strap and its anchors stand", rated),
      facts: `Braking pulls ${straps === 1 ? "its strap" : `each of ${straps} straps`} with ${Force.show(line.value, style)}; one stands ${Force.show(rated, style)}.`,
      remedies: [{ words: "More straps, or an edge that it stands against." }],
      because: [share, line],
      limit: braking,
      sources: [cite("statics", "components of a force")],
    };
  };
}

function fastened(input: ReviewInput, content: Content): Way {
  const shear = strengthOf(input, content.name, "shear");
  const pull = strengthOf(input, content.name, "pull");
  if ("measure" in shear) return shear;
  if ("measure" in pull) return pull;
  const groups = groupsHolding(input, content.name);
  return () => shorn(input, content, groups, { shear: shear.strength, pull: pull.strength });
}

/** Braking shears all fasteners and pulls at the rear half of them; the two add up. */
function shorn(
  input: ReviewInput,
  { mass, size }: Content,
  groups: readonly Fastening[],
  strength: Readonly<Record<"shear" | "pull", Force>>,
): Answer {
  const count = countOf(groups);
  const share = brakingShare();
  const sideways = heldShear.worked({ mass, share: share.value, count });
  const upwards = heldPull.worked({
    mass,
    share: share.value,
    height: Length.si(size.z / 2),
    base: Length.si(0.8 * Math.min(size.x, size.y)),
  });
  const rear = Math.max(1, Math.floor(count / 2));
  const { safetyFactor } = input.case.demands;
  const allow = (each: Force) => groupStrength.worked({ each, count: 1, safetyFactor });
  const [shear, pull] = [allow(strength.shear), allow(strength.pull)];
  const used = sideways.value / shear.value + upwards.value / rear / pull.value;
  const style = styleOf(input.case);
  return {
    demand: amount(Force, "sideways on each, including the pull", Force.si(used * shear.value)),
    capacity: amount(Force, "each fastener allows", shear.value),
    facts: `Braking pushes ${count === 1 ? "its fastener" : `each of ${count} fasteners`} with ${Force.show(sideways.value, style)} and pulls ${count === 1 ? "it" : `${rear} of them`} with ${Force.show(Force.si(upwards.value / rear), style)}${rear === 1 ? "" : " each"}.`,
    remedies: [{ words: "More fasteners, a wider foot, or a strap over it." }],
    because: [share, sideways, upwards, shear, pull],
    limit: braking,
    sources: [cite("common-practice", "shear and pull add up")],
  };
}
