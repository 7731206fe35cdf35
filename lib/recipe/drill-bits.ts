/** Which bit drills the hole of a fastener. */
import type { Case, Fastener } from "../design/index.js";
import { fastenerTraits } from "../fastening/index.js";
import { Length } from "../quantity/index.js";
import { Refusal } from "../refusal.js";

/** A bit one can buy. */
export interface Bit {
  /** "no. 30" or "3.3 mm". */
  readonly name: string;
  readonly diameter: Length;
}

/**
 * Diameters in inches of common number, letter and fraction bits (ASME B94.11M, from memory; each is
 * printed on the bit and its index, so a builder sees at once if one is wrong).
 */
const inchBits: readonly (readonly [string, number])[] = [
  ["no. 41", 0.096],
  ["no. 40", 0.098],
  ["7/64 in", 7 / 64],
  ["1/8 in", 1 / 8],
  ["no. 30", 0.1285],
  ["no. 29", 0.136],
  ["9/64 in", 9 / 64],
  ["5/32 in", 5 / 32],
  ["no. 20", 0.161],
  ["11/64 in", 11 / 64],
  ["3/16 in", 3 / 16],
  ["no. 11", 0.191],
  ["no. 10", 0.1935],
  ["13/64 in", 13 / 64],
  ["7/32 in", 7 / 32],
  ["1/4 in", 1 / 4],
  ["letter F", 0.257],
  ["17/64 in", 17 / 64],
  ["9/32 in", 9 / 32],
  ["5/16 in", 5 / 16],
  ["21/64 in", 21 / 64],
  ["3/8 in", 3 / 8],
  ["13/32 in", 13 / 32],
  ["7/16 in", 7 / 16],
  ["1/2 in", 1 / 2],
];

/**
 * The common bit nearest to the hole that a fastener wants; a metric one where no inch bit lets the fastener
 * through and still holds it.
 *
 * @throws Refusal for a rivet whose body is outside the range of the hole rule, or an insert without its hole
 */
export function bitFor(fastener: Fastener, units: Case["units"]): Bit {
  const hole = fastenerTraits[fastener.kind].hole(fastener);
  if (!hole) throw new Refusal(`${fastener.name}: no rule for the hole of a ${fastener.kind} of its size`);
  const { drill, largest } = hole;
  if (units === "metric") return metricBit(drill);
  const fitting = inchBits
    .map(([name, inches]): Bit => ({ name: name.replace(" ", "\u00a0"), diameter: Length.of(inches, "in") }))
    .filter(({ diameter }) => diameter > fastener.diameter && diameter <= largest)
    .sort((a, b) => Math.abs(a.diameter - drill) - Math.abs(b.diameter - drill));
  return fitting[0] ?? metricBit(drill);
}

/** Metric bits come in tenths of a millimetre. */
function metricBit(wanted: Length): Bit {
  const tenths = Math.round(wanted * 10_000) / 10;
  return { name: `${tenths}\u00a0mm`, diameter: Length.of(tenths, "mm") };
}
