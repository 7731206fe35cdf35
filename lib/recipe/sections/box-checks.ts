/** What to measure while the boxes come together. */
import type { Leaf } from "../../design/index.js";
import { blanks, group, sentence } from "../make-block.js";
import type { GroupBlock } from "../recipe.js";
import { diagonalDifference } from "../squareness.js";
import { tolerance } from "../tolerances.js";
import { total } from "../words.js";
import type { Workshop } from "../workshop.js";

/** Boxes, clamped: sizes and diagonals. */
export function boxChecks({ parts, rule }: Workshop): GroupBlock {
  const views = parts.sections.flatMap(({ name, outside: { size } }) => [
    { name, view: "front, width × height", one: size.x, other: size.z },
    { name, view: "side, depth × height", one: size.y, other: size.z },
    { name, view: "top, width × depth", one: size.x, other: size.y },
  ]);
  return group(
    "Boxes, clamped, before they are fixed",
    sentence(
      `Outside sizes within ${rule.fine(tolerance.box)}; the two diagonals of a face no further apart than the table says. It should stand on a flat floor without rocking.`,
    ),
    blanks(
      views,
      [
        { heading: "Section", cell: ({ name }) => name },
        { heading: "Face", cell: ({ view }) => view },
        { heading: "Size", cell: ({ one, other }) => rule.size(one, other), align: "left" },
        {
          heading: "Diagonals apart",
          cell: ({ one, other }) => rule.fine(diagonalDifference(one, other)),
          align: "left",
        },
      ],
      ["Size", "Diag. 1", "Diag. 2"],
    ),
  );
}

/** How every fastener sits. */
export function fastenerChecks({ parts, pieces }: Workshop): GroupBlock {
  const panels = pieces.panels.filter(({ name }) => parts.fastenings.some(({ panel }) => panel === name));
  const count = (id: string): number =>
    total(
      parts.fastenings.filter(({ panel }) => panel === id),
      (one) => one.count,
    );
  return group(
    "Rivets and screws, after each panel",
    sentence(
      "Every head flat on the metal: a slip of paper does not go under it. No washer turns with the fingers, no layer gapes. Drill out and set anew what fails.",
    ),
    blanks(
      panels,
      [
        { heading: "Panel", cell: ({ code, name }) => `${code} ${name}` },
        { heading: "Fasteners", cell: ({ name }) => count(name) },
      ],
      ["Right", "Set anew"],
    ),
  );
}

/** The door leaves of the case. */
export function leavesOf({ parts }: Workshop): { readonly id: string; readonly leaf: Leaf }[] {
  return parts.panels.flatMap((panel) => (panel.leaf ? [{ id: panel.id, leaf: panel.leaf }] : []));
}

/** The gaps round doors. */
export function doorChecks(workshop: Workshop): GroupBlock {
  const { rule } = workshop;
  return group(
    "Doors, hung",
    sentence(
      `Gap within ${rule.fine(tolerance.gap)} all round; it opens and shuts without rubbing, also with the box lifted at one corner.`,
    ),
    blanks(
      leavesOf(workshop),
      [
        { heading: "Door", cell: ({ id }) => id },
        { heading: "Gap planned", cell: ({ leaf }) => rule.fine(leaf.clearance), align: "left" },
      ],
      ["Left", "Right", "Top", "Bottom"],
    ),
  );
}
