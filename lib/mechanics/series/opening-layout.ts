/** What openings leave of a plate, and what is wrong with them. */
import { Refusal } from "../../refusal.js";
import {
  areaOf,
  type Box2,
  boundsOf,
  boxGap,
  type RoundedBox,
  roundedBoxOf,
  type Shape,
} from "../../shape/index.js";

/** The sides of a plate, m. */
export interface PlateSides {
  /** Along x. */
  readonly length: number;
  /** Along y. */
  readonly width: number;
}

/** Rounding allowed where an opening ends flush with an edge, as a share of the side. */
const flush = 1e-9;

/** The share of the plate's area that is cut away. */
export function cutAwayShare({ length, width }: PlateSides, openings: readonly Shape[]): number {
  return openings.reduce((sum, opening) => sum + areaOf(opening), 0) / (length * width);
}

/**
 * The narrowest bar left between two openings, or between an opening and an edge, as a share of the side
 * across it; 1 without openings. A notch open to the edge leaves no bar there.
 */
export function narrowestBar(sides: PlateSides, openings: readonly Shape[]): number {
  const boxes = openings.map(boundsOf);
  const bars = boxes.flatMap((one, i) => [
    ...rims(sides, one),
    ...boxes.slice(i + 1).flatMap((other) => between(sides, one, other)),
  ]);
  return Math.min(1, ...bars.filter((bar) => bar > flush));
}

function rims({ length, width }: PlateSides, { left, bottom, width: w, height: h }: Box2): number[] {
  return [left / length, (length - left - w) / length, bottom / width, (width - bottom - h) / width];
}

/** The bar between two openings that face each other. */
function between({ length, width }: PlateSides, one: Box2, other: Box2): number[] {
  const [across, up] = [gap(one, other, "x"), gap(one, other, "y")];
  return [...(up < 0 ? [across / length] : []), ...(across < 0 ? [up / width] : [])];
}

/** Whether a rectangle is all on the plate. */
export function isOnPlate({ length, width }: PlateSides, rectangle: Box2): boolean {
  const inside = (from: number, size: number, side: number): boolean =>
    from >= -flush * side && from + size <= (1 + flush) * side;
  return inside(rectangle.left, rectangle.width, length) && inside(rectangle.bottom, rectangle.height, width);
}

/**
 * What is wrong with the openings of a plate.
 *
 * @returns reasons, each with the number of the opening counted from 1
 */
export function openingFaults(sides: PlateSides, openings: readonly Shape[]): string[] {
  const unlike = openings.flatMap((opening, i) => (roundedBoxOf(opening) ? [] : [unlikeRectangle(i)]));
  if (unlike.length > 0) return unlike;
  const boxes = roundedBoxes(openings);
  return boxes.flatMap((opening, i) => {
    const overlapping = boxes.flatMap((other, k) =>
      k > i && shareArea(opening, other) ? [`openings ${i + 1} and ${k + 1} overlap`] : [],
    );
    return [...oneFault(sides, opening, `opening ${i + 1}`), ...overlapping];
  });
}

/**
 * The rectangles that openings are, their corners sharp or round.
 *
 * @throws Refusal for an opening that is none
 */
export function roundedBoxes(openings: readonly Shape[]): readonly RoundedBox[] {
  return openings.map((opening, i) => {
    const box = roundedBoxOf(opening);
    if (!box) throw new Refusal(`plate series: ${unlikeRectangle(i)}`);
    return box;
  });
}

function unlikeRectangle(i: number): string {
  return `opening ${i + 1} must be a rectangle with corners sharp or alike round; panels with others are for the finite elements`;
}

/** Whether two rounded rectangles have more than their rims in common. */
export function shareArea(one: RoundedBox, other: RoundedBox): boolean {
  const overlapping = gap(one, other, "x") < 0 && gap(one, other, "y") < 0;
  const reach = one.radius + other.radius;
  return overlapping && (reach === 0 || boxGap(core(one), core(other)) < reach);
}

/** The rectangle of the corner centres: the shape is all within one corner radius of it. */
function core({ left, bottom, width, height, radius: r }: RoundedBox): Box2 {
  return { left: left + r, bottom: bottom + r, width: width - 2 * r, height: height - 2 * r };
}

/** Clear distance between two rectangles along one axis; negative by as much as they overlap. */
function gap(one: Box2, other: Box2, axis: "x" | "y"): number {
  const span = ({ left, bottom, width, height }: Box2): readonly [number, number] =>
    axis === "x" ? [left, left + width] : [bottom, bottom + height];
  const [a, b] = [span(one), span(other)];
  return Math.max(a[0], b[0]) - Math.min(a[1], b[1]);
}

function oneFault(sides: PlateSides, opening: RoundedBox, name: string): string[] {
  const { width, height } = opening;
  if (!isOnPlate(sides, opening)) return [`${name} must lie on the plate`];
  const through = width >= (1 - flush) * sides.length || height >= (1 - flush) * sides.width;
  return through ? [`${name} cuts the plate in two`] : [];
}
