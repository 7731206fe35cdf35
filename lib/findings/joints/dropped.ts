/** A section let fall on a corner or on its casters: what stops it there, and whether that survives. */
import {
  dropOf,
  type KnownStrength,
  type ReviewInput,
  sectionBalance,
  useInterval,
} from "../../model/index.js";
import { casterDropRating, type Handling, stoppingForce } from "../../moving/index.js";
import { Force, Length, mm, Ratio } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { amount, styleOf } from "../amount.js";
import { type Answer, type Question, question } from "../question.js";
import { countOf, measured, ofJourney } from "../subjects.js";
import { eachHeld, type Held, strengthIn } from "./held-hardware.js";

const fallCaution =
  "Nobody stands within the case's own height of one that may fall; after a fall look at corners, casters and rivets before the next trip.";

const handlingNeeded = ofJourney(
  ({ handling }) => handling,
  "how roughly it is handled",
  '"handling: usual"',
);

/** Corner, floor and what is inside give so much; common practice, no source, as for the boxes. */
const stopOnCorner = mm(25);

/** Whether the fasteners of a corner stop a section that falls on it. */
export const droppedOnCorner: Question = question({
  id: "joints.drop-corner",
  about: eachHeld("protect"),
  ask: ({ part }) => `Does a ${part.stock.name} stay on when ${part.section} falls on it?`,
  tier: "strength",
  cautions: [fallCaution],
  assumes: [
    "An accident: what 95 of 100 hold counts in full, without a safety factor. On an edge two corners share the blow, flat on a side four do.",
  ],
  needs: { handling: handlingNeeded, strength: strengthIn("shear") },
  answer: (input, { handling, strength }, held) => cornered(input, handling, strength, held),
});

function cornered(
  input: ReviewInput,
  handling: Handling,
  strength: KnownStrength,
  { part: { section }, groups }: Held,
): Answer {
  const balance = sectionBalance(input, section);
  const { mass } = balance.value;
  const fall = dropOf(mass, handling);
  const stopped = stoppingForce.worked({ mass, height: fall.value, stop: stopOnCorner });
  const { force, gravities } = stopped.value;
  const allowed = Force.si(strength.strength * countOf(groups));
  const style = styleOf(input.case);
  return {
    demand: amount(Force, "on one corner", force),
    capacity: amount(Force, "its fasteners hold", allowed),
    facts: `From ${Length.show(fall.value, style)}, stopped within ${Length.show(stopOnCorner, style)}, ${section} strikes with ${Ratio.show(gravities, { digits: 2 })} times its weight: ${Force.show(force, style)} on the ${countOf(groups)} fasteners of that corner. Stopped within half of that, it is about twice as much.`,
    remedies: [
      { words: "Larger corners with more fasteners, or rubber feet that give the fall a longer stop." },
    ],
    interval: useInterval(force, strength, countOf(groups)),
    because: [balance, fall, stopped, ...strength.because],
    limit: cite("common-practice", "no safety factor in an accident"),
    sources: [cite("astm-d4169", "drop heights")],
  };
}

/** A drop is never flat: the casters of one side touch first. */
const touchingFirst = 2;

/** Whether casters survive a section that is let fall on them. */
export const droppedOnCasters: Question = question({
  id: "joints.drop-casters",
  about: eachHeld("roll"),
  ask: ({ part }) => `Does a ${part.stock.name} survive when ${part.section} is let fall on its casters?`,
  tier: "strength",
  cautions: [fallCaution],
  assumes: [
    "Two casters touch first. Their plates push up against the bottom, so that the bolts are not pulled.",
  ],
  needs: {
    handling: handlingNeeded,
    rated: measured(
      (_, { part: { stock } }: Held) => stock.rated,
      ({ part: { stock } }) => `the load rating of ${stock.name}`,
      'ask its maker and put it in hardware.csv, column "rated"',
    ),
  },
  answer: (input, { handling, rated }, { part: { section } }) => {
    const balance = sectionBalance(input, section);
    const { mass } = balance.value;
    const fall = dropOf(mass, handling);
    const line = casterDropRating.worked({ mass, height: fall.value, casters: touchingFirst });
    const style = styleOf(input.case);
    return {
      demand: amount(Force, "rating needed of each", line.value),
      capacity: amount(Force, "rating", rated),
      facts: `Let fall from ${Length.show(fall.value, style)}, ${section} asks for casters rated ${Force.show(line.value, style)}; they are rated ${Force.show(rated, style)}.`,
      remedies: [{ words: "Casters of a higher rating or with springs, or a lift gate instead of hands." }],
      because: [balance, fall, line],
      limit: cite("icwm", "6.11, impact: the rated load dropped on a wheel"),
      sources: [cite("astm-d4169", "drop heights")],
    };
  },
});
