/** What to measure at each step of the work, what it should be and how far off it may be, with a blank for what it is. */

import { sheetPieces } from "../../design/index.js";
import { Mass } from "../../quantity/index.js";
import { blanks, group, section, sentence, when } from "../make-block.js";
import type { GroupBlock, RecipeSection } from "../recipe.js";
import { diagonalDifference, diagonalOf, thicknessTolerance } from "../squareness.js";
import { tolerance } from "../tolerances.js";
import type { Workshop } from "../workshop.js";
import { boxChecks, doorChecks, fastenerChecks, leavesOf } from "./box-checks.js";
import { finishedChecks } from "./finished-checks.js";
import { adhesiveFor } from "./gluing.js";

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
    purchases.facings.length > 0 ? "Sheets and laminate, when they arrive" : "Sheets, when they arrive",
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
