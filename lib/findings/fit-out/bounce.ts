/** Whether what stands, hangs or is strapped inside stays down and up when the vehicle bounces. */
import type { Content } from "../../design/index.js";
import { groupStrength } from "../../fastening/index.js";
import { Frequency, floorBounce } from "../../inside/index.js";
import { type FastenerStrength, type ReviewInput, strengthInterval } from "../../model/index.js";
import { Force, inch, Ratio, ratio, standardGravity } from "../../quantity/index.js";
import type { MissingMeasurement } from "../../refusal.js";
import { cite } from "../../source.js";
import { amount, styleOf } from "../amount.js";
import { looseCaution } from "../cautions.js";
import { type Answer, type Question, question } from "../question.js";
import { countOf, eachContent, groupsHolding, known, says, strengthOf, where } from "../subjects.js";

/** The bounce of the loose cargo test: 300 rounds a minute on a circle of 1 in, as a test house runs it. */
const bounce = { frequency: Frequency.si(5), travel: inch(1) };

const bounceTest = cite("mil-std-810-514", "loose cargo transportation, 300 rounds a minute");

const asked = ({ held: { by } }: Content): boolean =>
  by === "floor" || by === "shelf" || by === "strap" || by === "hung";

/** How an answer is worked out, or what is missing for it. */
type Way = (() => Answer) | MissingMeasurement;

/** Whether each stays where it is, the floor under it going up and down. */
export const bounces: Question = question({
  id: "fit-out.bounce",
  about: where(says("journey"), eachContent(asked)),
  ask: ({ name }, { case: { journey } }) =>
    `Does the ${name} stay down or up when the ${journey.vehicle} bounces?`,
  tier: "safety",
  cautions: [looseCaution],
  needs: { way: known((input, content: Content) => wayOf(input, content)) },
  answer: (_, { way }) => way(),
});

function wayOf(input: ReviewInput, content: Content): Way {
  const { held, name } = content;
  if (held.by === "strap")
    return held.rated === undefined
      ? {
          measure: `what one strap of the ${name} and its anchors stand`,
          how: 'read the working load off the strap and its anchors, take the lower, and write "rated" into its block held',
        }
      : pulledDown(input, content, held.straps, held.rated);
  if (held.by !== "hung") return () => jumping();
  const strength = strengthOf(input, name, "pull");
  return "measure" in strength ? strength : () => hanging(input, content, strength);
}

/** Nothing but its weight holds it. */
function jumping(): Answer {
  const line = floorBounce.worked(bounce);
  return {
    demand: amount(Ratio, "bounce of the floor, in gravities", line.value),
    capacity: amount(Ratio, "gravity, which alone holds it down", ratio(1)),
    facts: `A bounce of ${Ratio.show(line.value, { digits: 2 })} g throws up what its weight alone holds.`,
    remedies: [{ words: "Hold it down with a strap, a lid or a cradle." }],
    because: [line],
    limit: bounceTest,
  };
}

/** Straps pull down what the bounce throws up beyond its weight. */
function pulledDown(input: ReviewInput, { mass }: Content, straps: number, rated: Force): () => Answer {
  return () => {
    const line = floorBounce.worked(bounce);
    const each = Force.si(((line.value - 1) * mass * standardGravity) / straps);
    const style = styleOf(input.case);
    return {
      demand: amount(Force, "pull of each strap downwards", each),
      capacity: amount(Force, "one strap and its anchors stand", rated),
      facts: `Thrown up with ${Ratio.show(line.value, { digits: 2 })} g, it pulls ${straps === 1 ? "its strap" : "each strap"} with ${Force.show(each, style)}; one stands ${Force.show(rated, style)}.`,
      remedies: [{ words: "A second strap over it, tight." }],
      because: [line],
      limit: bounceTest,
      sources: [cite("statics", "weight and bounce")],
    };
  };
}

/** What hangs bears the bounce on top of its weight. */
function hanging(input: ReviewInput, { name, mass }: Content, strength: FastenerStrength): Answer {
  const line = floorBounce.worked(bounce);
  const load = Force.si((1 + line.value) * mass * standardGravity);
  const count = countOf(groupsHolding(input, name));
  const { safetyFactor } = input.case.demands;
  const allowed = groupStrength.worked({ each: strength.strength, count, safetyFactor });
  const style = styleOf(input.case);
  return {
    demand: amount(Force, "its weight and the bounce", load),
    capacity: amount(Force, "its fasteners allow", allowed.value),
    facts: `Bounced with ${Ratio.show(line.value, { digits: 2 })} g it pulls with ${Force.show(load, style)}; its fasteners allow ${Force.show(allowed.value, style)}.`,
    remedies: [{ words: "More or larger fasteners, or take it down for the road." }],
    interval: strengthInterval({ each: strength }, (now) => (load * safetyFactor) / (count * now.each)),
    because: [line, ...strength.because, allowed],
    limit: bounceTest,
    sources: [cite("statics", "weight and bounce")],
  };
}
