/** What one group of fasteners closes, and with what. */
import type { Fastener, Fastening } from "../../design/index.js";
import { coversGrip, fastenerTraits, gripNeeded, washerAtBack } from "../../fastening/index.js";
import type { WorkedLine } from "../../formula.js";
import { Length } from "../../quantity/index.js";
import type { ReviewInput } from "../review-input.js";

/** Whether a washer goes on the inside: under a tail or nut on bare wood, never at a screw's point or an insert. */
export function takesWasher({ fastener, backIsBareWood }: Fastening): boolean {
  const { endsBehind } = fastenerTraits[fastener.kind];
  return endsBehind && washerAtBack({ back: backIsBareWood ? "bare wood" : "facing" }).washer === "yes";
}

/** Thickness that the fastener closes, washer counted, worked out. */
function gripLine(fastening: Fastening): WorkedLine & { readonly value: Length } {
  return gripNeeded.worked({
    layers: fastening.stack.map(({ thickness }) => thickness),
    washer: takesWasher(fastening) ? fastening.fastener.washerThickness : Length.si(0),
  });
}

/** Thickness that the fastener closes, washer counted. */
export function gripOf(fastening: Fastening): Length {
  return gripLine(fastening).value;
}

/** Washers of a group. */
export function washersOf(fastening: Fastening): number {
  return takesWasher(fastening) ? fastening.count : 0;
}

/** The drill to take for a fastener; none where it depends on a screw's core, or on the word of a rivet's maker. */
export function holeFor(fastener: Fastener): Length | undefined {
  const { holeKnown, hole } = fastenerTraits[fastener.kind];
  return holeKnown ? hole(fastener)?.drill : undefined;
}

/** Whether the fastener of a group closes its stack. */
export function closesStack(fastening: Fastening): boolean {
  return coversGrip(fastening.fastener, gripOf(fastening));
}

/** A stack that one sort of fastener closes in many places. */
export interface GripCase {
  /** The fastener that the case names. */
  readonly fastener: Fastener;
  /** Thickness of the stack with its washer, worked out. */
  readonly grip: WorkedLine & { readonly value: Length };
  /** The groups that close such a stack. */
  readonly groups: readonly Fastening[];
  /** Whether the fastener closes it. */
  readonly fits: boolean;
  /** A fastener of the tables that would fit, where this one does not. */
  readonly better?: string;
}

/** Groups whose stacks are alike. */
type Stack = readonly [Fastening, ...Fastening[]];

/** Every different stack of the case with its fastener: washer counted where the back is bare wood. */
export function gripCases({ parts, stock }: ReviewInput): readonly GripCase[] {
  const byStack = new Map<string, Stack>();
  for (const group of parts.fastenings) {
    const key = `${group.fastener.name} ${gripOf(group).toFixed(6)}`;
    const like = byStack.get(key);
    byStack.set(key, like ? [...like, group] : [group]);
  }
  return [...byStack.values()].map((groups) => gripCase(groups, stock.fasteners));
}

function gripCase(groups: Stack, fasteners: readonly Fastener[]): GripCase {
  const [first] = groups;
  const grip = gripLine(first);
  const { fastener } = first;
  const like = fasteners.filter(({ kind }) => kind === fastener.kind);
  const fits = coversGrip(fastener, grip.value);
  const better = fits ? undefined : like.find((one) => coversGrip(one, grip.value))?.name;
  return { fastener, grip, groups, fits, ...(better ? { better } : {}) };
}
