/** Every piece to cut, and how the sheets and bars are cut up. */
import type { FacingPart } from "../../design/index.js";
import { steps, tableOf } from "../../page/index.js";
import { goodFaceOf, goodFaces, goodFaceWords } from "../good-face.js";
import { section, when } from "../make-block.js";
import { sourceOf } from "../pieces.js";
import type { RecipeBlock, RecipeSection } from "../recipe.js";
import type { Workshop } from "../workshop.js";
import { barGroups, sheetGroups } from "./cut-plans.js";

/** The section. */
export function cutListSection(workshop: Workshop): RecipeSection {
  const { pieces } = workshop;
  return section(
    "Cut list",
    cutOrder(workshop),
    panelTable(workshop),
    ...when(pieces.facings.length > 0, () => facingTable(workshop)),
    ...when(pieces.bars.length > 0, () => barTable(workshop)),
    ...sheetGroups(workshop.sheets, pieces.panels, workshop, goodFaces(pieces.panels)),
    ...sheetGroups(workshop.laminates, pieces.facings, workshop),
    ...barGroups(workshop),
  );
}

function cutOrder({ pieces, purchases: { kerfs }, rule }: Workshop): RecipeBlock {
  return steps(
    [
      "Measure each sheet's thickness before anything else: if it is off by more than the sheet's tolerance, the sizes below change.",
      `The plans reckon with cuts ${rule.fine(kerfs.sheets.kerf)} wide in sheets${pieces.bars.length > 0 ? ` and ${rule.fine(kerfs.bars.kerf)} in bars` : ""}. Try your blade on an offcut; with a wider cut the last pieces come out short, so plan anew.`,
      "Saw each sheet in the order of its table, good face up on a table saw, good face down under a hand-held saw.",
      "Set the fence to the size of the part that stays at it; the blade runs beyond the line. Make all cuts of a set-up before you move the fence, and measure the first piece of each.",
      "Write the code on every piece as it comes off the saw, with an arrow along the grain and a triangle on the bottom left corner of its good face.",
      ...(pieces.facings.length > 0
        ? ["Cut the laminate with its oversize; it is trimmed after gluing, never before."]
        : []),
      ...(pieces.bars.length > 0
        ? [
            "Cut the edge bars last, when the boxes are dry fitted: check each length against the real edge first.",
          ]
        : []),
    ],
    "Order of cutting",
  );
}

function panelTable({ pieces, sheets, rule }: Workshop): RecipeBlock {
  return tableOf(
    pieces.panels,
    [
      { heading: "Code", cell: ({ code }) => code },
      { heading: "Piece", cell: ({ name }) => name },
      { heading: "Width × height", cell: ({ part }) => rule.size(part.width, part.height), align: "left" },
      {
        heading: "Grain",
        cell: ({ part }) => (part.grain === "up" ? "along the height" : "along the width"),
      },
      { heading: "Sheet", cell: ({ part }) => part.sheet.name },
      { heading: "From", cell: ({ name }) => sourceOf(sheets, name) },
      { heading: "Good face", cell: ({ part }) => goodFaceWords[goodFaceOf(part)] },
    ],
    "Sheet pieces, one of each",
  );
}

function facingTable({ pieces, laminates, rule, parts }: Workshop): RecipeBlock {
  const oversizeOf = ({ panel }: FacingPart): string => {
    const facing = parts.panels.find(({ id }) => id === panel)?.facing;
    return facing ? rule.length(facing.oversize) : "–";
  };
  return tableOf(
    pieces.facings,
    [
      { heading: "Code", cell: ({ code }) => code },
      { heading: "For", cell: ({ part }) => `${part.panel}, ${part.side}` },
      {
        heading: "Width × height, oversize in",
        cell: ({ part }) => rule.size(part.width, part.height),
        align: "left",
      },
      { heading: "Oversize", cell: ({ part }) => oversizeOf(part), align: "left" },
      { heading: "Laminate", cell: ({ part }) => part.stock.name },
      { heading: "From", cell: ({ name }) => sourceOf(laminates, name) },
    ],
    "Laminate, one of each, cut larger than the panel and trimmed after gluing",
  );
}

function barTable({ pieces, bars, rule }: Workshop): RecipeBlock {
  return tableOf(
    pieces.bars,
    [
      { heading: "Code", cell: ({ code }) => code },
      { heading: "Edge", cell: ({ name }) => name },
      { heading: "Length", cell: ({ part }) => rule.length(part.length), align: "left" },
      {
        heading: "Ends",
        cell: ({ part }) => (part.ends === "mitred" ? "mitred 45°, long point to long point" : "square"),
      },
      { heading: "Bar", cell: ({ part }) => part.stock.name },
      { heading: "From", cell: ({ name }) => sourceOf(bars, name) },
    ],
    "Edge bars, one of each",
  );
}
