/** How high things fall when people handle them. */
import { type Formula, formula } from "../formula.js";
import { choice, inch, type Kind, Length, Mass, pound } from "../quantity/index.js";
import { cite } from "../source.js";

/** How rough the handling by the builder's own people is. ASTM D4169 calls them assurance levels III, II and I. */
export type OwnHandling = "careful" | "usual" | "rough";
export const OwnHandling: Kind<OwnHandling> = choice("handling", ["careful", "usual", "rough"]);

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
  /** As it is handled. */
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
