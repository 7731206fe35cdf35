/** The lines over which a case tips, each swivel caster turned the worst way for that line. */
import { type Formula, formula } from "../formula.js";
import { Angle, Length } from "../quantity/index.js";
import { cite } from "../source.js";

/** The four ways a case can fall. */
export type TipWay = "left" | "right" | "front" | "back";

/** Towards each side: the angle from the right, anticlockwise seen from above. */
export const headings: Readonly<Record<TipWay, Angle>> = {
  right: Angle.si(0),
  back: Angle.of(90, "deg"),
  left: Angle.of(180, "deg"),
  front: Angle.of(270, "deg"),
};

/** A swivel caster seen from the side of the case. */
export interface SwivelBase {
  /** From below the centre of gravity to the line through the swivel axes. */
  readonly toAxes: Length;
  /** The level distance from a swivel axis to its wheel's axle. */
  readonly offset: Length;
}

/**
 * Half base of a case on swivel casters at their worst: the wheels stand inside the line of their axes by the offset.
 *
 * @source geometry; the offset, or trail, of a caster as its makers define it
 * @throws Refusal for a negative offset
 * @example swivelBase({ toAxes: mm(167), offset: mm(38) }) // 129 mm
 */
export const swivelBase: Formula<SwivelBase, Length> = formula({
  id: "tip.swivel",
  title: "Half base at the worst swivel",
  equation: "b=b_0-o",
  inputs: {
    toAxes: { symbol: "b_0", kind: Length, meaning: "centre of gravity to the line of the swivel axes" },
    offset: { symbol: "o", kind: Length, meaning: "swivel axis to the wheel's axle", min: 0 },
  },
  result: { symbol: "b", kind: Length, meaning: "centre of gravity to the line of the wheels" },
  source: [cite("geometry", "swivel radius: the wheel stands anywhere on a circle about its axis")],
  validity: "Both casters of the line turned inward, which a short way back and forth is enough for.",
  compute: ({ toAxes, offset }) => toAxes - offset,
});

/** Where a case touches the floor: a foot, or a caster that may swivel. */
export interface Foot {
  /** To the right, of the foot or of the swivel axis. */
  readonly x: Length;
  /** To the back. */
  readonly y: Length;
  /** From the swivel axis to the wheel's axle; 0 for a foot, or a caster that does not swivel. */
  readonly offset: Length;
}

/** A line over which a case can tip. */
export interface TippingEdge {
  /** The side it lies on, or nearest to. */
  readonly way: TipWay;
  /** Square to it, outward: the angle from the right, anticlockwise seen from above. */
  readonly heading: Angle;
  /** From below the centre of gravity to it; negative where the centre is past it. */
  readonly arm: Length;
}

/** Feet that reach as far as each other, in metres. */
const alike = 1e-9;

/**
 * The lines a case can tip over, the nearest first: each joins two feet beyond which no other reaches, with every
 * swivel caster turned inward as seen from that line.
 *
 * @example tippingEdges([{ x: mm(0), y: mm(0), offset: mm(30) }, { x: mm(600), y: mm(0), offset: mm(30) },
 *   { x: mm(300), y: mm(500), offset: mm(30) }], { x: mm(310), y: mm(200) })[0]?.way // right
 */
export function tippingEdges(
  feet: readonly Foot[],
  centre: { readonly x: Length; readonly y: Length },
): readonly TippingEdge[] {
  const reachOf = ({ x, y, offset }: Foot, heading: number): number =>
    (x - centre.x) * Math.cos(heading) + (y - centre.y) * Math.sin(heading) - offset;
  return feet
    .flatMap((one, i) => feet.slice(i + 1).flatMap((other) => commonHeadings(one, other, reachOf)))
    .filter(({ heading, reach }) => feet.every((foot) => reachOf(foot, heading) <= reach + alike))
    .map(({ heading, reach }) => ({
      way: nearestWay(heading),
      heading: Angle.si(heading),
      arm: Length.si(reach),
    }))
    .filter((edge, i, all) => all.findIndex((one) => sameWay(one.heading, edge.heading)) === i)
    .sort((a, b) => a.arm - b.arm);
}

/** The two headings in which two feet reach equally far, if any. */
function commonHeadings(
  one: Foot,
  other: Foot,
  reachOf: (foot: Foot, heading: number) => number,
): readonly { readonly heading: number; readonly reach: number }[] {
  const apart = Math.hypot(other.x - one.x, other.y - one.y);
  const share = (other.offset - one.offset) / apart;
  if (!(Math.abs(share) <= 1)) return [];
  const along = Math.atan2(other.y - one.y, other.x - one.x);
  return [along + Math.acos(share), along - Math.acos(share)].map((heading) => ({
    heading,
    reach: reachOf(one, heading),
  }));
}

function sameWay(one: number, other: number): boolean {
  return Math.cos(one - other) > 1 - 1e-12;
}

function nearestWay(heading: number): TipWay {
  const [across, deep] = [Math.cos(heading), Math.sin(heading)];
  if (Math.abs(across) > Math.abs(deep)) return across > 0 ? "right" : "left";
  return deep > 0 ? "back" : "front";
}

/** From below the centre of gravity straight to the edge of the base in one direction. */
export function armTowards(edges: readonly TippingEdge[], heading: Angle): Length {
  return Length.si(Math.min(...edges.map((edge) => reachTowards(edge, heading))));
}

/** The edge that is met first in one direction; undefined where none lies there. */
export function edgeTowards(edges: readonly TippingEdge[], heading: Angle): TippingEdge | undefined {
  const arm = armTowards(edges, heading);
  return edges.find((edge) => arm < Infinity && reachTowards(edge, heading) === arm);
}

/** How far an edge is in one direction, m; endless where that leads away from it or along it. */
function reachTowards({ arm, heading: own }: TippingEdge, heading: Angle): number {
  const share = Math.cos(own - heading);
  return share > alike ? arm / share : Infinity;
}
