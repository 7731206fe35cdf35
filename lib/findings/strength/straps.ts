/** Whether the edges and walls of a section stand straps at the tension of their label, and where to run them. */
import type { Lashing } from "../../design/index.js";
import type { ReviewInput } from "../../model/index.js";
import {
  ridesOnBlocks,
  type StrappedWall,
  type StrapRun,
  sectionFootprint,
  strappedWall,
  strapRuns,
  usualStrapWidth,
} from "../../model/index.js";
import { Force, Length, Pressure, type ShowStyle } from "../../quantity/index.js";
import { Refusal } from "../../refusal.js";
import { cite } from "../../source.js";
import { styleOf } from "../amount.js";
import { strapCaution } from "../cautions.js";
import { strappedFigure } from "../figures/riding-figures.js";
import { type Answer, type Question, question } from "../question.js";
import { eachSection, mostOf, strapsGiven, where } from "../subjects.js";

/** The wall of a run that is nearest to giving way. */
interface TriedRun {
  /** The run. */
  readonly run: StrapRun;
  /** Its weaker wall. */
  readonly worst: StrappedWall;
}

function useOf({ pressed, allowed, push, bears }: StrappedWall): number {
  return Math.max(pressed / allowed, push / bears);
}

function tried(run: StrapRun, straps: Lashing, input: ReviewInput): TriedRun {
  const walls = run.walls.map((wall) => strappedWall(wall, run, straps, input));
  return { run, worst: mostOf(walls, useOf, "no wall under a strap") };
}

/** "Run them over lower.front and lower.back, 4 in and 20 in from their left end. Nothing is cut out of 3 in of wall there." */
function whereWords({ walls: [low, high], middles, strip }: StrapRun, style: ShowStyle): string {
  const places = middles.map((at) => Length.show(at, style)).join(" and ");
  const end = low.face === "front" ? "left" : "front";
  return `Run them over ${low.id} and ${high.id}, ${places} from their ${end} end. Nothing is cut out of ${Length.show(strip, style)} of wall there.`;
}

/** Whether a section's walls and edges stand its straps. */
export const strapsOnWalls: Question = question({
  id: "strength.strap",
  about: where(({ case: { journey } }) => journey.lashing !== undefined, eachSection),
  ask: (section) => `Do the edges and walls of ${section} stand straps at the tension of their label?`,
  tier: "strength",
  cautions: [strapCaution],
  assumes: [
    "A strap comes down flat beside the wall. Metal on the edge spreads it over more, which is not counted.",
    "Openings take as much of a wall as they cut of its width. Beside the tallest of them the strip under a strap stands by itself.",
  ],
  needs: { straps: strapsGiven },
  answer: (input, { straps }, section) => strapped(input, straps, section),
  figure: (input, section) => {
    const { lashing: straps } = input.case.journey;
    if (!straps) throw new Refusal("picture of straps: the journey has none");
    const standing = sectionFootprint(input, section);
    const words = Force.show(straps.tension, styleOf(input.case));
    return strappedFigure(input, { sections: [section], standing, straps }, words);
  },
});

function strapped(input: ReviewInput, straps: Lashing, section: string): Answer {
  const style = styleOf(input.case);
  const runs = strapRuns(section, straps, input).map((run) => tried(run, straps, input));
  const limit = cite(
    "en-1995",
    "2.4.1, compression of plywood in its plane, and Euler's load over the case's safety factor",
  );
  const assumed =
    straps.strapWidth === undefined
      ? [`Nobody said how wide a strap is: ${Length.show(usualStrapWidth, style)} was taken.`]
      : [];
  if (runs.length === 0)
    return {
      plainNo: true,
      facts: `No two walls of ${section} that face each other leave room for ${straps.straps} straps between their openings.`,
      remedies: [
        { words: "Strap a frame or a stiff board over its top, or set it hard against a bulkhead." },
      ],
      because: [],
      limit,
      assumed,
    };
  const { run, worst } = mostOf(runs, ({ worst }) => -useOf(worst), "no run");
  const ratio = useOf(worst);
  return {
    ratio,
    facts: `A strap presses the upper edge of ${worst.wall.id} with ${Pressure.show(worst.pressed, style)}, counted 1.5 times, of ${Pressure.show(worst.allowed, style)}. ${whereWords(run, style)} Down the wall it pushes with ${Force.show(worst.push, style)}; with the case's safety factor the wall bears ${Force.show(worst.bears, style)} before it buckles.`,
    remedies: [
      {
        words: ridesOnBlocks(input)
          ? "Use wider straps or protectors that spread them, or tighten by hand only as far as the road needs."
          : "Use wider straps or protectors that spread them, or stand it on blocks and tighten by hand only.",
      },
    ],
    assumed: [...assumed, "The compression strength of the sheet is that of birch veneer, recalled."],
    rests: worst.pressed / worst.allowed > worst.push / worst.bears ? worst.crushing : worst.buckling,
    because: [...worst.crushing, ...worst.buckling],
    limit,
    sources: [cite("en-12195", "standard tension of a strap"), cite("elastic-stability", "art. 9.10")],
  };
}
