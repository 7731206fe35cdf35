/** Tables, drawings, chart rows and the answer of the notebook that asks what to buy and how to cut it. */
import { type BenchPart, type SheetPlan, sawSteps, stopSettings } from "../../cutting/index.js";
import type { Job } from "../../job/index.js";
import { type DrawingView, type TableView, tableOf } from "../../page/index.js";
import { Angle, addMoney, Length, Money, mm, timesMoney } from "../../quantity/index.js";
import {
  barCutsDrawing,
  codeOf,
  codePieces,
  numberStock,
  ruleOf,
  sheetCutsDrawing,
} from "../../recipe/index.js";
import { kerfFor, kerfSweep } from "../../review/index.js";

/** Sheets, laminates and bars to buy, each beside the fewest that any plan could do with. */
export function cutStockTable({ review: { purchases } }: Job): TableView {
  const { sheets, facings, bars } = purchases;
  return tableOf(
    [
      ...sheets.map(({ stock, plan }) => ({ stock, count: plan.sheets.length, plan })),
      ...facings.map(({ stock, plan }) => ({ stock, count: plan.sheets.length, plan })),
      ...bars.map(({ stock, plan }) => ({ stock, count: plan.bars.length, plan })),
    ],
    [
      { heading: "Stock", cell: ({ stock }) => stock.name },
      { heading: "Buy", cell: ({ count }) => count },
      { heading: "No plan needs fewer than", cell: ({ plan }) => plan.bound.count },
      { heading: "A better plan could save", cell: ({ plan }) => savingInWords(plan) },
      { heading: "Each", cell: ({ stock }) => Money.show(stock.price) },
      { heading: "Cost", cell: ({ stock, count }) => Money.show(timesMoney(count, stock.price)) },
      { heading: "Supplier", cell: ({ stock }) => stock.supplier },
    ],
    "Sheets, laminate and bars",
  );
}

/** "nothing: proven", or the most a better plan could save. */
function savingInWords({ proof }: Pick<SheetPlan, "proof">): string {
  return proof.proven ? "nothing: proven" : `${Money.show(proof.gap)} at most`;
}

/** Why no plan can do with fewer, stock by stock. */
export function boundReasons({ review: { purchases } }: Job): readonly string[] {
  const { sheets, facings, bars } = purchases;
  return [...sheets, ...facings, ...bars].map(({ stock, plan }) => `${stock.name}: ${plan.bound.because}`);
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
    "Fasteners, adhesive and hardware",
  );
}

/** Every sheet of ply with the pieces sawn out of it. */
export function sheetDrawings({
  parts,
  review: { purchases },
  case: { units },
}: Job): readonly DrawingView[] {
  const pieces = codePieces(parts).panels;
  const sheets = purchases.sheets.flatMap(({ plan }) => plan.sheets);
  return numberStock("Sheet", sheets).map((sheet) => sheetCutsDrawing(sheet, pieces, true, ruleOf(units)));
}

/** Every bar with the pieces sawn off it. */
export function barDrawings({ parts, review: { purchases }, case: { units } }: Job): readonly DrawingView[] {
  const pieces = codePieces(parts).bars;
  return purchases.bars.map(({ stock, plan }) =>
    barCutsDrawing(stock.name, numberStock("Bar", plan.bars), pieces, ruleOf(units)),
  );
}

/** The cuts of every sheet of ply in order, those with one fence setting together. */
export function sawTables(job: Job): readonly TableView[] {
  const { parts, review, case: asked } = job;
  const rule = ruleOf(asked.units);
  const pieces = codePieces(parts).panels;
  const { kerf } = kerfFor("sheets", job);
  const sheets = review.purchases.sheets.flatMap(({ plan }) => plan.sheets);
  const onBench = (part: BenchPart): string =>
    part.piece === undefined
      ? `${part.is === "offcut" ? "offcut" : "part"} ${rule.size(part.length, part.width)}`
      : `${codeOf(pieces, part.piece)} ${part.piece}`;
  return numberStock("Sheet", sheets).map(({ label, cut }) =>
    tableOf(
      sawSteps(cut, kerf),
      [
        { heading: "Cut", cell: ({ number }) => number },
        { heading: "Set-up", cell: ({ setting }) => setting },
        { heading: "Way", cell: ({ direction }) => (direction === "along" ? "rip" : "crosscut") },
        { heading: "Fence to blade", cell: ({ fence }) => rule.length(fence), align: "left" },
        { heading: "Through", cell: ({ part }) => rule.size(part.length, part.width), align: "left" },
        { heading: "Stays at the fence", cell: ({ keeps }) => onBench(keeps), align: "left" },
        {
          heading: "Falls off",
          cell: ({ fallsOff }) => (fallsOff ? onBench(fallsOff) : "dust"),
          align: "left",
        },
      ],
      `${label}: ${cut.stock}, after its edges are trimmed`,
    ),
  );
}

