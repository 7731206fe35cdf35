/** One side of a closed path: a straight line or an arc of a circle. */
import { apart, between, type Point2, turnOf } from "./point.js";

/** A straight side. */
export interface LineSide {
  /** A straight side. */
  readonly kind: "line";
  /** Where it begins. */
  readonly from: Point2;
  /** Where it ends. */
  readonly to: Point2;
}

/** An arc of a circle, at most a quarter turn long and cut where it runs level or upright. */
export interface ArcSide {
  /** A side that is part of a circle. */
  readonly kind: "arc";
  /** Where it begins. */
  readonly from: Point2;
  /** Where it ends. */
  readonly to: Point2;
  /** Centre of its circle. */
  readonly centre: Point2;
  /** Radius of its circle, in the unit of the whole. */
  readonly radius: number;
  /** Direction of its beginning from the centre, rad. */
  readonly start: number;
  /** How far it turns, rad; negative when it turns to the right. */
  readonly sweep: number;
}

/** A side of a shape. */
export type Side = LineSide | ArcSide;

/** A straight side between two points. */
export function line(from: Point2, to: Point2): LineSide {
  return { kind: "line", from, to };
}

/** The point of a circle in a direction. */
export function onCircle(centre: Point2, radius: number, angle: number): Point2 {
  return { x: centre.x + radius * Math.cos(angle), y: centre.y + radius * Math.sin(angle) };
}

/** An arc, cut at every place where it runs level or upright. */
export function arcs(centre: Point2, radius: number, start: number, sweep: number): readonly ArcSide[] {
  const quarter = Math.PI / 2;
  const [low, high] = sweep > 0 ? [start, start + sweep] : [start + sweep, start];
  const cuts: number[] = [];
  for (let n = Math.ceil(low / quarter - 1e-9); n * quarter < high - 1e-9; n++)
    if (n * quarter > low + 1e-9) cuts.push(n * quarter);
  const stops = [low, ...cuts, high];
  const angles = sweep > 0 ? stops : stops.reverse();
  return angles.slice(1).map((to, i) => {
    const from = angles[i] ?? start;
    return {
      kind: "arc",
      from: onCircle(centre, radius, from),
      to: onCircle(centre, radius, to),
      centre,
      radius,
      start: from,
      sweep: to - from,
    };
  });
}

/** The length of a side. */
export function lengthOf(side: Side): number {
  return side.kind === "line" ? apart(side.from, side.to) : side.radius * Math.abs(side.sweep);
}

/** The point a share of the way along a side. */
export function pointAt(side: Side, share: number): Point2 {
  if (share === 0) return side.from;
  if (share === 1) return side.to;
  if (side.kind === "line") return between(side.from, side.to, share);
  return onCircle(side.centre, side.radius, side.start + share * side.sweep);
}

/** Share of the way along a side at which a point on it lies. */
export function shareAt(side: Side, point: Point2): number {
  const { from, to } = side;
  if (side.kind === "line") {
    const length = apart(from, to) ** 2;
    return length === 0
      ? 0
      : ((point.x - from.x) * (to.x - from.x) + (point.y - from.y) * (to.y - from.y)) / length;
  }
  const angle = Math.atan2(point.y - side.centre.y, point.x - side.centre.x) - side.start;
  const turns = Math.round((angle - side.sweep / 2) / (2 * Math.PI));
  return (angle - 2 * Math.PI * turns) / side.sweep;
}

/** The part of a side between two shares of its way. */
export function partOf(side: Side, low: number, high: number): Side {
  const [from, to] = [pointAt(side, low), pointAt(side, high)];
  if (side.kind === "line") return line(from, to);
  return { ...side, from, to, start: side.start + low * side.sweep, sweep: (high - low) * side.sweep };
}

/** A side travelled the other way. */
export function reversed(side: Side): Side {
  const ends = { from: side.to, to: side.from };
  return side.kind === "line"
    ? { kind: "line", ...ends }
    : { ...side, ...ends, start: side.start + side.sweep, sweep: -side.sweep };
}

