/** How each sheet and bar is cut up. */
import type { CutBar, CutSheet } from "../../cutting/index.js";
import { tableOf } from "../../page/index.js";
import { Length } from "../../quantity/index.js";
import { sawTable, stopTable } from "../cut-tables.js";
import { barCutsDrawing } from "../drawings/bar-cuts.js";
import { sheetCutsDrawing } from "../drawings/sheet-cuts.js";
import type { GoodFace } from "../good-face.js";
import { group, sentence, when } from "../make-block.js";
import { type CodedPiece, codeOf, type NumberedStock } from "../pieces.js";
import type { GroupBlock } from "../recipe.js";
import type { Workshop } from "../workshop.js";

/** A drawing and the order of cuts for each sheet. */
export function sheetGroups(
  sheets: readonly NumberedStock<CutSheet>[],
  pieces: readonly CodedPiece<unknown>[],
  { rule, purchases }: Workshop,
  faceOf?: (name: string) => GoodFace | undefined,
): GroupBlock[] {
  return sheets.map((sheet) =>
    group(
      `${sheet.label}: ${sheet.cut.stock}`,
      sheetCutsDrawing(sheet, pieces, rule, faceOf),
      ...when(trimOf(sheet.cut) > 0, () =>
        sentence(`Trim ${rule.length(trimOf(sheet.cut))} off each rough edge first.`),
      ),
      ...when(sheet.cut.cuts.length > 0, () => sawTable(sheet, purchases.kerfs.sheets.kerf, pieces, rule)),
    ),
  );
}

/** What is taken off the edges before the first cut: the distance of the nearest part from the raw corner. */
function trimOf({ pieces, offcuts }: CutSheet): Length {
  return Length.si(Math.min(...[...pieces, ...offcuts].map(({ x }) => x)));
}

/** A drawing, the stop settings and the order of pieces for the bars of each extrusion. */
export function barGroups({ bars, purchases, pieces, rule }: Workshop): GroupBlock[] {
  return purchases.bars.map(({ stock: { name: stock }, plan }) => {
    const ofStock = bars.filter(({ cut }) => plan.bars.includes(cut));
    return group(
      `Bars: ${stock}`,
      barCutsDrawing(stock, ofStock, pieces.bars, rule),
      stopTable(stock, ofStock, pieces.bars, rule),
      tableOf(
        ofStock,
        [
          { heading: "Bar", cell: ({ label }) => label },
          { heading: "Gives, from its fresh end on", cell: ({ cut }) => barOrder(cut, pieces.bars) },
          {
            heading: "Left over",
            cell: ({ cut }) => `${rule.length(cut.remainder)}${cut.keep ? "" : ", scrap"}`,
            align: "left",
          },
        ],
        `${stock}: what each bar gives, to check when it is sawn up`,
      ),
      sentence(
        "Without a stop, measure each piece from the fresh end of the bar, never several along the bar at once: every cut takes its kerf.",
      ),
    );
  });
}

function barOrder({ pieces, from, stock }: CutBar, coded: readonly CodedPiece<unknown>[]): string {
  const order = pieces.map(({ name }) => codeOf(coded, name)).join(", ");
  return from === "rack" ? `${order} (from the rack: ${stock})` : order;
}
