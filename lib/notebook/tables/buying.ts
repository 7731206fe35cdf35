/** What to buy, how to cut it step by step, and what becomes of the offcuts. */
import {
  type BenchPart,
  benchStates,
  type CutSheet,
  type SheetArea,
  type SheetPlan,
  sawSteps,
} from "../../cutting/index.js";
import { counted } from "../../findings/index.js";
import type { Job } from "../../job/index.js";
import { type ChartView, type DrawingView, type TableView, tableOf } from "../../page/index.js";
import { boughtOf, kerfSweep, type Offcut, offcutUse, rollLengths } from "../../plan/index.js";
import { Area, addMoney, Length, Money } from "../../quantity/index.js";
import {
  barCutsDrawing,
  codeOf,
  codePieces,
  type GoodFace,
  goodFaces,
  type NumberedStock,
  numberStock,
  ruleOf,
  sawTable,
  sheetCutsDrawing,
  stopTable,
} from "../../recipe/index.js";
import { type BenchCut, type BenchRow, benchChart } from "../bench-chart.js";
import { chartLength, lengthUnit } from "./chart-units.js";

/** Sheets, laminates and bars to buy, what comes from the rack, and the least that any plan could cost. */
export function cutStockTable({ review: { purchases } }: Job): TableView {
  const { sheets, facings, bars } = purchases;
  return tableOf(
    [
      ...[...sheets, ...facings].map((need) => ({ ...need, cut: need.plan.sheets.length })),
      ...bars.map((need) => ({ ...need, cut: need.plan.bars.length })),
    ].map(({ stock, plan, cut }) => ({ stock, plan, cut, buy: boughtOf({ stock, plan }) })),
    [
      { heading: "Stock", cell: ({ stock }) => stock.name },
      { heading: "Buy", cell: ({ buy }) => buy },
      { heading: "From the rack", cell: ({ cut, buy }) => cut - buy },
      { heading: "Each", cell: ({ stock }) => Money.show(stock.price) },
      { heading: "Cost", cell: ({ plan }) => Money.show(plan.cost) },
      { heading: "No plan costs less than", cell: ({ plan }) => Money.show(plan.bound.cost), align: "right" },
      { heading: "A better plan could save", cell: ({ plan }) => savingInWords(plan) },
      { heading: "Supplier", cell: ({ stock }) => stock.supplier },
    ],
    "Sheets, laminate and bars, before price breaks, shipping and tax",
  );
}

/** "nothing: proven", or the most a better plan could save. */
function savingInWords({ proof }: Pick<SheetPlan, "proof">): string {
  return proof.proven ? "nothing: proven" : `${Money.show(proof.gap)} at most`;
}

/** Why no plan can do with fewer, stock by stock. */
export function boundReasons({ review: { purchases } }: Job): readonly string[] {
  const { sheets, facings, bars } = purchases;
  return [...sheets, ...facings, ...bars].map(
    ({ stock, plan }) => `For ${stock.name} the count rests on ${plan.bound.because}.`,
  );
}

/** Fasteners, adhesive and hardware to buy. */
export function pieceTable({ review: { purchases } }: Job): TableView {
  return tableOf(
    [
      ...purchases.fasteners.map(({ stock, packs, cost, count, spares, washers }) => ({
        name: stock.name,
        buy: `${packs} of ${stock.packOf}${washers > 0 ? `, ${washers} washers` : ""}`,
        why: `${count} and ${spares} spare`,
        cost,
        supplier: stock.supplier,
      })),
      ...purchases.adhesives.map(({ stock, containers, cost }) => ({
        name: stock.name,
        buy: `${containers}`,
        why: "both faces and waste",
        cost,
        supplier: stock.supplier,
      })),
      ...purchases.hardware.map(({ stock, count, cost }) => ({
        name: stock.name,
        buy: `${count}`,
        why: "as placed",
        cost,
        supplier: stock.supplier,
      })),
    ],
    [
      { heading: "Item", cell: ({ name }) => name },
      { heading: "Buy", cell: ({ buy }) => buy, align: "left" },
      { heading: "For", cell: ({ why }) => why, align: "left" },
      { heading: "Cost", cell: ({ cost }) => Money.show(cost) },
      { heading: "Supplier", cell: ({ supplier }) => supplier },
    ],
    "Fasteners, adhesive and hardware, before price breaks, shipping and tax",
  );
}

/** Every sheet of ply with the pieces sawn out of it. */
export function sheetDrawings(job: Job): readonly DrawingView[] {
  const { panels } = codePieces(job.parts);
  const rule = ruleOf(job.case.units);
  return plySheets(job).map((sheet) => sheetCutsDrawing(sheet, panels, rule, goodFaces(panels)));
}