/** Whether a direction from an arc's centre lies between its ends. */
function faces({ centre, from, to, sweep }: ArcSide, point: Point2): boolean {
  const way = Math.sign(sweep);
  return way * turnOf(centre, from, point) >= 0 && way * turnOf(centre, point, to) >= 0;
}

/** The least distance of a point from a side. */
export function distanceToSide(side: Side, point: Point2): number {
  const { from, to } = side;
  if (side.kind === "arc") {
    return faces(side, point)
      ? Math.abs(apart(side.centre, point) - side.radius)
      : Math.min(apart(from, point), apart(to, point));
  }
  const share = Math.min(1, Math.max(0, shareAt(side, point)));
  return Math.hypot(point.x - from.x - share * (to.x - from.x), point.y - from.y - share * (to.y - from.y));
}

/** The least distance of two sides, zero where they cross. */
export function sideGap(one: Side, other: Side): number {
  if (crossings(one, other).length > 0) return 0;
  const ends = [
    distanceToSide(one, other.from),
    distanceToSide(one, other.to),
    distanceToSide(other, one.from),
    distanceToSide(other, one.to),
  ];
  return Math.min(...ends, ...facingGaps(one, other), ...facingGaps(other, one));
}

/** Distances between inner points of an arc and of another side that face each other. */
function facingGaps(arc: Side, other: Side): number[] {
  if (arc.kind === "line") return [];
  const towards = other.kind === "line" ? footOn(other, arc.centre) : other.centre;
  const length = apart(arc.centre, towards);
  if (length === 0) return [];
  return [1, -1].flatMap((way) => {
    const point = between(arc.centre, towards, (way * arc.radius) / length);
    return faces(arc, point) ? [distanceToSide(other, point)] : [];
  });
}

/** The point of a straight side's whole line that is nearest to a point. */
function footOn(side: LineSide, point: Point2): Point2 {
  return between(side.from, side.to, shareAt(side, point));
}

/** Points in which two sides cross or touch; sides that run along each other meet in their ends. */
export function crossings(one: Side, other: Side): readonly Point2[] {
  const found = one.kind === "line" ? lineMeets(one, other) : arcMeets(one, other);
  return [...found, ...endsOn(one, other), ...endsOn(other, one)];
}

/** Ends of a side that lie on another to the last digit. */
function endsOn(side: Side, other: Side): readonly Point2[] {
  return [side.from, side.to].filter((end) => distanceToSide(other, end) === 0);
}

function lineMeets(one: LineSide, other: Side): readonly Point2[] {
  if (other.kind === "line") return linesMeet(one, other);
  const foot = footOn(one, other.centre);
  const length = apart(one.from, one.to);
  const reach = other.radius ** 2 - apart(foot, other.centre) ** 2;
  if (reach < 0 || length === 0) return [];
  const step = Math.sqrt(reach) / length;
  const at = shareAt(one, foot);
  return [at - step, at + step]
    .filter((share) => share >= 0 && share <= 1)
    .map((share) => between(one.from, one.to, share))
    .filter((point) => faces(other, point));
}

function linesMeet(one: LineSide, other: LineSide): readonly Point2[] {
  const [a, b, c, d] = [one.from, one.to, other.from, other.to];
  const [toC, toD] = [turnOf(a, b, c), turnOf(a, b, d)];
  const cross = toC * toD < 0 && turnOf(c, d, a) * turnOf(c, d, b) < 0;
  return cross ? [between(c, d, toC / (toC - toD))] : [];
}

function arcMeets(one: ArcSide, other: Side): readonly Point2[] {
  if (other.kind === "line") return lineMeets(other, one);
  const distance = apart(one.centre, other.centre);
  if (distance === 0) return [];
  const along = (distance ** 2 + one.radius ** 2 - other.radius ** 2) / (2 * distance);
  const aside = one.radius ** 2 - along ** 2;
  if (aside < 0) return [];
  const foot = between(one.centre, other.centre, along / distance);
  const [dx, dy] = [other.centre.x - one.centre.x, other.centre.y - one.centre.y];
  return [1, -1]
    .map((way) => (way * Math.sqrt(aside)) / distance)
    .map((share) => ({ x: foot.x - share * dy, y: foot.y + share * dx }))
    .filter((point) => faces(one, point) && faces(other, point));
}
