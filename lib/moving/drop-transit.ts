import { type Formula, formula } from "../formula.js";
import { inch, Length, Mass, pound } from "../quantity/index.js";
import { cite } from "../source.js";

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
