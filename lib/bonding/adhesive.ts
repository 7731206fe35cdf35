/** How much adhesive to spread and to buy, what it can stand, and what leaves it. */

import { type Formula, formula } from "../formula.js";
import {
  Area,
  AreaDensity,
  Count,
  choice,
  Density,
  type Kind,
  type Length,
  Mass,
  Money,
  megapascal,
  mm,
  type Pressure,
  Ratio,
  ratio,
  Temperature,
  Volume,
  wholeUp,
} from "../quantity/index.js";
import { cite } from "../source.js";

/** What a glue is. */
export type AdhesiveKind = "contact" | "spray contact" | "wood glue" | "epoxy" | "construction";

/** What follows from the kind of a glue. */
export interface AdhesiveTraits {
  /** Whether two dry films grip on touch, with no clamps but also no moving; else it is clamped while wet. */
  readonly gripsOnTouch: boolean;
  /** Whether it is sprayed, not rolled or spread. */ readonly sprayed: boolean;
}

/** The traits of each kind. */
export const adhesiveTraits: Readonly<Record<AdhesiveKind, AdhesiveTraits>> = {
  contact: { gripsOnTouch: true, sprayed: false },
  "spray contact": { gripsOnTouch: true, sprayed: true },
  "wood glue": { gripsOnTouch: false, sprayed: false },
  epoxy: { gripsOnTouch: false, sprayed: false },
  construction: { gripsOnTouch: false, sprayed: false },
};

/** Kinds of glue, as a kind of value. */
export const AdhesiveKind: Kind<AdhesiveKind> = choice(
  "kind of adhesive",
  Object.keys(adhesiveTraits) as AdhesiveKind[],
);

/** Coverage as labels state it: so much area from so much glue. */
export interface CoverageInputs {
  /** One face. */ readonly covered: Area;
  /** The volume that covers it. */ readonly from: Volume;
  /** Of the wet glue. */ readonly density: Density;
}

/**
 * Wet spread rate from a label's coverage: r = rho V / A.
 *
 * @example rateFromCoverage(rateFromCoverage.read({ covered: "8 m2", from: "1 L", density: "800 kg/m3" })) // 100 g/m2
 */
export const rateFromCoverage: Formula<CoverageInputs, AreaDensity> = formula({
  id: "adhesive.rate.from.coverage",
  title: "Spread rate from a label's coverage",
  equation: String.raw`r = \frac{\rho\,V}{A}`,
  inputs: {
    covered: { symbol: "A", kind: Area, meaning: "area covered, one face", above: 0 },
    from: { symbol: "V", kind: Volume, meaning: "glue used", above: 0 },
    density: { symbol: String.raw`\rho`, kind: Density, meaning: "density of the wet glue", above: 0 },
  },
  result: { symbol: "r", kind: AreaDensity, meaning: "wet spread rate on one face" },
  source: [cite("geometry", "mass over area")],
  validity: "Ask whether the label means one face or the finished bond: the bond takes two faces.",
  compute: ({ covered, from, density }) => (density * from) / covered,
});

/** What the label says and what the builder found. */
export interface OwnRateInputs {
  /** The rate that the label gives. */ readonly label: AreaDensity;
  /** From a trial panel. */ readonly trial: AreaDensity;
}

/** A label that is this far off is worth a second trial. */
const muchOff = 0.2;

/**
 * Own spread rate over the label's: trial / label. The trial is what to buy by: it knows the builder's
 * roller and this ply.
 *
 * @example ownRate(ownRate.read({ label: "125 g/m2", trial: "150 g/m2" })) // 1.2
 */
export const ownRate: Formula<OwnRateInputs, Ratio> = formula({
  id: "adhesive.rate.own",
  title: "Own spread rate against the label's",
  equation: String.raw`k = \frac{r_{trial}}{r_{label}}`,
  inputs: {
    label: { symbol: "r_{label}", kind: AreaDensity, meaning: "rate on the label", above: 0 },
    trial: { symbol: "r_{trial}", kind: AreaDensity, meaning: "rate of the trial panel", above: 0 },
  },
  result: { symbol: "k", kind: Ratio, meaning: "own rate over the label's" },
  source: [cite("common-practice", "buy by a trial on the real sheet")],
  validity: "Both for one face, both wet.",
  warn: (_inputs, own) => {
    if (own > 1 + muchOff) return ["the trial used far more than the label says: porous sheet or heavy hand"];
    if (own < 1 - muchOff) return ["the trial used far less than the label says: look for dry, dull spots"];
    return [];
  },
  compute: ({ label, trial }) => trial / label,
});

