import { type Formula, formula } from "../formula.js";
import { Length, Mass } from "../quantity/index.js";
import { cite } from "../source.js";

/** A thing to be moved so that all balances elsewhere. */
export interface ThingToMove {
  /** Of everything, this thing included. */
  readonly total: Mass;
  /** Of the thing. */
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
