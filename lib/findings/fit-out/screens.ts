/** Whether the foam strip of each clamped screen still grips when it has set, and its edge stands the clamps. */
import type { Content, PaneClamp, PaneStrip } from "../../design/index.js";
import { clampPressure, compressionSet, stripGrip } from "../../inside/index.js";
import type { ReviewInput } from "../../model/index.js";
import { Area, Force, Pressure, Ratio } from "../../quantity/index.js";
import type { MissingMeasurement } from "../../refusal.js";
import { cite } from "../../source.js";
import { amount, fineAmount, showFine, styleOf } from "../amount.js";
import { type Question, question, type Subjects } from "../question.js";
import { each, known } from "../subjects.js";

const glassCaution =
  "Glass under a clamp breaks from its edge. Set a soft strip on both sides and no metal on glass. Clamp a screen by its frame only, never on its face. Wear glasses and gloves when you set them.";

/** A screen that is clamped. */
interface Screen {
  /** The content whose screen it is. */
  readonly name: string;
  /** Its strip and clamps. */
  readonly pane: PaneStrip;
}

const eachScreen: Subjects<Screen> = each(
  (input) =>
    input.case.contents.flatMap(({ name, needs: { pane } }: Content) => (pane ? [{ name, pane }] : [])),
  ({ name }) => name,
);

/** The share of its squeeze that a strip loses: the maker's figure, or the builder's own test. */
function setOf({ set, setTest }: PaneStrip) {
  if (setTest) {
    const line = compressionSet.worked(setTest);
    return { share: line.value, because: [line] };
  }
  return set === undefined ? undefined : { share: set, because: [] };
}

/** Whether the strip still grips after a summer. */
export const screenGrip: Question = question({
  id: "fit-out.screen",
  about: eachScreen,
  ask: ({ name }) => `Does the foam strip still grip the screen of the ${name} after a summer?`,
  tier: "strength",
  cautions: [glassCaution],
  needs: {
    set: known((_, { name, pane }: Screen) => {
      const how =
        'squeeze a piece between two boards in the warm for a day, and let it go for half an hour. Write the three thicknesses as "set test" into its pane; or take "set" from its maker';
      return setOf(pane) ?? { measure: `how much of its squeeze the strip of the ${name} loses`, how };
    }),
  },
  answer: (input, { set: { share, because } }, { pane: { strip, squeeze, clearance } }) => {
    const line = stripGrip.worked({ thickness: strip, squeeze, set: share });
    const style = styleOf(input.case);
    return {
      demand: fineAmount("play without the strip", clearance),
      capacity: fineAmount("squeeze that is left", line.value),
      facts: `The strip loses ${Ratio.show(share, { unit: "%", digits: 2 })} of its squeeze and keeps ${showFine(line.value, style)}; the pane would have ${showFine(clearance, style)} of play without it.`,
      remedies: [{ words: "Use a thicker strip, or one that keeps more of its squeeze." }],
      because: [...because, line],
      limit: cite("astm-d395", "method B"),
      sources: [cite("common-practice", "a strip grips while it is squeezed")],
    };
  },
});

/** What a clamp presses with, and what the edge stands, or what is missing of it. */
function clampOf({ name, pane: { clamp, stands } }: Screen): EdgeClamp | MissingMeasurement {
  if (!clamp)
    return {
      measure: `the force of one clamp on the screen of the ${name}`,
      how: 'pull a clamp open with a luggage scale until the strip comes loose, measure the strip under it, and write the block "clamp" into its pane',
    };
  if (stands === undefined)
    return {
      measure: `what the edge of the screen of the ${name} stands`,
      how: 'ask its maker for the pressure on the rim, and write "stands" into its pane',
    };
  return { ...clamp, stands };
}

/** A clamp on the edge of a screen. */
interface EdgeClamp extends PaneClamp {
  /** The pressure that its maker allows on the rim. */
  readonly stands: Pressure;
}

/** Whether the edge of the screen stands its clamps. */
export const screenEdge: Question = question({
  id: "fit-out.glass",
  about: eachScreen,
  ask: ({ name }) => `Does the edge of the screen of the ${name} stand its clamps?`,
  tier: "safety",
  cautions: [glassCaution],
  needs: { clamp: known((_: ReviewInput, screen: Screen) => clampOf(screen)) },
  answer: (input, { clamp: { force, padWidth, padLength, stands } }) => {
    const line = clampPressure.worked({ force, area: Area.si(padWidth * padLength) });
    const style = styleOf(input.case);
    return {
      demand: amount(Pressure, "pressure of a clamp", line.value),
      capacity: amount(Pressure, "the edge stands", stands),
      facts: `A clamp of ${Force.show(force, style)} presses on the edge with ${Pressure.show(line.value, style)}; its maker allows ${Pressure.show(stands, style)}.`,
      remedies: [{ words: "Use a softer clamp, or a longer pad under it." }],
      because: [line],
      limit: cite("common-practice", "pressure that the maker of the screen allows on its rim"),
      sources: [cite("statics", "force over area")],
    };
  },
});
