/** A shape seen as something simpler: its corners, its circle, its rounded rectangle; and as text for a drawing. */
import type { RoundedBox } from "./makers.js";
import { apart, type Point2 } from "./point.js";
import { boundsOf, type Shape } from "./shape.js";
import { type ArcSide, pointAt } from "./side.js";

/** Parts of a shape's size below which two lengths of it count as one. */
const sameness = 1e-9;

/** A circle of which a shape's path follows a part. */
export interface Circle {
  /** Its centre. */
  readonly centre: Point2;
  /** Its radius, in the unit of the whole. */
  readonly radius: number;
}

/** The circle that a shape is, if it is one. */
export function circleOf({ sides }: Shape): Circle | undefined {
  const [first] = sides;
  if (first?.kind !== "arc") return undefined;
  const { centre, radius } = first;
  const near = sameness * radius;
  const same = sides.every(
    (side) =>
      side.kind === "arc" && apart(side.centre, centre) < near && Math.abs(side.radius - radius) < near,
  );
  return same ? { centre, radius } : undefined;
}

/** The rectangle along the axes that a shape is, its corners sharp or alike round; a slot and a circle are such. */
export function roundedBoxOf(shape: Shape): RoundedBox | undefined {
  const box = boundsOf(shape);
  const near = sameness * (box.width + box.height);
  const rounds = shape.sides.filter((side): side is ArcSide => side.kind === "arc");
  const radius = rounds[0]?.radius ?? 0;
  const [right, top] = [box.left + box.width, box.bottom + box.height];
  const isSide = ({ from, to }: { from: Point2; to: Point2 }): boolean =>
    [box.left, right].some((x) => Math.abs(from.x - x) < near && Math.abs(to.x - x) < near) ||
    [box.bottom, top].some((y) => Math.abs(from.y - y) < near && Math.abs(to.y - y) < near);
  const isCorner = ({ centre, radius: own, sweep }: ArcSide): boolean =>
    Math.abs(own - radius) < near &&
    Math.abs(Math.abs(sweep) - Math.PI / 2) < 1e-9 &&
    Math.min(Math.abs(centre.x - box.left - own), Math.abs(right - own - centre.x)) < near &&
    Math.min(Math.abs(centre.y - box.bottom - own), Math.abs(top - own - centre.y)) < near;
  const corners = rounds.length === 4 || (rounds.length === 0 && shape.sides.length === 4);
  const fits = shape.sides.every((side) => (side.kind === "line" ? isSide(side) : isCorner(side)));
  return corners && fits ? { ...box, radius } : undefined;
}

/** The corners of a shape with straight sides only. */
export function cornersOf({ sides }: Shape): readonly Point2[] | undefined {
  return sides.every(({ kind }) => kind === "line") ? sides.map(({ from }) => from) : undefined;
}

/** The circles that parts of a shape's path follow, each once. */
export function circlesOf({ sides }: Shape): readonly Circle[] {
  const circles: Circle[] = [];
  for (const side of sides) {
    if (side.kind === "line") continue;
    const known = circles.some(
      ({ centre, radius }) =>
        apart(centre, side.centre) < sameness * radius && Math.abs(radius - side.radius) < sameness * radius,
    );
    if (!known) circles.push({ centre: side.centre, radius: side.radius });
  }
  return circles;
}

/** Sharp corners: where a path changes its direction at once, by more than a tenth of a degree. */
export function sharpCornersOf({ sides }: Shape): readonly Point2[] {
  return sides.flatMap((side, i) => {
    const before = sides[(i || sides.length) - 1] ?? side;
    const turn = directionAt(side, 0) - directionAt(before, 1);
    return Math.abs(Math.sin(turn / 2)) > 1e-3 ? [side.from] : [];
  });
}

function directionAt(side: Shape["sides"][number], end: 0 | 1): number {
  if (side.kind === "line") return Math.atan2(side.to.y - side.from.y, side.to.x - side.from.x);
  return side.start + end * side.sweep + Math.sign(side.sweep) * (Math.PI / 2);
}

/**
 * Points along a shape's path: the ends of its sides, and arcs as chords.
 *
 * @param turn the most that one chord stands for, rad
 */
export function sampled({ sides }: Shape, turn: number): readonly Point2[] {
  return sides.flatMap((side) => {
    const parts = side.kind === "line" ? 1 : Math.max(1, Math.ceil(Math.abs(side.sweep) / turn - 1e-9));
    return Array.from({ length: parts }, (_, i) => pointAt(side, i / parts));
  });
}

/**
 * A shape's path as the text of a drawing whose y runs down.
 *
 * @param shown a number as text
 */
export function pathData({ sides }: Shape, shown: (value: number) => string): string {
  const place = ({ x, y }: Point2): string => `${shown(x)} ${shown(-y)}`;
  const [first] = sides;
  if (!first) return "";
  const steps = sides.map((side) =>
    side.kind === "line"
      ? `L${place(side.to)}`
      : `A${shown(side.radius)} ${shown(side.radius)} 0 0 ${side.sweep > 0 ? 0 : 1} ${place(side.to)}`,
  );
  return `M${place(first.from)}${steps.join("")}Z`;
}
