/** Whether hands fit the handles of each section, two of them, and whether it hangs steadily from them. */
import { handRoom, highestGoodBox, widestGoodBox } from "../../moving/index.js";
import { Count, Length, Ratio } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { styleOf } from "../amount.js";
import { compared } from "../compared.js";
import type { Finding } from "../finding.js";
import { guarded, type Question, type Reply, unknown } from "../guarded.js";
import type { ReviewInput } from "../review-input.js";
import { sectionBalance } from "./balance.js";
import { handleLine, handlesByEnd, liftHandles } from "./handles.js";

const gripCaution =
  "A hand that does not fit closes on the knuckles: no finger between handle and door frame. Try every handle with the glove that will be worn, the case propped up.";

const hangCaution =
  "A section that balances above its handles rolls over in the hands. Lift it a finger's width first, feet clear, and set it down again if it wants to turn.";

/** Room, spacing and height of the handles of each section; nothing to ask of one without handles. */
export function gripFindings(input: ReviewInput): readonly Finding[] {
  return input.parts.sections.flatMap(({ name }) =>
    liftHandles(input, name).length === 0
      ? []
      : [roomFinding(input, name), spacingFinding(input, name), hangFinding(input, name)],
  );
}

function about(id: string, section: string, question: string): Question {
  return { id: `travel.${id}.${section}`, topic: "travel", subject: `handles of ${section}`, question };
}

function roomFinding(input: ReviewInput, section: string): Finding {
  const question = about("grip", section, `Does a gloved hand fit the handles of ${section}?`);
  const blind = liftHandles(input, section).find(({ stock }) => !(stock.cutWidth > 0 && stock.cutHeight > 0));
  if (blind) {
    const how = "measure length and clearance with the hand that will use it, gloves on";
    return unknown(question, { measure: `the grip of ${blind.stock.name}, which has no cut-out`, how }, [
      gripCaution,
    ]);
  }
  return guarded(question, () => roomReply(input, section), [gripCaution]);
}

/** The tightest handle, with a glove; a box beyond the manual's optimal size is no good grip whatever its handles. */
function roomReply(input: ReviewInput, section: string): Reply {
  const glove = handRoom.worked({ hand: "gloved" });
  const bare = handRoom.worked({ hand: "bare" });
  const useOf = (room: typeof glove.value): number =>
    Math.max(
      ...liftHandles(input, section).map(({ stock }) =>
        Math.max(room.length / stock.cutWidth, room.clearance / stock.cutHeight),
      ),
    );
  const style = styleOf(input.case);
  const size = ({ length, clearance }: typeof glove.value): string =>
    `${Length.show(length, style)} by ${Length.show(clearance, style)}`;
  const bareWords = useOf(bare.value) <= 1 ? "fits" : "does not fit either";
  return compared({
    kind: Ratio,
    asked: ["room a gloved hand needs, over the room there is", Ratio.si(useOf(glove.value))],
    there: ["at most", Ratio.si(1)],
    facts: `A gloved hand needs ${size(glove.value)}, a bare one ${size(bare.value)}, which ${bareWords}.${boxWords(input, section)}`,
    remedy: "Take a larger handle, or lift with bare hands and count the grip as poor in the journey.",
    because: [glove, bare],
    cautions: [gripCaution],
    source: [
      cite("mil-std-1472", "least dimensions of handles, from memory"),
      cite("niosh-lifting", "table 6, optimal handles"),
    ],
  });
}

function boxWords({ parts, case: { journey } }: ReviewInput, section: string): string {
  const size = parts.sections.find(({ name }) => name === section)?.outside.size;
  const large = size && (Math.min(size.x, size.y) > widestGoodBox || size.z > highestGoodBox);
  return large && journey.grip !== "poor"
    ? ` The lifting manual counts the grip of a box over 16 in wide or 12 in high as poor, with good handles too; the journey says ${journey.grip}.`
    : "";
}

function spacingFinding(input: ReviewInput, section: string): Finding {
  const question = about("hands", section, `Does everyone who lifts ${section} get both hands on a handle?`);
  return guarded(question, () => spacingReply(input, section), [gripCaution]);
}

