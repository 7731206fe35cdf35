/** How hard a case is to start turning: what a hand feels when it swings, spins or stops one. */
import { type Formula, type FormulaSymbols, formula } from "../formula.js";
import {
  type Kind,
  Length,
  listOf,
  Mass,
  Name,
  type Quantity,
  type QuantityKind,
  quantityKind,
  recordOf,
} from "../quantity/index.js";
import { cite } from "../source.js";
import type { PlacedMass } from "./balance.js";

/** kg m2 */
export type Inertia = Quantity<"moment of inertia">;
export const Inertia: QuantityKind<"moment of inertia"> = quantityKind({
  name: "moment of inertia",
  units: { kg·m2: 1, kgm2: 1, lb·ft2: 0.45359237 * 0.3048 ** 2 },
  metric: ["kg·m2"],
  inch: ["lb·ft2"],
  example: "2.4 kg·m2",
});

/** A box of even density. */
export interface EvenBox {
  /** The mass of the box. */
  readonly mass: Mass;
  /** Left to right. */
  readonly width: Length;
  /** Front to back. */
  readonly depth: Length;
  /** Bottom to top. */
  readonly height: Length;
}

/** Moments of inertia about three axes. */
export type Inertias = {
  /** About the axis from left to right: nodding. */
  readonly x: Inertia;
  /** About the axis from front to back: rocking sideways. */
  readonly y: Inertia;
  /** About the upright axis: turning on the floor. */
  readonly z: Inertia;
};

const inertias: FormulaSymbols<Inertias> = {
  x: { symbol: "I_x", kind: Inertia, meaning: "about the axis left to right" },
  y: { symbol: "I_y", kind: Inertia, meaning: "about the axis front to back" },
  z: { symbol: "I_z", kind: Inertia, meaning: "about the upright axis" },
};

/**
 * Moments of inertia of an even box about axes through its middle: m (a2 + b2) / 12.
 *
 * @source dynamics, rectangular block
 * @throws Refusal for a negative mass or size
 * @example boxInertia({ mass: kg(12), width: mm(1000), depth: mm(0), height: mm(0) }) // x 0 kg·m2, y 1 kg·m2, z 1 kg·m2
 */
export const boxInertia: Formula<EvenBox, Inertias> = formula<EvenBox, Inertias>({
  id: "inertia.box",
  title: "Moments of inertia of a box",
  equation: String.raw`I_x=\frac{m}{12}(d^2+h^2),\quad I_y=\frac{m}{12}(w^2+h^2),\quad I_z=\frac{m}{12}(w^2+d^2)`,
  inputs: {
    mass: { symbol: "m", kind: Mass, meaning: "mass", min: 0 },
    width: { symbol: "w", kind: Length, meaning: "left to right", min: 0 },
    depth: { symbol: "d", kind: Length, meaning: "front to back", min: 0 },
    height: { symbol: "h", kind: Length, meaning: "bottom to top", min: 0 },
  },
  result: inertias,
  source: [cite("dynamics", "moments of inertia, rectangular block")],
  validity: "Even density; a thin panel is a box with one small size.",
  compute: ({ mass, width, depth, height }) => {
    const about = (one: number, other: number): number => (mass * (one ** 2 + other ** 2)) / 12;
    return { x: about(depth, height), y: about(width, height), z: about(width, depth) };
  },
});

/** A box with its place: the centre of the box is where its mass is taken to be. */
export interface PlacedBox extends PlacedMass {
  /** Left to right. */
  readonly width: Length;
  /** Front to back. */
  readonly depth: Length;
  /** Bottom to top. */
  readonly height: Length;
}

const placedBoxes: Kind<readonly PlacedBox[]> = listOf(
  recordOf<PlacedBox>("box", {
    name: Name,
    mass: Mass,
    x: Length,
    y: Length,
    z: Length,
    width: Length,
    depth: Length,
    height: Length,
  }),
);

/** Things that make one body. */
export interface BodyOfBoxes {
  /** The boxes, at least one of them with mass. */
  readonly boxes: readonly PlacedBox[];
}

/**
 * Moments of inertia of many boxes about axes through their common centre of gravity, by the theorem of
 * parallel axes: each box's own and its mass times its distance squared.
 *
 * @source dynamics, parallel axes
 * @throws Refusal for a negative mass or no mass at all
 * @example bodyInertia(bodyInertia.read({ boxes: [{ name: "a", mass: "3 kg", x: "0 m", y: "0 m", z: "0 m",
 *   width: "0 m", depth: "0 m", height: "0 m" }, { name: "b", mass: "1 kg", x: "0 m", y: "0 m", z: "2 m",
 *   width: "0 m", depth: "0 m", height: "0 m" }] })) // x 3 kg·m2, y 3 kg·m2, z 0 kg·m2
 */
export const bodyInertia: Formula<BodyOfBoxes, Inertias> = formula<BodyOfBoxes, Inertias>({
  id: "inertia.body",
  title: "Moments of inertia about the centre of gravity",
  equation: String.raw`I=\sum_i\left(I_i+m_i\,r_i^2\right)`,
  inputs: {
    boxes: {
      symbol: "m_i, r_i, I_i",
      kind: placedBoxes,
      meaning: "things, where they sit and how large they are",
    },
  },
  result: inertias,
  source: [cite("dynamics", "theorem of parallel axes")],
  validity: "Stiffly joined boxes of even density; liquids and loose things feel lighter at first.",
  refuse: ({ boxes }) => {
    const negative = boxes.filter(({ mass }) => !(mass >= 0));
    if (negative.length > 0) return negative.map(({ name }) => `${name}: mass must be at least 0`);
    return boxes.some(({ mass }) => mass > 0) ? [] : ["there is no mass to turn"];
  },
  compute: ({ boxes }) => {
    const mass = boxes.reduce((sum, box) => sum + box.mass, 0);
    const mean = (axis: "x" | "y" | "z"): number =>
      boxes.reduce((sum, box) => sum + box.mass * box[axis], 0) / mass;
    const centre = { x: mean("x"), y: mean("y"), z: mean("z") };
    const own = boxes.map((box) => boxInertia(box));
    const sum = (axis: "x" | "y" | "z", one: "x" | "y" | "z", other: "x" | "y" | "z"): number =>
      boxes.reduce(
        (total, box, i) =>
          total +
          (own[i]?.[axis] ?? 0) +
          box.mass * ((box[one] - centre[one]) ** 2 + (box[other] - centre[other]) ** 2),
        0,
      );
    return { x: sum("x", "y", "z"), y: sum("y", "x", "z"), z: sum("z", "x", "y") };
  },
});
