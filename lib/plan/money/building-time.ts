import { sheetPieces, type Timing } from "../../design/index.js";
import type { ReviewInput } from "../../model/index.js";
import { Time } from "../../quantity/index.js";
import type { PurchaseList } from "../buying/purchase-list.js";

/** One kind of work, timed on a trial and multiplied by how often the case needs it. */
export interface WorkTime {
  readonly work: string;
  readonly tool: string;
  readonly unit: Timing["unit"];
  /** How many of the unit the case has. */
  readonly pieces: number;
  readonly each: Time;
  readonly time: Time;
}

/**
 * Bench time by kind of work, from the builder's own timings; of one work timed with two tools the quicker
 * counts. Empty without timings.
 */
export function workTimes(input: ReviewInput, purchases: PurchaseList): readonly WorkTime[] {
  const works = [...new Set(input.measurements.timings.map(({ work }) => work))];
  return works.map((work) => {
    const rows = input.measurements.timings.filter((row) => row.work === work);
    const [quickest] = [...rows].sort((a, b) => a.time / a.pieces - b.time / b.pieces) as [Timing];
    const { tool, unit } = quickest;
    const each = Time.si(quickest.time / quickest.pieces);
    const pieces = unitsInCase(unit, input, purchases);
    return { work, tool, unit, pieces, each, time: Time.si(pieces * each) };
  });
}

/** Whole bench time, and whether it comes from timings or from the case file's own guess. */
export function buildingTime(
  input: ReviewInput,
  purchases: PurchaseList,
): { readonly time: Time; readonly from: "timings" | "case file" } {
  const works = workTimes(input, purchases);
  if (works.length === 0) return { time: input.case.business.buildingTime, from: "case file" };
  return { time: Time.si(works.reduce((sum, { time }) => sum + time, 0)), from: "timings" };
}

function unitsInCase(unit: Timing["unit"], input: ReviewInput, purchases: PurchaseList): number {
  const { fastenings, bars, hardware, facings } = input.parts;
  const fasteners = (kind?: "rivet"): number =>
    fastenings.reduce((sum, { fastener, count }) => (kind && fastener.kind !== kind ? sum : sum + count), 0);
  const counts: Readonly<Record<Timing["unit"], () => number>> = {
    panel: () => sheetPieces(input.parts).filter(({ openings }) => openings.length > 0).length,
    cut: () =>
      purchases.sheets.reduce(
        (sum, { plan }) => sum + plan.sheets.reduce((cuts, sheet) => cuts + sheet.cuts.length, 0),
        0,
      ),
    hole: () => fasteners(),
    rivet: () => fasteners("rivet"),
    bar: () => bars.length,
    hardware: () => hardware.length,
    "square metre": () => facings.reduce((sum, { gluedArea }) => sum + gluedArea, 0),
    case: () => 1,
  };
  return counts[unit]();
}
