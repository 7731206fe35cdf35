import type { Content, ContentPart } from "../../design/index.js";
import { type ReviewInput, roomAt } from "../../model/index.js";
import { Length, Mass } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { styleOf } from "../amount.js";
import { compared } from "../compared.js";
import type { Finding } from "../finding.js";
import { guarded, type Question, type Reply, unknown } from "../guarded.js";

const hotCaution =
  "A lamp close to anything that burns sets it alight: keep the distance on its label, nothing over it, and cold before it is packed.";

/** Whether lamps that hang from the top, and whatever else wants it, keep free of what is below them. */
export function clearanceFindings(input: ReviewInput): readonly Finding[] {
  return input.parts.contents.flatMap((part) => {
    const { content } = part;
    const { keepClear } = content.needs;
    if (keepClear === undefined && !isLamp(content)) return [];
    const question: Question = {
      id: `fit-out.clear.${content.name}`,
      topic: "fit-out",
      subject: content.name,
      question: `Is what lies under the ${content.name} far enough from its heat?`,
    };
    if (keepClear === undefined) {
      const how =
        'read the distance to lit things off its label (a lamp with rays and metres) and write "keep clear" into its needs';
      return [
        unknown(question, { measure: `how much free way the ${content.name} wants`, how }, [hotCaution]),
      ];
    }
    return [guarded(question, () => clearReply(input, part, keepClear), [hotCaution])];
  });
}

/** What hangs from the top and draws power. */
function isLamp({ held, power }: Content): boolean {
  return held.by === "hung" && (power ?? 0) > 0;
}

function clearReply(input: ReviewInput, { content, box }: ContentPart, keepClear: Length): Reply {
  const room = roomAt(input, { section: content.section, name: content.name, box }, "bottom");
  const style = styleOf(input.case);
  return compared({
    kind: Length,
    asked: ["free way its label wants", keepClear],
    there: ["free below it", room],
    facts: `${Mass.show(content.mass, style)} hang over ${Length.show(room, style)} of free way; its label wants ${Length.show(keepClear, style)}.`,
    remedy: "A cooler lamp, or what stands under it elsewhere.",
    because: [],
    cautions: [hotCaution],
    source: [cite("iec-60598", "marking, least distance to lit things")],
  });
}
