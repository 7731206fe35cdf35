/** Where a case balances, and what moves that place. */
import { type Formula, formula } from "../formula.js";
import { type Kind, Length, listOf, Mass, Name, recordOf } from "../quantity/index.js";
import { cite } from "../source.js";

/** A point: x, y and z from whatever corner was chosen. */
export interface Place {
  /** The distance to the right. */
  readonly x: Length;
  /** The distance to the back. */
  readonly y: Length;
  /** The distance upwards. */
  readonly z: Length;
}

/** A thing with its own centre of gravity. */
export interface PlacedMass extends Place {
  /** The name in an error or a table. */
  readonly name: string;
  /** The mass of the thing, at least 0. */
  readonly mass: Mass;
}

/** Things and the point from which their common centre is measured. */
export interface MassesAbout {
  /** The things, at least one of them with mass. */
  readonly masses: readonly PlacedMass[];
  /** Seen from the same corner as the masses. */
  readonly origin: Place;
}

/** All mass, and where it balances, from the chosen origin. */
export type Balance = {
  /** The mass of all things. */
  readonly mass: Mass;
  /** The distance from the origin, to the right. */
  readonly x: Length;
  /** The distance from the origin, to the back. */
  readonly y: Length;
  /** The distance from the origin, upwards. */
  readonly z: Length;
};

const placedMasses: Kind<readonly PlacedMass[]> = listOf(
  recordOf<PlacedMass>("mass", { name: Name, mass: Mass, x: Length, y: Length, z: Length }),
);
const place: Kind<Place> = recordOf<Place>("place", { x: Length, y: Length, z: Length });

function refuse({ masses }: MassesAbout): string[] {
  const negative = masses.filter(({ mass }) => !(mass >= 0));
  if (negative.length > 0)
    return negative.map(({ name, mass }) => `${name}: mass must be at least 0, got ${Mass.show(mass)}`);
  return totalMass(masses) > 0 ? [] : ["there is no mass to balance"];
}

function totalMass(masses: readonly PlacedMass[]): number {
  return masses.reduce<number>((sum, { mass }) => sum + mass, 0);
}

/**
 * Where a case and all that is in it balance: each place weighted by its mass, about a chosen origin.
 *
 * @source statics, first moments
 * @throws Refusal for a negative mass or no mass at all
 * @example centreOfMass({ masses: [{ name: "lid", mass: kg(3), x: mm(0), y: mm(0), z: mm(900) }, { name: "box", mass: kg(9), x: mm(0), y: mm(0), z: mm(300) }], origin: { x: mm(0), y: mm(0), z: mm(0) } }) // mass 12 kg, x 0 mm, y 0 mm, z 450 mm
 */
export const centreOfMass: Formula<MassesAbout, Balance> = formula<MassesAbout, Balance>({
  id: "balance.centre",
  title: "Mass and centre of gravity",
  equation: String.raw`m = \sum_i m_i,\qquad \bar{\mathbf{r}} = \frac{\sum_i m_i \mathbf{r}_i}{m} - \mathbf{r}_0`,
  inputs: {
    masses: {
      symbol: String.raw`m_i, \mathbf{r}_i`,
      kind: placedMasses,
      meaning: "things and where they sit",
    },
    origin: { symbol: String.raw`\mathbf{r}_0`, kind: place, meaning: "origin" },
  },
  result: {
    mass: { symbol: "m", kind: Mass, meaning: "total mass" },
    x: { symbol: String.raw`\bar x`, kind: Length, meaning: "centre of gravity in x" },
    y: { symbol: String.raw`\bar y`, kind: Length, meaning: "centre of gravity in y" },
    z: { symbol: String.raw`\bar z`, kind: Length, meaning: "height of the centre of gravity" },
  },
  source: [cite("statics", "first moments of mass")],
  validity: "Things that do not shift on the way; weigh the finished case to be sure.",
  refuse,
  compute: ({ masses, origin }) => {
    const mass = totalMass(masses);
    const mean = (axis: keyof Place): number =>
      masses.reduce((sum, one) => sum + one.mass * one[axis], 0) / mass - origin[axis];
    return { mass, x: mean("x"), y: mean("y"), z: mean("z") };
  },
});

/** A thing to be moved so that all balances elsewhere. */
export interface ThingToMove {
  /** The mass of everything, this thing included. */
  readonly total: Mass;
  /** The mass of the thing. */
  readonly mass: Mass;
  /** How far the common centre should go; the sign is its direction. */
  readonly wanted: Length;
}

/**
 * How far one thing must go for the common centre to go a wanted way: M s / m.
 *
 * @source statics, first moments
 * @throws Refusal unless both masses are positive and the thing is at most the whole
 * @example balanceMove({ total: kg(60), mass: kg(15), wanted: mm(20) }) // 80 mm
 */
export const balanceMove: Formula<ThingToMove, Length> = formula({
  id: "balance.move",
  title: "How far one thing must go",
  equation: String.raw`d=\frac{M\,s}{m}`,
  inputs: {
    total: { symbol: "M", kind: Mass, meaning: "everything", above: 0 },
    mass: { symbol: "m", kind: Mass, meaning: "the thing", above: 0 },
    wanted: { symbol: "s", kind: Length, meaning: "wanted way of the common centre" },
  },
  result: { symbol: "d", kind: Length, meaning: "way of the thing" },
  source: [cite("statics", "first moments of mass")],
  validity: "All else stays where it is.",
  refuse: ({ total, mass }) => (mass <= total ? [] : ["the thing must not weigh more than everything"]),
  compute: ({ total, mass, wanted }) => (total * wanted) / mass,
});
