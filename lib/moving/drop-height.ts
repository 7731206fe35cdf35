/** How high things fall when they are handled. */
import { type Formula, formula } from "../formula.js";
import { choice, inch, type Kind, Length, Mass, pound } from "../quantity/index.js";
import { cite } from "../source.js";

/** How rough the handling is taken to be. ASTM D4169 calls them assurance levels III, II and I. */
export type Handling = "careful" | "usual" | "rough";
export const Handling: Kind<Handling> = choice("handling", ["careful", "usual", "rough"]);

/** ASTM D4169 schedule A, manual handling: mass below, lb; drops in inches, levels I, II, III. From memory. */
const manualDrops: readonly (readonly [number, number, number, number])[] = [
  [20, 24, 15, 9],
  [40, 21, 13, 8],
  [60, 18, 12, 7],
  [80, 15, 10, 6],
  [100, 12, 9, 5],
  [200, 10, 7, 4],
];

/** A case that people handle. */
export interface HandledCase {
  /** As it is handled. */
  readonly mass: Mass;
  /** How rough. */
  readonly handling: Handling;
}

/**
 * From how high a case is likely to be dropped by hand.
 *
 * @source ASTM D4169 schedule A, manual handling, assurance levels I rough, II usual, III careful
 * @throws RangeError unless the mass is positive and at most 200 lb; heavier cases go by machine
 * @example dropHeight({ mass: pound(30), handling: "usual" }) // 13 in
 */
export const dropHeight: Formula<HandledCase, Length> = formula({
  id: "drop.height",
  title: "Drop height by hand",
  equation: String.raw`h=h(m,\ \text{level})`,
  inputs: {
    mass: { symbol: "m", kind: Mass, meaning: "case", above: 0, max: pound(200) },
    handling: { symbol: "k", kind: Handling, meaning: "how rough" },
  },
  result: { symbol: "h", kind: Length, meaning: "drop height" },
  source: [cite("astm-d4169", "schedule A, manual handling")],
  validity:
    "Dropped by hand, on a flat, an edge or a corner. The table is steeper than life between its steps.",
  compute: ({ mass, handling }) => {
    const row = manualDrops.find(([upTo]) => mass <= pound(upTo) * (1 + 1e-12));
    const [, rough = 0, usual = 0, careful = 0] = row ?? [];
    return inch({ rough, usual, careful }[handling]);
  },
});

/** A case that a machine handles or that tips over its lower edge. */
export interface HandledByMachine {
  /** As it is handled. */
  readonly mass: Mass;
  /** How rough. */
  readonly handling: Handling;
}

/**
 * How high one edge of a heavy case is likely to be let fall, the other on the floor.
 *
 * @source ASTM D4169 schedule A, mechanical handling, rotational drop
 * @throws RangeError unless the mass is positive
 */
export const rotationalDrop: Formula<HandledByMachine, Length> = formula({
  id: "drop.rotation.height",
  title: "Drop of one edge, the other on the floor",
  equation: String.raw`h=h(m,\ \text{level})`,
  inputs: {
    mass: { symbol: "m", kind: Mass, meaning: "case", above: 0 },
    handling: { symbol: "k", kind: Handling, meaning: "how rough" },
  },
  result: { symbol: "h", kind: Length, meaning: "drop height of the edge" },
  source: [cite("astm-d4169", "schedule A, mechanical handling, rotational drop")],
  validity: "A case on a lift gate, a dolly or its own wheels.",
  compute: ({ mass, handling }) => {
    const light = { rough: 12, usual: 9, careful: 6 };
    const heavy = { rough: 9, usual: 6, careful: 3 };
    return inch((mass <= pound(500) ? light : heavy)[handling]);
  },
});

/** A military transit case. */
export interface TransitCase {
  /** Case and contents. */
  readonly mass: Mass;
  /** Its longest side. */
  readonly longest: Length;
}

/**
 * The transit drop a military case must stand, 26 times.
 *
 * @source MIL-STD-810, method 516, procedure IV
 * @throws RangeError unless mass and size are positive and the mass at most 90.8 kg
 */
export const transitDrop: Formula<TransitCase, Length> = formula({
  id: "drop.transit.height",
  title: "Transit drop of a military case",
  equation: String.raw`h=h(m,\ L)`,
  inputs: {
    mass: { symbol: "m", kind: Mass, meaning: "case and contents", above: 0, max: 90.8 },
    longest: { symbol: "L", kind: Length, meaning: "longest side", above: 0 },
  },
  result: { symbol: "h", kind: Length, meaning: "drop height" },
  source: [cite("mil-std-810", "516, procedure IV, transit drop")],
  validity: "Much rougher than a van and two careful people: a yardstick, not a demand.",
  compute: ({ mass, longest }) => {
    const short = longest < 0.91;
    if (mass < 45.4) return short ? 1.22 : 0.76;
    return short ? 0.76 : 0.61;
  },
});
