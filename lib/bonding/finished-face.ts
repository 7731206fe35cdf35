/** What a finished face weighs and costs. */
import { type Formula, formula } from "../formula.js";
import { Area, AreaDensity, Density, Length, Money, Ratio, Volume } from "../quantity/index.js";
import { cite } from "../source.js";

/** One facing and its dried glue. */
export interface FaceMassInputs {
  /** Thickness of the facing. */ readonly facingThickness: Length;
  /** Density of the facing. */ readonly facingDensity: Density;
  /** Wet, on the sheet. */ readonly sheetRate: AreaDensity;
  /** Wet, on the back of the facing; zero for a glue that goes on one face. */
  readonly facingRate: AreaDensity;
  /** Share of the wet glue that stays after drying. */ readonly solids: Ratio;
}

/** For one side of a panel. */
export type FaceMass = {
  /** Of the facing alone. */ readonly facing: AreaDensity;
  /** Of the adhesive once it is dry. */ readonly dryAdhesive: AreaDensity;
  /** Of both. */ readonly total: AreaDensity;
};

/**
 * Mass that a finished face adds to its sheet: rho t + s (r_1 + r_2). Overspray is not on the panel.
 *
 * @example finishedFaceMass(finishedFaceMass.read({ facingThickness: "0.8 mm", facingDensity: "1400 kg/m3",
 *   sheetRate: "120 g/m2", facingRate: "120 g/m2", solids: 0.25 })) // facing 1.12 kg/m2, dryAdhesive 60 g/m2, total 1.18 kg/m2
 */
export const finishedFaceMass: Formula<FaceMassInputs, FaceMass> = formula<FaceMassInputs, FaceMass>({
  id: "finished.face.mass",
  title: "Mass of a finished face",
  equation: String.raw`m = \rho\,t + s\,(r_1 + r_2)`,
  inputs: {
    facingThickness: { symbol: "t", kind: Length, meaning: "thickness of the facing", above: 0 },
    facingDensity: { symbol: String.raw`\rho`, kind: Density, meaning: "density of the facing", above: 0 },
    sheetRate: { symbol: "r_1", kind: AreaDensity, meaning: "wet rate on the sheet", min: 0 },
    facingRate: { symbol: "r_2", kind: AreaDensity, meaning: "wet rate on the facing", min: 0 },
    solids: { symbol: "s", kind: Ratio, meaning: "share that stays after drying", min: 0, max: 1 },
  },
  result: {
    facing: { symbol: "m_f", kind: AreaDensity, meaning: "facing" },
    dryAdhesive: { symbol: "m_g", kind: AreaDensity, meaning: "dried glue, both faces" },
    total: { symbol: "m", kind: AreaDensity, meaning: "added to the sheet, one side" },
  },
  source: [cite("geometry", "density times thickness, rate times solids")],
  validity: "One side of the panel, before openings are cut.",
  compute: ({ facingThickness, facingDensity, sheetRate, facingRate, solids }) => {
    const facing = facingDensity * facingThickness;
    const dryAdhesive = solids * (sheetRate + facingRate);
    return { facing, dryAdhesive, total: facing + dryAdhesive };
  },
});

/** One facing glued with one adhesive. */
export interface FaceCostInputs {
  /** Price of one sheet or roll of facing, and its area. */ readonly facingPrice: Money;
  /** Area that the price buys. */ readonly facingArea: Area;
  /** Share of the facing that is trimmed off or left as offcuts. */ readonly facingWaste: Ratio;
  /** Wet, on the sheet. */ readonly sheetRate: AreaDensity;
  /** Wet, on the back of the facing; zero for a glue that goes on one face. */
  readonly facingRate: AreaDensity;
  /** Share of the glue that ends elsewhere. */ readonly adhesiveWaste: Ratio;
  /** Of the wet glue. */ readonly adhesiveDensity: Density;
  /** One container of glue. */ readonly container: Volume;
  /** Of one container of adhesive. */ readonly containerPrice: Money;
}

/** One facing glued with one adhesive, on so much of a face. */
export interface FacePriceInputs extends FaceCostInputs {
  /** What is finished: a square foot or a square metre, whichever a reader thinks in. */ readonly area: Area;
}

/** For the area finished, on one side of a panel. */
export type FaceCost = {
  /** Of the laminate. */ readonly facing: Money;
  /** Of the glue. */ readonly adhesive: Money;
  /** Of both. */ readonly total: Money;
};

