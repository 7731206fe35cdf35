import { apart, type Cutout, type Outline, ringOf, type Spot } from "./outline.js";

/** Gap below which outlines count as touching, as a share of the panel's length. */
const touching = 1e-6;

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
  const small = sizesOf(cutout).filter(({ value }) => !(value > 0));
  if (small.length > 0)
    return small.map(
      ({ word, value }) => `the ${word} of ${cutout.name} must be positive, got ${millimetres(value)}`,
    );
  const ring = ringOf(cutout);
  if (ring.length < 3) return [`${cutout.name} must have at least three corners, got ${ring.length}`];
  if (
    cutout.kind === "rectangle" &&
    !(cutout.radius >= 0 && cutout.radius <= Math.min(cutout.width, cutout.height) / 2)
  )
    return [
      `the corner radius of ${cutout.name} must be between 0 and half its smaller side, got ${millimetres(cutout.radius)}`,
    ];
  const outside = ring.every(([x]) => x <= 0) || ring.every(([x]) => x >= length);
  const beyond = ring.every(([, y]) => y <= 0) || ring.every(([, y]) => y >= width);
  if (outside || beyond) return [`${cutout.name} lies outside the panel`];
  if (grazes(cutout, length, width))
    return [`${cutout.name} touches the panel's edge; leave material there or let it cut through`];
  return crossesItself(ring) ? [`the outline of ${cutout.name} crosses itself`] : [];
}

/** Whether a round hole meets a side of the panel in one point, where material would end in nothing. */
function grazes(cutout: Cutout, length: number, width: number): boolean {
  if (cutout.kind !== "circle") return false;
  const { x, y, radius } = cutout;
  const near = touching * Math.max(length, width);
  return [x, y, length - x, width - y].some((away) => Math.abs(away - radius) < near);
}

function sizesOf(cutout: Cutout): { word: string; value: number }[] {
  if (cutout.kind === "polygon") return [];
  if (cutout.kind === "circle") return [{ word: "radius", value: cutout.radius }];
  return [
    { word: "width", value: cutout.width },
    { word: "height", value: cutout.height },
  ];
}

function crossesItself(ring: readonly Spot[]): boolean {
  const count = ring.length;
  return sidesOf(ring).some(([a, b], i) =>
    sidesOf(ring).some(([c, d], j) => j > i + 1 && (j + 1) % count !== i && gap(a, b, c, d) === 0),
  );
}

function pairFaults({ length, width, cutouts }: Outline): string[] {
  const near = touching * Math.max(length, width);
  return cutouts.flatMap((first, i) =>
    cutouts.slice(i + 1).flatMap((second) => {
      const [one, other] = [sidesOf(ringOf(first)), sidesOf(ringOf(second))];
      const meet = one.some(([a, b]) => other.some(([c, d]) => gap(a, b, c, d) < near));
      return meet ? [`${first.name} touches or crosses ${second.name}`] : [];
    }),
  );
}

function sidesOf(ring: readonly Spot[]): [Spot, Spot][] {
  return ring.map((place, i) => [place, ring[(i + 1) % ring.length]!]);
}

/** Smallest distance of two straight sides; 0 when they cross. */
function gap(a: Spot, b: Spot, c: Spot, d: Spot): number {
  const cross = side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
  return cross ? 0 : Math.min(toSide(a, c, d), toSide(b, c, d), toSide(c, a, b), toSide(d, a, b));
}

function side([ax, ay]: Spot, [bx, by]: Spot, [x, y]: Spot): number {
  return (bx - ax) * (y - ay) - (by - ay) * (x - ax);
}

/** Distance of a place from a straight side. */
export function toSide(place: Spot, a: Spot, b: Spot): number {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const along = ((place[0] - a[0]) * dx + (place[1] - a[1]) * dy) / (dx * dx + dy * dy || 1);
  const at = Math.min(1, Math.max(0, along));
  return apart(place, [a[0] + at * dx, a[1] + at * dy]);
}

function millimetres(value: number): string {
  return `${Number((1000 * value).toPrecision(6))} mm`;
}
