import { finishedFaceCost, finishedFaceMass } from "../../bonding/index.js";
import type { Adhesive, FacingStock } from "../../design/index.js";
import type { WorkedLine } from "../../formula.js";
import { Area, type AreaDensity, type Money, Ratio } from "../../quantity/index.js";
import { densityOf } from "../masses.js";
import type { ReviewInput } from "../review-input.js";
import { knownRate, ratesOf } from "./adhesive-needs.js";

/** One laminate glued with one adhesive, for a finished square metre on one side. */
export interface FaceOption {
  readonly facing: FacingStock;
  readonly adhesive: Adhesive;
  readonly cost: { readonly facing: Money; readonly adhesive: Money; readonly total: Money };
  readonly mass: AreaDensity;
  readonly rateFrom: "trial" | "label";
  /** Whether the case file asks for this one. */
  readonly chosen: boolean;
  readonly because: readonly WorkedLine[];
}

/** Every laminate with every adhesive of the tables, the cheapest first. */
export function faceOptions(input: ReviewInput): readonly FaceOption[] {
  return input.stock.facings
    .flatMap((facing) => input.stock.adhesives.map((adhesive) => faceOption(facing, adhesive, input)))
    .sort((a, b) => a.cost.total.amount - b.cost.total.amount);
}

function faceOption(facing: FacingStock, adhesive: Adhesive, input: ReviewInput): FaceOption {
  const rates = ratesOf(adhesive, input);
  const cost = finishedFaceCost.worked({
    facingPrice: facing.price,
    facingArea: Area.si(facing.length * facing.width),
    facingWaste: trimmedShare(input),
    ...rates,
    adhesiveWaste: Ratio.si(adhesive.waste),
    adhesiveDensity: adhesive.density,
    container: adhesive.content,
    containerPrice: adhesive.price,
  });
  const mass = finishedFaceMass.worked({
    facingThickness: facing.thickness,
    facingDensity: densityOf(input, facing),
    ...rates,
    solids: Ratio.si(adhesive.solids),
  });
  return {
    facing,
    adhesive,
    cost: cost.value,
    mass: mass.value.total,
    rateFrom: knownRate(adhesive, input).from,
    chosen: input.parts.facings.some(
      (part) => part.stock.name === facing.name && part.adhesive.name === adhesive.name,
    ),
    because: [cost, mass],
  };
}

/** Share of the laminate pieces of this case that is trimmed off after gluing. */
function trimmedShare({ parts }: ReviewInput): Ratio {
  const cut = parts.facings.reduce((sum, { width, height }) => sum + width * height, 0);
  const kept = parts.facings.reduce((sum, { gluedArea }) => sum + gluedArea, 0);
  return Ratio.si(cut === 0 ? 0 : 1 - kept / cut);
}
