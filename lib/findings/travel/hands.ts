/** Whether hands fit the handles of each section, each person has two, and the section hangs steadily from them. */
import type { HardwarePart } from "../../design/index.js";
import {
  handleLine,
  handlesByEnd,
  liftedByEnds,
  liftHandles,
  type ReviewInput,
  sectionBalance,
  sectionsWithHandles,
} from "../../model/index.js";
import { handRoom, highestGoodBox, widestGoodBox } from "../../moving/index.js";
import { Count, Length, Ratio, ratio } from "../../quantity/index.js";
import { Refusal } from "../../refusal.js";
import { cite } from "../../source.js";
import { amount, counted, styleOf } from "../amount.js";
import { hangingFigure } from "../figures/carried-figures.js";
import { gripFigure, handsFigure } from "../figures/hand-figures.js";
import { type Answer, type Question, question, type Subjects } from "../question.js";
import { each, known, says, where } from "../subjects.js";

const gripCaution =
  "A hand that does not fit closes on the knuckles: keep fingers from between handle and door frame. Try every handle with the glove that will be worn, the case propped up.";

/** Nothing to ask of a section without handles, or where nobody lifts. */
const eachHandledSection: Subjects<string> = where(
  says("journey"),
  each(
    sectionsWithHandles,
    (section) => section,
    (section) => `handles of ${section}`,
  ),
);

/** The same with a handle at both ends; one person alone may carry by less. */
const eachPairedSection: Subjects<string> = {
  ...eachHandledSection,
  each: (input) => eachHandledSection.each(input).filter((section) => liftedByEnds(input, section)),
};

type HandRoom = ReturnType<typeof handRoom.worked>;

/** Whether a gloved hand fits. */
export const handRoomFindings: Question = question({
  id: "travel.grip",
  about: eachHandledSection,
  ask: (section) => `Does a gloved hand fit the handles of ${section}?`,
  tier: "handling",
  cautions: [gripCaution],
  needs: {
    cutOuts: known((input, section: string) => {
      const handles = liftHandles(input, section);
      const blind = handles.find(({ stock }) => !(stock.cutWidth > 0 && stock.cutHeight > 0));
      return blind
        ? {
            measure: `the grip of ${blind.stock.name}, which has no cut-out`,
            how: "measure length and clearance with the hand that will use it, gloves on",
          }
        : handles.map(({ stock }) => ({ width: stock.cutWidth, height: stock.cutHeight }));
    }),
  },
  answer: (input, { cutOuts }, section) => {
    const glove = handRoom.worked({ hand: "gloved" });
    const bare = handRoom.worked({ hand: "bare" });
    const useOf = ({ length, clearance }: HandRoom["value"]): Ratio =>
      ratio(Math.max(...cutOuts.map(({ width, height }) => Math.max(length / width, clearance / height))));
    const style = styleOf(input.case);
    const size = ({ length, clearance }: HandRoom["value"]): string =>
      `${Length.show(length, style)} by ${Length.show(clearance, style)}`;
    const bareWords = useOf(bare.value) <= 1 ? "fits" : "does not fit either";
    return {
      demand: amount(Ratio, "room a gloved hand needs, over the room there is", useOf(glove.value)),
      capacity: amount(Ratio, "at most", ratio(1)),
      facts: `A gloved hand needs ${size(glove.value)}, a bare one ${size(bare.value)}, which ${bareWords}.${boxWords(input, section)}`,
      remedies: [
        { words: "Use a larger handle, or lift with bare hands and count the grip as poor in the journey." },
      ],
      because: [glove, bare],
      limit: cite("mil-std-1472", "least dimensions of handles, from memory"),
      sources: [cite("niosh-lifting", "table 6, optimal handles")],
    };
  },
  figure: (input, section) => {
    const [least] = [...liftHandles(input, section)].sort((a, b) => a.stock.cutHeight - b.stock.cutHeight);
    if (!least || least.stock.cutWidth === 0)
      throw new Refusal(`picture of a handle: nobody measured the cut-out of the handles of ${section}`);
    const { cutWidth: length, cutHeight: clearance } = least.stock;
    return gripFigure(input, section, { length, clearance }, handRoom({ hand: "gloved" }));
  },
});

/** A box beyond the manual's optimal size is no good grip whatever its handles. */
function boxWords({ parts, case: { journey, units } }: ReviewInput, section: string): string {
  const style = styleOf({ units });
  const size = parts.sections.find(({ name }) => name === section)?.outside.size;
  const large = size && (Math.min(size.x, size.y) > widestGoodBox || size.z > highestGoodBox);
  return large && journey.grip !== "poor"
    ? ` The lifting manual counts the grip of a box over ${Length.show(widestGoodBox, style)} wide or ${Length.show(highestGoodBox, style)} high as poor, with good handles too. The journey says ${journey.grip}.`
    : "";
}

