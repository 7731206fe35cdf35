import { type Formula, formula } from "../formula.js";
import { Angle, degree, Length, Mass } from "../quantity/index.js";
import { cite } from "../source.js";

/** A load on two handles, and where it balances between them. */
export interface LoadBetweenTwo {
  /** The whole load. */
  readonly mass: Mass;
  /** Handle to handle. */
  readonly span: Length;
  /** From the first handle to the centre of gravity, along the line of the handles. */
  readonly toCentre: Length;
  /** Height of the centre of gravity over the line of the handles; negative where it hangs below. */
  readonly rise: Length;
  /** How far the load leans towards the first person, who walks lower; 0 on the flat. */
  readonly incline: Angle;
}

/** What each person carries. */
export type PairShares = {
  /** By the first person, who walks lower on a slope. */
  readonly first: Mass;
  /** By the second person. */
  readonly second: Mass;
};

function sharesOf({ mass, span, toCentre, rise, incline }: LoadBetweenTwo): {
  first: number;
  second: number;
} {
  const second = mass * (toCentre / span - (rise / span) * Math.tan(incline));
  return { first: mass - second, second };
}

/**
 * How two people share a load: by moments, the nearer one carries more; on stairs or a ramp the lower one
 * carries more still, the higher the load balances over the handles.
 *
 * @source statics, moments about one handle
 * @throws Refusal where one of the two would have to hold the load down
 * @example pairShares({ mass: kg(40), span: mm(1000), toCentre: mm(300), rise: mm(0), incline: degree(0) }) // first 28 kg, second 12 kg
 */
export const pairShares: Formula<LoadBetweenTwo, PairShares> = formula<LoadBetweenTwo, PairShares>({
  id: "lift.pair.shares",
  title: "How two people share a load",
  equation: String.raw`m_2 = m\left(\frac{c}{s} - \frac{e}{s}\tan\theta\right),\qquad m_1 = m - m_2`,
  inputs: {
    mass: { symbol: "m", kind: Mass, meaning: "load", min: 0 },
    span: { symbol: "s", kind: Length, meaning: "handle to handle", above: 0 },
    toCentre: { symbol: "c", kind: Length, meaning: "first handle to the centre of gravity" },
    rise: { symbol: "e", kind: Length, meaning: "centre of gravity over the handles" },
    incline: {
      symbol: String.raw`\theta`,
      kind: Angle,
      meaning: "lean towards the first person",
      min: 0,
      max: degree(60),
    },
  },
  result: {
    first: { symbol: "m_1", kind: Mass, meaning: "carried by the first, lower person" },
    second: { symbol: "m_2", kind: Mass, meaning: "carried by the second person" },
  },
  source: [cite("statics", "moments about a handle")],
  validity: "A steady load held level across, pulled straight up at both handles.",
  refuse: (load) =>
    Object.entries(sharesOf(load))
      .filter(([, share]) => share < 0)
      .map(([who]) => `the load tips over: the ${who} person would have to hold it down`),
  compute: sharesOf,
});
