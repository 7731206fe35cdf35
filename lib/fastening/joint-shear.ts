import { type Formula, formula } from "../formula.js";
import { choice, type Density, Force, Length, Pressure } from "../quantity/index.js";
import { cite } from "../source.js";
import { plywoodEmbedment } from "./bearing.js";
import { densityOf } from "./fastener-symbols.js";
import { metalBearing } from "./metal-bearing.js";

/** One rivet through metal and ply, loaded sideways. */
export interface JointShearInputs {
  /** Shear strength of one rivet as its maker states it. */
  readonly rivetShear: Force;
  readonly diameter: Length;
  /** The thinner metal part: flange or extrusion leg. */
  readonly metalThickness: Length;
  /** Tensile strength of that metal. */
  readonly metalStrength: Pressure;
  /** Centre of the hole to the edge of the metal. */
  readonly metalEdge: Length;
  /** Without the facing. */
  readonly plyThickness: Length;
  readonly plyDensity: Density;
}

/** Every way one rivet's joint may give, and the first. */
export type JointShear = {
  readonly strength: Force;
  readonly governs: "rivet shear" | "ply bearing" | "metal bearing";
  readonly rivet: Force;
  readonly ply: Force;
  readonly metal: Force;
};

/**
 * Share of the hole's full bearing that counts when a thin metal part lets the shank tilt: 0.4, the thin
 * steel plate of EN 1995-1-1 eq. 8.9a.
 */
const tiltShare = 0.4;

/**
 * Shear strength of one rivet in a joint of metal on ply: the least of the rivet's own shear, bearing in
 * the ply 0.4 f_h d t with f_h = 0.11 rho d^-0.3, and bearing in the metal. Friction and a glued facing
 * are left out.
 *
 * @throws RangeError for inputs that are not positive or a metal edge nearer than one diameter
 * @example rivetJointShear(rivetJointShear.read({ rivetShear: "500 N", diameter: "4.8 mm",
 *   metalThickness: "1.5 mm", metalStrength: "200 MPa", metalEdge: "10 mm", plyThickness: "6.5 mm",
 *   plyDensity: "680 kg/m3" })) // strength 500 N, governs rivet shear, rivet 500 N, ply 583.1 N, metal 2.88 kN
 */
export const rivetJointShear: Formula<JointShearInputs, JointShear> = formula<JointShearInputs, JointShear>({
  id: "rivet.joint.shear",
  title: "Shear strength of one rivet in ply",
  equation: String.raw`F = \min(F_{rivet},\; F_{ply},\; R_{metal}),\quad F_{ply} = 0.4\cdot0.11\,\rho\,d^{-0.3}\,d\,t`,
  inputs: {
    rivetShear: { symbol: "F_{rivet}", kind: Force, meaning: "shear strength of the rivet", above: 0 },
    diameter: {
      symbol: "d",
      kind: Length,
      meaning: "diameter of the rivet",
      above: 0,
      max: 0.008,
      unit: "mm",
    },
    metalThickness: { symbol: "t_m", kind: Length, meaning: "thickness of the metal", above: 0 },
    metalStrength: { symbol: "F_{tu}", kind: Pressure, meaning: "tensile strength of the metal", above: 0 },
    metalEdge: { symbol: "e", kind: Length, meaning: "hole to the edge of the metal", above: 0 },
    plyThickness: { symbol: "t", kind: Length, meaning: "thickness of the ply", above: 0, unit: "mm" },
    plyDensity: densityOf("ply"),
  },
  result: {
    strength: { symbol: "F", kind: Force, meaning: "strength of the joint" },
    governs: {
      symbol: String.raw`\text{governs}`,
      kind: choice("what gives first", ["rivet shear", "ply bearing", "metal bearing"]),
      meaning: "what gives first",
    },
    rivet: { symbol: "F_{rivet}", kind: Force, meaning: "rivet shear" },
    ply: { symbol: "F_{ply}", kind: Force, meaning: "bearing in the ply", unit: "N" },
    metal: { symbol: "R_{metal}", kind: Force, meaning: "bearing in the metal" },
  },
  source: [
    cite("en-1995", "8.2.3 eq. 8.9a, 8.3.1.3 eq. 8.20"),
    cite("aluminum-design", "J.4.6"),
    cite("iso-15977", "shear load, as the maker states it"),
  ],
  validity:
    "Short-term strength before any safety factor; edge distances kept; no standard covers rivets in ply.",
  warn: (_inputs, { governs }) =>
    governs === "ply bearing"
      ? ["bearing of a rivet in ply is an estimate from nails: shear a few of your own to be sure"]
      : [],
  compute: (inputs) => {
    const { diameter, plyThickness, plyDensity, rivetShear: rivet } = inputs;
    const embedment = plywoodEmbedment({ density: plyDensity, diameter });
    const ply = tiltShare * embedment * diameter * plyThickness;
    const metal = metalBearing({
      diameter,
      thickness: inputs.metalThickness,
      tensileStrength: inputs.metalStrength,
      edgeDistance: inputs.metalEdge,
    });
    const strength = Math.min(rivet, ply, metal);
    const governs = strength === ply ? "ply bearing" : strength === rivet ? "rivet shear" : "metal bearing";
    return { strength, governs, rivet, ply, metal };
  },
});
