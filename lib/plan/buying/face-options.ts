import { type FacePriceInputs, finishedFaceMass, finishedFacePrice } from "../../bonding/index.js";
import type { Adhesive, FacingStock } from "../../design/index.js";
import type { WorkedLine } from "../../formula.js";
import { plywoodLamination } from "../../material/index.js";
import { type Interval, propagate } from "../../measure/index.js";
import {
  densityOf,
  facingLayer,
  knownRate,
  knownWaste,
  panelLayers,
  type ReviewInput,
  ratesOf,
  sheetModuli,
} from "../../model/index.js";
import { Area, AreaDensity, type Money, Ratio } from "../../quantity/index.js";
import { Refusal } from "../../refusal.js";

/** One laminate glued with one adhesive, on one side. */
export interface FaceOption {
  /** The laminate. */
  readonly facing: FacingStock;
  /** What glues it. */
  readonly adhesive: Adhesive;
  /** Of a square foot or a square metre, whichever the case's units have. */
  readonly cost: { readonly facing: Money; readonly adhesive: Money; readonly total: Money };
  /** What the scatter of the builder's trials leaves open about the total; absent without two trials that agree. */
  readonly costInterval?: Interval<Ratio>;
  /** The glue dry. */
  readonly mass: AreaDensity;
  /** Bending stiffness of the sheet most used, faced on one side, over the same bare; the weaker way. */
  readonly stiffening: Ratio;
  /** No other option is at least as cheap, light and stiff, and better in one of them. */
  readonly front: boolean;
  /** Where the spread rate comes from. */
  readonly rateFrom: "trial" | "label";
  /** Whether the case file asks for this one. */
  readonly chosen: boolean;
  /** The worked lines behind it. */
  readonly because: readonly WorkedLine[];
}

/** Every laminate with every adhesive of the tables, the cheapest first. */
export function faceOptions(input: ReviewInput): readonly FaceOption[] {
  const options = input.stock.facings
    .flatMap((facing) => input.stock.adhesives.map((adhesive) => faceOption(facing, adhesive, input)))
    .sort((a, b) => a.cost.total.amount - b.cost.total.amount);
  return options.map((option) => ({ ...option, front: !options.some((other) => beats(other, option)) }));
}

/** At least as good in cost, mass and stiffness, and better in one. */
function beats(one: Omit<FaceOption, "front">, other: Omit<FaceOption, "front">): boolean {
  const gains = [
    other.cost.total.amount - one.cost.total.amount,
    other.mass - one.mass,
    one.stiffening - other.stiffening,
  ];
  return gains.every((gain) => gain >= 0) && gains.some((gain) => gain > 0);
}

function faceOption(facing: FacingStock, adhesive: Adhesive, input: ReviewInput): Omit<FaceOption, "front"> {
  const rates = ratesOf(adhesive, input);
  const prices = {
    facingPrice: facing.price,
    facingArea: Area.si(facing.length * facing.width),
    facingWaste: trimmedShare(input),
    adhesiveWaste: knownWaste(adhesive, input),
    adhesiveDensity: adhesive.density,
    container: adhesive.content,
    containerPrice: adhesive.price,
    area: faceArea(input.case),
  };
  const cost = finishedFacePrice.worked({ ...prices, ...rates });
  const mass = finishedFaceMass.worked({
    facingThickness: facing.thickness,
    facingDensity: densityOf(input, facing),
    ...rates,
    solids: Ratio.si(adhesive.solids),
  });
  const stiffer = stiffeningOf(facing, input);
  const costInterval = costScatter(adhesive, prices, input);
  return {
    facing,
    adhesive,
    cost: cost.value,
    ...(costInterval ? { costInterval } : {}),
    mass: mass.value.total,
    stiffening: stiffer.stiffening,
    rateFrom: knownRate(adhesive, input).from,
    chosen: input.parts.facings.some(
      (part) => part.stock.name === facing.name && part.adhesive.name === adhesive.name,
    ),
    because: [cost, mass, ...stiffer.because],
  };
}

/** What the cost of a face is told for. */
export function faceArea({ units }: ReviewInput["case"]): Area {
  return Area.of(1, units === "inch" ? "ft2" : "m2");
}

/** The interval of the cost of a finished face; none where the trials disagree too much to tell. */
function costScatter(
  adhesive: Adhesive,
  prices: Omit<FacePriceInputs, "sheetRate" | "facingRate">,
  input: ReviewInput,
): Interval<Ratio> | undefined {
  const { rate, uncertainty } = knownRate(adhesive, input);
  if (!uncertainty) return undefined;
  const none = AreaDensity.si(0);
  const total = ({ rate: each }: { readonly rate: AreaDensity }): Ratio => {
    const facingRate = adhesive.faces === "both" ? each : none;
    return Ratio.si(finishedFacePrice({ ...prices, sheetRate: each, facingRate }).total.amount);
  };
  try {
    const { interval } = propagate(total, { rate }, { rate: uncertainty });
    return interval.low > 0 ? interval : undefined;
  } catch (error) {
    // A rate that may as well be zero has no interval to tell.
    if (error instanceof Refusal) return undefined;
    throw error;
  }
}

/** How much stiffer the sheet most used bends with the facing on one side. */
function stiffeningOf(
  facing: FacingStock,
  { parts, measurements }: ReviewInput,
): { readonly stiffening: Ratio; readonly because: readonly WorkedLine[] } {
  const [panel] = [...parts.panels].sort((a, b) => b.grossArea - a.grossArea);
  if (!panel) return { stiffening: Ratio.si(1), because: [] };
  const moduli = sheetModuli(panel.sheet, measurements);
  const bending = { along: moduli.along.modulus, across: moduli.across.modulus };
  const { facing: _own, ...unfaced } = panel;
  const [ply] = panelLayers(unfaced, moduli, bending);
  if (!ply) return { stiffening: Ratio.si(1), because: [] };
  const faced = plywoodLamination.worked({ layers: [ply, facingLayer(facing)] });
  const bare = plywoodLamination.worked({ layers: [ply] });
  const gain = (way: "alongX" | "alongY"): number => faced.value[way] / bare.value[way];
  return { stiffening: Ratio.si(Math.min(gain("alongX"), gain("alongY"))), because: [bare, faced] };
}

/** Share of the laminate pieces of this case that is trimmed off after gluing. */
function trimmedShare({ parts }: ReviewInput): Ratio {
  const cut = parts.facings.reduce((sum, { width, height }) => sum + width * height, 0);
  const kept = parts.facings.reduce((sum, { gluedArea }) => sum + gluedArea, 0);
  return Ratio.si(cut === 0 ? 0 : 1 - kept / cut);
}
