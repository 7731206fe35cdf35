/** Sag besides that of bending: from shear, small for shelves but not for short deep bars of wood, and after years. */
import { type Formula, formula } from "../../formula.js";
import { choice, Force, type Kind, Length, Pressure, Ratio } from "../../quantity/index.js";
import { cite } from "../../source.js";

/** How the beam is held and loaded. */
export type ShearCase = "simple, uniform" | "simple, centre" | "cantilever, uniform" | "cantilever, tip";
const ShearCase: Kind<ShearCase> = choice("beam case", [
  "simple, uniform",
  "simple, centre",
  "cantilever, uniform",
  "cantilever, tip",
]);

/** Average shear over the span as a share of the total load: the k_s of the Wood Handbook, eq. 9-2. */
const shearFactors: Readonly<Record<ShearCase, number>> = {
  "simple, uniform": 1 / 8,
  "simple, centre": 1 / 4,
  "cantilever, uniform": 1 / 2,
  "cantilever, tip": 1,
};

/** A rectangular beam under a load. */
export interface ShearedBeam {
  /** How the beam is held and loaded. */
  readonly held: ShearCase;
  /** All of it, also when it is spread out. */
  readonly totalLoad: Force;
  /** Between supports, or from the wall to the tip. */
  readonly span: Length;
  /** Across the load. */
  readonly width: Length;
  /** Along the load. */
  readonly depth: Length;
  /** Wood along the grain: about a fifteenth of its modulus of elasticity. */
  readonly shearModulus: Pressure;
}

/**
 * Sag from shear, to be added to the sag from bending.
 *
 * @example beamShearSag(beamShearSag.read({ held: "simple, centre", totalLoad: "1000 N", span: "1 m",
 *   width: "100 mm", depth: "20 mm", shearModulus: "600 MPa" })) // 0.25 mm
 */
export const beamShearSag: Formula<ShearedBeam, Length> = formula<ShearedBeam, Length>({
  id: "beam.shear.sag",
  title: "Sag of a beam from shear",
  equation: String.raw`\delta_s=\frac{k_s W L}{G A'},\quad A'=\tfrac56 bh`,
  inputs: {
    held: { symbol: "k_s", kind: ShearCase, meaning: "how it is held and loaded" },
    totalLoad: { symbol: "W", kind: Force, meaning: "whole load", min: 0 },
    span: { symbol: "L", kind: Length, meaning: "span", above: 0 },
    width: { symbol: "b", kind: Length, meaning: "width across the load", above: 0 },
    depth: { symbol: "h", kind: Length, meaning: "depth along the load", above: 0 },
    shearModulus: { symbol: "G", kind: Pressure, meaning: "shear modulus", above: 0 },
  },
  result: { symbol: String.raw`\delta_s`, kind: Length, meaning: "sag from shear" },
  source: [
    cite("wood-handbook", "eq. 9-2"),
    cite("strength-of-materials", "shear deflection, form factor 6/5"),
  ],
  validity: "Rectangular section. Sag in the middle of a simple span, at the tip of a cantilever.",
  compute: ({ held, totalLoad, span, width, depth, shearModulus }) =>
    (shearFactors[held] * totalLoad * span) / (shearModulus * (5 / 6) * width * depth),
});

/** First sags of a part under what stays on it and what comes and goes. */
export interface LastingSag {
  /** From the load that stays: own weight, what is stored. */
  readonly lasting: Length;
  /** From the load that comes and goes. */
  readonly passing: Length;
  /** The result of wood.creep.factor. */
  readonly creepFactor: Ratio;
}

/**
 * Sag after years: what stays creeps, what passes does not.
 *
 * @example longTermSag(longTermSag.read({ lasting: "4 mm", passing: "1 mm", creepFactor: 1.5 })) // 7 mm
 */
export const longTermSag: Formula<LastingSag, Length> = formula<LastingSag, Length>({
  id: "sag.longterm",
  title: "Sag after years",
  equation: String.raw`\Delta_T=K_{cr}\,\Delta_{LT}+\Delta_{ST}`,
  inputs: {
    lasting: {
      symbol: String.raw`\Delta_{LT}`,
      kind: Length,
      meaning: "first sag from the lasting load",
      min: 0,
    },
    passing: { symbol: String.raw`\Delta_{ST}`, kind: Length, meaning: "sag from the passing load", min: 0 },
    creepFactor: { symbol: "K_{cr}", kind: Ratio, meaning: "creep factor", min: 1 },
  },
  result: { symbol: String.raw`\Delta_T`, kind: Length, meaning: "sag after years" },
  source: [cite("nds", "eq. 3.5-1"), cite("en-1995", "2.2.3, eq. 2.3 with k_def")],
  validity: "Wood and plywood stressed within what is allowed; wet and dry by turns creeps more.",
  compute: ({ lasting, passing, creepFactor }) => creepFactor * lasting + passing,
});
