/** Every line a mesh must follow, cut where lines meet, with no place twice. */

import { under } from "../../algebra/lists.js";
import { apart, circleOf, halfWay, type Point2, type Side } from "../../shape/index.js";
import { gridOf, settled, sorted } from "./mirrored-mesh.js";
import { type Arc, type Cutout, isMaterial, type Outline } from "./outline.js";
import { toSide } from "./outline-faults.js";
import { keyOf } from "./quad-mesh.js";
import type { MeshGuides, SizeAt } from "./size.js";

/** Two places that are joined, and whether material ends there. */
export type PlanarSide = readonly [from: number, to: number, bounds: boolean];

/** Places, and pairs of them that are joined. */
export interface PlanarSides {
  /** The places, m. */
  readonly places: readonly Point2[];
  /** Which of them are joined. */
  readonly sides: readonly PlanarSide[];
}

/**
 * The sides of the outline, its cutouts, and the guides, inside the panel.
 *
 * @param outline the panel
 * @param guides boxes and places to follow
 * @param size of triangles, which says how near a guide may come to an outline that it meets at a sharp angle
 */
export function planarSides(outline: Outline, guides: MeshGuides, size: SizeAt): PlanarSides {
  const { length, width, cutouts } = outline;
  const near = 1e-7 * Math.max(length, width);
  const rim = linesOf(boxRing({ left: 0, bottom: 0, width: length, height: width }));
  const boxes = guides.boxes.flatMap((box) => linesOf(boxRing(box)));
  const rings = cutouts.flatMap((cutout) => linesOf(meshRing(cutout, [...rim, ...boxes], near)));
  const [whole, all] = [
    [...rim, ...rings],
    [...rim, ...rings, ...boxes],
  ];
  const parts = (lines: readonly Line[]): Line[] =>
    lines.flatMap((line) =>
      partsOf(line, all, guides.places, near).filter(([a, b]) => inPanel([a, b], outline, near)),
    );
  const edges = parts(whole).filter((line) => isRimOfMaterial(line, outline, near));
  const inner = parts(boxes).filter(([a, b]) => isMaterial(outline, halfWay(a, b)));
  return joined(edges, clearOfCusps(inner, edges, size), guides.places, outline, near);
}

/** Numbered places; sides that come twice count once. */
function joined(
  edges: readonly Line[],
  inner: readonly Line[],
  wanted: readonly Point2[],
  { length, width }: Outline,
  near: number,
): PlanarSides {
  const places: Point2[] = [];
  const numberOf = ({ x, y }: Point2): number => {
    const place = { x: ontoRim(x, length, near), y: ontoRim(y, width, near) };
    const known = places.findIndex((other) => apart(other, place) < near);
    return known >= 0 ? known : places.push(place) - 1;
  };
  const sides = new Map<number, PlanarSide>();
  [...edges, ...inner].forEach(([from, to], i) => {
    const [a, b] = [numberOf(from), numberOf(to)];
    const key = keyOf(a, b);
    if (a !== b && !sides.has(key)) sides.set(key, [a, b, i < edges.length]);
  });
  for (const place of wanted) numberOf(place);
  return inOrder(places, [...sides.values()], { length, width });
}

/** The same places and sides in an order that tells nothing of how they were drawn, without the round-off of it. */
function inOrder(
  places: readonly Point2[],
  sides: readonly PlanarSide[],
  { length, width }: Pick<Outline, "length" | "width">,
): PlanarSides {
  const grid = gridOf({ length, width });
  const kept = (at: number, extent: number): number => (at === 0 || at === extent ? at : settled(at, grid));
  const order = sorted(
    places.map(({ x, y }, was) => ({ x, y, was })),
    grid,
  );
  const numbers = new Map(order.map(({ was }, number) => [was, number]));
  const ends = sides.map(([a, b, bounds]): PlanarSide => {
    const [one, other] = [under(numbers, a), under(numbers, b)];
    return [Math.min(one, other), Math.max(one, other), bounds];
  });
  return {
    places: order.map(({ x, y }) => ({ x: kept(x, length), y: kept(y, width) })),
    sides: ends.sort((a, b) => a[0] - b[0] || a[1] - b[1]),
  };
}

function linesOf(ring: readonly Point2[]): readonly Line[] {
  return ring.map((place, i) => [place, ring[(i + 1) % ring.length]!]);
}