/** The stop settings for the bars of every extrusion, the longest first. */
export function stopTables({ parts, review: { purchases }, case: { units } }: Job): readonly TableView[] {
  const pieces = codePieces(parts).bars;
  const rule = ruleOf(units);
  return purchases.bars.map(({ stock, plan }) =>
    tableOf(
      stopSettings(plan.bars).map((setting, i) => ({ number: i + 1, ...setting })),
      [
        { heading: "Set-up", cell: ({ number }) => number },
        { heading: "Stop to blade", cell: ({ length }) => rule.length(length), align: "left" },
        { heading: "Left end", cell: ({ mitre }) => Angle.show(mitre.left, { unit: "deg", digits: 2 }) },
        { heading: "Right end", cell: ({ mitre }) => Angle.show(mitre.right, { unit: "deg", digits: 2 }) },
        {
          heading: "Saw from",
          cell: ({ cuts }) =>
            cuts
              .map(
                ({ bar, pieces: names }) =>
                  `bar ${bar + 1}: ${names.map((name) => codeOf(pieces, name)).join(", ")}`,
              )
              .join("; "),
          align: "left",
        },
      ],
      `${stock.name}: trim one end square, then one stop after the other; angles are off square`,
    ),
  );
}

/** What the sheets cost at another kerf and another price, in plain numbers. */
export interface SheetCostPoint {
  /** mm */
  readonly kerf: number;
  /** Change of the price, % */
  readonly price: number;
  readonly cost: number;
}

/** Cost of all sheets of ply, for every kerf with every change of their price. */
export function sheetCosts(
  job: Job,
  kerfs: readonly number[],
  changes: readonly number[],
): readonly SheetCostPoint[] {
  const prices = new Map(job.stock.sheets.map(({ name, price }) => [name, price.amount]));
  const rows = kerfSweep(job, kerfs.map(mm));
  return kerfs.flatMap((kerf) => {
    const atKerf = rows.filter((row) => Math.abs(Length.in(row.kerf, "mm") - kerf) < 1e-9);
    const cost = atKerf.reduce((sum, { stock, sheets }) => sum + sheets * (prices.get(stock) ?? 0), 0);
    return changes.map((price) => ({ kerf, price, cost: cost * (1 + price / 100) }));
  });
}

/** One point of the kerf chart, in plain numbers. */
export interface KerfPoint {
  readonly stock: string;
  /** mm */
  readonly kerf: number;
  readonly sheets: number;
}

/** Whether a thinner blade saves a sheet. */
export function kerfPoints(job: Job, kerfs: readonly number[]): readonly KerfPoint[] {
  return kerfSweep(job, kerfs.map(mm)).map(({ stock, kerf, sheets }) => ({
    stock,
    kerf: Length.in(kerf, "mm"),
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
  const count = (needs: readonly { readonly plan: { readonly sheets: readonly unknown[] } }[]): number =>
    needs.reduce((sum, { plan }) => sum + plan.sheets.length, 0);
  const barCount = bars.reduce((sum, { plan }) => sum + plan.bars.length, 0);
  const kerf = kerfFor("sheets", job);
  const proven = plans.every(({ proof }) => proof.proven) ? "proven" : "not all proven";
  return `${count(sheets)} sheets of ply, ${count(facings)} of laminate and ${barCount} bars cost ${Money.show(cost)}; no plan can cost less than ${Money.show(least)} (${proven}). Kerf ${Length.show(kerf.kerf, { unit: "mm", digits: 2 })}, ${kerf.from}.`;
}
