/** Whether straps hold each section in its vehicle, and joints its shelves, braking, starting and turning. */
import type { Fastening, Lashing, ShelfPart } from "../../design/index.js";
import { groupStrength } from "../../fastening/index.js";
import {
  type KnownStrength,
  lashingWays,
  type ReviewInput,
  sectionBalance,
  shelfMass,
} from "../../model/index.js";
import { blockingForce, type RideWay, rideWays, shelfRide } from "../../moving/index.js";
import { Count, Force, Ratio, standardGravity } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { amount, styleOf } from "../amount.js";
import { type Answer, type Question, question } from "../question.js";
import {
  countOf,
  eachSection,
  eachShelf,
  groupsHolding,
  known,
  measured,
  mostOf,
  strengthOf,
} from "../subjects.js";

const roadWords: Readonly<Record<RideWay, string>> = {
  forward: "Braking",
  rearward: "Starting",
  sideways: "Turning",
};

/** Whether the straps hold each section, sections standing side by side: three ways, sliding and tipping. */
export const lashing: Question = question({
  id: "travel.lashing",
  about: eachSection,
  ask: (section, { case: { journey } }) =>
    `Do the straps hold ${section} in the ${journey.vehicle}, braking, turning and starting?`,
  tier: "safety",
  cautions: [
    "A case that comes loose in a crash kills the people in front of it: a bulkhead or net behind the seats, straps with a readable label, none cut or knotted, edge protectors, tight again after the first miles. Follow the road rules where you drive; this does not cover a crash.",
  ],
  needs: {
    straps: measured(
      ({ case: { journey } }) => journey.lashing,
      "the straps, their angle and the friction on the vehicle's floor",
      "read STF on the label of a strap, count the straps, pull the empty case with a scale for the friction, and write the block lashing into the journey",
    ),
  },
  answer: (input, { straps }, section) => lashed(input, section, straps),
});

function lashed(input: ReviewInput, section: string, given: Lashing): Answer {
  const ways = lashingWays(input, section, given);
  const worst = mostOf(ways, ({ tension }) => tension, "lashing: no way was found");
  const braking = mostOf(ways, ({ way }) => (way === "forward" ? 1 : 0), "lashing: no way was found");
  const balance = sectionBalance(input, section);
  const { mass } = balance.value;
  const blocked = blockingForce.worked({ mass, friction: given.friction, way: "forward" });
  const style = styleOf(input.case);
  const tips = Ratio.show(Ratio.si(braking.loose.value / standardGravity), { digits: 2 });
  const count = worst.straps.value;
  return {
    demand: amount(Force, `tension needed, ${worst.way}`, worst.tension),
    capacity: amount(Force, `tension of ${given.straps} straps`, Force.si(given.straps * given.tension)),
    facts: `${roadWords[worst.way]} asks for ${Force.show(worst.tension, style)} of tension: ${count} of these straps. Loose, it would tip forward at ${tips} g. Against a bulkhead it would press ${Force.show(blocked.value, style)}.`,
    remedies: [
      {
        words: `Use ${count} straps, an anti-slip mat under it, or set it hard against a bulkhead.`,
        gives: [amount(Count, "straps that would be enough", count)],
      },
    ],
    because: [
      balance,
      ...ways.flatMap(({ slide, tilt }) => [slide, tilt]),
      worst.straps,
      braking.loose,
      blocked,
    ],
    limit: cite("en-12195", "tie-down lashing, sliding and tilting"),
    sources: [cite("ctu-code", "annex 7")],
  };
}

/** Whether each shelf stays on its joints, as the road pushes it. */
export const shelfRoad: Question = question({
  id: "travel.shelf",
  about: eachShelf,
  ask: ({ shelf }, { case: { journey } }) =>
    `Do the joints of the ${shelf.name} hold when the ${journey.vehicle} brakes, starts and turns?`,
  tier: "strength",
  cautions: [
    "A shelf that tears loose on the road takes all that stands on it along: a stop or a strap in front of what is heavy, whatever the joint allows.",
  ],
  needs: {
    // Out of the wall it stands out from, along the walls it lies between.
    strength: known((input, { shelf }: ShelfPart) =>
      strengthOf(input, shelf.name, shelf.support === "back only" ? "pull" : "shear"),
    ),
  },
  answer: (input, { strength }, part) => ridden(input, part, groupsHolding(input, part.shelf.name), strength),
});

function ridden(
  input: ReviewInput,
  part: ShelfPart,
  groups: readonly Fastening[],
  strength: KnownStrength,
): Answer {
  const count = countOf(groups);
  const mass = shelfMass(part);
  const lines = rideWays.map((way) => ({ way, line: shelfRide.worked({ mass, count, way }) }));
  const { way, line } = mostOf(lines, (one) => one.line.value, "shelf ride: no way was found");
  const { safetyFactor } = input.case.demands;
  const allowed = groupStrength.worked({ each: strength.strength, count: 1, safetyFactor });
  const style = styleOf(input.case);
  return {
    demand: amount(Force, "on each fastener", line.value),
    capacity: amount(Force, "one fastener allows", allowed.value),
    facts: `${roadWords[way]} puts ${Force.show(line.value, style)} on each of ${count} fasteners, including its weight; one allows ${Force.show(allowed.value, style)}.`,
    remedies: [{ words: "More or larger fasteners, a cleat under it, or a stop in front of it." }],
    because: [line, ...strength.because, allowed],
    limit: cite("en-12195", "table 2, along the floor and 1.0 downwards"),
    sources: [cite("common-practice", "safety factor of the case file")],
  };
}
