/** Screws that end beyond what they bite, and slides that stand away from what they are screwed to. */
import { type Axis, axes, type Vector3, vector3 } from "../../algebra/matrix3.js";
import { reachOfSolid } from "../../assembly/index.js";
import { type Box, type Fastener, type Fastening, faceAxes } from "../../design/index.js";
import type { ReviewInput } from "../review-input.js";
import type { CaseSolid, SolidKind } from "./case-solid.js";
import { caseSolids } from "./case-solids.js";

/** A screw whose point comes out. */
export interface PointOut {
  /** Its point. */
  readonly tip: CaseSolid;
  /** What it comes out of: a part's id. */
  readonly through: string;
  /** How far it comes out, m. */
  readonly by: number;
  /** The end of its point, m. */
  readonly at: Vector3;
  /** Its group. */
  readonly group: Fastening;
  /** How long it may be, to end inside, m. */
  readonly most: number;
  /** The longest of the same kind and diameter that would end inside; absent where none is sold. */
  readonly shorter?: Fastener;
}

/** What a screw may end in. */
const bitten: ReadonlySet<SolidKind> = new Set([
  "sheet",
  "leaf",
  "shelf",
  "drawer",
  "stiffener",
  "strip",
  "laminate",
  "pane",
  "content",
]);

/** A point that comes out by less is told of nowhere: wood and screws are no truer, m; common practice. */
const least = 5e-4;

/**
 * Every screw whose point comes out of all that it goes through, those that come out furthest first. A screw of which no
 * place in a part is known is left out.
 */
export function pointsOut(input: ReviewInput): readonly PointOut[] {
  const { solids } = caseSolids(input);
  const of = new Map<string, CaseSolid[]>();
  const bodies = new Map<string, CaseSolid>();
  for (const solid of solids) {
    if (solid.piece === "body") bodies.set(solid.part, solid);
    if (bitten.has(solid.kind)) of.set(solid.part, [...(of.get(solid.part) ?? []), solid]);
  }
  const groups = new Map(input.parts.fastenings.map((group) => [group.id, group]));
  return solids
    .filter(({ piece }) => piece === "tip")
    .flatMap((tip) => {
      const body = bodies.get(tip.part);
      const joined = tip.joins.flatMap((id) => of.get(id) ?? []);
      const group = groups.get(tip.group ?? "");
      return body && group ? (pointOut(tip, body, joined, group, input) ?? []) : [];
    })
    .sort((a, b) => b.by - a.by);
}

function pointOut(
  tip: CaseSolid,
  body: CaseSolid,
  joined: readonly CaseSolid[],
  group: Fastening,
  { stock }: ReviewInput,
): PointOut | undefined {
  const [own, behind] = [middleOf(tip), middleOf(body)];
  const axis = axes.find((i) => Math.abs(own[i] - behind[i]) > 1e-9);
  if (axis === undefined) return undefined;
  const way = own[axis] > behind[axis] ? 1 : -1;
  const end = endAlong(tip, axis, way);
  const [first, ...more] = joined
    .filter((solid) => isAcross(solid, own, axis))
    .map((solid) => ({ solid, end: endAlong(solid, axis, way) }));
  if (!first) return undefined;
  const far = more.reduce((most, one) => (one.end > most.end ? one : most), first);
  const by = end - far.end;
  if (by <= least) return undefined;
  const { fastener } = group;
  const most = fastener.length - by;
  const [shorter] = stock.fasteners
    .filter(({ kind, diameter, length }) => {
      return kind === fastener.kind && diameter === fastener.diameter && length <= most + 1e-9;
    })
    .sort((a, b) => b.length - a.length);
  const at = vector3((i) => (i === axis ? way * end : own[i]));
  return { tip, group, most, through: far.solid.part, by, at, ...(shorter ? { shorter } : {}) };
}

function middleOf(solid: CaseSolid): Vector3 {
  const { low, high } = reachOfSolid(solid);
  return vector3((i) => (low[i] + high[i]) / 2);
}

/** How far a solid reaches along a way, m. */
function endAlong(solid: CaseSolid, axis: Axis, way: 1 | -1): number {
  const { low, high } = reachOfSolid(solid);
  return way > 0 ? high[axis] : -low[axis];
}

/** Whether a line along an axis through a place goes through the box round a solid. */
function isAcross(solid: CaseSolid, place: Vector3, axis: Axis): boolean {
  const { low, high } = reachOfSolid(solid);
  return axes.every((i) => i === axis || (low[i] < place[i] && place[i] < high[i]));
}

/** A pair of slides and how far each stands from the wall that its screws go into. */
export interface SlideStand {
  /** Id of the slides. */
  readonly id: string;
  /** Their section. */
  readonly section: string;
  /** The two walls, with the gap between slide and wall, m; below 0 where they share space. */
  readonly gaps: readonly { readonly wall: string; readonly gap: number; readonly at: Vector3 }[];
}

/** Every pair of slides whose places are known. */
export function slideStands(input: ReviewInput): readonly SlideStand[] {
  const { solids } = caseSolids(input);
  return input.parts.hardware
    .filter(({ item }) => item.duty === "slide")
    .flatMap(({ id, section, panels }) => {
      // Of a pair the one at the low end of the axis across stands first.
      const gaps = solids
        .filter(({ part, kind }) => part === id && kind === "runner")
        .flatMap((runner, i) => gapsOf(runner, i === 0 ? "low" : "high", panels, input));
      return gaps.length > 0 ? [{ id, section, gaps }] : [];
    });
}

/** What stands at the slide's own end, and the gap to it. */
function gapsOf(
  runner: CaseSolid,
  end: "low" | "high",
  walls: readonly string[],
  { parts }: ReviewInput,
): SlideStand["gaps"] {
  const { low, high } = reachOfSolid(runner);
  // A slide is far longer than it is thick.
  const [i, across] = high[0] - low[0] < high[1] - low[1] ? ([0, "x"] as const) : ([1, "y"] as const);
  const gapTo = (box: Box): number =>
    end === "low" ? low[i] - box.low[across] - box.size[across] : box.low[across] - high[i];
  const faces = parts.panels.flatMap(({ id, face, box, facing }) => {
    if (!walls.includes(id) || !face || faceAxes[face].end !== end) return [];
    const inside = facing?.sides === "both" ? facing.stock.thickness : 0;
    return [{ wall: id, gap: gapTo(box) - inside, at: middleOf(runner) }];
  });
  const own = walls[end === "low" ? 0 : 1];
  const boards = parts.strips
    .filter(({ id }) => id === own)
    .map(({ id, box }) => ({ wall: id, gap: gapTo(box), at: middleOf(runner) }));
  return [...faces, ...boards];
}
