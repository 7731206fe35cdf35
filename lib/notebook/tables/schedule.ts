/** The schedule of fasteners: a table and a drawing a panel, totals to buy, minutes to set them. */

import { styleOf } from "../../findings/index.js";
import type { Job } from "../../job/index.js";
import { type DrawingView, type TableView, tableOf } from "../../page/index.js";
import { fastenerSchedule, fastenerTotals } from "../../plan/index.js";
import { Length, Money, type ShowStyle, Time } from "../../quantity/index.js";
import { panelHolesDrawing, ruleOf } from "../../recipe/index.js";

/** Panels that have fasteners, those with the most first. */
export function fastenedPanels({ parts }: Job): readonly string[] {
  const count = (id: string): number =>
    parts.fastenings.reduce((sum, { panel, count: n }) => (panel === id ? sum + n : sum), 0);
  return [...new Set(parts.fastenings.map(({ panel }) => panel))].sort((a, b) => count(b) - count(a));
}

/** Every fastener group of a panel, numbered as its drawing is; of the whole case without a panel. */
export function scheduleTable(job: Job, panel?: string): TableView {
  const style = styleOf(job.case);
  const rows = fastenerSchedule(job).filter((row) => panel === undefined || row.panel === panel);
  const numbered = rows.map((row, i) => ({ ...row, number: i + 1 }));
  return tableOf(
    numbered,
    [
      { heading: "No.", cell: ({ number }) => number },
      ...(panel === undefined
        ? [{ heading: "Panel", cell: (row: (typeof numbered)[number]) => row.panel }]
        : []),
      { heading: "Holds", cell: ({ holds }) => holds },
      { heading: "Fastener", cell: ({ fastener }) => fastener.name },
      { heading: "How many", cell: ({ count }) => count },
      { heading: "Washers", cell: ({ washers }) => (washers > 0 ? "each" : "") },
      { heading: "Hole", cell: ({ hole }) => decimal(hole, style) },
      { heading: "Grip", cell: ({ grip }) => decimal(grip, style) },
      { heading: "Pitch", cell: ({ pitch }) => (pitch === undefined ? "" : Length.show(pitch, style)) },
      { heading: "To the edge", cell: ({ edgeDistance }) => decimal(edgeDistance, style) },
    ],
    panel === undefined ? "Every fastener group of the case" : `Fasteners of ${panel}`,
  );
}

/** One decimal figure in the reader's unit, so that the table fits a page. */
function decimal(length: Length | undefined, { system }: ShowStyle): string {
  if (length === undefined) return "";
  return Length.show(length, { unit: system === "inch" ? "in" : "mm", digits: 3, exact: true });
}

/** A panel with its holes, numbered as its table is. Nothing for a panel that has none. */
export function scheduleDrawing(job: Job, panel: string): readonly DrawingView[] {
  const part = [...job.parts.panels, ...job.parts.shelves.map((shelf) => shelf.panel)].find(
    ({ id }) => id === panel,
  );
  const order = fastenerSchedule(job).filter((row) => row.panel === panel);
  const groups = job.parts.fastenings
    .filter((fastening) => fastening.panel === panel)
    .map((fastening) => ({
      letter: String(order.findIndex(({ holds }) => holds === fastening.holds) + 1),
      fastening,
    }));
  return part && groups.length > 0 ? [panelHolesDrawing(part, groups, ruleOf(job.case.units))] : [];
}

/** Fasteners to buy and the minutes to set them, by the tools that were timed. */
export function fastenerTotalsTable(job: Job): TableView {
  return tableOf(
    fastenerTotals(job, job.review.purchases),
    [
      { heading: "Fastener", cell: ({ stock }) => stock.name },
      { heading: "In the case", cell: ({ count }) => count },
      { heading: "Spares", cell: ({ spares }) => spares },
      { heading: "Packs", cell: ({ packs, stock }) => `${packs} of ${stock.packOf}` },
      { heading: "Washers", cell: ({ washers }) => washers || "" },
      { heading: "Cost", cell: ({ cost }) => Money.show(cost) },
      {
        heading: "Time",
        cell: ({ byTool }) =>
          byTool
            .map(
              ({ work, tool, time }) =>
                `${work}: ${Time.show(time, { unit: "min", digits: 2 })} with the ${tool}`,
            )
            .join(", "),
      },
    ],
    "Totals for each fastener",
  );
}
