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
import { Refusal } from "../../refusal.js";
import { cite } from "../../source.js";
import { amount, styleOf } from "../amount.js";
import type { Figure } from "../figures/figure.js";
import { fallingFigure, type Landing as Landed } from "../figures/riding-figures.js";
import { type Answer, type Question, question } from "../question.js";
import { countOf, measured, ofJourney } from "../subjects.js";
import { eachHeld, type Held, strengthIn } from "./held-hardware.js";

const fallCaution =
  "Nobody stands within the case's own height of one that may fall; after a fall look at its metal and fasteners before the next trip.";

const handlingNeeded = ofJourney(
  ({ handling }) => handling,
  "how roughly it is handled",
  '"handling: usual"',
);

/** A way to fall that corners stop: how many share the blow, and how far it goes on. */
interface Landing {
  /** Ends the id of its question. */
  readonly id: "corner" | "edge" | "side";
  /** "on a corner". */
  readonly on: string;
  /** Corners that touch. */
  readonly corners: number;
  /** Corner, floor and what is inside give so much together; common practice, no source. */
  readonly stop: Length;
}

/** A point digs in, an edge less, a flat side hardly: each stop is assumed by itself. */
const landings: readonly Landing[] = [
  { id: "corner", on: "on a corner", corners: 1, stop: mm(25) },
  { id: "edge", on: "on an edge", corners: 2, stop: mm(15) },
  { id: "side", on: "flat on a side", corners: 4, stop: mm(10) },
];

/** Whether the fasteners of corners stop a section that falls on one, on an edge, flat on a side. */
export const droppedOnCorners: readonly Question[] = landings.map((landing) =>
  question({
    id: `joints.drop-${landing.id}`,
    about: eachHeld("protect"),
    ask: ({ part }) => `Does a ${part.stock.name} stay on when ${part.section} falls ${landing.on}?`,
    tier: "strength",
    cautions: [fallCaution],
    assumes: [
      "This is an accident: what 95 of 100 hold counts in full, without a safety factor. The corners that touch share the blow.",
    ],
    needs: { handling: handlingNeeded, strength: strengthIn("shear") },
    answer: (input, { handling, strength }, held) => landed(input, landing, { handling, strength, held }),
    figure: (input, { part: { section } }) => fallenFigure(input, section, landing.id),
  }),
);

/** The picture of a section that falls as roughly as the journey handles it. */
function fallenFigure(input: ReviewInput, section: string, landing: Landed): Figure {
  const { handling } = input.case.journey;
  if (!handling) throw new Refusal("picture of a fall: how roughly it is handled is not known");
  const fall = dropOf(sectionBalance(input, section).value.mass, handling);
  return fallingFigure(input, section, landing, fall.value);
}

/** What is known of a fall. */
interface Fall {
  /** How roughly it is handled. */
  readonly handling: Handling;
  /** Of one fastener. */
  readonly strength: KnownStrength;
  /** The corner. */
  readonly held: Held;
}

function landed(
  input: ReviewInput,
  { on, corners, stop }: Landing,
  {
    handling,
    strength,
    held: {
      part: { section },
      groups,
    },
  }: Fall,
): Answer {
  const balance = sectionBalance(input, section);
  const { mass } = balance.value;
  const fall = dropOf(mass, handling);
  const stopped = stoppingForce.worked({ mass, height: fall.value, stop });
  const { force, gravities } = stopped.value;
  const each = Force.si(force / corners);
  const allowed = Force.si(strength.strength * countOf(groups));
  const style = styleOf(input.case);
  const among = corners === 1 ? "" : `, which ${corners} corners share`;
  return {
    demand: amount(Force, "on one corner", each),
    capacity: amount(Force, "its fasteners hold", allowed),
    facts: `In a fall from ${Length.show(fall.value, style)} ${on} the ${countOf(groups)} fasteners of a corner bear ${Force.show(each, style)}; they hold ${Force.show(allowed, style)}. Stopped within ${Length.show(stop, style)}, ${section} strikes with ${Ratio.show(gravities, { digits: 2 })} times its weight${among}. Stopped within half of that, it is about twice as much.`,
    remedies: [
      { words: "Use larger corners with more fasteners, or rubber feet that give the fall a longer stop." },
    ],
    interval: useInterval(each, strength, countOf(groups)),
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
      remedies: [
        { words: "Use casters of a higher rating or with springs, or a lift gate instead of hands." },
      ],
      rests: "the height of the fall, which the standard's table has by mass",
      because: [balance, fall, line],
      limit: cite("icwm", "6.11, impact: the rated load dropped on a wheel"),
      sources: [cite("astm-d4169", "drop heights")],
    };
  },
  figure: (input, { part: { section } }) => fallenFigure(input, section, "casters"),
});
