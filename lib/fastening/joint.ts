/** What one rivet's joint bears: pushed sideways, pulled, both at once, and near an edge. */
import { type Formula, formula } from "../formula.js";
import { choice, type Density, Force, Length, Pressure, Ratio } from "../quantity/index.js";
import { cite } from "../source.js";
import { densitySymbol, metalBearing, plywoodEmbedment } from "./bearing.js";
import { headPullThrough } from "./withdrawal.js";

/** A fastener that pulls towards the edge of its sheet. */
export interface TearOutInputs {
  /** Centre of the hole to the edge. */
  readonly edgeDistance: Length;
  /** The diameter of the hole. */
  readonly hole: Length;
  /** The thickness of the sheet. */
  readonly thickness: Length;
  /** The shear strength through the thickness, in the planes from the hole's sides to the edge. */
  readonly shearStrength: Pressure;
}

/**
 * Load at which a fastener tears a plug out to the edge: two shear planes from the hole's sides to the edge,
 * F = 2 (e - d_h/2) t f_v.
 *
 * @throws Refusal when the hole reaches the edge
 * @example edgeTearOut(edgeTearOut.read({ edgeDistance: "10 mm", hole: "5 mm", thickness: "9 mm", shearStrength: "4 MPa" })) // 540 N
 */
export const edgeTearOut: Formula<TearOutInputs, Force> = formula({
  id: "edge.tearout",
  title: "Tear-out of a hole to the edge",
  equation: String.raw`F = 2\left(e - \tfrac{d_h}{2}\right) t\,f_v`,
  inputs: {
    edgeDistance: { symbol: "e", kind: Length, meaning: "centre of the hole to the edge", above: 0 },
    hole: { symbol: "d_h", kind: Length, meaning: "hole", above: 0 },
    thickness: { symbol: "t", kind: Length, meaning: "thickness of the sheet", above: 0 },
    shearStrength: { symbol: "f_v", kind: Pressure, meaning: "shear strength of the sheet", above: 0 },
  },
  result: { symbol: "F", kind: Force, meaning: "load at tear-out" },
  source: [cite("machine-design", "8-12, shear tear-out"), cite("common-practice", "two straight planes")],
  validity: "Ply and sheet metal pulled in their plane; solid wood along its grain splits earlier.",
  refuse: ({ edgeDistance, hole }) =>
    edgeDistance > hole / 2
      ? []
      : [
          `edgeDistance must be more than half the hole (${Length.show(Length.si(hole / 2))}), got ${Length.show(edgeDistance)}`,
        ],
  compute: ({ edgeDistance, hole, thickness, shearStrength }) =>
    2 * (edgeDistance - hole / 2) * thickness * shearStrength,
});

/** One rivet through metal and ply, loaded sideways. */
export interface JointShearInputs {
  /** Shear strength of one rivet as its maker states it. */
  readonly rivetShear: Force;
  /** The diameter of the rivet. */
  readonly diameter: Length;
  /** The thinner metal part: flange or extrusion leg. */
  readonly metalThickness: Length;
  /** Tensile strength of that metal. */
  readonly metalStrength: Pressure;
  /** Centre of the hole to the edge of the metal. */
  readonly metalEdge: Length;
  /** Without the facing. */
  readonly plyThickness: Length;
  /** The density of the ply. */
  readonly plyDensity: Density;
}

