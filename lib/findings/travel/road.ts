/** Whether the joints of shelves hold on the road, braking, starting and turning. */
import type { Fastening, ShelfPart } from "../../design/index.js";
import { groupStrength } from "../../fastening/index.js";
import { type KnownStrength, type ReviewInput, shelfMass } from "../../model/index.js";
import { type RideWay, rideWays, shelfRide } from "../../moving/index.js";
import { Force, type Mass } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { amount, styleOf } from "../amount.js";
import { shelfCaution } from "../cautions.js";
import { riddenShelfFigure } from "../figures/inside-figures.js";
import { type Answer, type Question, question } from "../question.js";
import { countOf, eachShelf, groupsHolding, known, mostOf, says, strengthOf, where } from "../subjects.js";

/** What each way of the road is, as the first word of a sentence. */
export const roadWords: Readonly<Record<RideWay, string>> = {
  forward: "Braking",
  rearward: "Starting",
  sideways: "Turning",
};

/** Whether each shelf stays on its joints, as the road pushes it. */
export const shelfRoad: Question = question({
  id: "travel.shelf",
  about: where(says("journey"), eachShelf),
  ask: ({ shelf }, { case: { journey } }) =>
    `Do the joints of the ${shelf.name} hold when the ${journey.vehicle} brakes, starts and turns?`,
  tier: "strength",
  cautions: [shelfCaution],
  needs: {
    // Out of the wall it stands out from, along the walls it lies between.
    strength: known((input, { shelf }: ShelfPart) =>
      strengthOf(input, shelf.name, shelf.support === "back only" ? "pull" : "shear"),
    ),
  },
  answer: (input, { strength }, part) => ridden(input, part, groupsHolding(input, part.shelf.name), strength),
  figure: (input, part, { demand }) => {
    const { way } = worstRide(shelfMass(part), Math.max(1, countOf(groupsHolding(input, part.shelf.name))));
    const words = demand ? `${demand.show(styleOf(input.case))} on each fastener` : "push of the road";
    return riddenShelfFigure(input, part, way, words);
  },
});

/** The way of the road that asks most of each fastener. */
function worstRide(mass: Mass, count: number) {
  const lines = rideWays.map((way) => ({ way, line: shelfRide.worked({ mass, count, way }) }));
  return mostOf(lines, (one) => one.line.value, "shelf ride: no way was found");
}

function ridden(
  input: ReviewInput,
  part: ShelfPart,
  groups: readonly Fastening[],
  strength: KnownStrength,
): Answer {
  const count = countOf(groups);
  const mass = shelfMass(part);
  const { way, line } = worstRide(mass, count);
  const { safetyFactor } = input.case.demands;
  const allowed = groupStrength.worked({ each: strength.strength, count: 1, safetyFactor });
  const style = styleOf(input.case);
  return {
    demand: amount(Force, "on each fastener", line.value),
    capacity: amount(Force, "one fastener allows", allowed.value),
    facts: `${roadWords[way]} puts ${Force.show(line.value, style)} on ${count === 1 ? "its fastener" : `each of ${count} fasteners`}, including its weight; one allows ${Force.show(allowed.value, style)}.`,
    remedies: [{ words: "Use more or larger fasteners, put a cleat under it, or a stop in front of it." }],
    because: [line, ...strength.because, allowed],
    limit: cite("en-12195", "table 2, along the floor and 1.0 downwards"),
    sources: [cite("common-practice", "safety factor of the case file")],
  };
}
