/** How high a case may fall, and with what force it lands. */
import { type Formula, formula } from "../formula.js";
import {
  choice,
  Energy,
  inch,
  type Kind,
  Length,
  Mass,
  pound,
  Speed,
  standardGravity,
} from "../quantity/index.js";
import { type Citation, cite } from "../source.js";

/** How rough the handling by the builder's own people is. ASTM D4169 calls them assurance levels III, II and I. */
export type OwnHandling = "careful" | "usual" | "rough";
const OwnHandling: Kind<OwnHandling> = choice("handling", ["careful", "usual", "rough"]);

/** The same, or sent as a parcel through other people's hands. */
export type Handling = OwnHandling | "parcel";
export const Handling: Kind<Handling> = choice("handling", ["careful", "usual", "rough", "parcel"]);

/** ASTM D4169 schedule A, manual handling: mass up to, lb; drops in inches, levels I, II, III. From memory. */
const manualDrops: readonly (readonly [number, number, number, number])[] = [
  [20, 24, 15, 9],
  [40, 21, 13, 8],
  [60, 18, 12, 7],
  [80, 15, 10, 6],
  [100, 12, 9, 5],
  [200, 10, 7, 4],
];

/** ISTA procedure 1A: mass below, lb, and drop in inches; the last row takes in 150 lb. */
const parcelDrops: readonly (readonly [number, number])[] = [
  [21, 30],
  [41, 24],
  [61, 18],
  [100, 12],
  [151, 8],
];

/** The heaviest that carriers take as a parcel. ISTA procedure 1A. */
export const heaviestParcel: Mass = pound(150);

/** A case that people handle. */
export interface HandledCase {
  /** The mass of the case as it is handled. */
  readonly mass: Mass;
  /** How rough, or by whom. */
  readonly handling: Handling;
}

/**
 * From how high a case is likely to be dropped by hand.
 *
 * @source ASTM D4169 schedule A, manual handling, assurance levels I rough, II usual, III careful; ISTA 1A for a parcel
 * @throws Refusal unless the mass is positive and at most 200 lb, as a parcel 150 lb; heavier cases go by machine
 * @example dropHeight({ mass: pound(30), handling: "usual" }) // 330.2 mm
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
  source: [
    cite("astm-d4169", "schedule A, manual handling, from memory"),
    cite("ista-1a", "free fall, for a parcel"),
  ],
  validity:
    "Dropped by hand, on a flat, an edge or a corner. The tables are steeper than life between their steps.",
  refuse: ({ mass, handling }) =>
    handling === "parcel" && mass > heaviestParcel * (1 + 1e-12)
      ? [
          `a parcel weighs at most ${Mass.show(heaviestParcel, { unit: "lb" })}, got ${Mass.show(mass, { unit: "lb", digits: 3 })}`,
        ]
      : [],
  compute: ({ mass, handling }) =>
    inch(handling === "parcel" ? parcelDrop(mass) : manualDrop(mass, handling)),
});

function parcelDrop(mass: number): number {
  const [, drop = 0] = parcelDrops.find(([below]) => mass < pound(below) * (1 - 1e-12)) ?? [];
  return drop;
}

function manualDrop(mass: number, handling: OwnHandling): number {
  const row = manualDrops.find(([upTo]) => mass <= pound(upTo) * (1 + 1e-12));
  const [, rough = 0, usual = 0, careful = 0] = row ?? [];
  return { rough, usual, careful }[handling];
}

/**
 * Speed at the end of a fall: sqrt(2 g h).
 *
 * @source dynamics, free fall
 * @throws Refusal for a negative height
 * @example impactSpeed({ height: mm(610) }) // 3.459 m/s
 */
export const impactSpeed: Formula<{ readonly height: Length }, Speed> = formula({
  id: "drop.speed",
  title: "Speed of landing",
  equation: String.raw`v=\sqrt{2 g h}`,
  inputs: { height: { symbol: "h", kind: Length, meaning: "drop height", min: 0 } },
  result: { symbol: "v", kind: Speed, meaning: "speed of landing" },
  source: [cite("dynamics", "free fall")],
  validity: "No air; right to a thousandth for any drop of a case.",
  compute: ({ height }) => Math.sqrt(2 * standardGravity * height),
});

/**
 * Energy that a fall must lose: m g h.
 *
 * @source dynamics, potential energy
 * @throws Refusal for a negative mass or height
 * @example dropEnergy(dropEnergy.read({ mass: "50 lb", height: "2 ft" })) // 135.6 J
 */
