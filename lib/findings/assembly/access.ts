/** Whether things get in and hands get to fasteners, and in which order a case is built. */
import type { OrderNeed } from "../../assembly/index.js";
import { isUsual, roomFor } from "../../design/index.js";
import {
  type FastenerReach,
  type FastenerWay,
  type ReviewInput,
  type ThingPutIn,
  waysIn,
} from "../../model/index.js";
import {
  type CaseOrder,
  caseOrder,
  handTaken,
  leastOpening,
  outOfReach,
  reachOf,
  wayTaken,
} from "../../plan/index.js";
import { Length } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { capitalised, counted, fineAmount, showFine, styleOf } from "../amount.js";
import { type Answer, type Question, question } from "../question.js";
import { each, eachSection, stackedCase, where } from "../subjects.js";

const rests = "the places and sizes of the case file and the tables";

/** The number of a step in the order, from 1. */
function numberOf(key: string | undefined, { order }: CaseOrder): number | undefined {
  if (order.kind !== "found") return undefined;
  const at = order.steps.findIndex((step) => step.key === key);
  return at < 0 ? undefined : at + 1;
}

/** Contents and shelves that must pass an opening, or go in before something else. */
export const wayIn: Question = question({
  id: "assembly.way-in",
  about: each(waysIn, ({ id }) => id),
  ask: ({ id }: ThingPutIn) => `Can the ${id} be put in its place?`,
  tier: "strength",
  cautions: ["Take the load off your fingers: set a heavy thing down on strips of wood, then draw them out."],
  assumes: [
    "It goes straight through, with any of its sides first and turned in the plane of the opening; doors stand open.",
  ],
  answer: (input, _, thing) => wayAnswer(input, thing),
});

function wayAnswer(input: ReviewInput, thing: ThingPutIn): Answer {
  const found = caseOrder(input);
  const way = wayTaken(thing, found);
  const told = { because: [], limit: cite("geometry", "what passes an opening"), rests };
  const least = thing.ways.some(({ opening }) => opening) ? undefined : leastOpening(thing, input);
  const style = styleOf(input.case);
  const later = least && least.wider > 0 ? laterWords(least, style) : "";
  if (!way)
    return found.order.kind === "found"
      ? { ...told, plainNo: true, facts: `Nothing lets ${thing.id} in.${later}` }
      : {
          ...told,
          facts: `It has ${counted(thing.ways.length, "way", "ways")} in, but no order of the work was found.${later}`,
          ratio: 0,
        };
  const number = numberOf(found.stepSeenFrom(thing.section)(thing.id), found);
  const turned = way.attitude ? turnWords(way.attitude.angle) : "";
  return {
    ...told,
    facts: `It goes in ${way.words}${turned}, as step ${number ?? "–"} of the order of work.${later}`,
    ratio: 0,
  };
}

/** What an opening would have to be for a thing that passes none. */
function laterWords(
  { name, panel, wider }: NonNullable<ReturnType<typeof leastOpening>>,
  style: ReturnType<typeof styleOf>,
): string {
  const by = Length.show(Length.si(wider), style);
  return ` Later it passes no opening: "${name}" of ${panel} would have to be ${by} wider all round.`;
}

/** How far something is turned, where it is neither level nor upright. */
function turnWords(angle: number): string {
  const degrees = (180 * angle) / Math.PI;
  return Math.abs(degrees % 90) < 0.5 ? "" : ` by ${degrees.toFixed(0)} degrees`;
}

/** Fasteners of a section with a washer, a nut or a head inside. */
export const reach: Question = question({
  id: "assembly.reach",
  about: where((input) => input.parts.fastenings.length > 0, eachSection),
  ask: (section: string) => `Does a hand get to every washer, nut and inside head of ${section}?`,
  tier: "strength",
  cautions: ["Cut edges of metal and set rivets scratch: wear sleeves and gloves inside a case."],
  assumes: [
    "A hand goes straight from the opening, or round what stands inside with room to spare. Only the hand itself enters a narrower gap.",
    "Nobody says where the fasteners of stays, straps and cradles are.",
  ],
  answer: reachAnswer,
});

