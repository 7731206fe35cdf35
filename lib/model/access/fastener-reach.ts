/** For every fastener: which way a hand holds what is inside, and what stands where its tool must be. */
import { distance, type Vector3, vector3 } from "../../algebra/matrix3.js";
import {
  type HandWay,
  handWays,
  nearestWay,
  overlapsBetween,
  reachOfSolid,
  solidsOnLine,
} from "../../assembly/index.js";
import { type Fastening, roomFor, type ToolUse } from "../../design/index.js";
import { memoizeLast } from "../../kept/index.js";
import { circle } from "../../shape/index.js";
import { takesWasher } from "../joints/joint-stack.js";
import type { ReviewInput } from "../review-input.js";
import { type CaseSolid, caseSolids } from "../solids/index.js";
import { type Entry, entriesOf, insideOf, withDoorsOpen } from "./entries.js";

/** One way of a hand to the inside of a fastener. */
export interface FastenerWay {
  /** Through what, in a builder's words. */
  readonly words: string;
  /** How long, m. */
  readonly length: number;
  /** How far a hand reaches through there, m. */
  readonly reach: number;
  /** From the opening to the fastener, m. */
  readonly points: readonly Vector3[];
  /** Parts that must come later than the fastener, so that the way is free. */
  readonly later: readonly string[];
}

/** What it takes to set one fastener. */
export interface FastenerReach {
  /** Id of the fastener: that of its group with its number. */
  readonly part: string;
  /** In a builder's words. */
  readonly name: string;
  /** Its group. */
  readonly group: Fastening;
  /** Section of its panel. */
  readonly section: string;
  /** What a hand holds inside, if anything: a washer alone may be held on a stick. */
  readonly handInside: "washer" | "nut" | "head" | undefined;
  /** Ways of that hand within reach, the shortest first; empty where there is none. */
  readonly ways: readonly FastenerWay[];
  /** The shortest way of all, in reach or not, m; absent where none is needed or there is none at all. */
  readonly shortest?: number;
  /** Parts that stand where its tool must be: they must come later. */
  readonly toolHits: readonly string[];
}

/** Every fastener whose place is known, and what it takes to set it. */
export const fastenerReach: (input: ReviewInput) => readonly FastenerReach[] = memoizeLast(
  ({ parts }: ReviewInput) => parts,
  ({ case: build, measurements }) => [build.journey, build.leftOut, measurements.tools],
  newFastenerReach,
);

/** One fastener of a group, with its pieces. */
interface Placed {
  readonly part: string;
  readonly group: Fastening;
  readonly pieces: readonly CaseSolid[];
  /** Under its head, m. */
  readonly head: Vector3;
  /** Where a hand holds its washer, nut or tail; the head where that is inside. */
  readonly held: Vector3;
  /** From its far end to its head, along an axis. */
  readonly out: Vector3;
  readonly handInside: FastenerReach["handInside"];
}

function newFastenerReach(input: ReviewInput): readonly FastenerReach[] {
  const placed = placedFasteners(input);
  const hits = toolHits(placed, input);
  const stick = roomFor("stick", input.measurements.tools);
  const sections = new Set(placed.map(({ pieces }) => pieces[0]?.section ?? ""));
  const waysIn = new Map([...sections].map((section) => [section, sectionWays(section, input)]));
  return placed.map(({ part, group, pieces, held, handInside }): FastenerReach => {
    const [first] = pieces;
    const section = first?.section ?? "";
    const beyond = handInside === "washer" ? stick.length : 0;
    const all = handInside ? (waysIn.get(section)?.(held, first?.joins ?? [], beyond) ?? []) : [];
    const lengths = all.map(({ length }) => length);
    return {
      ...{ part, group, section, handInside, name: first?.name ?? part },
      ways: all
        .map((way) => ({ ...way, reach: way.reach + beyond }))
        .filter((way) => way.length <= way.reach)
        .sort((a, b) => a.length - b.length),
      ...(lengths.length > 0 ? { shortest: Math.min(...lengths) } : {}),
      toolHits: hits.get(part) ?? [],
    };
  });
}

function placedFasteners(input: ReviewInput): readonly Placed[] {
  const groups = new Map(input.parts.fastenings.map((group) => [group.id, group]));
  const pieces = new Map<string, CaseSolid[]>();
  for (const solid of caseSolids(input).solids) {
    if (solid.group === undefined) continue;
    const own = pieces.get(solid.part) ?? [];
    own.push(solid);
    pieces.set(solid.part, own);
  }
  return [...pieces].flatMap(([part, own]) => {
    const group = groups.get(own[0]?.group ?? "");
    return group ? [placedOne(part, group, own, input)] : [];
  });
}