/** A place a hair off the rim lies on it: sums of drawn sizes seldom meet it to the last digit. */
function ontoRim(at: number, extent: number, near: number): number {
  if (Math.abs(at) < near) return 0;
  return Math.abs(at - extent) < near ? extent : at;
}

function inPanel(line: Line, { length, width }: Outline, near: number): boolean {
  return line.every(({ x, y }) => x > -near && x < length + near && y > -near && y < width + near);
}

/** A line on the panel's own sides counts where material lies behind it; one inside the panel always. */
function isRimOfMaterial([a, b]: Line, outline: Outline, near: number): boolean {
  const { x, y } = halfWay(a, b);
  const behind = { x: pulledIn(x, outline.length, near), y: pulledIn(y, outline.width, near) };
  return (behind.x === x && behind.y === y) || isMaterial(outline, behind);
}

function pulledIn(at: number, extent: number, near: number): number {
  if (Math.abs(at) < near) return 10 * near;
  return Math.abs(at - extent) < near ? extent - 10 * near : at;
}

function boxRing({ left, bottom, width, height }: MeshGuides["boxes"][number]): readonly Point2[] {
  const [right, top] = [left + width, bottom + height];
  return [
    { x: left, y: bottom },
    { x: right, y: bottom },
    { x: right, y: top },
    { x: left, y: top },
  ];
}

/** A line's parts between its ends and where others meet it. */
function partsOf([from, to]: Line, lines: readonly Line[], places: readonly Point2[], near: number): Line[] {
  const on = (place: Point2): boolean => toSide(place, from, to) < near;
  const ends = [...lines.flat(), ...places].filter(on);
  const crossings = lines.flatMap(([a, b]) => crossing(from, to, a, b) ?? []);
  const along = (place: Point2): number => apart(from, place);
  const cuts = [from, to, ...ends, ...crossings]
    .sort((a, b) => along(a) - along(b))
    .filter((place, i, all) => i === 0 || apart(place, all[i - 1]!) > near);
  return cuts.slice(1).map((cut, i): Line => [cuts[i]!, cut]);
}

/** Where two lines cross between their ends. */
function crossing(a: Point2, b: Point2, c: Point2, d: Point2): Point2[] | undefined {
  const [abx, aby, cdx, cdy] = [b.x - a.x, b.y - a.y, d.x - c.x, d.y - c.y];
  const turn = abx * cdy - aby * cdx;
  if (Math.abs(turn) < 1e-12 * Math.hypot(abx, aby) * Math.hypot(cdx, cdy)) return undefined;
  const along = ((c.x - a.x) * cdy - (c.y - a.y) * cdx) / turn;
  const other = ((c.x - a.x) * aby - (c.y - a.y) * abx) / turn;
  const within = along > 0 && along < 1 && other > 0 && other < 1;
  return within ? [{ x: a.x + along * abx, y: a.y + along * aby }] : undefined;
}

/** A straight line between two places. */
export type Line = readonly [from: Point2, to: Point2];

/** Widest chord of a round hole to begin with, and of a rounded corner; refining halves those that are too long. */
const widest = { circle: Math.PI / 6, corner: Math.PI / 4 };

/**
 * Corners of a cutout's outline, arcs as chords that end where lines cross the arc: a chord cut elsewhere would leave
 * the circle.
 *
 * @param cutout any
 * @param lines the panel's rim and all other lines to follow
 * @param near distance that counts as touching, m
 */
function meshRing({ shape }: Cutout, lines: readonly Line[], near: number): readonly Point2[] {
  const round = circleOf(shape);
  if (round) {
    const circle = { ...round.centre, radius: round.radius };
    const cuts = cutAngles(circle, lines, near).sort((a, b) => a - b);
    const from = cuts[0] ?? 0;
    return withoutRepeats(chordEnds(circle, [...cuts, from + 2 * Math.PI], from, widest.circle), near);
  }
  return withoutRepeats(
    shape.sides.flatMap((side) => sideCorners(side, lines, near)),
    near,
  );
}

