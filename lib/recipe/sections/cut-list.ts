/** Every piece to cut, how the sheets and bars are cut up, and the cuts as tables to stand beside the saw. */

import {
  type BenchPart,
  type CutBar,
  type CutSheet,
  type SawStep,
  type StopSetting,
  sawSteps,
  stopSettings,
} from "../../cutting/index.js";
import type { FacingPart } from "../../design/index.js";
import { steps, type TableView, tableOf } from "../../page/index.js";
import type { PurchaseList } from "../../plan/index.js";
import { Angle, Length } from "../../quantity/index.js";
import { barCutsDrawing } from "../drawings/bar-cuts.js";
import { sheetCutsDrawing } from "../drawings/sheet-cuts.js";
import {
  type CodedPiece,
  codeOf,
  type GoodFace,
  goodFaceOf,
  goodFaces,
  goodFaceWords,
  type NumberedStock,
  sourceOf,
} from "../pieces.js";
import {
  type GroupBlock,
  group,
  type RecipeBlock,
  type RecipeSection,
  section,
  sentence,
  when,
} from "../recipe.js";
import type { Rule } from "../rule.js";
import type { Workshop } from "../workshop.js";

/** The section on cutting. */
export function cutListSection(workshop: Workshop): RecipeSection {
  const { pieces } = workshop;
  return section(
    "Cut list",
    cutOrder(workshop),
    panelTable(workshop),
    ...when(pieces.facings.length > 0, () => facingTable(workshop)),
    ...when(pieces.bars.length > 0, () => barTable(workshop)),
    ...when(pieces.strips.length > 0, () => stripTable(workshop)),
    ...when(pieces.panes.length > 0, () => paneTable(workshop)),
    ...sheetGroups(workshop.sheets, pieces.panels, workshop, goodFaces(pieces.panels)),
    ...sheetGroups(workshop.laminates, pieces.facings, workshop),
    ...sheetGroups(workshop.panes, pieces.panes, workshop),
    ...barGroups("Bars", workshop.purchases.bars, workshop.bars, pieces.bars, workshop.rule),
    ...barGroups("Strips", workshop.purchases.strips, workshop.strips, pieces.strips, workshop.rule),
  );
}

