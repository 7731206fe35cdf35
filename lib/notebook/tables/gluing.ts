/** Glue to buy, the plan for gluing, and what heat and dry air do to a faced panel. */
import { solventCautions } from "../../bonding/index.js";
import { styleOf } from "../../findings/index.js";
import type { WorkedLine } from "../../formula.js";
import type { Job } from "../../job/index.js";
import { type TableView, tableOf } from "../../page/index.js";
import { adhesiveLine, facingStresses, type GluedClimate, gluePlans } from "../../plan/index.js";
import { Area, Length, Money, Pressure, Ratio, Temperature, Time, Volume } from "../../quantity/index.js";

/** Adhesive to buy for the whole case. */
export function adhesiveTable({ review, case: description }: Job): TableView {
  const style = styleOf(description);
  return tableOf(
    review.purchases.adhesives,
    [
      { heading: "Adhesive", cell: ({ stock }) => stock.name },
      { heading: "Panel area", cell: ({ area }) => Area.show(area, { ...style, digits: 3 }) },
      { heading: "Needed", cell: ({ volume }) => Volume.show(volume, { ...style, digits: 3 }) },
      { heading: "Containers", cell: ({ containers }) => containers },
      { heading: "Cost", cell: ({ cost }) => Money.show(cost) },
    ],
    "Adhesive for the case as it is drawn, both faces and waste counted",
  );
}

/** Rounds, hours, edges and heat for each adhesive of the case. */
export function gluePlanTable(job: Job): TableView {
  const style = styleOf(job.case);
  return tableOf(
    gluePlans(job),
    [
      { heading: "Adhesive", cell: ({ adhesive }) => adhesive.name },
      { heading: "Pieces", cell: ({ pieces }) => pieces },
      {
        heading: "At most a round",
        cell: ({ plan }) => Area.show(plan.value.roundArea, { ...style, digits: 2 }),
      },
      { heading: "Rounds", cell: ({ plan }) => plan.value.rounds },
      { heading: "Spreading", cell: ({ plan }) => Time.show(plan.value.spreading, { digits: 2 }) },
      {
        heading: "Ready to trim after",
        cell: ({ plan }) => Time.show(plan.value.ready, { unit: "h", digits: 2 }),
      },
      {
        heading: "Raw edges, if sealed",
        cell: ({ edges }) => `${Ratio.show(edges, { unit: "%", digits: 2 })} more`,
      },
      {
        heading: "Lets go from",
        cell: ({ heatLimit }) => Temperature.show(heatLimit, { ...style, digits: 2 }),
      },
      {
        heading: "Closed van in the sun",
        cell: ({ standsVehicle }) => (standsVehicle ? "stands it" : "may let go: shade the case"),
      },
    ],
    "Gluing as a plan: times for one person, heat limits by the sort of glue until its label says otherwise",
  );
}

/** What a change of air does to the faced panels. */
export function facingStressTable(job: Job, climate: GluedClimate): TableView {
  return tableOf(
    facingStresses(job, climate),
    [
      { heading: "Facing", cell: ({ facing }) => facing },
      { heading: "Largest panel", cell: ({ panel }) => panel },
      { heading: "Shear at the edge", cell: ({ shear }) => Pressure.show(shear, { unit: "MPa", digits: 2 }) },
      { heading: "Peel at the edge", cell: ({ peel }) => Pressure.show(peel, { unit: "MPa", digits: 2 }) },
      {
        heading: "Bow, lying free",
        cell: ({ bow }) =>
          bow === undefined ? "faced on both sides" : Length.show(bow, { unit: "mm", digits: 2 }),
      },
    ],
    "What growing unlike does: figures for a film of contact glue, far from sure; cover every edge",
  );
}

/** How much adhesive the case takes, worked out. */
export function adhesiveLines(job: Job): readonly WorkedLine[] {
  return job.review.purchases.adhesives.map(({ stock, area }) => adhesiveLine(stock, area, job));
}

/** Cautions for the adhesives of the case file. */
export function facingCautions({ parts }: Job): readonly string[] {
  const solvents = [...new Set(parts.facings.map(({ adhesive }) => adhesive.solvent))];
  return [...new Set(solvents.flatMap(solventCautions))];
}