/** Wet contact adhesive on one face, by custom. */
const usualContact = { low: 0.1, high: 0.15 } as const;

/** Warns of a contact adhesive's rate outside 100 to 150 g/m2 on one face (common practice). */
function unusualContactRate(face: string, rate: AreaDensity): string[] {
  if (rate >= usualContact.low * (1 - 1e-9) && rate <= usualContact.high * (1 + 1e-9)) return [];
  return [
    `${AreaDensity.show(rate, { unit: "g/m2" })} on the ${face} is outside the usual 100 to 150 g/m2 of wet contact adhesive`,
  ];
}

/** Facing to be glued and the glue to do it with. */
export interface AdhesiveNeedInputs {
  /** How the adhesive sets. */ readonly kind: AdhesiveKind;
  /** Area of the bond: counted once, however many faces get glue. */ readonly area: Area;
  /** Wet, on the sheet. */ readonly sheetRate: AreaDensity;
  /** Wet, on the back of the facing; zero for a glue that goes on one face. */
  readonly facingRate: AreaDensity;
  /** Share of what leaves the container that ends elsewhere: overspray, roller, tray. */
  readonly waste: Ratio;
  /** Of the wet glue. */ readonly density: Density;
  /** What one container holds. */ readonly container: Volume;
  /** Of one container. */ readonly price: Money;
}

/** Glue to buy. */
export type AdhesiveToBuy = {
  /** Wet, waste included. */ readonly mass: Mass;
  /** Wet, waste included. */ readonly volume: Volume;
  /** Whole ones to buy. */ readonly containers: number;
  /** Of all containers. */ readonly cost: Money;
  /** What is left over in them. */ readonly left: Volume;
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

/** A film of glue as a spring between two faces, and what it stands. */
export interface GlueFilm {
  /** Modulus in shear. */
  readonly shearModulus: Pressure;
  /** How thick it is when it has set. */
  readonly thickness: Length;
  /** Shear that breaks it, on the low side; sound wood may break first. */
  readonly shearStrength: Pressure;
  /** Share of the joint that is wetted where nothing but screws or a few clamps press it. */
  readonly bonded: Ratio;
}

function film(shearModulus: number, thickness: number, shearStrength: number, bonded: number): GlueFilm {
  return {
    shearModulus: megapascal(shearModulus),
    thickness: mm(thickness),
    shearStrength: megapascal(shearStrength),
    bonded: ratio(bonded),
  };
}

/**
 * Films of each sort of glue; common practice, no source, and on the low side. A rigid film hardly shows in how a case
 * gives; a rubbery one does.
 */
export const glueFilms: Readonly<Record<AdhesiveKind, GlueFilm>> = {
  contact: film(0.4, 0.2, 0.3, 0.5),
  "spray contact": film(0.4, 0.2, 0.15, 0.5),
  "wood glue": film(350, 0.1, 3, 0.5),
  epoxy: film(900, 0.3, 3, 0.5),
  construction: film(1, 1, 0.7, 0.5),
};

/**
 * Heat at which each sort of glue begins to let go under a lasting pull; common practice, no source. The label
 * of the very adhesive outranks it.
 */
export const heatLimits: Readonly<Record<AdhesiveKind, Temperature>> = {
  contact: Temperature.of(70, "°C"),
  "spray contact": Temperature.of(60, "°C"),
  "wood glue": Temperature.of(60, "°C"),
  epoxy: Temperature.of(55, "°C"),
  construction: Temperature.of(70, "°C"),
};

/** What the inside of a closed vehicle comes to on a hot sunny day; common practice, no source. */
export const closedVehicle: Temperature = Temperature.of(65, "°C");

/** What dries out of a glue. */
export type Solvent = "none" | "flammable" | "non-flammable";

const everySolvent = [
  "Read the safety data sheet of the adhesive and keep to it; where it and this differ, it is right.",
  "Air the room well, out of doors if you can: the fumes of a whole can are in the air at once.",
] as const;

/**
 * Cautions that go with gluing large faces. They do not replace the maker's safety data sheet or local
 * rules for solvents.
 */
export function solventCautions(solvent: Solvent): readonly string[] {
  if (solvent === "none") return ["Wear gloves; read the safety data sheet of the adhesive."];
  if (solvent === "flammable") {
    return [
      ...everySolvent,
      "Allow no flame, pilot light, switch or sparking tool in the room or the next one until it is aired: the vapour is heavier than air and travels.",
      "Shut rags and rollers in a metal can with a lid, out of doors.",
    ];
  }
  return [
    ...everySolvent,
    "Wear a mask for organic vapours: these solvents are hard on the lungs and nerves.",
  ];
}