function cutOrder({ pieces, purchases: { kerfs }, rule }: Workshop): RecipeBlock {
  return steps(
    [
      "Measure each sheet's thickness before anything else: if it is off by more than the sheet's tolerance, the sizes below change.",
      `The plans reckon with cuts ${rule.fine(kerfs.sheets.kerf)} wide in sheets${pieces.bars.length + pieces.strips.length > 0 ? ` and ${rule.fine(kerfs.bars.kerf)} in ${pieces.bars.length > 0 ? "bars" : "strips"}` : ""}. Try your blade on an offcut; with a wider cut the last pieces come out short, so plan anew.`,
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

function paneTable({ pieces, panes, rule }: Workshop): RecipeBlock {
  return tableOf(
    pieces.panes,
    [
      { heading: "Code", cell: ({ code }) => code },
      { heading: "Pane", cell: ({ name }) => name },
      { heading: "Width × height", cell: ({ part }) => rule.size(part.width, part.height), align: "left" },
      { heading: "Sheet", cell: ({ part }) => part.stock.name },
      { heading: "From", cell: ({ name }) => sourceOf(panes, name) },
      { heading: "Held by", cell: ({ part }) => part.pane.held },
    ],
    "Panes, one of each; have glass cut by its dealer",
  );
}

function stripTable({ pieces, strips, rule }: Workshop): RecipeBlock {
  return tableOf(
    pieces.strips,
    [
      { heading: "Code", cell: ({ code }) => code },
      { heading: "Piece", cell: ({ name }) => name },
      { heading: "Length", cell: ({ part }) => rule.length(part.length), align: "left" },
      {
        heading: "Section of the strip",
        cell: ({ part: { stock } }) => rule.size(stock.width, stock.thickness),
        align: "left",
      },
      { heading: "Strip", cell: ({ part }) => part.stock.name },
      { heading: "From", cell: ({ name }) => sourceOf(strips, name) },
    ],
    "Strips of wood, one of each, ends square",
  );
}

/** A drawing and the order of cuts for each sheet. */
function sheetGroups(
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

/** A drawing, the stop settings and the order of pieces for what each extrusion or strip is cut from. */
function barGroups(
  what: "Bars" | "Strips",
  needs: PurchaseList["bars"] | PurchaseList["strips"],
  bars: readonly NumberedStock<CutBar>[],
  pieces: readonly CodedPiece<unknown>[],
  rule: Rule,
): GroupBlock[] {
  return needs.map(({ stock: { name: stock }, plan }) => {
    const ofStock = bars.filter(({ cut }) => plan.bars.includes(cut));
    return group(
      `${what}: ${stock}`,
      barCutsDrawing(stock, ofStock, pieces, rule),
      stopTable(stock, ofStock, pieces, rule),
      tableOf(
        ofStock,
        [
          { heading: what.slice(0, -1), cell: ({ label }) => label },
          { heading: "Gives, from its fresh end on", cell: ({ cut }) => barOrder(cut, pieces) },
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

/** The cuts of one sheet in order, its edges trimmed. Cuts with one fence setting stand together under one set-up. */
export function sawTable(
  { label, cut }: NumberedStock<CutSheet>,
  kerf: Length,
  pieces: readonly CodedPiece<unknown>[],
  rule: Rule,
): TableView {
  const onBench = (part: BenchPart): string => benchWords(part, pieces, rule);
  const steps = sawSteps(cut, kerf);
  return tableOf(
    steps.map((step, i) => ({ ...step, first: steps[i - 1]?.setting !== step.setting })),
    [
      { heading: "Set-up", cell: ({ setting }) => setting },
      { heading: "Set the fence to", cell: (step) => fenceWords(step, step.first, rule), align: "left" },
      { heading: "Cut", cell: ({ number }) => number },
      { heading: "Through", cell: ({ part }) => rule.drawn(part.length, part.width), align: "left" },
      { heading: "Stays at the fence", cell: ({ keeps }) => onBench(keeps), align: "left" },
      {
        heading: "Falls off",
        cell: ({ fallsOff }) => (fallsOff ? onBench(fallsOff) : "dust"),
        align: "left",
      },
    ],
    `${label}: ${cut.stock}`,
  );
}

/** The setting where it is made, and that it stays where it is not changed. */
function fenceWords({ direction, fence }: SawStep, first: boolean, rule: Rule): string {
  if (!first) return "the same";
  return `${rule.length(fence)}, ${direction === "along" ? "rip" : "crosscut"}`;
}

function benchWords(part: BenchPart, pieces: readonly CodedPiece<unknown>[], rule: Rule): string {
  if (part.piece !== undefined) return `${codeOf(pieces, part.piece)} ${part.piece}`;
  return `${part.is === "offcut" ? "offcut" : "part"} ${rule.drawn(part.length, part.width)}`;
}

/** The stop settings for the bars of one extrusion, the longest first; what each sets off comes off in this order. */
export function stopTable(
  stock: string,
  bars: readonly NumberedStock<CutBar>[],
  pieces: readonly CodedPiece<unknown>[],
  rule: Rule,
): TableView {
  const settings = stopSettings(bars.map(({ cut }) => cut));
  return tableOf(
    settings.map((setting, i) => ({ number: i + 1, ...setting })),
    [
      { heading: "Set-up", cell: ({ number }) => number },
      { heading: "Set the stop to", cell: ({ length }) => rule.length(length), align: "left" },
      { heading: "Ends", cell: endWords, align: "left" },
      {
        heading: "Falls off",
        cell: ({ cuts }) =>
          cuts
            .map(
              ({ bar, pieces: names }) =>
                `${bars[bar]?.label}: ${names.map((name) => codeOf(pieces, name)).join(", ")}`,
            )
            .join("; "),
        align: "left",
      },
    ],
    `${stock}: trim one end square, then one stop after the other`,
  );
}

/** "square", or the angles off square. */
function endWords({ mitre: { left, right } }: StopSetting): string {
  if (left === 0 && right === 0) return "square";
  const [one, other] = [left, right].map((angle) => `${Math.round(Angle.in(angle, "deg") * 10) / 10}\u00a0°`);
  return one === other ? `${one} off square, both` : `${one} left, ${other} right, off square`;
}
