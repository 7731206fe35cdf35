/** What to measure at each step, what it should be and how far off it may be, with a blank for what it is. */
import { Length, Mass } from "../../quantity/index.js";
import { blanks, group, section, sentence, when } from "../make-block.js";
import { sheetPieces } from "../pieces.js";
import type { GroupBlock, RecipeSection } from "../recipe.js";
import { diagonalDifference, diagonalOf, thicknessTolerance } from "../squareness.js";
import { total } from "../words.js";
import type { Workshop } from "../workshop.js";
import { finishedChecks } from "./finished-checks.js";
import { adhesiveFor } from "./gluing.js";

/** Common practice, no source. */
const tolerance = {
  sawn: Length.of(1, "mm"),
  bar: Length.of(0.5, "mm"),
  opening: Length.of(1, "mm"),
  gap: Length.of(0.5, "mm"),
  box: Length.of(2, "mm"),
  /** Share of the planned adhesive. */
  adhesive: 0.15,
};

/** The section. */
export function checksSection(workshop: Workshop): RecipeSection {
  return section(
    "What to measure at each step",
    sentence(
      "Thickness and squareness follow EN 315 as remembered: squareness 1 mm in 1 m; look it up if it matters to you. Every other allowance is common practice. Write down what you measure, also when it is right.",
    ),
    stockChecks(workshop),
    panelChecks(workshop),
    ...when(workshop.parts.facings.length > 0, () => glueChecks(workshop)),
    ...when(hasOpenings(workshop), () => openingChecks(workshop)),
    ...when(workshop.parts.bars.length > 0, () => barChecks(workshop)),
    boxChecks(workshop),
    ...when(workshop.parts.fastenings.length > 0, () => fastenerChecks(workshop)),
    ...when(leavesOf(workshop).length > 0, () => doorChecks(workshop)),
    finishedChecks(workshop),
  );
}

function stockChecks({ purchases, rule }: Workshop): GroupBlock {
  return group(
    "Sheets and laminate, when they arrive",
    sentence("Calliper at three places near the edges."),
    blanks(
      [
        ...purchases.sheets.map(({ stock: { name, thickness } }) => {
          const { over, under } = thicknessTolerance(thickness);
          return { name, thickness, allowed: `+${rule.fine(over)}, -${rule.fine(under)}` };
        }),
        ...purchases.facings.map(({ stock: { name, thickness } }) => ({
          name,
          thickness,
          allowed: "as its maker says",
        })),
      ],
      [
        { heading: "Stock", cell: ({ name }) => name, align: "left" },
        { heading: "Thickness planned", cell: ({ thickness }) => rule.fine(thickness), align: "left" },
        { heading: "Allowed", cell: ({ allowed }) => allowed, align: "left" },
      ],
      ["1", "2", "3"],
    ),
  );
}

function panelChecks({ pieces, rule }: Workshop): GroupBlock {
  return group(
    "Sheet pieces, after sawing",
    sentence(
      `Width and height within ${rule.fine(tolerance.sawn)}; the two diagonals no further apart than the table says.`,
    ),
    blanks(
      pieces.panels,
      [
        { heading: "Piece", cell: ({ code, name }) => `${code} ${name}` },
        { heading: "Width × height", cell: ({ part }) => rule.size(part.width, part.height), align: "left" },
        {
          heading: "Diagonals",
          cell: ({ part }) => rule.drawn(diagonalOf(part.width, part.height)),
          align: "left",
        },
        {
          heading: "Apart",
          cell: ({ part }) => rule.fine(diagonalDifference(part.width, part.height)),
          align: "left",
        },
      ],
      ["Width", "Height", "Diag. 1", "Diag. 2"],
    ),
  );
}

function glueChecks(workshop: Workshop): GroupBlock {
  const { facings } = workshop.parts;
  return group(
    "Adhesive, on each panel",
    sentence(
      `Out of the can within ${100 * tolerance.adhesive} % of the plan; no hollow sound anywhere after curing.`,
    ),
    blanks(
      facings,
      [
        { heading: "Panel", cell: ({ panel, side }) => `${panel}, ${side}` },
        {
          heading: "Planned",
          cell: (facing) => {
            const mass = adhesiveFor(facing, workshop);
            return mass === undefined ? "–" : Mass.show(mass, { unit: "g", digits: 3 });
          },
        },
      ],
      ["Can before", "Can after", "Hollow spots"],
    ),
  );
}

function hasOpenings({ parts }: Workshop): boolean {
  return sheetPieces(parts).some(({ openings }) => openings.length > 0);
}

function openingChecks({ parts, rule }: Workshop): GroupBlock {
  return group(
    "Openings, after cutting",
    sentence(`Size and place within ${rule.fine(tolerance.opening)}; no crack at a corner; edges sealed.`),
    blanks(
      sheetPieces(parts).flatMap(({ id, openings }) => openings.map((opening) => ({ id, opening }))),
      [
        { heading: "Panel", cell: ({ id }) => id },
        { heading: "Opening", cell: ({ opening }) => opening.name },
        {
          heading: "Width × height",
          cell: ({ opening }) => rule.size(opening.width, opening.height),
          align: "left",
        },
      ],
      ["Width", "Height"],
    ),
  );
}

function barChecks({ pieces, rule }: Workshop): GroupBlock {
  return group(
    "Edge bars, after sawing",
    sentence(
      `Length within ${rule.fine(tolerance.bar)}, ends square or mitred within half a degree, no burr.`,
    ),
    blanks(
      pieces.bars,
      [
        { heading: "Bar", cell: ({ code, name }) => `${code} ${name}` },
        { heading: "Length", cell: ({ part }) => rule.length(part.length), align: "left" },
      ],
      ["Measured"],
    ),
  );
}

function boxChecks({ parts, rule }: Workshop): GroupBlock {
  const views = parts.sections.flatMap(({ name, outside: { size } }) => [
    { name, view: "front, width × height", one: size.x, other: size.z },
    { name, view: "side, depth × height", one: size.y, other: size.z },
    { name, view: "top, width × depth", one: size.x, other: size.y },
  ]);
  return group(
    "Boxes, clamped, before the first rivet",
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

function fastenerChecks({ parts, pieces }: Workshop): GroupBlock {
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

function leavesOf({ parts }: Workshop) {
  return parts.panels.flatMap((panel) => (panel.leaf ? [{ id: panel.id, leaf: panel.leaf }] : []));
}

function doorChecks(workshop: Workshop): GroupBlock {
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
