/** Every piece to cut, how the sheets and bars are cut up, and the cuts as tables to stand beside the saw. */

import {
  type BenchPart,
  barEndTrim,
  type CutBar,
  type CutSheet,
  type SawStep,
  type StopSetting,
  sawSteps,
  sheetEdgeTrim,
  stopSettings,
} from "../../cutting/index.js";
import { capitalised, listed } from "../../findings/index.js";
import { diagonalDifference, tolerance } from "../../model/index.js";
import { steps, type TableView, tableOf } from "../../page/index.js";
import type { PurchaseList } from "../../plan/index.js";
import { Angle, type Length } from "../../quantity/index.js";
import { barCutsDrawing } from "../drawings/bar-cuts.js";
import { codesFit, legendWords, paperWidths, sheetCutsDrawing } from "../drawings/sheet-cuts.js";
import {
  type CodedPiece,
  codeOf,
  type GoodFace,
  goodFaceOf,
  goodFaces,
  type NumberedStock,
  sourceOf,
} from "../pieces.js";
import {
  blanks,
  checklist,
  flowingSection,
  type GroupBlock,
  group,
  type RecipeBlock,
  type RecipeSection,
  section,
  sentence,
  when,
} from "../recipe.js";
import type { Rule } from "../rule.js";
import { stockChecks } from "../stages/checks.js";
import { type ShopStep, step, supplies, using } from "../supplies.js";
import { counted, grouped } from "../words.js";
import type { Workshop } from "../workshop.js";

/** The sections on cutting: sheets, then laminate and bars. */
export function cutSections(workshop: Workshop): RecipeSection[] {
  const { pieces, purchases, rule, parts } = workshop;
  const rest = parts.facings.length + parts.bars.length + parts.strips.length + parts.panes.length > 0;
  return [
    section(
      "Cut list",
      steps(
        cutSteps(workshop).map(({ text }) => text),
        "Order of cutting",
      ),
      stockChecks(workshop),
      sentence(
        `The width and height of a piece are within ${workshop.rule.fine(tolerance.sawn)}, those of a door within ${workshop.rule.fine(tolerance.doorway)}. If it is out: trim it where it is large, cut it anew where it is small.`,
      ),
      panelTable(workshop),
      sentence(
        "If a piece is out, plane it, or cut it anew from an offcut that is large enough. Never force it in.",
      ),
      sentence(`This is how to read the sheets below. ${legendWords(true, true)}`),
      ...sheetGroups(workshop.sheets, pieces.panels, workshop, goodFaces(pieces.panels)),
    ),
    ...when(rest, () =>
      flowingSection(
        restTitle(workshop),
        ...when(pieces.facings.length > 0, () => facingList(workshop)),
        ...patternWords(workshop).map(sentence),
        ...sheetGroups(workshop.laminates, pieces.facings, workshop),
        ...barOrderSteps(workshop),
        ...(pieces.bars.length > 0 ? barLists(workshop) : []),
        ...barGroups("Bars", purchases.bars, workshop.bars, pieces.bars, rule),
        ...when(pieces.strips.length > 0, () => stripTable(workshop)),
        ...barGroups("Strips", purchases.strips, workshop.strips, pieces.strips, rule),
        ...when(pieces.panes.length > 0, () => paneTable(workshop)),
        ...sheetGroups(workshop.panes, pieces.panes, workshop),
      ),
    ),
  ];
}

function restTitle({ parts }: Workshop): string {
  const names = [
    ...when(parts.facings.length > 0, () => "laminate"),
    ...when(parts.bars.length > 0, () => "bars"),
    ...when(parts.strips.length > 0, () => "strips"),
    ...when(parts.panes.length > 0, () => "panes"),
  ];
  return capitalised(listed(names));
}

/** The steps of sawing sheets, laminate, bars and strips. */
export function cutSteps({ pieces, purchases: { kerfs }, rule }: Workshop): ShopStep[] {
  const { calliper, saw, tape_measure: tape, sheetBlade } = supplies;
  return [
    step`Measure the thickness of each sheet with the ${calliper}. If one is out of tolerance, stop: sizes and fasteners must be worked out again.`,
    step`Cut an offcut with the ${sheetBlade} and measure the slot. If it is wider than ${rule.fine(kerfs.sheets.kerf)}, ask for a new plan.`,
    step`Set the ${saw}. Trim all four edges of the sheet, ${rule.length(sheetEdgeTrim)} each; the bottom left corner is then 0.`,
    using(
      step`Saw each sheet in the order of its table: good face up on a table saw, good face down under a hand-held saw.`,
      supplies.eyes,
      supplies.mask,
      supplies.gloves,
    ),
    step`Set the fence to the size of the piece between fence and blade. Make all cuts of a set-up before you move the fence; measure the first.`,
    step`With the ${tape}, write its code on every piece and an arrow along the grain. Write 0 at the bottom left corner of its OUTSIDE face.`,
    ...(pieces.facings.length > 0
      ? [step`Cut the laminate with its oversize. It is trimmed after gluing, never before.`]
      : []),
  ];
}

/** The steps of sawing bars and strips, when they are sawn and from where. */
export function barSteps({ pieces, purchases: { kerfs }, rule }: Workshop): ShopStep[] {
  if (pieces.bars.length === 0) return [];
  const { metalBlade, barSaw, deburr, machineOil } = supplies;
  return [
    step`Cut the bars when the boxes are dry fitted: check each length against the real edge first.`,
    step`Put the ${metalBlade} into the ${barSaw}, with ${machineOil}. If its cut is wider than ${rule.fine(kerfs.bars.kerf)}, ask for a new plan.`,
    step`Cut ${rule.length(barEndTrim)} off the left end of each bar. Then set the stop; every piece is cut from the fresh end.`,
    using(
      step`Take the burr off every end with the ${deburr}. Check the length within ${rule.fine(tolerance.bar)} and the ends within half a degree. What is out is cut anew.`,
      supplies.gloves,
      supplies.eyes,
    ),
  ];
}

