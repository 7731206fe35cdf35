/** How the holes of a group are drilled: with which bit, when in the work, and at which marks of the tape. */

import type { Case, Fastener, Fastening, Parts } from "../design/index.js";
import { fastenerTraits } from "../fastening/index.js";
import { type HardwareStage, stageOf } from "../plan/index.js";
import { Length } from "../quantity/index.js";
import { Refusal } from "../refusal.js";
import type { Point2 } from "../shape/index.js";

/** A bit one can buy. */
export interface Bit {
  /** "no. 30" or "3.3 mm". */
  readonly name: string;
  /** The diameter of the hole that it drills. */
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

/** Common practice, no source: a pilot is about as wide as the core of a wood screw, 0.65 of its diameter. */
const pilotShare = 0.65;

/** The bit of a pilot hole for a wood screw. */
export function pilotFor({ diameter }: Fastener, units: Case["units"]): Bit {
  const wanted = Length.si(pilotShare * diameter);
  if (units === "metric") return metricBit(wanted);
  const near = inchBits
    .map(([name, inches]): Bit => ({ name: name.replace(" ", "\u00a0"), diameter: Length.of(inches, "in") }))
    .filter((bit) => bit.diameter < 0.8 * diameter && bit.diameter > 0.5 * diameter)
    .sort((a, b) => Math.abs(a.diameter - wanted) - Math.abs(b.diameter - wanted));
  return near[0] ?? metricBit(wanted);
}

/** How the holes of a group are drilled. */
export interface DrillWords {
  /** Every bit that it takes. */
  readonly bits: readonly Bit[];
  /** "no. 11", "pilot 7/64 in", "11/64 in, pilot 7/64 in behind". */
  readonly words: string;
}

/**
 * The bits of a group, chosen by what its screw bites: the panel itself takes a pilot hole; where there is wood behind
 * the panel, the panel is drilled to let the screw through and the wood gets the pilot.
 *
 * @throws Refusal as `bitFor`
 */
export function drillFor({ fastener, into, why }: Fastening, units: Case["units"]): DrillWords {
  const through = bitFor(fastener, units);
  if (fastener.kind !== "screw") return { bits: [through], words: through.name };
  const pilot = pilotFor(fastener, units);
  const bitesBehind = into !== undefined || why === "shelf" || why === "drawer";
  return bitesBehind
    ? { bits: [through, pilot], words: `${through.name}, pilot ${pilot.name} behind` }
    : { bits: [pilot], words: `pilot ${pilot.name}` };
}

/** Metric bits come in tenths of a millimetre. */
function metricBit(wanted: Length): Bit {
  const tenths = Math.round(wanted * 10_000) / 10;
  return { name: `${tenths}\u00a0mm`, diameter: Length.of(tenths, "mm") };
}

/**
 * In the order of the work. bench: on the flat panel. metal: through bar or corner and panel together. door:
 * with the leaf in its opening. stack: with the sections stacked. hand: where the thing turns out to sit.
 */
export const drillStages = ["bench", "metal", "door", "stack", "hand"] as const;
/** The time in the work at which a group of holes is drilled. */
export type DrillStage = (typeof drillStages)[number];

const ofHardware: Readonly<Record<HardwareStage, DrillStage>> = {
  bench: "bench",
  wheels: "bench",
  corners: "metal",
  doors: "door",
  joining: "stack",
};

/** When a group is drilled: on the flat panel, or later with what decides where the hole must be. */
export function drillStageOf({ why, holds }: Fastening, parts: Parts): DrillStage {
  if (why === "edge") return parts.bars.some(({ id }) => id === holds) ? "metal" : "bench";
  if (why === "stiffener") return "bench";
  const hardware = parts.hardware.find(({ id }) => id === holds);
  return why === "hardware" && hardware ? ofHardware[stageOf(hardware, parts)] : "hand";
}

/** Holes as two lists of marks. */
export interface HoleMarks {
  /** From the left edge. */
  readonly across: readonly Length[];
  /** From the bottom edge. */
  readonly up: readonly Length[];
  /** "crossings": a hole where every line across meets every line up. "pairs": the nth with the nth. */
  readonly read: "crossings" | "pairs";
}

/** Marks closer than this are one mark (a tenth of a millimetre). */
const sameMark = 1e-4;

/** The marks of a group; undefined where the builder places it by hand. */
export function holeMarks({ at }: Fastening): HoleMarks | undefined {
  if (at.length === 0) return undefined;
  const across = marksAlong(at, "x");
  const up = marksAlong(at, "y");
  const everyCrossing =
    across.length * up.length === at.length && across.every((x) => up.every((y) => isHole(at, { x, y })));
  if (everyCrossing) return { across, up, read: "crossings" };
  const inOrder = [...at].sort((a, b) => a.x - b.x || a.y - b.y);
  return { across: inOrder.map(({ x }) => x), up: inOrder.map(({ y }) => y), read: "pairs" };
}

function marksAlong(at: readonly Point2<Length>[], axis: keyof Point2<Length>): Length[] {
  const sorted = at.map((hole) => hole[axis]).sort((a, b) => a - b);
  return sorted.filter((mark, i) => mark - (sorted[i - 1] ?? Number.NEGATIVE_INFINITY) > sameMark);
}

function isHole(at: readonly Point2<Length>[], { x, y }: Point2<Length>): boolean {
  return at.some((hole) => Math.abs(hole.x - x) <= sameMark && Math.abs(hole.y - y) <= sameMark);
}