/** Every way one rivet's joint may give, and the first. */
export type JointShear = {
  /** The strength of the joint. */
  readonly strength: Force;
  /** What gives first. */
  readonly governs: "rivet shear" | "ply bearing" | "metal bearing";
  /** The shear strength of the rivet. */
  readonly rivet: Force;
  /** The strength in bearing in the ply. */
  readonly ply: Force;
  /** The strength in bearing in the metal. */
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
 * @throws Refusal for inputs that are not positive or a metal edge nearer than one diameter
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
    plyDensity: densitySymbol("ply"),
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

/** One rivet through ply, pulled along its axis. */
export interface JointPullInputs {
  /** Tensile strength of one rivet as its maker states it. */
  readonly rivetTension: Force;
  /** What bears on the ply: the washer, or the bare head or tail. */
  readonly bearingDiameter: Length;
  /** The thickness of the ply. */
  readonly plyThickness: Length;
  /** The specific gravity of the ply, on oven-dry mass. */
  readonly plyGravity: Ratio;
}

/** Both ways one rivet may be pulled out, and the first. */
export type JointPull = {
  /** The strength of the joint. */
  readonly strength: Force;
  /** What gives first. */
  readonly governs: "rivet tension" | "pull through ply";
  /** The tensile strength of the rivet. */
  readonly rivet: Force;
  /** An allowable value that carries its own margin. */
  readonly ply: Force;
};

/**
 * Pull-out strength of one rivet in ply: the lesser of the rivet's own tension and the pull of its washer,
 * head or tail through the ply. The ply's value is a code allowable: on the safe side of a strength.
 *
 * @throws Refusal for inputs that are not positive or a specific gravity outside 0.3 to 0.8
 * @example rivetJointPull(rivetJointPull.read({ rivetTension: "50 lbf", bearingDiameter: "1 in",
 *   plyThickness: "1/2 in", plyGravity: 0.5 })) // strength 222.4 N, governs rivet tension, rivet 222.4 N, ply 1.205 kN
 */
export const rivetJointPull: Formula<JointPullInputs, JointPull> = formula<JointPullInputs, JointPull>({
  id: "rivet.joint.pull",
  title: "Pull-out strength of one rivet in ply",
  equation: String.raw`F = \min(F_{rivet},\; W_H),\quad W_H = 690\,\mathrm{psi}\,\pi\,D_H\,G^2\,\min(t,\,2.5\,D_H)`,
  inputs: {
    rivetTension: { symbol: "F_{rivet}", kind: Force, meaning: "tensile strength of the rivet", above: 0 },
    bearingDiameter: { symbol: "D_H", kind: Length, meaning: "washer, or head or tail", above: 0 },
    plyThickness: { symbol: "t", kind: Length, meaning: "thickness of the ply", above: 0 },
    plyGravity: { symbol: "G", kind: Ratio, meaning: "specific gravity of the ply", min: 0.3, max: 0.8 },
  },
  result: {
    strength: { symbol: "F", kind: Force, meaning: "strength of the joint" },
    governs: {
      symbol: String.raw`\text{governs}`,
      kind: choice("what gives first", ["rivet tension", "pull through ply"]),
      meaning: "what gives first",
    },
    rivet: { symbol: "F_{rivet}", kind: Force, meaning: "rivet tension" },
    ply: { symbol: "W_H", kind: Force, meaning: "pull through the ply, allowable" },
  },
  source: [cite("nds", "12.2.5, eq. 12.2-6"), cite("iso-15977", "tensile load, as the maker states it")],
  validity: "A straight pull; a rivet that is also pried or shaken loosens long before.",
  warn: (_inputs, { governs }) =>
    governs === "pull through ply"
      ? [
          "pull-through is a code value for nail and screw heads, not for rivets in ply: pull a few of your own to be sure",
        ]
      : [],
  compute: ({ rivetTension: rivet, bearingDiameter, plyThickness, plyGravity }) => {
    const ply = headPullThrough({
      specificGravity: plyGravity,
      headDiameter: bearingDiameter,
      thickness: plyThickness,
    });
    return {
      strength: Math.min(rivet, ply),
      governs: rivet < ply ? "rivet tension" : "pull through ply",
      rivet,
      ply,
    };
  },
});

/** An allowable figure of a code, and the factor that the case asks of strengths. */
export interface AllowableFigure {
  /** What the code allows, its margin taken already. */
  readonly allowable: Force;
  /** What strengths of this case are divided by. */
  readonly safetyFactor: Ratio;
}

/**
 * The strength that an allowable figure stands for beside others: S W. Divided by the safety factor it is the allowable
 * again, so that no margin is taken twice.
 *
 * @throws Refusal for a negative figure or a factor below 1
 * @example strengthOfAllowable(strengthOfAllowable.read({ allowable: "100 N", safetyFactor: 3 })) // 300 N
 */
export const strengthOfAllowable: Formula<AllowableFigure, Force> = formula({
  id: "fastener.allowable",
  title: "Strength that an allowable figure stands for",
  equation: String.raw`F=S\,W`,
  inputs: {
    allowable: { symbol: "W", kind: Force, meaning: "allowable, its margin taken", min: 0 },
    safetyFactor: { symbol: "S", kind: Ratio, meaning: "safety factor of the case", min: 1 },
  },
  result: { symbol: "F", kind: Force, meaning: "before the safety factor" },
  source: [cite("nds", "2.2, reference design values carry their margin")],
  validity: "One margin, that of the code: it is about five on what screws and nails hold on average.",
  compute: ({ allowable, safetyFactor }) => safetyFactor * allowable,
});

/** One fastener pushed sideways and pulled out at once. */
export interface CombinedInputs {
  /** The shear force. */
  readonly shear: Force;
  /** The pull. */
  readonly pull: Force;
  /** The shear strength. */
  readonly shearStrength: Force;
  /** The pull-out strength. */
  readonly pullStrength: Force;
  /** Rivets and smooth nails add straight; threaded screws as the sides of a right angle. */
  readonly shank: "smooth" | "threaded";
}

/**
 * Share of a fastener's strength used by shear and pull together: V/V_R + T/T_R for a smooth shank,
 * sqrt((V/V_R)^2 + (T/T_R)^2) for a threaded one; 1 is the limit.
 *
 * @throws Refusal for a negative force or a strength that is not positive
 * @example combinedUse(combinedUse.read({ shear: "300 N", pull: "100 N", shearStrength: "1000 N", pullStrength: "500 N", shank: "smooth" })) // 0.5
 */
export const combinedUse: Formula<CombinedInputs, Ratio> = formula({
  id: "fastener.combined",
  title: "Shear and pull together on one fastener",
  equation: String.raw`u = \frac{V}{V_R} + \frac{T}{T_R}\ \text{(smooth)},\quad
    u = \sqrt{\left(\frac{V}{V_R}\right)^2 + \left(\frac{T}{T_R}\right)^2}\ \text{(threaded)}`,
  inputs: {
    shear: { symbol: "V", kind: Force, meaning: "shear force", min: 0 },
    pull: { symbol: "T", kind: Force, meaning: "pull", min: 0 },
    shearStrength: { symbol: "V_R", kind: Force, meaning: "shear strength", above: 0 },
    pullStrength: { symbol: "T_R", kind: Force, meaning: "pull-out strength", above: 0 },
    shank: {
      symbol: String.raw`\text{shank}`,
      kind: choice("shank", ["smooth", "threaded"]),
      meaning: "shank",
    },
  },
  result: { symbol: "u", kind: Ratio, meaning: "share of the strength used" },
  source: [cite("en-1995", "8.3.3, eq. 8.27 and 8.28")],
  validity: "Both strengths of the same kind: both ultimate or both allowable.",
  compute: ({ shear, pull, shearStrength, pullStrength, shank }) => {
    const shares = [shear / shearStrength, pull / pullStrength] as const;
    return shank === "smooth" ? shares[0] + shares[1] : Math.hypot(...shares);
  },
});
