/** Where parts of a case share space that should not: as it stands, and on the way of what moves. */
import {
  findOverlaps,
  type Overlap,
  overlapsOnWay,
  reachOfSolid,
  type SolidReach,
} from "../../assembly/index.js";
import type { SectionPart } from "../../design/index.js";
import { memoizeLast } from "../../kept/index.js";
import type { ReviewInput } from "../review-input.js";
import type { CaseMovement, CaseSolid } from "./case-solid.js";
import { caseSolids } from "./case-solids.js";

/** Two parts that share space. */
export type CaseOverlap = Overlap<CaseSolid>;

/** What kind of trouble two parts are in. */
export type OverlapClass = "inside" | "heads" | "contents" | "parts" | "sections";

/** The overlaps of a case by class, each list deepest first. */
export type CaseOverlaps = Readonly<Record<OverlapClass, readonly CaseOverlap[]>>;

/**
 * Whether two solids share space as they should: pieces of one part, a fastener and what it goes through or bites, and
 * two rivets that are not both unset.
 */
export function meantToShare(one: CaseSolid, other: CaseSolid): boolean {
  return (
    one.part === other.part ||
    one.joins.includes(other.part) ||
    other.joins.includes(one.part) ||
    (one.piece === "entering" && other.piece === "entering")
  );
}

/** Every overlap of a case as it stands. Those of two sections are one matter: the gap between them. */
export const caseOverlaps: (input: ReviewInput) => CaseOverlaps = memoizeLast(
  ({ parts }: ReviewInput) => parts,
  ({ case: build }) => [build.journey, build.leftOut],
  (input) => classed(findOverlaps(caseSolids(input).solids, meantToShare)),
);

/** The classes, gravest first. */
const gravest: readonly OverlapClass[] = ["inside", "heads", "contents", "parts", "sections"];

/** Overlaps by class, one a pair of parts: its deepest, and of those that are as deep but for rounding the gravest. */
export function classed(overlaps: readonly CaseOverlap[]): CaseOverlaps {
  const depthOf = ({ depth }: CaseOverlap): number => Math.round(depth * 1e9);
  const graveness = ({ one, other }: CaseOverlap): number => gravest.indexOf(classOf(one, other));
  const deepest = [...overlaps].sort((a, b) => depthOf(b) - depthOf(a) || graveness(a) - graveness(b));
  const seen = new Set<string>();
  const found: Record<OverlapClass, CaseOverlap[]> = {
    inside: [],
    heads: [],
    contents: [],
    parts: [],
    sections: [],
  };
  for (const overlap of deepest) {
    const { one, other } = overlap;
    const pair = `${one.part}\n${other.part}`;
    if (seen.has(pair)) continue;
    seen.add(pair);
    found[classOf(one, other)].push(overlap);
  }
  return found;
}

function classOf(one: CaseSolid, other: CaseSolid): OverlapClass {
  if (one.section !== other.section) return "sections";
  const fasteners = [one, other].filter(({ kind }) => kind === "fastener");
  if (fasteners.length === 0) return "parts";
  if (one.kind === "content" || other.kind === "content") return "contents";
  return fasteners.length === 2 && fasteners.every(({ piece }) => piece !== "head") ? "inside" : "heads";
}

/** What a movement hits, a pair of parts once, deepest first. */
export function movementOverlaps(
  input: ReviewInput,
  { parts, hinges, movement }: CaseMovement,
): readonly CaseOverlap[] {
  const { solids } = caseSolids(input);
  const moving = solids.filter(({ part }) => parts.has(part));
  const standing = solids.filter(({ part }) => !parts.has(part) && !hinges.has(part));
  // What already shares space where it stands is told there.
  const before = new Set(
    Object.values(caseOverlaps(input)).flatMap((list) =>
      list.flatMap(({ one, other }) => [`${one.part}\n${other.part}`, `${other.part}\n${one.part}`]),
    ),
  );
  const found = overlapsOnWay(
    moving,
    standing,
    movement,
    (one, other) => meantToShare(one, other) || before.has(`${one.part}\n${other.part}`),
  );
  const { inside, heads, contents, parts: bare, sections } = classed(found);
  return [...inside, ...heads, ...contents, ...bare, ...sections].sort((a, b) => b.depth - a.depth);
}

/** What keeps two stacked sections apart. */
export interface StackGap {
  /** The section below. */
  readonly below: string;
  /** The section that stands on it. */
  readonly above: string;
  /** How far its outside must stand above that of the lower, so that nothing shares space, m. */
  readonly needed: number;
  /** What meets first, of the lower and the upper. */
  readonly meet: readonly [CaseSolid, CaseSolid] | undefined;
}

/** How far each section must stand above the one below. */
export function stackGaps(input: ReviewInput): readonly StackGap[] {
  const { sections } = input.parts;
  return sections.slice(1).map((section, i) => gapBetween(sections[i] ?? section, section, input));
}

/** A solid of one of two sections with how far it stands beyond the plane in which their outsides would meet, m. */
interface Proud {
  readonly solid: CaseSolid;
  readonly by: number;
}

function gapBetween(lower: SectionPart, upper: SectionPart, input: ReviewInput): StackGap {
  const { solids } = caseSolids(input);
  const top = lower.outside.low.z + lower.outside.size.z;
  const bottom = upper.outside.low.z;
  const of = (name: string, by: (reach: SolidReach) => number): readonly Proud[] =>
    solids
      .filter(({ section }) => section === name)
      .map((solid) => ({ solid, by: by(reachOfSolid(solid)) }))
      .filter((one) => one.by > -1e-6);
  const below = of(lower.name, ({ high }) => high[2] - top);
  const above = of(upper.name, ({ low }) => bottom - low[2]);
  let [needed, meet]: [number, StackGap["meet"]] = [0, undefined];
  for (const one of below)
    for (const other of above)
      if (one.by + other.by > needed + 1e-6 && seenFromAboveMeet(one.solid, other.solid))
        [needed, meet] = [one.by + other.by, [one.solid, other.solid]];
  return { below: lower.name, above: upper.name, needed, meet };
}

/** Whether two solids lie over each other, seen from above; heads as the circles that they are. */
function seenFromAboveMeet(one: CaseSolid, other: CaseSolid): boolean {
  const [a, b] = [reachOfSolid(one), reachOfSolid(other)];
  const within = ([0, 1] as const).every(
    (i) => Math.min(a.high[i], b.high[i]) - Math.max(a.low[i], b.low[i]) > 1e-6,
  );
  if (!within || one.piece !== "head" || other.piece !== "head") return within;
  const middle = ({ low, high }: SolidReach, i: 0 | 1): number => (low[i] + high[i]) / 2;
  const apart = Math.hypot(middle(a, 0) - middle(b, 0), middle(a, 1) - middle(b, 1));
  return apart < (a.high[0] - a.low[0] + b.high[0] - b.low[0]) / 2;
}
