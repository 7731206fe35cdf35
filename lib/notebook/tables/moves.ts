/** Which things to move so that each section balances in the middle between its handles. */

import { styleOf } from "../../findings/index.js";
import type { Job } from "../../job/index.js";
import { type Balancing, balancing, type ContentMove, sideOf } from "../../model/index.js";
import { type TableView, tableOf } from "../../page/index.js";
import { Length } from "../../quantity/index.js";

interface Move extends ContentMove {
  readonly section: string;
  readonly balancing: Balancing;
}

/** Up to three rows a section; none where it has no handle at each end, or balances to a few millimetres. */
export function movesTable(job: Job): TableView {
  const style = styleOf(job.case);
  const show = (length: number): string => Length.show(Length.si(Math.abs(length)), style);
  const rows = job.parts.sections.flatMap(({ name }) => {
    const finding = job.review.travel.find(({ id }) => id === `travel.balance.${name}`);
    if (finding === undefined || finding.verdict === "unknown") return [];
    const found = balancing(job, name);
    return found.moves.map((move): Move => ({ ...move, section: name, balancing: found }));
  });
  return tableOf(
    rows,
    [
      { heading: "Section", cell: ({ section }) => section },
      {
        heading: "It balances off the middle by",
        cell: ({ balancing: { wanted, axis } }) => `${show(wanted)}, to the ${sideOf(axis, -wanted)}`,
      },
      { heading: "Move", cell: ({ name }) => name },
      {
        heading: "By",
        cell: ({ possible, balancing: { axis } }) => `${show(possible)} to the ${sideOf(axis, possible)}`,
      },
      {
        heading: "That is",
        cell: ({ possible, wanted }) =>
          Math.abs(possible) >= Math.abs(wanted) * (1 - 1e-9)
            ? "enough"
            : "part of the way, as far as the wall",
      },
    ],
    "Any one of these, where things between make way",
  );
}
