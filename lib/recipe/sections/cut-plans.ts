/** How each sheet and bar is cut up. */
import type { CutBar, CutSheet, ThroughCut } from "../../cutting/index.js";
import { tableOf } from "../../page/index.js";
import { Length } from "../../quantity/index.js";
import { barCutsDrawing } from "../drawings/bar-cuts.js";
import { sheetCutsDrawing } from "../drawings/sheet-cuts.js";
import { group, sentence, when } from "../make-block.js";
import { type CodedPiece, codeOf, type NumberedStock } from "../pieces.js";
import type { GroupBlock, RecipeBlock } from "../recipe.js";
import type { Rule } from "../rule.js";
import { grouped } from "../words.js";
import type { Workshop } from "../workshop.js";

/** A drawing and the order of cuts for each sheet. */
export function sheetGroups(
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

/** A drawing and the order of pieces for the bars of each extrusion. */
export function barGroups({ bars, pieces, rule }: Workshop): GroupBlock[] {
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
