/** Rectangles with rounded corners, up to a circle: the shape of every opening. */

/** A rectangle on the plate, from the plate's lower left corner. */
export interface Rectangle {
  /** Distance of its left side from the plate's left edge, m. */
  readonly left: number;
  /** Distance of its lower side from the plate's lower edge, m. */
  readonly bottom: number;
  /** m */
  readonly width: number;
  /** m */
  readonly height: number;
}

/** A rectangle with rounded corners; a circle has a corner radius of half its width and height. */
export interface RoundedRectangle extends Rectangle {
  /** m */
  readonly cornerRadius: number;
}

/** Its area, m2. */
export function roundedArea({ width, height, cornerRadius }: RoundedRectangle): number {
  return width * height - (4 - Math.PI) * cornerRadius ** 2;
}

/** Whether a place lies inside, the rim not counted. */
export function isInside(shape: RoundedRectangle, x: number, y: number): boolean {
  const { left, bottom, width, height, cornerRadius } = shape;
  const between = x > left && x < left + width && y > bottom && y < bottom + height;
  const place = { left: x, bottom: y, width: 0, height: 0 };
  return between && (cornerRadius === 0 || distance(core(shape), place) < cornerRadius);
}

/** Whether two shapes have more than their rims in common. */
export function shareArea(one: RoundedRectangle, other: RoundedRectangle): boolean {
  const overlapping = gap(one, other, "x") < 0 && gap(one, other, "y") < 0;
  const reach = one.cornerRadius + other.cornerRadius;
  return overlapping && (reach === 0 || distance(core(one), core(other)) < reach);
}

function distance(one: Rectangle, other: Rectangle): number {
  return Math.hypot(Math.max(gap(one, other, "x"), 0), Math.max(gap(one, other, "y"), 0));
}

/** The rectangle of the corner centres: the shape is all within one corner radius of it. */
function core({ left, bottom, width, height, cornerRadius: r }: RoundedRectangle): Rectangle {
  return { left: left + r, bottom: bottom + r, width: width - 2 * r, height: height - 2 * r };
}

/** Clear distance between two rectangles along one axis; negative by as much as they overlap. */
export function gap(one: Rectangle, other: Rectangle, axis: "x" | "y"): number {
  const span = ({ left, bottom, width, height }: Rectangle): readonly [number, number] =>
    axis === "x" ? [left, left + width] : [bottom, bottom + height];
  const [a, b] = [span(one), span(other)];
  return Math.max(a[0], b[0]) - Math.min(a[1], b[1]);
}
