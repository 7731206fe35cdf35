/** Every line a mesh must follow, cut where lines meet, with no place twice. */

import { circleOf, type Side } from "../../shape/index.js";
import { type Arc, apart, type Cutout, isMaterial, type Outline, type Spot } from "./outline.js";
import { toSide } from "./outline-faults.js";
import { keyOf } from "./quad-mesh.js";
import type { MeshGuides, SizeAt } from "./size.js";

/** Two places that are joined, and whether material ends there. */
export type PlanarSide = readonly [from: number, to: number, bounds: boolean];

/** Places, and pairs of them that are joined. */
export interface PlanarSides {
  /** The places, m. */
  readonly places: readonly Spot[];
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
  const inner = parts(boxes).filter(([a, b]) => isMaterial(outline, middle(a, b)));
  return joined(edges, clearOfCusps(inner, edges, size), guides.places, outline, near);
}

/** Numbered places; sides that come twice count once. */
function joined(
  edges: readonly Line[],
  inner: readonly Line[],
  wanted: readonly Spot[],
  { length, width }: Outline,
  near: number,
): PlanarSides {
  const places: Spot[] = [];
  const numberOf = ([x, y]: Spot): number => {
    const place: Spot = [ontoRim(x, length, near), ontoRim(y, width, near)];
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
  return { places, sides: [...sides.values()] };
}

function linesOf(ring: readonly Spot[]): readonly Line[] {
  return ring.map((place, i) => [place, ring[(i + 1) % ring.length]!]);
}

function middle(a: Spot, b: Spot): Spot {
  return [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
}

/** A place a hair off the rim lies on it: sums of drawn sizes seldom meet it to the last digit. */
function ontoRim(at: number, extent: number, near: number): number {
  if (Math.abs(at) < near) return 0;
  return Math.abs(at - extent) < near ? extent : at;
}

function inPanel(line: Line, { length, width }: Outline, near: number): boolean {
  return line.every(([x, y]) => x > -near && x < length + near && y > -near && y < width + near);
}

/** A line on the panel's own sides counts where material lies behind it; one inside the panel always. */
function isRimOfMaterial([a, b]: Line, outline: Outline, near: number): boolean {
  const [x, y] = middle(a, b);
  const behind: Spot = [pulledIn(x, outline.length, near), pulledIn(y, outline.width, near)];
  return (behind[0] === x && behind[1] === y) || isMaterial(outline, behind);
}

function pulledIn(at: number, extent: number, near: number): number {
  if (Math.abs(at) < near) return 10 * near;
  return Math.abs(at - extent) < near ? extent - 10 * near : at;
}

function boxRing({ left, bottom, width, height }: MeshGuides["boxes"][number]): readonly Spot[] {
  const [right, top] = [left + width, bottom + height];
  return [
    [left, bottom],
    [right, bottom],
    [right, top],
    [left, top],
  ];
}

/** A line's parts between its ends and where others meet it. */
function partsOf([from, to]: Line, lines: readonly Line[], places: readonly Spot[], near: number): Line[] {
  const on = (place: Spot): boolean => toSide(place, from, to) < near;
  const ends = [...lines.flat(), ...places].filter(on);
  const crossings = lines.flatMap(([a, b]) => crossing(from, to, a, b) ?? []);
  const along = (place: Spot): number => apart(from, place);
  const cuts = [from, to, ...ends, ...crossings]
    .sort((a, b) => along(a) - along(b))
    .filter((place, i, all) => i === 0 || apart(place, all[i - 1]!) > near);
  return cuts.slice(1).map((cut, i): Line => [cuts[i]!, cut]);
}

/** Where two lines cross between their ends. */
function crossing(a: Spot, b: Spot, c: Spot, d: Spot): Spot[] | undefined {
  const [abx, aby, cdx, cdy] = [b[0] - a[0], b[1] - a[1], d[0] - c[0], d[1] - c[1]];
  const turn = abx * cdy - aby * cdx;
  if (Math.abs(turn) < 1e-12 * Math.hypot(abx, aby) * Math.hypot(cdx, cdy)) return undefined;
  const along = ((c[0] - a[0]) * cdy - (c[1] - a[1]) * cdx) / turn;
  const other = ((c[0] - a[0]) * aby - (c[1] - a[1]) * abx) / turn;
  const within = along > 0 && along < 1 && other > 0 && other < 1;
  return within ? [[a[0] + along * abx, a[1] + along * aby]] : undefined;
}

/** A straight line between two places. */
export type Line = readonly [from: Spot, to: Spot];

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
function meshRing({ shape }: Cutout, lines: readonly Line[], near: number): readonly Spot[] {
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
function sideCorners(side: Side, lines: readonly Line[], near: number): readonly Spot[] {
  if (side.kind === "line") return [[side.from.x, side.from.y]];
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
): readonly Spot[] {
  const angles = [from, ...cuts].flatMap((angle, i, all) => {
    const next = all[i + 1] ?? angle;
    const parts = Math.max(1, Math.ceil((next - angle) / most - 1e-6));
    return Array.from({ length: parts }, (_, part) => angle + ((next - angle) * part) / parts);
  });
  return angles.map((angle): Spot => [x + radius * Math.cos(angle), y + radius * Math.sin(angle)]);
}

/** Where lines cross or touch a circle, rad. */
function cutAngles({ x, y, radius }: Arc, lines: readonly Line[], near: number): number[] {
  return lines.flatMap(([a, b]) => {
    const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
    const [dx, dy] = [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
    const foot = (x - a[0]) * dx + (y - a[1]) * dy;
    const aside = (x - a[0]) * dy - (y - a[1]) * dx;
    if (Math.abs(aside) > radius + near) return [];
    const reach = Math.sqrt(Math.max(0, radius ** 2 - aside ** 2));
    return [foot - reach, foot + reach]
      .filter((along) => along > -near && along < length + near)
      .map((along) => Math.atan2(a[1] + along * dy - y, a[0] + along * dx - x));
  });
}

function withoutRepeats(ring: readonly Spot[], near: number): readonly Spot[] {
  return ring.filter((place, i) => {
    const next = ring[(i + 1) % ring.length]!;
    return Math.hypot(place[0] - next[0], place[1] - next[1]) > near;
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
function clearEnd([from, to]: Line, edges: readonly Line[], size: SizeAt): Spot | undefined {
  const meets = edges.some(([a, b]) => isSharp(from, to, a, b) || isSharp(from, to, b, a));
  if (!meets) return from;
  const length = apart(from, to);
  for (let along = step * size(from); along < length; along += step * size(from)) {
    const place: Spot = [
      from[0] + ((to[0] - from[0]) * along) / length,
      from[1] + ((to[1] - from[1]) * along) / length,
    ];
    if (edges.every(([a, b]) => toSide(place, a, b) > takenUp * size(place))) return place;
  }
  return undefined;
}

/** Whether an edge from a leaves a line's first end at a sharp angle without lying on the line. */
function isSharp(from: Spot, to: Spot, a: Spot, b: Spot): boolean {
  if (apart(from, a) > 1e-6 * apart(from, to)) return false;
  const [ux, uy, vx, vy] = [to[0] - from[0], to[1] - from[1], b[0] - a[0], b[1] - a[1]];
  const angle = Math.abs(Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy));
  return angle > 1e-6 && angle < sharp;
}