function reachAnswer(input: ReviewInput, _: unknown, section: string): Answer {
  const found = caseOrder(input);
  const handed = reachOf(section, input).filter(({ handInside }) => handInside);
  const far = outOfReach(section, input);
  const told = {
    because: [],
    limit: cite(
      "en-547",
      "parts 2 and 3: openings from the largest arm, reach from the shortest, from memory",
    ),
    rests: `the reach of an arm, ${isUsual("arm", input.measurements.tools) ? "as usual" : "as in tools.csv"}`,
  };
  if (far.length > 0) return farAnswer(told, far, handed.length, input);
  if (handed.length === 0) return { ...told, facts: "No hand must be inside for any fastener.", ratio: 0 };
  const ways = handed.flatMap((one) => {
    const way = handTaken(one, found, input) ?? one.ways[0];
    return way ? [{ one, way }] : [];
  });
  const share = ({ length, reach: own }: FastenerWay): number => length / own;
  const longest = ways.reduce(
    (most, next) => (share(next.way) > share(most.way) ? next : most),
    ways[0] as (typeof ways)[number],
  );
  const style = styleOf(input.case);
  const shown = (length: number): string => showFine(Length.si(length), style);
  return {
    ...told,
    demand: fineAmount("longest way of the hand", Length.si(longest.way.length)),
    capacity: fineAmount("reach of the arm", Length.si(longest.way.reach)),
    facts: `A hand gets to all ${counted(handed.length, "place", "places")} in ${shown(longest.way.length)} at most; an arm reaches ${shown(longest.way.reach)}. The longest way is to ${longest.one.name}, through ${longest.way.words}.`,
  };
}

function farAnswer(
  told: Pick<Answer, "because" | "limit" | "rests">,
  far: readonly FastenerReach[],
  all: number,
  input: ReviewInput,
): Answer {
  const [first] = [...far].sort((a, b) => (b.shortest ?? Infinity) - (a.shortest ?? Infinity));
  const { shortest, name = "a fastener" } = first ?? {};
  const arm = roomFor("arm", input.measurements.tools);
  return {
    ...told,
    plainNo: true,
    ...(shortest === undefined
      ? {}
      : { demand: fineAmount("shortest way to the farthest", Length.si(shortest)) }),
    capacity: fineAmount("reach of the arm", arm.length),
    facts: `No hand gets to ${far.length} of ${all} places, such as ${name}.`,
    remedies: [{ words: "Make an opening nearer to it, or take a fastener that needs nothing inside." }],
  };
}

/** The order of the whole work. */
export const order: Question = question({
  id: "assembly.order",
  about: stackedCase,
  ask: "Is there an order in which the whole case goes together?",
  tier: "strength",
  cautions: ["Two people turn and stack a section; nobody reaches in while the other moves it."],
  assumes: ["Tools take the room of tools.csv, or usual room; fasteners are set one by one."],
  answer: orderAnswer,
});

function orderAnswer(input: ReviewInput): Answer {
  const { order: found, needs, choices } = caseOrder(input);
  const told = { because: [], limit: cite("geometry", "what stands in the way comes later"), rests };
  if (found.kind === "none")
    return {
      ...told,
      plainNo: true,
      facts: `No order meets ${found.conflict.length === 1 ? "this need" : `these ${found.conflict.length} needs together`}. ${found.conflict.map(needWords).join(" ")}`,
      remedies: [{ words: "Change one of them: move a thing, widen an opening, or take another fastener." }],
    };
  const closing = [...choices.values()].flatMap(({ last }) => last ?? []);
  const last =
    closing.length > 0
      ? ` ${capitalised(closing.length > 2 ? `${closing[0]} and ${closing.length - 1} more` : closing.join(" and "))} ${closing.length > 1 ? "close" : "closes"} last.`
      : "";
  return {
    ...told,
    facts: `An order of ${found.steps.length} steps meets all ${needs.length} needs; none is broken.${last}`,
    ratio: 0,
  };
}

/** A need as a sentence. */
function needWords({ step, before, why }: OrderNeed): string {
  if (before.length === 0) return `"${capitalised(step)}" has no time at all: ${why}.`;
  const [first = [], ...rest] = before;
  const many = rest.length > 1 ? `one of ${rest.length} other ways` : "another way";
  const others = rest.length > 0 ? ` Else ${many} must be free.` : "";
  const more = first.length > 1 ? ` and ${counted(first.length - 1, "step more", "steps more")}` : "";
  return `"${capitalised(step)}" comes before "${first[0] ?? "the end"}"${more}. The reason: ${why}.${others}`;
}
