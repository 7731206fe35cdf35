/** Whether hands fit the handles of each section. */

import { liftHandles, type ReviewInput, sectionsWithHandles } from "../../model/index.js";
import { handRoom, highestGoodBox, widestGoodBox } from "../../moving/index.js";
import { Length, Ratio } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { styleOf } from "../amount.js";
import { compared } from "../compared.js";
import type { Finding } from "../finding.js";
import { guarded, type Reply, unknown } from "../guarded.js";
import { aboutHandles } from "./handle-question.js";

/** Said wherever hands go into handles. */
export const gripCaution: string =
  "A hand that does not fit closes on the knuckles: no finger between handle and door frame. Try every handle with the glove that will be worn, the case propped up.";

/** Whether a gloved hand fits; nothing to ask of a section without handles. */
export function gripFindings(input: ReviewInput): readonly Finding[] {
  return sectionsWithHandles(input).map((section) => roomFinding(input, section));
}

function roomFinding(input: ReviewInput, section: string): Finding {
  const question = aboutHandles("grip", section, `Does a gloved hand fit the handles of ${section}?`);
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
