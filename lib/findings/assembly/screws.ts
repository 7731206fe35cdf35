/** Whether screws end inside what they bite, and slides lie against what they are screwed to. */
import { caseSolids, pointsOut, type ReviewInput, type SlideStand, slideStands } from "../../model/index.js";
import { Length } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { capitalised, fineAmount, showFine, styleOf } from "../amount.js";
import type { Remedy } from "../finding.js";
import { type Answer, type Question, question } from "../question.js";
import { each, stackedCase, where } from "../subjects.js";
import { placeWords } from "./place.js";

const rests = "the places and sizes of the case file and the tables";

function hasScrewPoints(input: ReviewInput): boolean {
  return caseSolids(input).solids.some(({ piece }) => piece === "tip");
}

/** Points of screws against the thickness that they go into. */
export const points: Question = question({
  id: "assembly.points",
  about: where(hasScrewPoints, stackedCase),
  ask: "Does every screw end inside what it goes into?",
  tier: "strength",
  cautions: [
    "The point of a screw that comes out tears hands and cables: shorten it, or cover it, before anybody reaches in.",
  ],
  assumes: ["A point may come out by half a millimetre."],
  answer: pointsAnswer,
});

function pointsAnswer(input: ReviewInput): Answer {
  const [worst, ...rest] = pointsOut(input);
  const told = { because: [], limit: cite("geometry", "a screw ends where its length says"), rests };
  if (!worst)
    return { ...told, facts: "Every screw of a known place ends inside what it goes into.", ratio: 0 };
  const { tip, through, by, at, shorter } = worst;
  const out = Length.si(by);
  const style = styleOf(input.case);
  const many =
    rest.length === 0 ? "" : ` So ${rest.length === 1 ? "does one other" : `do ${rest.length} others`}.`;
  const remedy: Remedy = shorter
    ? {
        words: `Take ${shorter.name} there. Its point then stays inside.`,
        gives: [fineAmount("point comes out then", Length.si(0))],
      }
    : { words: "There is no shorter one of its kind in fasteners.csv. Buy one, or put a block behind it." };
  return {
    ...told,
    plainNo: true,
    demand: fineAmount("point comes out", out),
    facts: `${capitalised(tip.name)} comes out of ${through} by ${showFine(out, style)}. The place is ${placeWords(input, tip.section, at)}.${many}`,
    remedies: [remedy],
  };
}

/** Slides against the walls that their screws go into. */
export const slidesOnWalls: Question = question({
  id: "assembly.slides",
  about: each(slideStands, ({ id }) => id),
  ask: ({ id }: SlideStand) => `Do the ${id} lie against the walls that they are screwed to?`,
  tier: "strength",
  cautions: [
    "A drawer whose slides let go falls out with all that is in it: try it empty, then loaded, with your feet away.",
  ],
  assumes: ["A gap of up to a millimetre is packed out with a slip of card."],
  answer: (input, _, stand) => slideAnswer(input, stand),
});

/** A gap that is packed with a slip of card; common practice, no source, m. */
const packed = 1e-3;

function slideAnswer(input: ReviewInput, { id, section, gaps }: SlideStand): Answer {
  const told = { because: [], limit: cite("geometry", "a screw holds what it reaches"), rests };
  const wide = [...gaps].sort((a, b) => b.gap - a.gap).filter(({ gap }) => gap > packed);
  const [worst] = wide;
  if (!worst) return { ...told, facts: "Both lie against their walls.", ratio: 0 };
  const style = styleOf(input.case);
  const shown = (value: number): string => Length.show(Length.si(value), style);
  const both = wide.reduce((sum, { gap }) => sum + gap, 0);
  const runs = id.replace(/^slides of /, "");
  const other = wide.length > 1 ? " So does the other from its own." : "";
  return {
    ...told,
    plainNo: true,
    demand: fineAmount("slide stands off its wall", Length.si(worst.gap)),
    capacity: fineAmount("gap that is packed out", Length.si(packed)),
    facts: `A slide of ${runs} stands ${shown(worst.gap)} away from ${worst.wall}, into which its screws go.${other} The place is ${placeWords(input, section, worst.at)}.`,
    remedies: [
      {
        words: `Make ${runs} ${shown(both)} wider. Then both slides lie against their walls.`,
        gives: [fineAmount("slide stands off its wall then", Length.si(0))],
      },
      { words: `Or stand a board on edge beside ${runs}, fixed to the floor, and screw the slide to that.` },
    ],
  };
}
