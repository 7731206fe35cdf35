/** Every line a mesh must follow, cut where lines meet, with no place twice. */
import { clearOfCusps } from "./cusps.js";
import type { MeshGuides } from "./grid-corners.js";
import { type Line, meshRing } from "./mesh-ring.js";
import { apart, isMaterial, type Outline, type Spot } from "./outline.js";
import { toSide } from "./outline-faults.js";
import { keyOf } from "./quad-mesh.js";
import type { SizeAt } from "./size.js";

/** Two places that are joined, and whether material ends there. */
export type PlanarSide = readonly [from: number, to: number, bounds: boolean];

/** Places, and pairs of them that are joined. */
export interface PlanarSides {
  readonly places: readonly Spot[];
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