export const dropEnergy: Formula<{ readonly mass: Mass; readonly height: Length }, Energy> = formula({
  id: "drop.energy",
  title: "Energy of a fall",
  equation: "E=m g h",
  inputs: {
    mass: { symbol: "m", kind: Mass, meaning: "mass", min: 0 },
    height: { symbol: "h", kind: Length, meaning: "drop height", min: 0 },
  },
  result: { symbol: "E", kind: Energy, meaning: "energy to be lost" },
  source: [cite("dynamics", "potential energy")],
  validity: "All of it goes into cushion, case and contents.",
  compute: ({ mass, height }) => mass * standardGravity * height,
});

/** A case that a machine handles or that tips over its lower edge. */
export interface HandledByMachine {
  /** The mass of the case as it is handled. */
  readonly mass: Mass;
  /** How rough. */
  readonly handling: OwnHandling;
}

/**
 * How high one edge of a heavy case is likely to be let fall, the other on the floor.
 *
 * @source ASTM D4169 schedule A, mechanical handling, rotational drop
 * @throws Refusal unless the mass is positive
 * @example rotationalDrop(rotationalDrop.read({ mass: "400 lb", handling: "rough" })) // 304.8 mm
 */
export const rotationalDrop: Formula<HandledByMachine, Length> = formula({
  id: "drop.rotation.height",
  title: "Drop of one edge, the other on the floor",
  equation: String.raw`h=h(m,\ \text{level})`,
  inputs: {
    mass: { symbol: "m", kind: Mass, meaning: "case", above: 0 },
    handling: { symbol: "k", kind: OwnHandling, meaning: "how rough" },
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

/** The heaviest case that the free drops are for. MIL-STD-810, method 516. */
export const heaviestTransitCase: Mass = pound(200);

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
 * @throws Refusal unless mass and size are positive and the mass at most 200 lb
 * @example transitDrop(transitDrop.read({ mass: "40 kg", longest: "0.8 m" })) // 1219 mm
 */
export const transitDrop: Formula<TransitCase, Length> = formula({
  id: "drop.transit.height",
  title: "Transit drop of a military case",
  equation: String.raw`h=h(m,\ L)`,
  inputs: {
    mass: { symbol: "m", kind: Mass, meaning: "case and contents", above: 0, max: heaviestTransitCase },
    longest: { symbol: "L", kind: Length, meaning: "longest side", above: 0 },
  },
  result: { symbol: "h", kind: Length, meaning: "drop height" },
  source: [cite("mil-std-810", "516, procedure IV, transit drop")],
  validity: "Much rougher than a van and two careful people: a yardstick, not a demand.",
  compute: ({ mass, longest }) => {
    const isShort = longest < inch(36);
    if (mass < pound(100)) return inch(isShort ? 48 : 30);
    return inch(isShort ? 30 : 24);
  },
});

/** A case with something that sticks out over its edge. */
export interface EdgeLoad {
  /** Case and all that is in it, less what has moved out. */
  readonly mass: Mass;
  /** Centre of gravity to the edge it would tip over. */
  readonly halfBase: Length;
  /** The distance from that edge out to where the load hangs. */
  readonly overhang: Length;
}

/**
 * The mass on an open drawer or door that tips a case: m b / a.
 *
 * @source moments about the tipping edge
 * @throws Refusal unless all three are positive
 * @example edgeLoadLimit({ mass: kg(80), halfBase: mm(250), overhang: mm(400) }) // 50 kg
 */
export const edgeLoadLimit: Formula<EdgeLoad, Mass> = formula({
  id: "tip.edge.load",
  title: "Mass on an open drawer that tips a case",
  equation: String.raw`m_c=\frac{m\,b}{a}`,
  inputs: {
    mass: { symbol: "m", kind: Mass, meaning: "case", above: 0 },
    halfBase: { symbol: "b", kind: Length, meaning: "centre of gravity to the tipping edge", above: 0 },
    overhang: { symbol: "a", kind: Length, meaning: "from that edge out to the load", above: 0 },
  },
  result: { symbol: "m_c", kind: Mass, meaning: "mass that tips it" },
  source: [cite("statics", "moments about the tipping edge")],
  validity: "A still load on a level floor. A child that climbs pulls outwards too: keep twice the margin.",
  compute: ({ mass, halfBase, overhang }) => (mass * halfBase) / overhang,
});

/** The child of the published test: a weight on the front of an open drawer. */
export interface ChildOnDrawer {
  /** The test weight. */
  readonly mass: Mass;
  /** Who asks for it. */
  readonly source: Citation;
}

/** 60 lb. ASTM F2057-23; the standard is for bedroom furniture, the nearest there is. */
export const childOnDrawer: ChildOnDrawer = {
  mass: pound(60),
  source: cite("astm-f2057", "test weight on an open drawer"),
};
