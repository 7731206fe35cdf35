/** Every piece to cut, and how the sheets and bars are cut up. */
import type { CutBar, CutSheet, ThroughCut } from "../../cutting/index.js";
import type { FacingPart, PanelPart } from "../../design/index.js";
import { steps, tableOf } from "../../page/index.js";
import { Length } from "../../quantity/index.js";
import { barCutsDrawing } from "../drawings/bar-cuts.js";
import { sheetCutsDrawing } from "../drawings/sheet-cuts.js";
import { group, section, sentence, when } from "../make-block.js";
import { type CodedPiece, codeOf, type NumberedStock, sourceOf } from "../pieces.js";
import type { GroupBlock, RecipeBlock, RecipeSection } from "../recipe.js";
import type { Rule } from "../rule.js";
import { grouped } from "../words.js";
import type { Workshop } from "../workshop.js";

/** The section. */
export function cutListSection(workshop: Workshop): RecipeSection {
  const { pieces } = workshop;
  return section(
    "Cut list",
    cutOrder(workshop),
    panelTable(workshop),
    ...when(pieces.facings.length > 0, () => facingTable(workshop)),
    ...when(pieces.bars.length > 0, () => barTable(workshop)),
    ...sheetGroups(workshop.sheets, pieces.panels, true, workshop.rule),
    ...sheetGroups(workshop.laminates, pieces.facings, false, workshop.rule),
    ...barGroups(workshop),
  );
}

function cutOrder({ pieces }: Workshop): RecipeBlock {
  return steps(
    [
      "Measure each sheet's thickness before anything else: if it is off by more than the sheet's tolerance, the sizes below change.",
      "Saw each sheet in the order of its table. Set the fence to the size of the kept part; the blade runs beyond the line.",
      "Write the code on every piece as it comes off the saw, with an arrow along the grain and a mark on the bottom left corner.",
      "Cut pieces of the same size at the same fence setting, one after the other.",
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
      { heading: "Good face", cell: ({ part }) => goodFace(part) },
    ],
    "Sheet pieces, one of each",
  );
}

/** Common practice: the better veneer goes where it is seen. */
function goodFace({ role, facing }: PanelPart): string {
  if (facing?.sides === "both") return "either, both get laminate";
  if (facing) return "inside, the outside gets laminate";
  return role === "shelf" ? "up" : "outside";
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

function sheetGroups(
  sheets: readonly NumberedStock<CutSheet>[],
  pieces: readonly CodedPiece<unknown>[],
  grained: boolean,
  rule: Rule,
): GroupBlock[] {
  return sheets.map((sheet) =>
    group(
      `${sheet.label}: ${sheet.cut.stock}`,
      sheetCutsDrawing(sheet, pieces, grained, rule),
      ...when(trimOf(sheet.cut) > 0, () =>
        sentence(`Trim ${rule.length(trimOf(sheet.cut))} off each rough edge first.`),
      ),
      ...when(sheet.cut.cuts.length > 0, () => cutsTable(sheet.cut, rule)),
    ),
  );
}

/** What is taken off the edges before the first cut: the distance of the nearest part from the raw corner. */
function trimOf({ pieces, offcuts }: CutSheet): Length {
  return Length.si(Math.min(...[...pieces, ...offcuts].map(({ x }) => x)));
}

function cutsTable({ cuts }: CutSheet, rule: Rule): RecipeBlock {
  return tableOf(
    cuts.map((cut, i) => ({ number: i + 1, ...cut })),
    [
      { heading: "Cut", cell: ({ number }) => number },
      { heading: "Way", cell: ({ direction }) => (direction === "along" ? "rip" : "crosscut") },
      { heading: "Fence: keep", cell: (cut) => rule.length(keptSize(cut)), align: "left" },
      {
        heading: "Through the part of",
        cell: ({ part }) => rule.size(part.length, part.width),
        align: "left",
      },
      { heading: "Line on the whole sheet", cell: (cut) => lineOn(cut, rule), align: "left" },
    ],
  );
}

function keptSize({ direction, at, part }: ThroughCut): Length {
  return Length.si(at - (direction === "along" ? part.y : part.x));
}

function lineOn({ direction, at }: ThroughCut, rule: Rule): string {
  return `${rule.length(at)} from the ${direction === "along" ? "lower edge" : "left end"}`;
}

function barGroups({ bars, pieces, rule }: Workshop): GroupBlock[] {
  return grouped(bars, ({ cut }) => cut.stock).map(([stock, ofStock]) =>
    group(
      `Bars: ${stock}`,
      barCutsDrawing(stock, ofStock, pieces.bars, rule),
      tableOf(ofStock, [
        { heading: "Bar", cell: ({ label }) => label },
        { heading: "Saw in this order", cell: ({ cut }) => barOrder(cut, pieces.bars, rule) },
        {
          heading: "Left over",
          cell: ({ cut }) => `${rule.length(cut.remainder)}${cut.keep ? "" : ", scrap"}`,
          align: "left",
        },
      ]),
      sentence(
        "Trim the end of a new bar square first, then saw one piece after the other, measuring each from the fresh end.",
      ),
    ),
  );
}

function barOrder({ pieces, from }: CutBar, coded: readonly CodedPiece<unknown>[], rule: Rule): string {
  const order = pieces.map(({ name, length }) => `${codeOf(coded, name)} ${rule.drawn(length)}`).join(", ");
  return from === "rack" ? `${order} (from the rack)` : order;
}