/** Every sheet of ply in the plans, under the number that the recipe gives it. */
function plySheets({ review: { purchases } }: Job): readonly NumberedStock<CutSheet>[] {
  return numberStock(
    "Sheet",
    purchases.sheets.flatMap(({ plan }) => plan.sheets),
  );
}

/** Every bar with the pieces sawn off it. */
export function barDrawings(job: Job): readonly DrawingView[] {
  const { bars } = codePieces(job.parts);
  return edgeBars(job).map(({ name, cuts }) => barCutsDrawing(name, cuts, bars, ruleOf(job.case.units)));
}

/** The bars of every extrusion, under the numbers that the recipe gives them. */
function edgeBars({ review: { purchases } }: Job) {
  const all = numberStock(
    "Bar",
    purchases.bars.flatMap(({ plan }) => plan.bars),
  );
  return purchases.bars.map(({ stock, plan }) => ({
    name: stock.name,
    cuts: all.filter(({ cut }) => plan.bars.includes(cut)),
  }));
}

/** The cuts of every sheet of ply in order, those with one fence setting together. */
export function sawTables(job: Job): readonly TableView[] {
  const { panels } = codePieces(job.parts);
  const { kerf } = job.review.purchases.kerfs.sheets;
  return plySheets(job).map((sheet) => sawTable(sheet, kerf, panels, ruleOf(job.case.units)));
}

/** The stop settings for the bars of every extrusion, the longest first. */
export function stopTables(job: Job): readonly TableView[] {
  const { bars } = codePieces(job.parts);
  return edgeBars(job).map(({ name, cuts }) => stopTable(name, cuts, bars, ruleOf(job.case.units)));
}

/** What the sheets cost at another kerf and another price, in plain numbers. */
export interface SheetCostPoint {
  /** In the case's own unit: in or mm. */
  readonly kerf: number;
  /** Change of the price, % */
  readonly price: number;
  /** Of all sheets, in the job's currency. */
  readonly cost: number;
}

/** Cost of all sheets of ply, for every kerf with every change of their price. */
export function sheetCosts(
  job: Job,
  kerfs: readonly Length[],
  changes: readonly number[],
): readonly SheetCostPoint[] {
  const prices = new Map(job.stock.sheets.map(({ name, price }) => [name, price.amount]));
  const rows = kerfSweep(job, kerfs);
  return kerfs.flatMap((kerf) => {
    const atKerf = rows.filter((row) => Math.abs(row.kerf - kerf) < 1e-12);
    const cost = atKerf.reduce((sum, { stock, sheets }) => sum + sheets * (prices.get(stock) ?? 0), 0);
    return changes.map((price) => ({
      kerf: chartLength(job, kerf, 3),
      price,
      cost: cost * (1 + price / 100),
    }));
  });
}

/** One point of the kerf chart, in plain numbers. */
export interface KerfPoint {
  /** Name of the sheet. */
  readonly stock: string;
  /** In the case's own unit: in or mm. */
  readonly kerf: number;
  /** How many are bought. */
  readonly sheets: number;
}

/** Whether a thinner blade saves a sheet. */
export function kerfPoints(job: Job, kerfs: readonly Length[]): readonly KerfPoint[] {
  return kerfSweep(job, kerfs).map(({ stock, kerf, sheets }) => ({
    stock,
    kerf: chartLength(job, kerf),
    sheets,
  }));
}

/** What it comes to, and how far from the best the plans are at most. */
export function buyingAnswer(job: Job): string {
  const { sheets, facings, bars } = job.review.purchases;
  const plans = [...sheets, ...facings, ...bars].map(({ plan }) => plan);
  const cost = addMoney(
    plans.map((plan) => plan.cost),
    job.case.currency,
  );
  const least = addMoney(
    plans.map((plan) => plan.bound.cost),
    job.case.currency,
  );
  const count = (needs: readonly Parameters<typeof boughtOf>[0][]): number =>
    needs.reduce((sum, need) => sum + boughtOf(need), 0);
  const { sheets: kerf } = job.review.purchases.kerfs;
  const bought = [
    [count(sheets), "sheet of ply", "sheets of ply"],
    [count(facings), "sheet of laminate", "sheets of laminate"],
    [count(bars), "bar", "bars"],
  ] as const;
  const words = bought.flatMap(([many, one, more]) => (many > 0 ? [counted(many, one, more)] : []));
  if (words.length === 0) return "Every sheet and bar that it takes stands on the rack.";
  const list = [words.slice(0, -1).join(", "), words.at(-1)].filter(Boolean).join(" and ");
  const width = Length.show(kerf.kerf, { unit: lengthUnit(job), digits: 2, exact: true });
  const isLeast = Money.show(cost) === Money.show(least);
  const bound = isLeast ? "no plan can cost less" : `any plan costs ${Money.show(least)} or more`;
  return `Buy ${list} for ${Money.show(cost)}. With a kerf of ${width} (${kerf.from}) ${bound}.`;
}

