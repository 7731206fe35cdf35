/** What cannot be cut out of a panel, in words that name the cutout. */
import { Refusal } from "../../refusal.js";
import {
  type ArcSide,
  apart,
  boundsOf,
  circle,
  circleOf,
  gapOf,
  type Point2,
  type RoundedBox,
  rectangle,
  roundedBoxOf,
  selfCrossing,
} from "../../shape/index.js";
import type { Cutout, Outline } from "./outline.js";

/** Gap below which outlines count as touching, as a share of the panel's length. */
const touching = 1e-6;

/**
 * A round cutout, its measures in m.
 *
 * @throws Refusal that names it when its radius is not positive
 */
export function cutCircle(name: string, centre: Point2, radius: number): Cutout {
  refuseUnlessPositive(name, { radius });
  return { name, shape: circle(centre, radius) };
}

/**
 * A rectangular cutout, its measures in m.
 *
 * @throws Refusal that names it when a side is not positive or its corners are too round for it
 */
export function cutRectangle(name: string, { radius, ...box }: RoundedBox): Cutout {
  refuseUnlessPositive(name, { width: box.width, height: box.height });
  if (!(radius >= 0 && radius <= Math.min(box.width, box.height) / 2))
    throw new Refusal(
      `panel mesh: the corner radius of ${name} must be between 0 and half its smaller side, got ${millimetres(radius)}`,
    );
  return { name, shape: rectangle(box, radius) };
}

function refuseUnlessPositive(name: string, sizes: Readonly<Record<string, number>>): void {
  const small = Object.entries(sizes).filter(([, size]) => !(size > 0));
  if (small.length === 0) return;
  const faults = small.map(
    ([word, size]) => `the ${word} of ${name} must be positive, got ${millimetres(size)}`,
  );
  throw new Refusal(`panel mesh: ${faults.join("; ")}`);
}

/**
 * What is wrong with an outline, in words that name the cutout.
 *
 * @returns reasons, none when it can be meshed
 */
export function outlineFaults(outline: Outline): string[] {
  const { length, width, cutouts } = outline;
  const sizes = (["length", "width"] as const)
    .filter((side) => !(outline[side] > 0))
    .map((side) => `the panel's ${side} must be positive, got ${millimetres(outline[side])}`);
  if (sizes.length > 0) return sizes;
  const own = cutouts.flatMap((cutout) => cutoutFaults(cutout, length, width));
  return own.length > 0 ? own : pairFaults(outline);
}

function cutoutFaults(cutout: Cutout, length: number, width: number): string[] {
  const { left, bottom, ...size } = boundsOf(cutout.shape);
  if (left >= length || bottom >= width || left + size.width <= 0 || bottom + size.height <= 0)
    return [`${cutout.name} lies outside the panel`];
  if (grazes(cutout, length, width))
    return [`${cutout.name} touches the panel's edge; leave material there or let it cut through`];
  return selfCrossing(cutout.shape) ? [`the outline of ${cutout.name} crosses itself`] : [];
}

/** Whether a round side meets a side of the panel in one point, where material would end in nothing. */
function grazes({ shape }: Cutout, length: number, width: number): boolean {
  if (roundedBoxOf(shape) && !circleOf(shape)) return false;
  const near = touching * Math.max(length, width);
  const touches = ({ from: { x, y }, start }: ArcSide): boolean =>
    (Math.abs(Math.sin(start)) < touching && Math.min(Math.abs(x), Math.abs(length - x)) < near) ||
    (Math.abs(Math.cos(start)) < touching && Math.min(Math.abs(y), Math.abs(width - y)) < near);
  return shape.sides.some((side) => side.kind === "arc" && touches(side));
}

function pairFaults({ length, width, cutouts }: Outline): string[] {
  const near = touching * Math.max(length, width);
  return cutouts.flatMap((first, i) =>
    cutouts
      .slice(i + 1)
      .flatMap((second) =>
        gapOf(first.shape, second.shape) < near ? [`${first.name} touches or crosses ${second.name}`] : [],
      ),
  );
}

/** Distance of a place from a straight side. */
export function toSide(place: Point2, a: Point2, b: Point2): number {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const along = ((place.x - a.x) * dx + (place.y - a.y) * dy) / (dx * dx + dy * dy || 1);
  const at = Math.min(1, Math.max(0, along));
  return apart(place, { x: a.x + at * dx, y: a.y + at * dy });
}

function millimetres(value: number): string {
  return `${Number((1000 * value).toPrecision(6))} mm`;
}
