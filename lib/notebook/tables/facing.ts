/** Tables, chart rows and the answer of the notebook that asks which adhesive and laminate. */
import { solventCautions } from "../../bonding/index.js";
import type { WorkedLine } from "../../formula.js";
import type { Job } from "../../job/index.js";
import { type TableView, tableOf } from "../../page/index.js";
import {
  Area,
  AreaDensity,
  Length,
  Money,
  Pressure,
  Ratio,
  Temperature,
  Time,
  timesMoney,
  Volume,
} from "../../quantity/index.js";
import {
  adhesiveLine,
  type FaceOption,
  faceOptions,
  facingStresses,
  type GluedClimate,
  gluePlans,
  styleOf,
} from "../../review/index.js";

/** One option's cost of a finished square metre, in parts. */
export interface FaceCostPart {
  readonly option: string;
  readonly part: string;
  readonly cost: number;
}

/** Cost of each option, split into laminate and adhesive, the cheapest first. */
export function faceCostParts(job: Job): readonly FaceCostPart[] {
  return faceOptions(job).flatMap((option) => [
    { option: optionName(option), part: "laminate", cost: option.cost.facing.amount },
    { option: optionName(option), part: "adhesive", cost: option.cost.adhesive.amount },
  ]);
}

/** One option as a point of cost and mass. */
export interface FacePoint {
  readonly option: string;
  readonly laminate: string;
  readonly cost: number;
  /** g/m2 */
  readonly mass: number;
  /** Times the bare sheet. */
  readonly stiffness: number;
  /** Whether anything beats it in cost, mass and stiffness at once. */
  readonly worth: string;
}

/** Cost against mass of each option. */
export function facePoints(job: Job): readonly FacePoint[] {
  return faceOptions(job).map((option) => ({
    option: optionName(option),
    laminate: option.facing.name,
    cost: option.cost.total.amount,
    mass: AreaDensity.in(option.mass, "g/m2"),
    stiffness: option.stiffening,
    worth: option.front ? "nothing beats it" : "beaten",
  }));
}

/** Every option with its cost, mass and where the spread rate comes from. */
export function faceTable(job: Job): TableView {
  const style = styleOf(job.case);
  return tableOf(
    faceOptions(job),
    [
      { heading: "Laminate", cell: ({ facing }) => facing.name },
      { heading: "Adhesive", cell: ({ adhesive }) => adhesive.name },
      { heading: "A finished m2", cell: ({ cost }) => Money.show(cost.total) },
      { heading: "95 % interval", cell: ({ costInterval }) => costRange(costInterval) },
      { heading: "A square foot", cell: ({ cost }) => Money.show(timesMoney(squareFoot, cost.total)) },
      { heading: "Adds", cell: ({ mass }) => AreaDensity.show(mass, { ...style, digits: 3 }) },
      { heading: "Stiffer", cell: ({ stiffening }) => `${Ratio.show(stiffening, { digits: 3 })} times` },
      { heading: "Beaten by another", cell: ({ front }) => (front ? "no" : "yes") },
      {
        heading: "Spread rate from",
        cell: ({ rateFrom }) => (rateFrom === "trial" ? "your trial" : "its label"),
      },
      { heading: "In the case file", cell: ({ chosen }) => (chosen ? "yes" : "") },
    ],
    "Laminate with adhesive, the cheapest first",
  );
}

function costRange(interval: FaceOption["costInterval"]): string {
  return interval ? `${interval.low.toFixed(2)} to ${interval.high.toFixed(2)}` : "";
}

const squareFoot = Area.of(1, "ft2");

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

/** The cheapest option against the chosen one. */
export function facingAnswer(job: Job): string {
  const options = faceOptions(job);
  const [cheapest] = options;
  const chosen = options.find((option) => option.chosen);
  if (!cheapest) return "There is no laminate or no adhesive in the tables.";
  const best = `The cheapest finished square metre is ${optionName(cheapest)} at ${Money.show(cheapest.cost.total)}`;
  if (!chosen) return `${best}; the case file asks for no laminate.`;
  if (chosen === cheapest) return `${best}, and that is what the case file asks for.`;
  return `${best}; the case file asks for ${optionName(chosen)} at ${Money.show(chosen.cost.total)}.`;
}

function optionName({ facing, adhesive }: FaceOption): string {
  return `${facing.name} + ${adhesive.name}`;
}