/** How many different bars each extrusion is cut into, and the fewest that any plan of this cost can do with. */
export function setUpTable({ review: { purchases } }: Job): TableView {
  return tableOf(
    purchases.bars,
    [
      { heading: "Extrusion", cell: ({ stock }) => stock.name },
      { heading: "Bars", cell: ({ plan }) => plan.bars.length },
      { heading: "Different set-ups", cell: ({ plan }) => plan.layouts },
      {
        heading: "Could be fewer",
        cell: ({ plan }) =>
          plan.layouts === plan.layoutsAtLeast
            ? "no: proven"
            : `by ${plan.layouts - plan.layoutsAtLeast} at most`,
      },
    ],
    "Bars cut alike need one set-up",
  );
}

/** How much of every roll of laminate all facings together would take. */
export function rollTable(job: Job): TableView {
  const show = (length: Length): string => Length.show(length, { system: job.case.units });
  return tableOf(
    rollLengths(job),
    [
      { heading: "Roll", cell: ({ stock }) => stock.name },
      { heading: "Width", cell: ({ stock }) => show(stock.width), align: "right" },
      { heading: "Pull off", cell: ({ length }) => show(length), align: "right" },
      { heading: "No plan takes less than", cell: ({ atLeast }) => show(atLeast), align: "right" },
      { heading: "A whole roll", cell: ({ stock }) => show(stock.length), align: "right" },
      { heading: "One is enough", cell: ({ stock, length }) => (length <= stock.length ? "yes" : "no") },
      { heading: "Its price", cell: ({ stock }) => Money.show(stock.price) },
    ],
    "All facings off one roll, by straight cuts",
  );
}

/** Which panels would come out of an offcut of each sheet of the case. */
export function offcutTable(job: Job, size: Omit<Offcut, "sheet">): TableView {
  const show = (length: Length): string => Length.show(length, { system: job.case.units });
  return tableOf(
    job.review.purchases.sheets.map(({ stock }) => ({
      sheet: stock.name,
      ...offcutUse(job, { ...size, sheet: stock.name }),
    })),
    [
      { heading: "Offcut of", cell: ({ sheet }) => sheet },
      { heading: "Panels", cell: ({ panels }) => (panels.length > 0 ? panels.join(", ") : "none fits") },
      { heading: "Used", cell: ({ area }) => Area.show(area), align: "right" },
      { heading: "No choice uses more than", cell: ({ atMost }) => Area.show(atMost), align: "right" },
    ],
    `An offcut of ${show(size.length)} along the grain by ${show(size.width)}`,
  );
}

/** Every cut of every sheet of ply in order, with what lies on the bench after it. */
export function cutSteps(job: Job): readonly ChartView[] {
  const states = plySheets(job).flatMap(({ label, cut }) =>
    benchStates(sawSteps(cut, job.review.purchases.kerfs.sheets.kerf)).map((state) => ({ label, ...state })),
  );
  if (states.length < 2) return [];
  const { panels } = codePieces(job.parts);
  const rule = ruleOf(job.case.units);
  const faceOf = goodFaces(panels);
  const row = (part: BenchPart, step: number): BenchRow => ({
    step,
    ...cornersOf(part),
    state: part.is,
    code: part.piece === undefined ? "" : codeOf(panels, part.piece),
    mark: part.piece === undefined ? "" : markOf(faceOf(part.piece)),
    name: part.piece ?? part.is,
    size: rule.drawn(part.length, part.width),
  });
  const cuts = states.map(({ label, step }, i): BenchCut => {
    const { keeps, part, direction, fence } = step;
    const [near, whole] = [cornersOf(keeps), cornersOf(part)];
    const along = direction === "along";
    const line = along ? { y: near.y2, y2: near.y2 } : { x: near.x2, x2: near.x2 };
    const words = `${label}, cut ${step.number}: ${along ? "rip" : "crosscut"} at ${rule.drawn(fence)}`;
    return { step: i + 1, ...whole, ...line, words };
  });
  return [
    benchChart({
      title: "The cuts, step by step",
      description:
        "What lies on the bench after each cut, to scale; the red line is the cut just made. Grain runs from left to right; beside the arrow stands where the good face goes.",
      rows: states.flatMap(({ parts }, i) => parts.map((part) => row(part, i + 1))),
      cuts,
      slider: "Cut, through all sheets",
      start: 1,
    }),
  ];
}

const markOf = (face: GoodFace | undefined): string => (face ? `→ ${face}` : "→");

function cornersOf({ x, y, length, width }: SheetArea) {
  const mm = (value: number): number => Length.in(Length.si(value), "mm");
  return { x: mm(x), y: mm(y), x2: mm(x + length), y2: mm(y + width) };
}
