/** Tables of what else would do: set-ups of the bars, laminate off a roll, an offcut of ply. */

import type { Job } from "../../job/index.js";
import { type TableView, tableOf } from "../../page/index.js";
import { type Offcut, offcutUse, rollLengths } from "../../plan/index.js";
import { Area, Length, Money } from "../../quantity/index.js";

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
