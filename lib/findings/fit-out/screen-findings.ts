import type { Content, PaneClamp, PaneStrip } from "../../design/index.js";
import type { WorkedLine } from "../../formula.js";
import { clampPressure, compressionSet, stripGrip } from "../../inside/index.js";
import type { ReviewInput } from "../../model/index.js";
import { Area, Force, Length, Pressure, Ratio } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { fineAmount, showFine, styleOf } from "../amount.js";
import { compared } from "../compared.js";
import type { Finding } from "../finding.js";
import { guarded, type Question, type Reply, unknown } from "../guarded.js";

const glassCaution =
  "Glass under a clamp breaks from its edge: strip on both sides, no metal on glass, clamps only on the frame of a screen, never on its face. Wear glasses and gloves when you set them.";

/** Whether the foam strip of each clamped screen still grips when it has set, and its edge stands the clamps. */
export function screenFindings(input: ReviewInput): readonly Finding[] {
  return input.case.contents.flatMap((content) => {
    const { pane } = content.needs;
    return pane ? [gripFinding(input, content, pane), edgeFinding(input, content, pane)] : [];
  });
}

function gripFinding(input: ReviewInput, { name }: Content, pane: PaneStrip): Finding {
  const question: Question = {
    id: `fit-out.screen.${name}`,
    topic: "fit-out",
    subject: name,
    question: `Does the foam strip still grip the screen of the ${name} after a summer?`,
  };
  const known = setOf(pane);
  if (!known) {
    const how =
      'squeeze a piece between two boards in the warm for a day, let it go for half an hour, and write the three thicknesses as "set test" into its pane; or take "set" from its maker';
    return unknown(question, { measure: `how much of its squeeze the strip of the ${name} loses`, how }, [
      glassCaution,
    ]);
  }
  return guarded(question, () => gripReply(input, pane, known()), [glassCaution]);
}

/** A share with the line it comes from. */
interface KnownSet {
  readonly set: Ratio;
  readonly because: readonly WorkedLine[];
}

/** The maker's figure, or the builder's own test, worked out when asked. */
function setOf({ set, setTest }: PaneStrip): (() => KnownSet) | undefined {
  if (setTest) {
    return () => {
      const line = compressionSet.worked(setTest);
      return { set: line.value, because: [line] };
    };
  }
  return set === undefined ? undefined : () => ({ set, because: [] });
}

function gripReply(
  input: ReviewInput,
  { strip, squeeze, clearance }: PaneStrip,
  { set, because }: KnownSet,
): Reply {
  const line = stripGrip.worked({ thickness: strip, squeeze, set });
  const style = styleOf(input.case);
  return {
    ...compared({
      kind: Length,
      asked: ["play without the strip", clearance],
      there: ["squeeze that is left", line.value],
      facts: `The strip loses ${Ratio.show(set, { unit: "%", digits: 2 })} of its squeeze and keeps ${showFine(line.value, style)}; the pane would have ${showFine(clearance, style)} of play without it.`,
      remedy: "Thicker strip, or one with less compression set.",
      because: [...because, line],
      cautions: [glassCaution],
      source: [cite("astm-d395", "method B"), cite("common-practice", "a strip grips while it is squeezed")],
    }),
    demand: fineAmount("play without the strip", clearance),
    capacity: fineAmount("squeeze that is left", line.value),
  };
}

function edgeFinding(input: ReviewInput, { name }: Content, { clamp, stands }: PaneStrip): Finding {
  const question: Question = {
    id: `fit-out.glass.${name}`,
    topic: "fit-out",
    subject: name,
    question: `Does the edge of the screen of the ${name} stand its clamps?`,
  };
  if (!clamp) {
    const how =
      'pull a clamp open with a luggage scale until the strip comes loose, measure the strip under it, and write the block "clamp" into its pane';
    return unknown(question, { measure: `the force of one clamp on the screen of the ${name}`, how }, [
      glassCaution,
    ]);
  }
  if (stands === undefined) {
    const how = 'ask its maker for the pressure on the rim, and write "stands" into its pane';
    return unknown(question, { measure: `what the edge of the screen of the ${name} stands`, how }, [
      glassCaution,
    ]);
  }
  return guarded(question, () => edgeReply(input, clamp, stands), [glassCaution]);
}

function edgeReply(input: ReviewInput, { force, padWidth, padLength }: PaneClamp, stands: Pressure): Reply {
  const line = clampPressure.worked({ force, area: Area.si(padWidth * padLength) });
  const style = styleOf(input.case);
  return compared({
    kind: Pressure,
    asked: ["pressure of a clamp", line.value],
    there: ["the edge stands", stands],
    facts: `A clamp of ${Force.show(force, style)} presses on the edge with ${Pressure.show(line.value, style)}; its maker allows ${Pressure.show(stands, style)}.`,
    remedy: "A softer clamp, or a longer pad under it.",
    because: [line],
    cautions: [glassCaution],
    source: [
      cite("common-practice", "pressure that the maker of the screen allows on its rim"),
      cite("statics", "force over area"),
    ],
  });
}