/** Whether everyone who lifts a section has both hands on something, close enough together. */
export const handholds: Question = question({
  id: "travel.hands",
  about: eachHandledSection,
  ask: (section, { case: { journey } }) =>
    journey.people === 1
      ? `Does whoever lifts ${section} get both hands on a handle?`
      : `Does everyone who lifts ${section} get both hands on a handle?`,
  tier: "handling",
  cautions: [gripCaution],
  answer: (input, _, section) => {
    const room = handRoom.worked({ hand: "gloved" });
    if (input.case.journey.people === 1) return heldAlone(input, section, room);
    const atEnd = Math.ceil(input.case.journey.people / 2);
    const across = handleLine(input, section).axis === "x" ? "y" : "x";
    const ends = handlesByEnd(input, section).map((handles) => ({
      holds: handles.reduce((sum, { stock }) => sum + handsOn(stock.cutWidth, room.value.length), 0),
      apart: apartOf(handles.map(({ centre }) => centre[across])),
    }));
    const hands = 2 * atEnd;
    const holds = Math.min(...ends.map((end) => end.holds));
    if (holds < hands) return tooFew(input, section, { hands, holds, room });
    const apart = Math.max(...ends.map((end) => end.apart)) / (2 * atEnd - 1);
    return apartFrom(input, Length.si(apart), room);
  },
  figure: (input, section) => {
    const { people } = input.case.journey;
    if (people === 1) throw new Refusal("picture of hands: one person takes the two holds that are nearest");
    const { length } = handRoom({ hand: "gloved" });
    return handsFigure(input, section, 2 * Math.ceil(people / 2), (width) => handsOn(width, length));
  },
});

/** One person takes the two handholds that are nearest to each other. */
function heldAlone(input: ReviewInput, section: string, room: HandRoom): Answer {
  const handles = liftHandles(input, section);
  const holds = handles.reduce((sum, { stock }) => sum + handsOn(stock.cutWidth, room.value.length), 0);
  if (holds < 2) return tooFew(input, section, { hands: 2, holds, room });
  const apart = handles.length < 2 ? Length.si(0) : nearestTwo(handles);
  return apartFrom(input, apart, room);
}

function nearestTwo(handles: readonly HardwarePart[]): Length {
  const ways = handles.flatMap(({ centre: a }, i) =>
    handles.slice(i + 1).map(({ centre: b }) => Math.hypot(a.x - b.x, a.y - b.y, a.z - b.z)),
  );
  return Length.si(Math.min(...ways));
}

/** A handle as long as two hands side by side takes two. */
function handsOn(width: Length, hand: Length): number {
  return Math.max(1, Math.floor(width / hand + 1e-9));
}

/** From the first handle of an end to the last. */
function apartOf(places: readonly number[]): number {
  return Math.max(...places) - Math.min(...places);
}

/** The handholds at the end that has fewer. */
interface Handholds {
  /** How many hands lift there. */
  readonly hands: number;
  /** How many have a handle. */
  readonly holds: number;
  /** What a gloved hand needs. */
  readonly room: HandRoom;
}

/** A grip that the journey already counts as poor is one with the other hand under the edge. */
function tooFew(input: ReviewInput, section: string, { hands, holds, room }: Handholds): Answer {
  const style = styleOf(input.case);
  const underEdge = input.case.journey.grip === "poor";
  const alone = input.case.journey.people === 1;
  const who = alone ? `2 hands lift ${section}` : `${hands} hands lift at an end of ${section}`;
  const first = `${counted(holds, "has a handhold", "have handholds")}, and ${counted(hands - holds, "lifts", "lift")} under the edge`;
  const facts = underEdge
    ? `${who}: ${first}. The journey's poor grip counts that in.`
    : `${who}, and it has ${counted(holds, "handhold", "handholds")} there. The lifting equation is for two hands.`;
  const second = alone ? "Set a second handle" : "Set a second handle beside each";
  return {
    demand: amount(Count, alone ? "hands" : "hands at one end", hands),
    capacity: underEdge
      ? amount(Count, alone ? "handholds and the edge" : "handholds at that end and under its edge", hands)
      : amount(Count, alone ? "handholds" : "handholds at that end", holds),
    facts,
    remedies: [
      {
        words: `${second}, ${Length.show(widestGoodBox, style)} apart at most. Or count the grip as poor in the journey: the other hand lifts under the edge.`,
      },
    ],
    because: [room],
    limit: cite("niosh-lifting", "two-handed lifts; table 6, couplings"),
  };
}

function apartFrom(input: ReviewInput, apart: Length, room: HandRoom): Answer {
  const style = styleOf(input.case);
  return {
    demand: amount(Length, "between the hands of one person", apart),
    capacity: amount(Length, "width of an optimal box", widestGoodBox),
    facts: `One person's hands are ${Length.show(apart, style)} apart; ${Length.show(widestGoodBox, style)} is the width of box that the lifting manual calls optimal.`,
    remedies: [{ words: "Set the handles of an end closer together." }],
    because: [room],
    limit: cite("niosh-lifting", "table 6, note 3: an optimal container"),
  };
}

/** Whether a section hangs below its handles or rolls over in the hands. */
export const hang: Question = question({
  id: "travel.hang",
  about: eachPairedSection,
  ask: (section) => `Does ${section} hang below its handles, or roll over in the hands?`,
  tier: "safety",
  cautions: [
    "A section that balances above its handles rolls over in the hands. Lift it a finger's width first, feet clear, and set it down again if it wants to turn.",
  ],
  answer: (input, _, section) => {
    const balance = sectionBalance(input, section);
    const floor = input.parts.sections.find(({ name }) => name === section)?.outside.low.z ?? 0;
    const centre = Length.si(balance.value.z - floor);
    const handles = Length.si(handleLine(input, section).height - floor);
    const style = styleOf(input.case);
    return {
      demand: amount(Length, "its centre of gravity above its bottom", centre),
      capacity: amount(Length, "its handles above its bottom", handles),
      facts: `It balances ${Length.show(centre, style)} above its bottom; its handles sit at ${Length.show(handles, style)}.`,
      remedies: [{ words: "Move the handles up, or heavy things down." }],
      rests: "the heights of what is heavy and of the handles in the case file",
      because: [balance],
      limit: cite("common-practice", "handles no lower than the centre of gravity"),
      sources: [cite("statics", "stable hanging")],
    };
  },
  figure: hangingFigure,
});
