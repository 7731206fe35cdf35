import type { ContentPart, PlugRoom } from "../../design/index.js";
import { cableRoom } from "../../inside/index.js";
import { type ReviewInput, roomAt } from "../../model/index.js";
import { Length } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { styleOf } from "../amount.js";
import { compared } from "../compared.js";
import type { Finding } from "../finding.js";
import { guarded, type Question, type Reply, unknown } from "../guarded.js";

/** Said with every cable. */
export const cableCaution =
  "A cable bent too tight or pinched by a panel heats and burns: brush or grommet at every hole, slack at every hinge.";

/** Whether the plug and cable of each thing that draws power, or has a plug, have room. */
export function cableFindings(input: ReviewInput): readonly Finding[] {
  return input.parts.contents.flatMap((part) => {
    const { name, power = 0, needs } = part.content;
    const { plug } = needs;
    if (!plug && !(power > 0)) return [];
    const question: Question = {
      id: `fit-out.cable.${name}`,
      topic: "fit-out",
      subject: name,
      question: `Is there room for the plug of the ${name} and the bend of its cable?`,
    };
    return [
      plug
        ? guarded(question, () => cableReply(input, part, plug), [cableCaution])
        : unknownPlug(question, name),
    ];
  });
}

function unknownPlug(question: Question, name: string): Finding {
  const how =
    'measure plug and cable with a rule, take the least bend from its maker (4 times the cable for data, 6 to 8 for power), and write the block "plug" into its needs';
  return unknown(question, { measure: `plug and cable of the ${name}, and the side they are on`, how }, [
    cableCaution,
  ]);
}

function cableReply(
  input: ReviewInput,
  part: ContentPart,
  { face, length, cable, bendFactor }: PlugRoom,
): Reply {
  const line = cableRoom.worked({ diameter: cable, factor: bendFactor, plug: length });
  const room = roomAt(input, { section: part.content.section, name: part.content.name, box: part.box }, face);
  const style = styleOf(input.case);
  return compared({
    kind: Length,
    asked: ["plug and bent cable", line.value.room],
    there: ["free in front of the socket", room],
    facts: `Plug and bend take ${Length.show(line.value.room, style)}; ${Length.show(room, style)} are free to the ${face}.`,
    remedy: "An angled plug, or move it away from the wall.",
    because: [line],
    cautions: [cableCaution],
    source: [
      cite("common-practice", "inner radius of a bend as a multiple of the diameter"),
      cite("nec", "300.34"),
    ],
  });
}