const costInputs = {
  facingPrice: { symbol: "P_f", kind: Money, meaning: "price of a sheet or roll", min: 0 },
  facingArea: { symbol: "A_f", kind: Area, meaning: "its area", above: 0 },
  facingWaste: { symbol: "w_f", kind: Ratio, meaning: "facing trimmed and left over", min: 0, below: 1 },
  sheetRate: { symbol: "r_1", kind: AreaDensity, meaning: "wet rate on the sheet", min: 0 },
  facingRate: { symbol: "r_2", kind: AreaDensity, meaning: "wet rate on the facing", min: 0 },
  adhesiveWaste: { symbol: "w_g", kind: Ratio, meaning: "glue wasted", min: 0, below: 1 },
  adhesiveDensity: { symbol: String.raw`\rho`, kind: Density, meaning: "density of the wet glue", above: 0 },
  container: { symbol: "V_c", kind: Volume, meaning: "content of a container", above: 0 },
  containerPrice: { symbol: "P_g", kind: Money, meaning: "price of a container", min: 0 },
} as const;

const costResult = {
  facing: { symbol: "c_f", kind: Money, meaning: "facing" },
  adhesive: { symbol: "c_g", kind: Money, meaning: "adhesive" },
  total: { symbol: "c", kind: Money, meaning: "both" },
} as const;

const costSource = [cite("geometry", "price over area, wasted share on top")];
const costValidity =
  "Material only: no labour, no trimmer bits. One side of the panel; two sides cost twice.";

function otherCurrency({ facingPrice, containerPrice }: FaceCostInputs): string[] {
  return facingPrice.currency === containerPrice.currency
    ? []
    : [`prices in one currency, got ${facingPrice.currency} and ${containerPrice.currency}`];
}

function priced(inputs: FaceCostInputs, area: number): FaceCost {
  const { currency } = inputs.facingPrice;
  const facing = (area * inputs.facingPrice.amount) / (inputs.facingArea * (1 - inputs.facingWaste));
  const glue = (inputs.sheetRate + inputs.facingRate) / (1 - inputs.adhesiveWaste);
  const adhesive = (area * inputs.containerPrice.amount * glue) / (inputs.adhesiveDensity * inputs.container);
  return {
    facing: { amount: facing, currency },
    adhesive: { amount: adhesive, currency },
    total: { amount: facing + adhesive, currency },
  };
}

/**
 * Cost of one finished square metre, one side: facing P_f / (A_f (1 - w_f)) and glue on both faces
 * P_g (r_1 + r_2) / (rho V_c (1 - w_g)). Glue by what is used, as if a container could be shared; whole
 * containers are counted for a job by `adhesive.need`.
 *
 * @throws RangeError for two currencies, or when all is wasted
 * @example finishedFaceCost(finishedFaceCost.read({ facingPrice: "100 EUR", facingArea: "10 m2",
 *   facingWaste: 0, sheetRate: "100 g/m2", facingRate: "100 g/m2", adhesiveWaste: 0,
 *   adhesiveDensity: "1000 kg/m3", container: "1 L", containerPrice: "20 EUR" })) // facing 10.00 EUR, adhesive 4.00 EUR, total 14.00 EUR
 */
export const finishedFaceCost: Formula<FaceCostInputs, FaceCost> = formula<FaceCostInputs, FaceCost>({
  id: "finished.face.cost",
  title: "Cost of a finished square metre",
  equation: String.raw`c = \frac{P_f}{A_f (1 - w_f)} + \frac{P_g (r_1 + r_2)}{\rho V_c (1 - w_g)}`,
  inputs: costInputs,
  result: costResult,
  source: costSource,
  validity: costValidity,
  refuse: otherCurrency,
  compute: (inputs) => priced(inputs, 1),
});

/**
 * Cost of so much of a finished face, one side: A times `finished.face.cost`.
 *
 * @throws RangeError for two currencies, or when all is wasted
 * @example finishedFacePrice(finishedFacePrice.read({ facingPrice: "100 EUR", facingArea: "10 m2",
 *   facingWaste: 0, sheetRate: "100 g/m2", facingRate: "100 g/m2", adhesiveWaste: 0,
 *   adhesiveDensity: "1000 kg/m3", container: "1 L", containerPrice: "20 EUR", area: "2 m2" })) // facing 20.00 EUR, adhesive 8.00 EUR, total 28.00 EUR
 */
export const finishedFacePrice: Formula<FacePriceInputs, FaceCost> = formula<FacePriceInputs, FaceCost>({
  id: "finished.face.price",
  title: "Cost of a finished face",
  equation: String.raw`c = A\,\left(\frac{P_f}{A_f (1 - w_f)} + \frac{P_g (r_1 + r_2)}{\rho V_c (1 - w_g)}\right)`,
  inputs: {
    ...costInputs,
    area: { symbol: "A", kind: Area, meaning: "area finished", above: 0 },
  },
  result: costResult,
  source: costSource,
  validity: costValidity,
  refuse: otherCurrency,
  compute: (inputs) => priced(inputs, inputs.area),
});