/** The beginning of a straight side; of an arc both ends and all between. */
function sideCorners(side: Side, lines: readonly Line[], near: number): readonly Point2[] {
  if (side.kind === "line") return [side.from];
  const arc = { ...side.centre, radius: side.radius };
  const end = side.start + side.sweep;
  const [from, to] = side.sweep > 0 ? [side.start, end] : [end, side.start];
  const cuts = cutAngles(arc, lines, near)
    .map((angle) => angle + 2 * Math.PI * Math.ceil((from - angle) / (2 * Math.PI)))
    .filter((angle) => angle > from && angle < to);
  const corners = chordEnds(arc, [...cuts.sort((a, b) => a - b), to], from, widest.corner);
  return side.sweep > 0 ? corners : corners.toReversed();
}

/** Ends of chords from an angle to the last of the cuts, each cut being one of them. */
function chordEnds(
  { x, y, radius }: Arc,
  cuts: readonly number[],
  from: number,
  most: number,
): readonly Point2[] {
  const angles = [from, ...cuts].flatMap((angle, i, all) => {
    const next = all[i + 1] ?? angle;
    const parts = Math.max(1, Math.ceil((next - angle) / most - 1e-6));
    return Array.from({ length: parts }, (_, part) => angle + ((next - angle) * part) / parts);
  });
  return angles.map((angle) => ({ x: x + radius * Math.cos(angle), y: y + radius * Math.sin(angle) }));
}

/** Where lines cross or touch a circle, rad. */
function cutAngles({ x, y, radius }: Arc, lines: readonly Line[], near: number): number[] {
  return lines.flatMap(([a, b]) => {
    const length = Math.hypot(b.x - a.x, b.y - a.y);
    const [dx, dy] = [(b.x - a.x) / length, (b.y - a.y) / length];
    const foot = (x - a.x) * dx + (y - a.y) * dy;
    const aside = (x - a.x) * dy - (y - a.y) * dx;
    if (Math.abs(aside) > radius + near) return [];
    const reach = Math.sqrt(Math.max(0, radius ** 2 - aside ** 2));
    return [foot - reach, foot + reach]
      .filter((along) => along > -near && along < length + near)
      .map((along) => Math.atan2(a.y + along * dy - y, a.x + along * dx - x));
  });
}

function withoutRepeats(ring: readonly Point2[], near: number): readonly Point2[] {
  return ring.filter((place, i) => {
    const next = ring[(i + 1) % ring.length]!;
    return Math.hypot(place.x - next.x, place.y - next.y) > near;
  });
}

/** Below this angle no sound element fits between two lines, rad. */
const sharp = (28 * Math.PI) / 180;
/** A line is taken up again where it is so far from the outline, in sizes. */
const takenUp = 0.3;
/** Steps in which that place is looked for, a size. */
const step = 0.25;

/**
 * The lines without their ends that lie in a cusp: there the make-up of an element is that of its middle.
 *
 * @param lines parts between places where they meet others
 * @param edges of the outline and its cutouts
 * @param size of triangles
 */
function clearOfCusps(lines: readonly Line[], edges: readonly Line[], size: SizeAt): readonly Line[] {
  return lines.flatMap((line) => {
    const from = clearEnd(line, edges, size);
    const to = from && clearEnd([line[1], from], edges, size);
    return from && to && apart(from, to) > step * size(from) ? [[from, to] as const] : [];
  });
}

/** Where a line is clear of the outline that it meets at its first end; undefined when nowhere. */
function clearEnd([from, to]: Line, edges: readonly Line[], size: SizeAt): Point2 | undefined {
  const meets = edges.some(([a, b]) => isSharp(from, to, a, b) || isSharp(from, to, b, a));
  if (!meets) return from;
  const length = apart(from, to);
  for (let along = step * size(from); along < length; along += step * size(from)) {
    const place: Point2 = {
      x: from.x + ((to.x - from.x) * along) / length,
      y: from.y + ((to.y - from.y) * along) / length,
    };
    if (edges.every(([a, b]) => toSide(place, a, b) > takenUp * size(place))) return place;
  }
  return undefined;
}

/** Whether an edge from a leaves a line's first end at a sharp angle without lying on the line. */
function isSharp(from: Point2, to: Point2, a: Point2, b: Point2): boolean {
  if (apart(from, a) > 1e-6 * apart(from, to)) return false;
  const [ux, uy, vx, vy] = [to.x - from.x, to.y - from.y, b.x - a.x, b.y - a.y];
  const angle = Math.abs(Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy));
  return angle > 1e-6 && angle < sharp;
}
