import { type Formula, formula } from "../formula.js";
import { Area, AreaDensity, Count, Density, Mass, Money, Ratio, Volume, wholeUp } from "../quantity/index.js";
import { cite } from "../source.js";
import { AdhesiveKind } from "./adhesive-kind.js";
import { unusualContactRate } from "./spread-rate.js";

/** Facing to be glued and the glue to do it with. */
export interface AdhesiveNeedInputs {
  readonly kind: AdhesiveKind;
  /** Area of the bond: counted once, however many faces get glue. */
  readonly area: Area;
  /** Wet, on the sheet. */
  readonly sheetRate: AreaDensity;
  /** Wet, on the back of the facing; zero for a glue that goes on one face. */
  readonly facingRate: AreaDensity;
  /** Share of what leaves the container that ends elsewhere: overspray, roller, tray. */
  readonly waste: Ratio;
  /** Of the wet glue. */
  readonly density: Density;
  /** What one container holds. */
  readonly container: Volume;
  readonly price: Money;
}

/** Glue to buy. */
export type AdhesiveToBuy = {
  readonly mass: Mass;
  readonly volume: Volume;
  readonly containers: number;
  readonly cost: Money;
  readonly left: Volume;
};

/**
 * Glue for an area: both faces at their own rate, the wasted share on top, and whole containers:
 * m = A (r_1 + r_2) / (1 - w), V = m / rho, n = ceil(V / V_c).
 *
 * @throws RangeError when both rates are zero or the waste is all of it
 * @example adhesiveNeed(adhesiveNeed.read({ kind: "contact", area: "6.5 m2", sheetRate: "125 g/m2",
 *   facingRate: "0 g/m2", waste: 0, density: "850 kg/m3", container: "1 L", price: "14 USD" })) // mass 812.5 g, volume 955.9 mL, containers 1, cost 14.00 USD, left 44.12 mL
 */
export const adhesiveNeed: Formula<AdhesiveNeedInputs, AdhesiveToBuy> = formula<
  AdhesiveNeedInputs,
  AdhesiveToBuy
>({
  id: "adhesive.need",
  title: "Adhesive to buy",
  equation: String.raw`m = \frac{A\,(r_1 + r_2)}{1 - w},\quad n = \left\lceil \frac{m}{\rho\,V_c} \right\rceil`,
  inputs: {
    kind: { symbol: String.raw`\text{kind}`, kind: AdhesiveKind, meaning: "kind of adhesive" },
    area: { symbol: "A", kind: Area, meaning: "area of the bond", above: 0 },
    sheetRate: { symbol: "r_1", kind: AreaDensity, meaning: "wet rate on the sheet", min: 0 },
    facingRate: { symbol: "r_2", kind: AreaDensity, meaning: "wet rate on the facing", min: 0 },
    waste: { symbol: "w", kind: Ratio, meaning: "share wasted", min: 0, below: 1 },
    density: { symbol: String.raw`\rho`, kind: Density, meaning: "density of the wet glue", above: 0 },
    container: { symbol: "V_c", kind: Volume, meaning: "content of a container", above: 0 },
    price: { symbol: "P", kind: Money, meaning: "price of a container", min: 0 },
  },
  result: {
    mass: { symbol: "m", kind: Mass, meaning: "glue needed" },
    volume: { symbol: "V", kind: Volume, meaning: "glue needed" },
    containers: { symbol: "n", kind: Count, meaning: "containers to buy" },
    cost: { symbol: "C", kind: Money, meaning: "cost of the containers" },
    left: { symbol: "V_l", kind: Volume, meaning: "left over" },
  },
  source: [
    cite("geometry", "area times rate"),
    cite("common-practice", "contact adhesive on both faces, 100 to 150 g/m2 each"),
  ],
  validity: "Rates for one face, wet. An opened container may not keep until the next job.",
  refuse: ({ sheetRate, facingRate }) =>
    sheetRate + facingRate > 0 ? [] : ["sheetRate or facingRate must be positive, both are zero"],
  warn: ({ kind, sheetRate, facingRate }) =>
    kind === "contact"
      ? [...unusualContactRate("sheet", sheetRate), ...unusualContactRate("facing", facingRate)]
      : [],
  compute: ({ area, sheetRate, facingRate, waste, density, container, price }) => {
    const mass = (area * (sheetRate + facingRate)) / (1 - waste);
    const volume = mass / density;
    // A need of a whole number of containers, but for binary rounding, is that number.
    const containers = wholeUp(volume / container);
    return {
      mass,
      volume,
      containers,
      cost: { amount: containers * price.amount, currency: price.currency },
      left: Math.max(0, containers * container - volume),
    };
  },
});