function barOrderSteps(workshop: Workshop): RecipeBlock[] {
  const written = barSteps(workshop);
  const setBack = workshop.case.sections.some(({ edges }) =>
    Object.values(edges).some((edge) => (edge?.extrusion?.setBack ?? 0) > 0),
  );
  return [
    ...when(written.length > 0, () =>
      steps(
        written.map(({ text }) => text),
        "Order of cutting bars",
      ),
    ),
    ...when(written.length > 0 && setBack, () =>
      sentence(
        "The bars stop short of the corners of the box: a metal corner fills each end and covers no bar.",
      ),
    ),
  ];
}

/** Which way the pattern runs, where it matters. */
function patternWords({ pieces, laminates }: Workshop): string[] {
  if (pieces.facings.length === 0) return [];
  const turned = laminates.flatMap(({ cut }) =>
    cut.pieces.flatMap(({ name, length }) => {
      const piece = pieces.facings.find((one) => one.name === name);
      return piece && Math.abs(length - piece.part.width) > 1e-6 ? [piece.code] : [];
    }),
  );
  return turned.length === 0
    ? [
        "The length of the laminate runs along the width of every panel: a pattern runs the same way on all faces.",
      ]
    : [
        `On ${listed(turned)} the length of the laminate runs up, on the others across. Buy a plain one: a pattern would not match.`,
      ];
}

function panelTable({ pieces, sheets, rule }: Workshop): RecipeBlock {
  return blanks(
    pieces.panels,
    [
      { heading: "Code", cell: ({ code }) => code },
      { heading: "Piece", cell: ({ name }) => name },
      { heading: "Width × height", cell: ({ part }) => rule.size(part.width, part.height), align: "left" },
      {
        heading: "Grain, good face",
        cell: ({ part }) => `${part.grain}, ${goodFaceOf(part)}`,
      },
      { heading: "From", cell: ({ name }) => sourceOf(sheets, name) },
      {
        heading: "Diagonals",
        cell: ({ part }) => `to ${rule.fine(diagonalDifference(part.width, part.height))}`,
        align: "left",
      },
    ],
    ["Width", "Height", "Apart"],
    ({ name: of }) => [
      { what: "width", of },
      { what: "height", of },
      { what: "diagonals apart", of },
    ],
  );
}

function facingList({ pieces, laminates, rule }: Workshop): RecipeBlock {
  return checklist(
    "Laminate, one of each; width × height, oversize in",
    pieces.facings.map(
      ({ code, name, part }) =>
        `${code} ${name}: ${rule.size(part.width, part.height)}, ${part.stock.name}, from ${sourceOf(laminates, name)}`,
    ),
  );
}

/** Which bar is which edge, and a line to fill in for each length. */
function barLists({ pieces, bars, rule }: Workshop): RecipeBlock[] {
  const alike = grouped(pieces.bars, ({ part: { length, ends, stock } }) =>
    [rule.length(length), ends, stock.name].join("|"),
  );
  return [
    checklist(
      "Bars, one of each",
      pieces.bars.map(({ code, name }) => `${code} ${name}, from ${sourceOf(bars, name)}`),
    ),
    blanks(
      alike.map(([, some]) => some),
      [
        { heading: "Length", cell: ([{ part }]) => rule.length(part.length), align: "left" },
        {
          heading: "Ends",
          cell: ([{ part }]) => (part.ends === "mitred" ? "mitred 45°, long point to long point" : "square"),
        },
        { heading: "Bar", cell: ([{ part }]) => part.stock.name },
        { heading: "Codes", cell: (some) => some.map(({ code }) => code).join(", ") },
      ],
      ["Shortest", "Longest"],
      ([{ name: of }]) => ["shortest", "longest"].map((at) => ({ what: "bar length", of, at })),
    ),
  ];
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

/** So many cuts stand beside a small drawing. */
const fewCuts = 8;

/** A drawing and the order of cuts for each sheet; few cuts stand beside a small drawing. */
function sheetGroups(
  sheets: readonly NumberedStock<CutSheet>[],
  pieces: readonly CodedPiece<unknown>[],
  { rule, purchases }: Workshop,
  faceOf?: (name: string) => GoodFace | undefined,
): GroupBlock[] {
  return sheets.map((sheet) => {
    const { cut, label } = sheet;
    const small = cut.cuts.length <= fewCuts && codesFit(cut, pieces, paperWidths.beside);
    const large = codesFit(cut, pieces, paperWidths.middle) ? paperWidths.middle : paperWidths.whole;
    const table = sawTable(sheet, purchases.kerfs.sheets.kerf, pieces, rule);
    const { caption: _, ...beside } = table;
    return {
      ...group(
        `${label}: ${cut.stock}, ${counted(cut.pieces.length, "piece")}`,
        sheetCutsDrawing(sheet, pieces, rule, faceOf, small ? paperWidths.beside : large),
        ...when(cut.cuts.length > 0, () => (small ? beside : table)),
      ),
      pictureBeside: small,
    };
  });
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
      checklist(
        `What each ${what.slice(0, -1).toLowerCase()} gives, from its fresh end on, to check when it is sawn up`,
        ofStock.map(
          ({ label, cut }) =>
            `${label}: ${barOrder(cut, pieces)}; left over ${rule.length(cut.remainder)}${cut.keep ? "" : ", scrap"}`,
        ),
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
