import type { Box, ContentPart, Face, PlugRoom } from "../../design/index.js";
import { cableRoom } from "../../inside/index.js";
import { Length } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { styleOf } from "../amount.js";
import { compared } from "../compared.js";
import type { Finding } from "../finding.js";
import { guarded, type Question, type Reply } from "../guarded.js";
import type { ReviewInput } from "../review-input.js";

const cableCaution =
  "A cable bent too tight or pinched by a panel heats and burns: brush or grommet at every hole, slack at every hinge.";

/** Whether each plug and its cable have room. */
export function cableFindings(input: ReviewInput): readonly Finding[] {
  return input.parts.contents.flatMap((part) => {
    const { name, needs } = part.content;
    if (!needs.plug) return [];
    const { plug } = needs;
    const question: Question = {
      id: `fit-out.cable.${name}`,
      topic: "fit-out",
      subject: name,
      question: `Is there room for the plug of the ${name} and the bend of its cable?`,
    };
    return [guarded(question, () => cableReply(input, part, plug), [cableCaution])];
  });
}

function cableReply(
  input: ReviewInput,
  part: ContentPart,
  { face, length, cable, bendFactor }: PlugRoom,
): Reply {
  const line = cableRoom.worked({ diameter: cable, factor: bendFactor, plug: length });
  const room = roomAt(input, part, face);
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

const sides: Readonly<Record<Face, { readonly axis: "x" | "y" | "z"; readonly high: boolean }>> = {
  left: { axis: "x", high: false },
  right: { axis: "x", high: true },
  front: { axis: "y", high: false },
  back: { axis: "y", high: true },
  bottom: { axis: "z", high: false },
  top: { axis: "z", high: true },
};

/** Free way from a face of a content to the wall or to the next thing in front of it. */
function roomAt(input: ReviewInput, { content, box }: ContentPart, face: Face): Length {
  const { axis, high } = sides[face];
  const section = input.case.sections.find(({ name }) => name === content.section);
  const part = input.parts.sections.find(({ name }) => name === content.section);
  if (!section || !part) throw new RangeError(`cables: no section ${content.section}`);
  const size = { x: section.inside.width, y: section.inside.depth, z: section.inside.height };
  const wall = high ? part.insideLow[axis] + size[axis] : part.insideLow[axis];
  const from = high ? box.low[axis] + box.size[axis] : box.low[axis];
  const others = [
    ...input.parts.contents.filter((one) => one.content !== content),
    ...input.parts.shelves.map(({ panel }) => panel),
  ];
  const ways = others
    .filter((other) => faces(other.box, box, axis))
    .map((other) => (high ? other.box.low[axis] - from : from - other.box.low[axis] - other.box.size[axis]))
    .filter((way) => way >= -1e-6);
  return Length.si(Math.max(0, Math.min(Math.abs(wall - from), ...ways)));
}

/** Does one box stand before the other along an axis? */
function faces(one: Box, other: Box, axis: "x" | "y" | "z"): boolean {
  return (["x", "y", "z"] as const)
    .filter((across) => across !== axis)
    .every(
      (across) =>
        one.low[across] < other.low[across] + other.size[across] &&
        other.low[across] < one.low[across] + one.size[across],
    );
}
