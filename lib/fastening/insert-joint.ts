/** Threaded inserts in ply, with the machine screw that goes into them. */
import { type Formula, formula } from "../formula.js";
import { choice, type Density, Force, type Kind, Length, Pressure } from "../quantity/index.js";
import { cite } from "../source.js";
import { densitySymbol } from "./bearing.js";
import { threadStrip } from "./machine-screw.js";

/** An insert in its sheet. */
export interface InsertInPly {
  /** The insert diameter over its outer thread. */
  readonly insertDiameter: Length;
  /** The length of the insert. */
  readonly insertLength: Length;
  /** Without the facing. */
  readonly plyThickness: Length;
}

const insertDiameter = {
  symbol: "d",
  kind: Length,
  meaning: "insert over its outer thread",
  above: 0,
} as const;
const insertLength = { symbol: "L", kind: Length, meaning: "length of the insert", above: 0 } as const;
const plyThickness = { symbol: "t", kind: Length, meaning: "thickness of the ply", above: 0 } as const;

/** What gives way first. */
export type InsertLimit = "screw" | "ply";
const governs: { readonly symbol: string; readonly kind: Kind<InsertLimit>; readonly meaning: string } = {
  symbol: String.raw`\text{governs}`,
  kind: choice("what gives first", ["screw", "ply"]),
  meaning: "what gives first",
};

function longerThanPly({ insertLength: length, plyThickness: ply }: InsertInPly): string[] {
  return length <= ply
    ? []
    : [`insertLength must be at most the ply's ${Length.show(ply)}, got ${Length.show(length)}`];
}

const untested = "no code value for inserts in ply: pull and shear a few of your own to be sure";

/** An insert whose screw is pulled. */
export interface InsertPullInputs extends InsertInPly {
  /** Tensile strength of the machine screw. */
  readonly screwTension: Force;
  /** The shear strength along the grain of the ply's wood. */
  readonly shearStrength: Pressure;
}

/** Both ways it may be pulled out, and the first. */
export type InsertPull = {
  /** The strength of the joint. */
  readonly strength: Force;
  /** What gives first. */
  readonly governs: InsertLimit;
  /** The tension of the screw. */
  readonly screw: Force;
  /** The shear strength of the ply round the insert. */
  readonly ply: Force;
};

/**
 * Pull-out strength of one insert in ply: the lesser of the screw's own tension and half the cylinder of ply round
 * the insert's thread in shear, F = pi d L tau / 2.
 *
 * @throws Refusal for inputs that are not positive or an insert longer than the ply is thick
 * @example insertJointPull(insertJointPull.read({ screwTension: "5 kN", insertDiameter: "8 mm",
 *   insertLength: "8 mm", plyThickness: "9 mm", shearStrength: "13 MPa" })) // strength 1.307 kN, governs ply, screw 5 kN, ply 1.307 kN
 */
export const insertJointPull: Formula<InsertPullInputs, InsertPull> = formula<InsertPullInputs, InsertPull>({
  id: "insert.joint.pull",
  title: "Pull-out strength of one insert in ply",
  equation: String.raw`F = \min\left(F_{screw},\; \tfrac12\,\pi\,d\,L\,\tau\right)`,
  inputs: {
    screwTension: { symbol: "F_{screw}", kind: Force, meaning: "tensile strength of the screw", above: 0 },
    insertDiameter,
    insertLength,
    plyThickness,
    shearStrength: {
      symbol: String.raw`\tau`,
      kind: Pressure,
      meaning: "shear strength of the ply's wood",
      above: 0,
    },
  },
  result: {
    strength: { symbol: "F", kind: Force, meaning: "strength of the joint" },
    governs,
    screw: { symbol: "F_{screw}", kind: Force, meaning: "tension of the screw" },
    ply: { symbol: "F_{ply}", kind: Force, meaning: "ply round the insert, in shear" },
  },
  source: [
    cite("machine-design", "8-2, stripping of threads; half the cylinder"),
    cite("common-practice", "the insert strips the ply, not the screw the insert"),
  ],
  validity: "A right pilot hole in the face of the ply, 20 mm or more from any edge; dry.",
  refuse: longerThanPly,
  warn: (_inputs, { governs: first }) => (first === "ply" ? [untested] : []),
  compute: ({ screwTension: screw, insertDiameter: diameter, insertLength: engaged, shearStrength }) => {
    const ply = threadStrip({ diameter, engaged, shearStrength });
    return { strength: Math.min(screw, ply), governs: screw < ply ? "screw" : "ply", screw, ply };
  },
});

/** An insert whose screw is pushed sideways by a thin part. */
export interface InsertShearInputs extends InsertInPly {
  /** Shear strength of the machine screw. */
  readonly screwShear: Force;
  /** The density of the ply. */
  readonly plyDensity: Density;
}

/** Both ways it may give, and the first. */
export type InsertShear = InsertPull;

/** Share of full bearing when a thin part lets the shank tilt: EN 1995-1-1 eq. 8.9a. */
const tiltShare = 0.4;

/**
 * Shear strength of one insert in ply under a thin part: the lesser of the screw's own shear and bearing of the
 * insert in the ply, 0.4 f_h d L with f_h = 0.11 (1 - 0.01 d) rho of a drilled hole (MPa, kg/m3, mm). The part
 * itself is not looked at.
 *
 * @throws Refusal for inputs that are not positive or an insert longer than the ply is thick
 * @example insertJointShear(insertJointShear.read({ screwShear: "4 kN", insertDiameter: "8 mm",
 *   insertLength: "8 mm", plyThickness: "9 mm", plyDensity: "630 kg/m3" })) // strength 1.632 kN, governs ply, screw 4 kN, ply 1.632 kN
 */
export const insertJointShear: Formula<InsertShearInputs, InsertShear> = formula<
  InsertShearInputs,
  InsertShear
>({
  id: "insert.joint.shear",
  title: "Shear strength of one insert in ply",
  equation: String.raw`F = \min\left(F_{screw},\; 0.4\cdot0.11\,(1 - 0.01\,d)\,\rho\,d\,L\right)`,
  inputs: {
    screwShear: { symbol: "F_{screw}", kind: Force, meaning: "shear strength of the screw", above: 0 },
    insertDiameter: { ...insertDiameter, max: 0.03, unit: "mm" },
    insertLength: { ...insertLength, unit: "mm" },
    plyThickness,
    plyDensity: densitySymbol("ply"),
  },
  result: {
    strength: { symbol: "F", kind: Force, meaning: "strength of the joint" },
    governs,
    screw: { symbol: "F_{screw}", kind: Force, meaning: "shear of the screw" },
    ply: { symbol: "F_{ply}", kind: Force, meaning: "bearing in the ply" },
  },
  source: [cite("en-1995", "8.2.3 eq. 8.9a, 8.5.1.2 eq. 8.36, bolts in plywood")],
  validity: "Short-term strength before any safety factor; no standard covers inserts in ply.",
  refuse: longerThanPly,
  warn: (_inputs, { governs: first }) => (first === "ply" ? [untested] : []),
  compute: ({ screwShear: screw, insertDiameter: diameter, insertLength: length, plyDensity }) => {
    const embedment = 0.11 * (1 - 0.01 * diameter * 1000) * plyDensity * 1e6;
    const ply = tiltShare * embedment * diameter * length;
    return { strength: Math.min(screw, ply), governs: screw < ply ? "screw" : "ply", screw, ply };
  },
});
