/** Plane geometry of what is cut out of a panel: area, perimeter, centre, distance to a point. */
import { Area, Length } from "../../quantity/index.js";
import type { PlacedOpening } from "../parts.js";
import type { PanelPoint } from "../place.js";
import { distanceToSegment, type Flat, isInside, segmentGap, segments, signedArea } from "./polygon.js";

/** The part of an opening that says where it is and what form it has. */
export type Form = Pick<PlacedOpening, "low" | "width" | "height" | "outline">;

/** A point of a panel. */
export function panelPoint(u: number, v: number): PanelPoint {
  return { u: Length.si(u), v: Length.si(v) };
}

/** Area inside the outline. */
export function formArea({ width, height, outline }: Form): Area {
  switch (outline.kind) {
    case "rectangle":
      return Area.si(width * height - (4 - Math.PI) * outline.cornerRadius ** 2);
    case "circle":
      return Area.si((Math.PI / 4) * width ** 2);
    case "polygon":
      return Area.si(Math.abs(signedArea(outline.points)));
  }
}

/** Length of the outline. */
export function formPerimeter({ width, height, outline }: Form): Length {
  switch (outline.kind) {
    case "rectangle":
      return Length.si(2 * (width + height) - (8 - 2 * Math.PI) * outline.cornerRadius);
    case "circle":
      return Length.si(Math.PI * width);
    case "polygon":
      return Length.si(
        segments(outline.points).reduce((sum, [a, b]) => sum + Math.hypot(b.u - a.u, b.v - a.v), 0),
      );
  }
}

/** Centre of the area inside the outline. */
export function formCentre({ low, width, height, outline }: Form): PanelPoint {
  if (outline.kind !== "polygon") return panelPoint(low.u + width / 2, low.v + height / 2);
  const sixfold = 6 * signedArea(outline.points);
  const moments = segments(outline.points).map(([a, b]) => {
    const cross = a.u * b.v - b.u * a.v;
    return { u: (a.u + b.u) * cross, v: (a.v + b.v) * cross };
  });
  const sum = (along: "u" | "v"): number => moments.reduce((total, moment) => total + moment[along], 0);
  return panelPoint(sum("u") / sixfold, sum("v") / sixfold);
}

/** Distance from a point to the outline, negative inside it. */
export function distanceTo({ low, width, height, outline }: Form, { u, v }: Flat): Length {
  const fromCentre = { u: u - low.u - width / 2, v: v - low.v - height / 2 };
  switch (outline.kind) {
    case "rectangle":
      return Length.si(distanceToRectangle(fromCentre, width, height, outline.cornerRadius));
    case "circle":
      return Length.si(Math.hypot(fromCentre.u, fromCentre.v) - width / 2);
    case "polygon": {
      const nearest = Math.min(...segments(outline.points).map((edge) => distanceToSegment({ u, v }, edge)));
      return Length.si(isInside({ u, v }, outline.points) ? -nearest : nearest);
    }
  }
}

function distanceToRectangle({ u, v }: Flat, width: number, height: number, radius: number): number {
  const beyondU = Math.abs(u) - width / 2 + radius;
  const beyondV = Math.abs(v) - height / 2 + radius;
  const outside = Math.hypot(Math.max(beyondU, 0), Math.max(beyondV, 0));
  return outside + Math.min(Math.max(beyondU, beyondV), 0) - radius;
}

/** The outline as a polygon, anticlockwise or clockwise; round parts as chords of `chordsPerTurn` a turn. */
export function formPolygon({ low, width, height, outline }: Form, chordsPerTurn = 96): readonly Flat[] {
  if (outline.kind === "polygon") return outline.points;
  const radius = outline.kind === "circle" ? width / 2 : outline.cornerRadius;
  const quarter = chordsPerTurn / 4;
  const corners = [
    { u: low.u + width - radius, v: low.v + height - radius, turn: 0 },
    { u: low.u + radius, v: low.v + height - radius, turn: 1 },
    { u: low.u + radius, v: low.v + radius, turn: 2 },
    { u: low.u + width - radius, v: low.v + radius, turn: 3 },
  ];
  return corners.flatMap(({ u, v, turn }) =>
    Array.from({ length: radius > 0 ? quarter + 1 : 1 }, (_, i) => {
      const angle = ((turn + i / quarter) * Math.PI) / 2;
      return { u: u + radius * Math.cos(angle), v: v + radius * Math.sin(angle) };
    }),
  );
}

/** What is closer than this counts as touching (a hundredth of a millimetre). */
export const sameness = 1e-5;

/** Do two outlines overlap or touch? */
export function touch(one: Form, other: Form): boolean {
  if (boxesApart(one, other)) return false;
  const [a, b] = [formPolygon(one), formPolygon(other)];
  if (isInside(a[0] as Flat, b) || isInside(b[0] as Flat, a)) return true;
  return segments(a).some((side) => segments(b).some((across) => segmentGap(side, across) <= sameness));
}

function boxesApart(one: Form, other: Form): boolean {
  return (
    one.low.u + one.width + sameness < other.low.u ||
    other.low.u + other.width + sameness < one.low.u ||
    one.low.v + one.height + sameness < other.low.v ||
    other.low.v + other.height + sameness < one.low.v
  );
}
