/** Whether a section hangs steadily from its handles. */

import { handleLine, type ReviewInput, sectionBalance, sectionsWithHandles } from "../../model/index.js";
import { Length } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { styleOf } from "../amount.js";
import { compared } from "../compared.js";
import type { Finding } from "../finding.js";
import { guarded, type Reply } from "../guarded.js";
import { aboutHandles } from "./handle-question.js";

const hangCaution =
  "A section that balances above its handles rolls over in the hands. Lift it a finger's width first, feet clear, and set it down again if it wants to turn.";

/** Height of the handles against that of the centre of gravity; nothing to ask of a section without handles. */
export function hangFindings(input: ReviewInput): readonly Finding[] {
  return sectionsWithHandles(input).map((section) => hangFinding(input, section));
}

function hangFinding(input: ReviewInput, section: string): Finding {
  const question = aboutHandles(
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
