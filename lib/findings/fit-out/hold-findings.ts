import type { Content, ContentPart, Fastening, Holding } from "../../design/index.js";
import { groupStrength } from "../../fastening/index.js";
import { heldPull, heldShear, strapTension } from "../../inside/index.js";
import { fastenerStrength, isKnown, type ReviewInput } from "../../model/index.js";
import { rideShare } from "../../moving/index.js";
import { Angle, Force, Length, ratio } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { styleOf } from "../amount.js";
import { compared } from "../compared.js";
import type { Finding } from "../finding.js";
import { guarded, type Question, type Reply, unknown } from "../guarded.js";
import { cradleFinding } from "../travel/cradle-finding.js";

const looseCaution =
  "What tears loose in a van flies forward at the speed of the van. Hold every content three ways, and put heavy things low and against the wall that is in front on the road.";

/** Whether each content stays where it is when the van brakes. */
export function holdFindings(input: ReviewInput): readonly Finding[] {
  return input.parts.contents.map((part) => holdFinding(input, part));
}

function holdFinding(input: ReviewInput, part: ContentPart): Finding {
  const { name, held } = part.content;
  const question: Question = {
    id: `fit-out.hold.${name}`,
    topic: "fit-out",
    subject: name,
    question: `Does the ${name} stay put when the ${input.case.journey.vehicle} brakes?`,
  };
  if (held.by === "floor" || held.by === "shelf") return looseFinding(input, question, part);
  if (held.by === "strap") return strapFinding(input, question, part, held);
  if (held.by === "cradle")
    return cradleFinding(input, question, { content: part.content, cradle: held, caution: looseCaution });
  return fastenedFinding(input, question, part);
}

/** Standing somewhere is not being held. */
function looseFinding(input: ReviewInput, question: Question, { content }: ContentPart): Finding {
  const { slidesAt } = content.needs;
  if (slidesAt !== undefined)
    return guarded(question, () => looseReply(input, content, slidesAt), [looseCaution]);
  const where = content.held.by === "shelf" ? "shelf" : "floor";
  const missing = {
    measure: `what holds the ${content.name} against sliding and lifting off the ${where}`,
    how: `pull it sideways with a luggage scale until it slides and write "slides at" into its needs, or give it straps or screws in its block held`,
  };
  return unknown(question, missing, [looseCaution]);
}

function looseReply(input: ReviewInput, content: Content, slidesAt: Force): Reply {
  const share = rideShare.worked({ way: "forward", movement: "sliding" });
  const push = heldShear.worked({ mass: content.mass, share: share.value, count: 1 });
  const style = styleOf(input.case);
  return compared({
    kind: Force,
    asked: ["push of the road", push.value],
    there: ["push at which it slides", slidesAt],
    facts: `Braking pushes it with ${Force.show(push.value, style)}; it slides at ${Force.show(slidesAt, style)}.`,
    remedy: "Give it a strap, screws or a cradle lined with foam that it cannot jump out of.",
    because: [share, push],
    cautions: [looseCaution],
    source: [cite("en-12195", "table 2, 0.8 forward")],
  });
}

function strapFinding(
  input: ReviewInput,
  question: Question,
  part: ContentPart,
  { straps, rated }: Extract<Holding, { by: "strap" }>,
): Finding {
  if (rated === undefined) {
    const how =
      'read the working load off the strap and its anchors, take the lower, and write "rated" into its block held';
    return unknown(
      question,
      { measure: `what one strap of the ${part.content.name} and its anchors stand`, how },
      [looseCaution],
    );
  }
  return guarded(question, () => strapReply(input, part, straps, rated), [looseCaution]);
}

/** Friction of a box on faced ply in a shaking van; nobody measured it, so none is counted. */
const noFriction = ratio(0);

function strapReply(input: ReviewInput, { content }: ContentPart, straps: number, rated: Force): Reply {
  const share = rideShare.worked({ way: "forward", movement: "sliding" });
  const line = strapTension.worked({
    mass: content.mass,
    share: share.value,
    straps,
    strapAngle: Angle.si(0),
    friction: noFriction,
  });
  const style = styleOf(input.case);
  return compared({
    kind: Force,
    asked: ["in each strap", line.value],
    there: ["one strap and its anchors stand", rated],
    facts: `Braking pulls each of ${straps} straps with ${Force.show(line.value, style)}; one stands ${Force.show(rated, style)}.`,
    remedy: "More straps, or an edge that it stands against.",
    because: [share, line],
    cautions: [looseCaution],
    source: [cite("en-12195", "table 2, 0.8 forward"), cite("statics", "components of a force")],
  });
}

function fastenedFinding(input: ReviewInput, question: Question, part: ContentPart): Finding {
  const { name } = part.content;
  const groups = input.parts.fastenings.filter(({ holds }) => holds === name);
  const [first] = groups;
  if (!first)
    return unknown(question, { measure: "its fasteners", how: "name them in the case file" }, [looseCaution]);
  const shear = fastenerStrength(first, "shear", input);
  const pull = fastenerStrength(first, "pull", input);
  if (!isKnown(shear)) return unknown(question, shear, [looseCaution]);
  if (!isKnown(pull)) return unknown(question, pull, [looseCaution]);
  return guarded(
    question,
    () => fastenedReply(input, part, groups, { shear: shear.strength, pull: pull.strength }),
    [looseCaution],
  );
}

/** Braking shears all fasteners and pulls at the rear half of them; the two add up. */
function fastenedReply(
  input: ReviewInput,
  { content }: ContentPart,
  groups: readonly Fastening[],
  strength: { readonly shear: Force; readonly pull: Force },
): Reply {
  const count = groups.reduce((sum, group) => sum + group.count, 0);
  const share = rideShare.worked({ way: "forward", movement: "sliding" });
  const sideways = heldShear.worked({ mass: content.mass, share: share.value, count });
  const upwards = heldPull.worked({
    mass: content.mass,
    share: share.value,
    height: Length.si(content.size.z / 2),
    base: Length.si(0.8 * Math.min(content.size.x, content.size.y)),
  });
  const rear = Math.max(1, Math.floor(count / 2));
  const { safetyFactor } = input.case.demands;
  const allow = (each: Force) => groupStrength.worked({ each, count: 1, safetyFactor });
  const [shear, pull] = [allow(strength.shear), allow(strength.pull)];
  const used = sideways.value / shear.value + upwards.value / rear / pull.value;
  const style = styleOf(input.case);
  return compared({
    kind: Force,
    asked: ["sideways on each, the pull counted in", Force.si(used * shear.value)],
    there: ["each fastener allows", shear.value],
    facts: `Braking pushes each of ${count} fasteners with ${Force.show(sideways.value, style)} and pulls ${rear} of them with ${Force.show(Force.si(upwards.value / rear), style)} each.`,
    remedy: "More fasteners, a wider foot, or a strap over it.",
    because: [share, sideways, upwards, shear, pull],
    cautions: [looseCaution],
    source: [cite("en-12195", "table 2, 0.8 forward"), cite("common-practice", "shear and pull add up")],
  });
}
