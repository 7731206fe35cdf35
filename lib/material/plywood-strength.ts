/** How strong plywood is in bending and in shear through it, by its veneers, and what a code lets one count on. */
import { type Formula, formula } from "../formula.js";
import { choice, type Kind, Length, listOf, Pressure } from "../quantity/index.js";
import { cite } from "../source.js";

/** Plywood of one species, its veneers crossing by turns. */
export interface PlywoodStrengthInputs {
  /** From face to back; the face grain runs along. */
  readonly veneers: readonly Length[];
  /** Strength of a veneer along its grain when the sheet bends. */
  readonly bending: Pressure;
  /** Strength of a veneer that rolls across its grain. */
  readonly rolling: Pressure;
}

/** Strengths as if the sheet were one material: to be compared with 6 M / t² and 1.5 Q / t. */
export type PlywoodStrength = {
  /** In bending with the face grain along the span. */
  readonly bendingAlong: Pressure;
  /** In bending with the face grain across the span. */
  readonly bendingAcross: Pressure;
  /** Against shear through it, face grain along the span. */
  readonly rollingAlong: Pressure;
  /** Against shear through it, face grain across the span. */
  readonly rollingAcross: Pressure;
};

/**
 * Strength of plywood from its veneers: only those along the span bear, and those across it roll.
 *
 * @example plywoodStrength(plywoodStrength.read({ veneers: ["1 mm", "1 mm", "1 mm"], bending: "70 MPa",
 *   rolling: "2.5 MPa" })) // bendingAlong 67.41 MPa, bendingAcross 7.778 MPa, rollingAlong 2.708 MPa, rollingAcross 0 Pa
 */
export const plywoodStrength: Formula<PlywoodStrengthInputs, PlywoodStrength> = formula<
  PlywoodStrengthInputs,
  PlywoodStrength
>({
  id: "plywood.strength",
  title: "Strength of plywood from its veneers",
  equation: String.raw`f_m=f_v\,\frac{I_d}{I}\,\frac{h/2}{y_{max}},\quad f_r=f_{v,r}\,\frac{1.5}{h}\,\frac{I_d}{S}`,
  inputs: {
    veneers: { symbol: "t_k", kind: listOf(Length), meaning: "veneers from face to back" },
    bending: {
      symbol: "f_v",
      kind: Pressure,
      meaning: "bending strength of a veneer along its grain",
      above: 0,
    },
    rolling: { symbol: "f_{v,r}", kind: Pressure, meaning: "rolling strength of a veneer", above: 0 },
  },
  result: {
    bendingAlong: { symbol: "f_{m,0}", kind: Pressure, meaning: "bending, face grain along the span" },
    bendingAcross: { symbol: "f_{m,90}", kind: Pressure, meaning: "bending, face grain across the span" },
    rollingAlong: {
      symbol: "f_{r,0}",
      kind: Pressure,
      meaning: "shear through it, face grain along the span",
    },
    rollingAcross: { symbol: "f_{r,90}", kind: Pressure, meaning: "shear through it, face grain across" },
  },
  source: [
    cite("finnish-plywood", "tables 3-1 and 3-2, what their figures come to"),
    cite("strength-of-materials", "flexure and shear formulas of a layered section"),
  ],
  validity:
    "An odd number of veneers of one species, thickness the same from either face. A sheet with cores of another wood, gaps or patches is weaker: break strips of it.",
  refuse: ({ veneers }) =>
    veneers.length >= 3 && veneers.length % 2 === 1 && veneers.every((one) => one > 0)
      ? []
      : [`veneers must be an odd number of at least 3, each positive, got ${veneers.length}`],
  compute: ({ veneers, bending, rolling }) => {
    const [along, across] = [directionOf(veneers, 0), directionOf(veneers, 1)];
    return {
      bendingAlong: bending * along.bendingShare,
      bendingAcross: bending * across.bendingShare,
      rollingAlong: rolling * along.rollingShare,
      rollingAcross: rolling * across.rollingShare,
    };
  },
});

