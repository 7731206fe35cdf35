/** Laminates with adhesives side by side: cost, mass and stiffness of a finished face. */

import { styleOf } from "../../findings/index.js";
import type { Job } from "../../job/index.js";
import { type TableView, tableOf } from "../../page/index.js";
import { type FaceOption, faceOptions } from "../../plan/index.js";
import { AreaDensity, Money, Ratio } from "../../quantity/index.js";

/** One option's cost of a finished face, in parts. */
export interface FaceCostPart {
  /** The laminate and its adhesive. */
  readonly option: string;
  /** Laminate or adhesive. */
  readonly part: string;
  /** Of a square foot or a square metre, in the job's currency. */
  readonly cost: number;
}

/**
 * Cost of the cheapest options and of the one that the case file asks for, split into laminate and adhesive, the cheapest
 * first.
 *
 * @param most so many of the cheapest
 */
export function faceCostParts(job: Job, most = 8): readonly FaceCostPart[] {
  const options = faceOptions(job).filter(({ chosen }, i) => chosen || i < most);
  return options.flatMap((option) => [
    { option: optionName(option), part: "laminate", cost: option.cost.facing.amount },
    { option: optionName(option), part: "adhesive", cost: option.cost.adhesive.amount },
  ]);
}

/** One option as a point of cost and mass. */
export interface FacePoint {
  /** The laminate and its adhesive. */
  readonly option: string;
  /** Name of the laminate. */
  readonly laminate: string;
  /** Of a square foot or a square metre, in the job's currency. */
  readonly cost: number;
  /** oz/ft2 or g/m2 */
  readonly mass: number;
  /** Times the bare sheet. */
  readonly stiffness: number;
  /** Whether anything beats it in cost, mass and stiffness at once. */
  readonly worth: string;
}

/** Cost against mass of each option. */
export function facePoints(job: Job): readonly FacePoint[] {
  const { mass } = areaOf(job.case);
  return faceOptions(job).map((option) => ({
    option: optionName(option),
    laminate: option.facing.name,
    cost: option.cost.total.amount,
    mass: AreaDensity.in(option.mass, mass),
    stiffness: option.stiffening,
    worth: option.front ? "nothing beats it" : "beaten",
  }));
}

/** Every option with its cost, mass, stiffness, and whether another beats it. */
export function faceTable(job: Job): TableView {
  const style = styleOf(job.case);
  const area = areaOf(job.case);
  return tableOf(
    faceOptions(job),
    [
      { heading: "Laminate", cell: ({ facing }) => facing.name },
      { heading: "Adhesive", cell: ({ adhesive }) => adhesive.name },
      { heading: "A finished face", cell: (option) => costText(option, area), align: "right" },
      { heading: "Adds", cell: ({ mass }) => AreaDensity.show(mass, { ...style, digits: 3 }) },
      { heading: "Stiffer", cell: ({ stiffening }) => `${Ratio.show(stiffening, { digits: 3 })} times` },
      { heading: "Beaten", cell: ({ front }) => (front ? "no" : "yes") },
      { heading: "Chosen", cell: ({ chosen }) => (chosen ? "yes" : "") },
    ],
    "Laminate with adhesive, the cheapest first. After ± is half the 95 % interval of your trials; without ± the rate is its label's or one trial's",
  );
}

/** Cost of so much face with half of its 95 % interval, where trials tell it. */
function costText(option: FaceOption, area: FaceMeasure): string {
  const { costInterval: interval } = option;
  const shown = priceOf(option, area);
  return interval ? `${shown} ± ${((interval.high - interval.low) / 2).toFixed(2)}` : shown;
}

/** What costs and masses of faces are told for, in a reader's own system. */
export interface FaceMeasure {
  /** As a unit under a charted cost. */
  readonly per: "ft²" | "m²";
  /** The unit of a charted mass. */
  readonly mass: "oz/ft2" | "g/m2";
}

/** The measure of area that a reader of either system thinks in. */
export function areaOf({ units }: Job["case"]): FaceMeasure {
  return units === "inch" ? { per: "ft²", mass: "oz/ft2" } : { per: "m²", mass: "g/m2" };
}

/** What a face costs, with its unit: "2.19 USD/ft²". */
function priceOf({ cost }: FaceOption, { per }: FaceMeasure): string {
  return `${Money.show(cost.total)}/${per}`;
}

/** What the chapter on laminates says of a case that has none; nothing of one that has some. */
export function unfacedNote({ parts, case: { name } }: Job): readonly string[] {
  if (parts.facings.length > 0) return [];
  return [`${name} has no laminate, so this does not apply to it; what follows is what the tables offer.`];
}

/** The cheapest option, and the chosen one. */
export function facingAnswer(job: Job): string {
  const options = faceOptions(job);
  const [cheapest] = options;
  const [unfaced] = unfacedNote(job);
  if (unfaced !== undefined) return unfaced;
  if (!cheapest) return "There is no laminate or no adhesive in the tables.";
  const area = areaOf(job.case);
  const chosen = options.find((option) => option.chosen);
  const first = `The cheapest finished face is ${optionName(cheapest)}, at ${priceOf(cheapest, area)}.`;
  return `${first} ${chosenWords(chosen, cheapest, area)}`;
}

function chosenWords(chosen: FaceOption | undefined, cheapest: FaceOption, area: FaceMeasure): string {
  if (!chosen) return "The case file asks for none that the tables offer.";
  if (chosen === cheapest) return "The case file asks for it.";
  const beaten = chosen.front ? "none beats it" : "another beats it";
  return `The case file asks for ${optionName(chosen)}, at ${priceOf(chosen, area)}: ${beaten} in cost, weight and stiffness together.`;
}

function optionName({ facing, adhesive }: FaceOption): string {
  return `${facing.name} with ${adhesive.name}`;
}
