/** Whether everyone who lifts a section has both hands on something. */

import { handleLine, handlesByEnd, type ReviewInput, sectionsWithHandles } from "../../model/index.js";
import { handRoom, widestGoodBox } from "../../moving/index.js";
import { Count, Length } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { styleOf } from "../amount.js";
import { compared } from "../compared.js";
import type { Finding } from "../finding.js";
import { guarded, type Reply } from "../guarded.js";
import { gripCaution } from "./grip-findings.js";
import { aboutHandles } from "./handle-question.js";

/** Count and spacing of the handholds at each end; nothing to ask of a section without handles. */
export function handholdFindings(input: ReviewInput): readonly Finding[] {
  return sectionsWithHandles(input).map((section) => spacingFinding(input, section));
}

function spacingFinding(input: ReviewInput, section: string): Finding {
  const question = aboutHandles(
    "hands",
    section,
    `Does everyone who lifts ${section} get both hands on a handle?`,
  );
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
