/** Whether fasteners reach from a thing into the panel that they are said to hold it to. */
import type { ContentPart, Face } from "../../design/index.js";
import { type ReviewInput, wallAt } from "../../model/index.js";
import { Length, mm } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { amount, styleOf } from "../amount.js";
import { type Question, question } from "../question.js";
import { each } from "../subjects.js";

/** Packing between a thing and the panel it is screwed to; common practice, no source. */
const packing: Length = mm(10);

/** A thing with the panel that its fasteners go into, and how far it stands off it. */
interface OffPanel extends ContentPart {
  /** The face of that panel. */
  readonly to: Face;
  /** From the thing to the panel. */
  readonly gap: Length;
}

/** What is screwed or riveted to a panel that it does not touch. */
function offTheirPanels(input: ReviewInput): readonly OffPanel[] {
  return input.parts.contents.flatMap((part): OffPanel[] => {
    const { content, box } = part;
    if (content.held.by !== "screws" && content.held.by !== "rivets") return [];
    const { to } = content.held;
    const gap = wallAt(input, { section: content.section, name: content.name, box }, to);
    return gap > packing ? [{ ...part, to, gap }] : [];
  });
}

/** Asked of what stands off its panel alone: what touches it needs no answer. */
export const offPanel: Question = question({
  id: "fit-out.reach",
  about: each(offTheirPanels, ({ content }) => content.name),
  ask: ({ content, to }) => `Will the ${content.name} stand against the ${to} that its fasteners go into?`,
  tier: "strength",
  cautions: ["What hangs on fasteners across a gap bends them at the first jolt."],
  answer: (input, _, { content: { name }, to, gap }) => {
    const style = styleOf(input.case);
    return {
      demand: amount(Length, `from the ${name} to the ${to}`, gap),
      capacity: amount(Length, "packing at most", packing),
      facts: `The ${name} stands ${Length.show(gap, style)} off the ${to}: its fasteners would cross a gap.`,
      remedies: [
        {
          words: `Move it against the ${to}, fasten it to a panel it touches, or count a block into its size.`,
        },
      ],
      because: [],
      limit: cite("common-practice", "fasteners go straight from a thing into what holds it"),
    };
  },
});
