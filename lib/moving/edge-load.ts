/** A child on an open drawer or door. */
import { type Formula, formula } from "../formula.js";
import { Length, Mass, pound } from "../quantity/index.js";
import { type Citation, cite } from "../source.js";

/** A case with something that sticks out over its edge. */
export interface EdgeLoad {
  /** Case and all that is in it, less what has moved out. */
  readonly mass: Mass;
  /** Centre of gravity to the edge it would tip over. */
  readonly halfBase: Length;
  /** From that edge out to where the load hangs. */
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
  source: cite("astm-f2057", "test weight of 60 lb on an open drawer"),
};
