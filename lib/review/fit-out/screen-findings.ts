import type { Content, PaneStrip } from "../../design/index.js";
import { stripGrip } from "../../inside/index.js";
import { Length } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { fineAmount, showFine, styleOf } from "../amount.js";
import { compared } from "../compared.js";
import type { Finding } from "../finding.js";
import { guarded, type Question, type Reply } from "../guarded.js";
import type { ReviewInput } from "../review-input.js";

const glassCaution =
  "Glass under a clamp breaks from its edge: strip on both sides, no metal on glass, clamps only on the frame of a screen, never on its face.";

/** Whether the foam strip of each clamped screen still grips when it has set. */
export function screenFindings(input: ReviewInput): readonly Finding[] {
  return input.case.contents.flatMap((content) => {
    const { pane } = content.needs;
    return pane ? [screenFinding(input, content, pane)] : [];
  });
}

function screenFinding(input: ReviewInput, { name }: Content, pane: PaneStrip): Finding {
  const question: Question = {
    id: `fit-out.screen.${name}`,
    topic: "fit-out",
    subject: name,
    question: `Does the foam strip still grip the screen of the ${name} after a summer?`,
  };
  return guarded(question, () => screenReply(input, pane), [glassCaution]);
}

function screenReply(input: ReviewInput, { strip, squeeze, set, clearance }: PaneStrip): Reply {
  const line = stripGrip.worked({ thickness: strip, squeeze, set });
  const style = styleOf(input.case);
  return {
    ...compared({
      kind: Length,
      asked: ["play without the strip", clearance],
      there: ["squeeze that is left", line.value],
      facts: `Of the strip's squeeze ${showFine(line.value, style)} are left when it has set; the pane would have ${showFine(clearance, style)} of play without it.`,
      remedy: "Thicker strip, or one with less compression set.",
      because: [line],
      cautions: [glassCaution],
      source: [cite("astm-d395", "method B"), cite("common-practice", "a strip grips while it is squeezed")],
    }),
    demand: fineAmount("play without the strip", clearance),
    capacity: fineAmount("squeeze that is left", line.value),
  };
}