/** Shares of the veneer's strengths, for the veneers whose number is even (0) or odd (1). */
function directionOf(veneers: readonly number[], parity: 0 | 1) {
  const height = veneers.reduce((sum, one) => sum + one, 0);
  let below = -height / 2;
  const plies = veneers.map((thickness, i) => {
    const [low, high] = [below, below + thickness];
    below = high;
    return { low, high, bears: i % 2 === parity };
  });
  const bearing = plies.filter(({ bears }) => bears);
  const inertia = bearing.reduce((sum, { low, high }) => sum + (high ** 3 - low ** 3) / 3, 0);
  const farthest = Math.max(...bearing.map(({ low, high }) => Math.max(high, -low)));
  // First moment of the bearing veneers beyond the middle of each veneer that rolls.
  const moments = plies
    .filter(({ bears }) => !bears)
    .map(({ low, high }) => firstMoment(bearing, (low + high) / 2));
  const most = Math.max(...moments);
  return {
    bendingShare: ((inertia / (height ** 3 / 12)) * height) / 2 / farthest,
    rollingShare: most > 0 ? (1.5 * inertia) / height / most : 0,
  };
}

function firstMoment(
  bearing: readonly { readonly low: number; readonly high: number }[],
  from: number,
): number {
  return bearing
    .filter(({ low }) => low >= from)
    .reduce((sum, { low, high }) => sum + (high ** 2 - low ** 2) / 2, 0);
}

/** How long a load stays, as EN 1995-1-1 table 2.2 sorts it. */
export type EnDuration = "permanent" | "long" | "medium" | "short" | "instantaneous";

/** Where the wood lives: heated rooms, under a roof, in the weather. */
export type ServiceClass = "class 1" | "class 2" | "class 3";

/** k_mod of EN 1995-1-1 table 3.1, of solid timber and plywood alike. */
const sheltered: Readonly<Record<EnDuration, number>> = {
  permanent: 0.6,
  long: 0.7,
  medium: 0.8,
  short: 0.9,
  instantaneous: 1.1,
};

const outdoors: Readonly<Record<EnDuration, number>> = {
  permanent: 0.5,
  long: 0.55,
  medium: 0.65,
  short: 0.7,
  instantaneous: 0.9,
};

/** Plywood, EN 1995-1-1 table 2.3. */
const materialFactor = 1.2;

/** A characteristic strength of plywood under a load. */
export interface PlywoodDesign {
  /** Reached or passed by 95 of 100 pieces. */
  readonly characteristic: Pressure;
  /** How long the load stays in all. */
  readonly duration: EnDuration;
  /** Where it is used. */
  readonly serviceClass: ServiceClass;
}

/** How long a load stays. */
export const durations: Kind<EnDuration> = choice("load duration", [
  "permanent",
  "long",
  "medium",
  "short",
  "instantaneous",
]);
/** Where the wood lives. */
export const classes: Kind<ServiceClass> = choice("service class", ["class 1", "class 2", "class 3"]);

/** What a load of some duration leaves of the strength of wood. */
export function modificationFactor(duration: EnDuration, serviceClass: ServiceClass): number {
  return (serviceClass === "class 3" ? outdoors : sheltered)[duration];
}

/**
 * Design strength of plywood: f_d = k_mod f_k / 1.2.
 *
 * @example plywoodDesign(plywoodDesign.read({ characteristic: "45.6 MPa", duration: "short", serviceClass: "class 1" })) // 34.2 MPa
 */
export const plywoodDesign: Formula<PlywoodDesign, Pressure> = formula<PlywoodDesign, Pressure>({
  id: "plywood.design.strength",
  title: "Design strength of plywood",
  equation: String.raw`f_d=\frac{k_{mod}\,f_k}{\gamma_M},\quad\gamma_M=1.2`,
  inputs: {
    characteristic: { symbol: "f_k", kind: Pressure, meaning: "characteristic strength", min: 0 },
    duration: { symbol: "d", kind: durations, meaning: "how long the load stays in all" },
    serviceClass: { symbol: "c", kind: classes, meaning: "service class" },
  },
  result: { symbol: "f_d", kind: Pressure, meaning: "design strength" },
  source: [cite("en-1995", "2.4.1, tables 2.3 and 3.1")],
  validity:
    "Loads that it is compared with are multiplied by their own partial factor, 1.5 for a load that comes and goes.",
  compute: ({ characteristic, duration, serviceClass }) =>
    (modificationFactor(duration, serviceClass) * characteristic) / materialFactor,
});
