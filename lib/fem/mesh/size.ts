/** What a mesh must follow, and how large its elements may be. */
import { apart, type Box2, boundsOf, type Point2, sharpCornersOf } from "../../shape/index.js";
import { arcsOf, type Outline } from "./outline.js";

/** A rectangle whose sides must be mesh lines: a patch of load, a batten. */
export type MeshBox = Box2;

/** What a mesh must follow besides the outline. */
export interface MeshGuides {
  /** Rectangles whose sides must be mesh lines. */
  readonly boxes: readonly MeshBox[];
  /** Sharp corners inside the panel, where strains pile up. */
  readonly corners: readonly Point2[];
  /** Width of a row of elements along all rims, m. */
  readonly rim: number;
  /** Whether other faces share the panel's four sides: then no node is added there but the places. */
  readonly shared: boolean;
  /** Places that shall be nodes where there is room. */
  readonly places: readonly Point2[];
}

/** How large elements may be at a place, m. */
export type SizeAt = (place: Point2) => number;

/** How fast elements grow away from a corner: size per distance. */
const growth = 0.35;
/** Size at a sharp corner of an opening, as a share of the largest. */
const cornerShare = 1 / 2;
/** Elements around a full circle, as long as they stay above a share of the largest. */
const aroundCircle = 28;
const arcShare = 1 / 4;

/**
 * Sharp corners inside the panel, where strains pile up: where the material turns back on itself, and where a strip
 * of another make-up ends.
 */
export function sharpCorners(
  { length, width, cutouts }: Outline,
  strips: readonly Box2[],
): readonly Point2[] {
  const ofCutouts = cutouts
    .flatMap(({ shape }) => sharpCornersOf(shape))
    .map(({ x, y }): Point2 => ({ x, y }));
  const ofStrips = strips.flatMap(({ left, bottom, width: across, height }): Point2[] => [
    { x: left, y: bottom },
    { x: left + across, y: bottom },
    { x: left + across, y: bottom + height },
    { x: left, y: bottom + height },
  ]);
  return [...ofCutouts, ...ofStrips].filter(({ x, y }) => x > 0 && x < length && y > 0 && y < width);
}

/** A side of a patch nearer than this to one of the panel, an opening or a strip is meshed as that one, of its extent. */
const nearSide = 2e-3;

/**
 * A patch of load as the mesh follows it: a side that all but meets a side of the panel, of an opening or of a strip
 * lies on that, since an element between them would be a sliver. Where the load itself lies does not change.
 */
export function onNearSides(
  { left, bottom, width, height }: MeshBox,
  { length, width: across, cutouts }: Outline,
  strips: readonly Box2[],
): MeshBox {
  const boxes = [
    { left: 0, bottom: 0, width: length, height: across },
    ...cutouts.map(({ shape }) => boundsOf(shape)),
    ...strips,
  ];
  const columns = boxes.flatMap((one) => [one.left, one.left + one.width]);
  const rows = boxes.flatMap((one) => [one.bottom, one.bottom + one.height]);
  const near = nearSide * Math.max(length, across);
  const onSide = (at: number, sides: readonly number[]): number =>
    sides.find((side) => Math.abs(side - at) < near) ?? at;
  const [low, high] = [onSide(left, columns), onSide(left + width, columns)];
  const [foot, top] = [onSide(bottom, rows), onSide(bottom + height, rows)];
  return high > low && top > foot
    ? { left: low, bottom: foot, width: high - low, height: top - foot }
    : { left, bottom, width, height };
}

/**
 * Sizes graded towards sharp corners and small radii.
 *
 * @param outline the panel
 * @param corners sharp ones
 * @param largest size far from any of them, m
 */
export function gradedSize(outline: Outline, corners: readonly Point2[], largest: number): SizeAt {
  const arcs = outline.cutouts.flatMap(arcsOf);
  return (place) => {
    let size = largest;
    for (const corner of corners)
      size = Math.min(size, cornerShare * largest + growth * apart(place, corner));
    for (const arc of arcs) {
      const away = Math.max(0, apart(place, { x: arc.x, y: arc.y }) - arc.radius);
      const own = Math.max((2 * Math.PI * arc.radius) / aroundCircle, arcShare * largest);
      size = Math.min(size, own + growth * away);
    }
    return size;
  };
}

/**
 * Sizes along a line, graded towards places on it.
 *
 * @param places where strains pile up, m
 * @param largest size far from them, m
 */
export function gradedAlong(places: readonly number[], largest: number): (at: number) => number {
  return (at) =>
    Math.min(largest, ...places.map((place) => cornerShare * largest + growth * Math.abs(at - place)));
}

/**
 * Divides a line so that no part is longer than the size at its place.
 *
 * @param from first end, m
 * @param to second end, m
 * @param size at a place of the line, m
 * @returns places from `from` to `to`, both included
 */
export function divided(from: number, to: number, size: (at: number) => number): readonly number[] {
  const samples = 32;
  const step = (to - from) / samples;
  const counted = [0];
  for (let i = 0; i < samples; i++) counted.push(counted[i]! + step / size(from + (i + 0.5) * step));
  const total = counted[samples]!;
  const parts = Math.max(1, Math.ceil(total - 1e-9));
  return Array.from({ length: parts + 1 }, (_, part) => {
    if (part === parts) return to;
    const wanted = (part * total) / parts;
    const after = counted.findIndex((value) => value > wanted);
    const [low, high] = [counted[after - 1]!, counted[after]!];
    return from + (after - 1 + (wanted - low) / (high - low)) * step;
  });
}
