/** Every fastener of the case: where, what, hole, grip, how many, washers, pitch, edge; totals to buy and minutes to set. */
import type { Fastener, Fastening } from "../../design/index.js";
import { fastenerTraits } from "../../fastening/index.js";
import { timePerPiece } from "../../measure/index.js";
import { closingParts, gripOf, holeFor, type ReviewInput, washersOf } from "../../model/index.js";
import { type Length, Time } from "../../quantity/index.js";
import type { FastenerNeed, PurchaseList } from "./purchases.js";

/** Like groups on one panel. */
export interface ScheduleRow {
  /** The panel that is drilled. */
  readonly panel: string;
  /** What they hold. */
  readonly holds: string;
  /** What they are. */
  readonly fastener: Fastener;
  /** Drill to take; of a screw none is given, since it depends on its core. */
  readonly hole: Length | undefined;
  /** Stack with its washer. */
  readonly grip: Length;
  /** How many there are. */
  readonly count: number;
  /** How many of them take a washer. */
  readonly washers: number;
  /** From one to the next; none where they stand in no row. */
  readonly pitch: Length | undefined;
  /** From the nearest of them to an edge or an opening; none where no place is known. */
  readonly edgeDistance: Length | undefined;
}

/** One row a fastener group, by panel. */
export function fastenerSchedule({ parts, stock }: ReviewInput): readonly ScheduleRow[] {
  return [...closingParts(parts, stock).parts.fastenings]
    .sort((a, b) => a.panel.localeCompare(b.panel) || a.holds.localeCompare(b.holds))
    .map(scheduleRow);
}

function scheduleRow(group: Fastening): ScheduleRow {
  const { panel, holds, fastener, count, pitch, edgeDistance } = group;
  return {
    panel,
    holds,
    fastener,
    hole: holeFor(fastener),
    grip: gripOf(group),
    count,
    washers: washersOf(group),
    pitch,
    edgeDistance,
  };
}

/** All of one fastener, to buy and to set. */
export interface FastenerTotal extends FastenerNeed {
  /** Minutes to drill for all of them and to set them, by the tools that were timed. */
  readonly byTool: readonly { readonly work: string; readonly tool: string; readonly time: Time }[];
}

/** Totals for each fastener: count, spares, packs, washers, and minutes by tool. */
export function fastenerTotals(
  { measurements }: ReviewInput,
  { fasteners }: PurchaseList,
): readonly FastenerTotal[] {
  return fasteners.map((need) => ({
    ...need,
    byTool: measurements.timings
      .filter(({ unit }) => unit === "hole" || unit === fastenerTraits[need.stock.kind].timedAs)
      .map((timing) => ({
        work: timing.work,
        tool: timing.tool,
        time: Time.si(need.count * timePerPiece(timing)),
      })),
  }));
}
