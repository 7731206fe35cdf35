/** How far a thing goes into its cushion, and how hard it is stopped. */
import { type Formula, formula } from "../formula.js";
import { Length, Mass, Ratio, recordOf, SpringRate, standardGravity } from "../quantity/index.js";
import { cite } from "../source.js";

/** A thing that falls on a spring. */
export interface SpringLanding {
  /** Of the thing. */
  readonly mass: Mass;
  /** Of the cushion. */
  readonly stiffness: SpringRate;
  /** Fall before it touches. */
  readonly drop: Length;
}

/** How far it goes in and how hard it is stopped. */
export type Landing = {
  /** Greatest squeeze. */
  readonly squeeze: Length;
  /** Greatest deceleration, in gravities. */
  readonly deceleration: Ratio;
};

/**
 * Landing on a cushion that pushes back evenly: squeeze s (1 + sqrt(1 + 2 h / s)) with s = m g / k.
 *
 * @source energy of a weight falling on a spring
 * @throws RangeError unless mass and stiffness are positive and the drop not negative
 * @example springLanding({ mass: kg(20), stiffness: SpringRate.si(2e5), drop: mm(300) }).deceleration // 25.76
 */
export const springLanding: Formula<SpringLanding, Landing> = formula<SpringLanding, Landing>({
  id: "cushion.spring",
  title: "Landing on an evenly springy cushion",
  equation: String.raw`s=\frac{m g}{k},\quad G=1+\sqrt{1+\frac{2h}{s}},\quad x=s\,G`,
  inputs: {
    mass: { symbol: "m", kind: Mass, meaning: "thing", above: 0 },
    stiffness: { symbol: "k", kind: SpringRate, meaning: "spring rate of the cushion", above: 0 },
    drop: { symbol: "h", kind: Length, meaning: "fall", min: 0 },
  },
  result: {
    squeeze: { symbol: "x", kind: Length, meaning: "greatest squeeze" },
    deceleration: { symbol: "G", kind: Ratio, meaning: "greatest deceleration, in gravities" },
  },
  source: [
    cite("strength-of-materials", "weight falling on a spring"),
    cite("dynamics", "conservation of energy"),
  ],
  validity: "No damping, and the cushion never goes solid; real foam stiffens beyond half its thickness.",
  compute: ({ mass, stiffness, drop }) => {
    const rest = (mass * standardGravity) / stiffness;
    const deceleration = 1 + Math.sqrt(1 + (2 * drop) / rest);
    return { squeeze: rest * deceleration, deceleration };
  },
});

/** Cushions on three faces and the way a case lands on them. */
export interface CushionedFaces {
  /** Across the left and right faces. */
  readonly sides: SpringRate;
  /** Across front and back. */
  readonly ends: SpringRate;
  /** Across top and bottom. */
  readonly flats: SpringRate;
  /** Direction of the fall against the three: parts of a direction, which need not have length one. */
  readonly towards: { readonly sides: Ratio; readonly ends: Ratio; readonly flats: Ratio };
}

/**
 * Stiffness of cushions on three faces when a case lands on an edge or a corner: each face counts by the
 * square of its share of the direction. With three like faces an edge or a corner lands no harder than a flat.
 *
 * @source springs at right angles, energy
 * @throws RangeError for a stiffness that is not positive, or no direction
 */
export const tiltedCushion: Formula<CushionedFaces, SpringRate> = formula({
  id: "cushion.tilted",
  title: "Stiffness on an edge or a corner",
  equation: String.raw`k=\frac{\sum k_i n_i^2}{\sum n_i^2}`,
  inputs: {
    sides: { symbol: "k_x", kind: SpringRate, meaning: "sides", above: 0 },
    ends: { symbol: "k_y", kind: SpringRate, meaning: "ends", above: 0 },
    flats: { symbol: "k_z", kind: SpringRate, meaning: "flats", above: 0 },
    towards: {
      symbol: "n",
      kind: recordOf("direction", { sides: Ratio, ends: Ratio, flats: Ratio }),
      meaning: "direction of the fall",
    },
  },
  result: { symbol: "k", kind: SpringRate, meaning: "stiffness that way" },
  source: [
    cite("strength-of-materials", "springs at right angles"),
    cite("statics", "components of a force"),
  ],
  validity: "Foam that slides past the thing it holds; glued foam adds its shear.",
  refuse: ({ towards }) =>
    towards.sides ** 2 + towards.ends ** 2 + towards.flats ** 2 > 0 ? [] : ["a fall has a direction"],
  compute: ({ sides, ends, flats, towards }) => {
    const [x, y, z] = [towards.sides ** 2, towards.ends ** 2, towards.flats ** 2];
    return (sides * x + ends * y + flats * z) / (x + y + z);
  },
});