function placedOne(part: string, group: Fastening, pieces: readonly CaseSolid[], input: ReviewInput): Placed {
  const middle = (solid: CaseSolid | undefined): Vector3 => {
    if (!solid) return [0, 0, 0];
    const { low, high } = reachOfSolid(solid);
    return vector3((i) => (low[i] + high[i]) / 2);
  };
  const [body] = pieces.filter(({ piece }) => piece === "body");
  const [head = body] = pieces.filter(({ piece }) => piece === "head");
  const [back = body] = pieces.filter(
    ({ piece }) => piece === "nut" || piece === "washer" || piece === "tail",
  );
  const [from, to] = [middle(body), middle(head)];
  const long = distance(from, to);
  const out = vector3((i) => (long > 0 ? Math.round((to[i] - from[i]) / long) : 0));
  const isHeadInside = isInside(to, body?.section ?? "", input);
  return {
    ...{ part, group, pieces, out, head: to, held: isHeadInside ? to : middle(back) },
    handInside: isHeadInside
      ? "head"
      : group.fastener.kind === "bolt"
        ? "nut"
        : takesWasher(group)
          ? "washer"
          : undefined,
  };
}

function isInside(place: Vector3, section: string, input: ReviewInput): boolean {
  const { low, high } = insideOf(section, input);
  return ([0, 1, 2] as const).every((i) => place[i] > low[i] && place[i] < high[i]);
}

/** What stands where the tool of each fastener must be. Fasteners are set one by one and doors stand open. */
function toolHits(placed: readonly Placed[], input: ReviewInput): ReadonlyMap<string, readonly string[]> {
  const solids = withDoorsOpen(input).filter(({ kind }) => kind !== "fastener");
  const tools = placed.flatMap(({ part, group, pieces, head, out }): CaseSolid[] => {
    const [first] = pieces;
    if (!first || out.every((one) => one === 0)) return [];
    return [toolAt(part, group, first, head, out, input)];
  });
  const hits = new Map<string, string[]>();
  for (const { one, other } of overlapsBetween(tools, solids, (tool, solid) =>
    tool.joins.includes(solid.part),
  ))
    hits.set(one.part, [...(hits.get(one.part) ?? []), other.part]);
  return hits;
}

/** The room of a tool over a head, as a rod. */
function toolAt(
  part: string,
  group: Fastening,
  { joins, section, name }: CaseSolid,
  head: Vector3,
  out: Vector3,
  input: ReviewInput,
): CaseSolid {
  const { diameter, length } = roomFor(group.fastener.kind satisfies ToolUse, input.measurements.tools);
  // A head is no thicker than a few millimetres: the tool begins over it.
  const axis = ([0, 1, 2] as const).findIndex((i) => out[i] !== 0) as 0 | 1 | 2;
  const x = vector3((i) => (i === (axis + 1) % 3 ? 1 : 0));
  const y = vector3((i) => (i === (axis + 2) % 3 ? 1 : 0));
  const over = 0.005;
  const start = (out[axis] ?? 0) > 0 ? over : -over - length;
  return {
    key: `tool at ${part}`,
    ...{ part, name, section, joins, kind: "fastener", group: group.id },
    ...{ outline: circle({ x: 0, y: 0 }, diameter / 2), holes: [], depth: length },
    place: { origin: vector3((i) => head[i] + (i === axis ? start : 0)), x, y },
  };
}

/** Kinds of parts that stand inside a section and keep a hand out. */
const inTheWay: ReadonlySet<CaseSolid["kind"]> = new Set([
  "shelf",
  "drawer",
  "stiffener",
  "strip",
  "runner",
  "content",
]);

/** Ways of a hand into a section, to a place that belongs to some parts, with a stick that reaches so far beyond it, m. */
function sectionWays(
  section: string,
  input: ReviewInput,
): (place: Vector3, own: readonly string[], beyond: number) => readonly FastenerWay[] {
  const inside = caseSolids(input).solids.filter(
    (solid) => solid.section === section && inTheWay.has(solid.kind),
  );
  const room = insideOf(section, input);
  const entries = entriesOf(section, input).map((entry) => ({
    entry,
    full: handWays({ ...room, solids: inside, doorways: entry.doorways }),
  }));
  return (place, own, beyond) =>
    entries.flatMap(({ entry, full }) => {
      const straight = nearestWay(place, entry.doorways);
      if (!straight) return [];
      // Out of reach, whatever stands in the way: only how far it is matters.
      if (straight.length > entry.reach + beyond) return [wayOf(entry, straight, [])];
      const hit = solidsOnLine(straight.points[0] ?? place, place, inside);
      // Nothing is shorter than straight from the nearest doorway.
      if (hit.length === 0) return [wayOf(entry, straight, [])];
      const round = full(place);
      if (round && round.length <= straight.length) return [wayOf(entry, round, [])];
      const later = [...new Set(hit.map(({ part }) => part))].filter((part) => !own.includes(part));
      return [...(round ? [wayOf(entry, round, [])] : []), wayOf(entry, straight, later)];
    });
}

function wayOf(entry: Entry, { length, points }: HandWay, hits: readonly string[]): FastenerWay {
  const { words, reach, closedBy } = entry;
  return { words, length, reach, points, later: [...closedBy, ...hits] };
}
