/** What one group of fasteners closes, and with what. */
import {
  type Fastener,
  type Fastening,
  type Parts,
  type Stock,
  type Washer,
  washerFor,
} from "../../design/index.js";
import { coversGrip, fastenerTraits, gripNeeded, washerAtBack } from "../../fastening/index.js";
import type { WorkedLine } from "../../formula.js";
import { Length } from "../../quantity/index.js";
import type { ReviewInput } from "../review-input.js";

/**
 * The washer on the inside: under a tail or nut on bare wood, never at a screw's point or an insert, nor where no hand
 * gets behind the rivet when it is set.
 */
export function washerInside({ fastener, backIsBareWood, noHandBehind }: Fastening): Washer | undefined {
  const { endsBehind } = fastenerTraits[fastener.kind];
  const { washer } = washerAtBack({ back: backIsBareWood ? "bare wood" : "facing" });
  return !noHandBehind && endsBehind && washer === "yes" ? washerFor(fastener) : undefined;
}

/** Whether a washer goes on the inside. */
export function takesWasher(fastening: Fastening): boolean {
  return washerInside(fastening) !== undefined;
}

/**
 * The tail of a set rivet in bodies, where a table has none: 1.5 wide, common practice, since no standard that was found
 * gives it.
 */
export const tailBodies = 1.5;

/** What bears on the inside of a rivet's sheet: its washer, a tail as wide as the head on laminate, a bare tail on wood. */
export function bearingOf(fastening: Fastening): Length {
  const { headDiameter, diameter } = fastening.fastener;
  const washer = washerInside(fastening);
  if (washer) return washer.diameter;
  return fastening.backIsBareWood ? Length.si(Math.min(headDiameter, tailBodies * diameter)) : headDiameter;
}

/** Thickness that the fastener closes, washer counted, worked out. */
function gripLine(fastening: Fastening): WorkedLine & { readonly value: Length } {
  return gripNeeded.worked({
    layers: fastening.stack.map(({ thickness }) => thickness),
    washer: washerInside(fastening)?.thickness ?? Length.si(0),
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
  readonly groups: readonly [Fastening, ...Fastening[]];
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
  const fits = coversGrip(fastener, grip.value);
  const better = fits ? undefined : closingOne(first, fasteners)?.name;
  return { fastener, grip, groups, fits, ...(better ? { better } : {}) };
}

/** A fastener of the same kind that closes a stack, its washer counted: of the nearest diameter, the shortest. */
function closingOne(group: Fastening, fasteners: readonly Fastener[]): Fastener | undefined {
  const off = ({ diameter }: Fastener): number => Math.abs(diameter - group.fastener.diameter);
  return fasteners
    .filter(({ kind }) => kind === group.fastener.kind)
    .filter((fastener) => closesStack({ ...group, fastener }))
    .sort((a, b) => off(a) - off(b) || a.length - b.length)[0];
}

/** A group that is set with another fastener than the case names. */
export interface Substitution {
  /** The group as it is set. */
  readonly group: Fastening;
  /** What the case names. */
  readonly named: Fastener;
}

/**
 * Parts with a rivet that closes its stack wherever the one that the case names does not and the tables have one, so
 * that nobody buys and sets the wrong one; and which those are.
 */
export function closingParts(
  parts: Parts,
  { fasteners }: Pick<Stock, "fasteners">,
): { readonly parts: Parts; readonly substituted: readonly Substitution[] } {
  const substituted: Substitution[] = [];
  const fastenings = parts.fastenings.map((named) => {
    if (!fastenerTraits[named.fastener.kind].chosenByGrip || closesStack(named)) return named;
    const fastener = closingOne(named, fasteners);
    if (!fastener) return named;
    const group = { ...named, fastener };
    substituted.push({ group, named: named.fastener });
    return group;
  });
  return substituted.length === 0 ? { parts, substituted } : { parts: { ...parts, fastenings }, substituted };
}