/** At the end with fewer handholds: a handle as long as two hands side by side takes two. */
function spacingReply(input: ReviewInput, section: string): Reply {
  const room = handRoom.worked({ hand: "gloved" });
  const atEnd = Math.ceil(Math.max(2, input.case.journey.people) / 2);
  const ends = handlesByEnd(input, section).map((handles) => ({
    holds: handles.reduce(
      (sum, { stock }) => sum + Math.max(1, Math.floor(stock.cutWidth / room.value.length + 1e-9)),
      0,
    ),
    apart: apartOf(handles.map(({ centre }) => centre[handleLine(input, section).axis === "x" ? "y" : "x"])),
  }));
  const hands = 2 * atEnd;
  const holds = Math.min(...ends.map((end) => end.holds));
  if (holds < hands) return tooFewReply(input, section, { hands, holds, room });
  return apartReply(input, Length.si(Math.max(...ends.map(({ apart }) => apart)) / (2 * atEnd - 1)), room);
}

/** From the first handle of an end to the last. */
function apartOf(places: readonly number[]): number {
  return Math.max(...places) - Math.min(...places);
}

interface Handholds {
  readonly hands: number;
  readonly holds: number;
  readonly room: ReturnType<typeof handRoom.worked>;
}

/** A grip that the journey already counts as poor is one with the other hand under the edge. */
function tooFewReply(input: ReviewInput, section: string, { hands, holds, room }: Handholds): Reply {
  const style = styleOf(input.case);
  const underEdge = input.case.journey.grip === "poor";
  const there = holds === 1 ? "there is one handhold" : `there are ${holds} handholds`;
  const rest = underEdge
    ? "the others lift under the edge, which the journey's poor grip counts in"
    : "the lifting equation is for two hands";
  return compared({
    kind: Count,
    asked: ["hands at one end", hands],
    there: [
      underEdge ? "handholds at that end and under its edge" : "handholds at that end",
      underEdge ? hands : holds,
    ],
    facts: `${hands} hands lift at an end of ${section} and ${there}; ${rest}.`,
    remedy: `Set a second handle beside each, ${Length.show(widestGoodBox, style)} apart at most, or count the grip as poor in the journey: the other hand lifts under the edge.`,
    because: [room],
    cautions: [gripCaution],
    source: [cite("niosh-lifting", "two-handed lifts; table 6, couplings")],
  });
}

function apartReply(input: ReviewInput, apart: Length, room: Handholds["room"]): Reply {
  const style = styleOf(input.case);
  return compared({
    kind: Length,
    asked: ["between the hands of one person", apart],
    there: ["width of an optimal box", widestGoodBox],
    facts: `One person's hands are ${Length.show(apart, style)} apart; ${Length.show(widestGoodBox, style)} is the width of box that the lifting manual calls optimal.`,
    remedy: "Set the handles of an end closer together.",
    because: [room],
    cautions: [gripCaution],
    source: [cite("niosh-lifting", "table 6, note 3: an optimal container")],
  });
}

function hangFinding(input: ReviewInput, section: string): Finding {
  const question = about(
    "hang",
    section,
    `Does ${section} hang below its handles, or roll over in the hands?`,
  );
  return guarded(question, () => hangReply(input, section), [hangCaution]);
}

function hangReply(input: ReviewInput, section: string): Reply {
  const balance = sectionBalance(input, section);
  const floor = input.parts.sections.find(({ name }) => name === section)?.outside.low.z ?? 0;
  const centre = Length.si(balance.value.z - floor);
  const handles = Length.si(handleLine(input, section).height - floor);
  const style = styleOf(input.case);
  return compared({
    kind: Length,
    asked: ["its centre of gravity above its bottom", centre],
    there: ["its handles above its bottom", handles],
    facts: `It balances ${Length.show(centre, style)} above its bottom, the handles sit at ${Length.show(handles, style)}.`,
    remedy: "Move the handles up, or heavy things down.",
    because: [balance],
    cautions: [hangCaution],
    source: [
      cite("common-practice", "handles no lower than the centre of gravity"),
      cite("statics", "stable hanging"),
    ],
  });
}
