/** A panel's outline: a rectangle from 0, 0 to length, width, and what is cut out of it. All in m. */

/** A rectangle, with rounded corners where a radius is given; one that reaches the rim is a notch. */
export interface CutRectangle {
  readonly kind: "rectangle";
  /** What messages call it. */
  readonly name: string;
  readonly left: number;
  readonly bottom: number;
  readonly width: number;
  readonly height: number;
  /** 0 for sharp corners, half of the smaller side for a slot. */
  readonly radius: number;
}

/** A round hole. */
export interface CutCircle {
  readonly kind: "circle";
  readonly name: string;
  readonly x: number;
  readonly y: number;
  readonly radius: number;
}

/** Any shape with straight sides. */
export interface CutPolygon {
  readonly kind: "polygon";
  readonly name: string;
  readonly points: readonly Spot[];
}

/** An opening or a notch. */
export type Cutout = CutRectangle | CutCircle | CutPolygon;

/** x and y, m. */
export type Spot = readonly [x: number, y: number];

/** The panel with its cutouts. */
export interface Outline {
  readonly length: number;
  readonly width: number;
  readonly cutouts: readonly Cutout[];
}

/** A circle that part of an outline follows. */
export interface Arc {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
}

/** Chords of a quarter of a circle in checks. */
const usualChords = 4;

/** The circles a cutout's outline follows. */
export function arcsOf(cutout: Cutout): readonly Arc[] {
  if (cutout.kind === "circle") return [cutout];
  if (cutout.kind === "polygon" || cutout.radius === 0) return [];
  const { left, bottom, width, height, radius } = cutout;
  return [
    [left + radius, bottom + radius],
    [left + width - radius, bottom + radius],
    [left + width - radius, bottom + height - radius],
    [left + radius, bottom + height - radius],
  ].map(([x = 0, y = 0]) => ({ x, y, radius }));
}

/**
 * Corners of a cutout's outline counterclockwise, arcs as chords.
 *
 * @param chords of each quarter of a circle
 */
export function ringOf(cutout: Cutout, chords: number = usualChords): readonly Spot[] {
  if (cutout.kind === "polygon") return cutout.points;
  if (cutout.kind === "circle") return quarters([cutout, cutout, cutout, cutout], chords);
  const { left, bottom, width, height, radius } = cutout;
  const [right, top] = [left + width, bottom + height];
  if (radius > 0) return quarters(arcsOf(cutout), chords);
  return [
    [left, bottom],
    [right, bottom],
    [right, top],
    [left, top],
  ];
}

/** A quarter of a circle about each of four centres, from the lower left on, without places that fall together. */
function quarters(arcs: readonly Arc[], chords: number): readonly Spot[] {
  const places = arcs.flatMap(({ x, y, radius }, quarter) =>
    Array.from({ length: chords + 1 }, (_, i): Spot => {
      const angle = (Math.PI / 2) * (quarter + 2 + i / chords);
      return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)];
    }),
  );
  return places.filter((place, i) => apart(place, places[(i + 1) % places.length]!) > 1e-9);
}

/** Distance of two places. */
export function apart(a: Spot, b: Spot): number {
  const dx = a[0] - b[0];
  const dy = a[1] - b[1];
  return Math.sqrt(dx * dx + dy * dy);
}

/** Whether a place lies in a cutout. */
export function isCut(cutout: Cutout, [x, y]: Spot): boolean {
  if (cutout.kind === "circle") return Math.hypot(x - cutout.x, y - cutout.y) < cutout.radius;
  if (cutout.kind === "polygon") return isInside(cutout.points, [x, y]);
  const { left, bottom, width, height, radius } = cutout;
  const dx = Math.abs(x - left - width / 2);
  const dy = Math.abs(y - bottom - height / 2);
  if (dx > width / 2 || dy > height / 2) return false;
  const cx = dx - (width / 2 - radius);
  const cy = dy - (height / 2 - radius);
  return !(cx > 0 && cy > 0 && Math.hypot(cx, cy) > radius);
}

/** Whether a place is material. */
export function isMaterial({ length, width, cutouts }: Outline, [x, y]: Spot): boolean {
  const within = x >= 0 && x <= length && y >= 0 && y <= width;
  return within && !cutouts.some((cutout) => isCut(cutout, [x, y]));
}

function isInside(ring: readonly Spot[], [x, y]: Spot): boolean {
  let inside = false;
  ring.forEach(([ax, ay], i) => {
    const [bx, by] = ring[(i + 1) % ring.length]!;
    if (ay > y !== by > y && x < ax + ((bx - ax) * (y - ay)) / (by - ay)) inside = !inside;
  });
  return inside;
}
