import { type Arc, arcsOf, type Cutout, ringOf, type Spot } from "./outline.js";

/** A straight line between two places. */
export type Line = readonly [from: Spot, to: Spot];

/** Widest chord of a round hole to begin with, and of a rounded corner; refining halves those that are too long. */
const widest = { circle: Math.PI / 6, corner: Math.PI / 4 };

/**
 * Corners of a cutout's outline counterclockwise, arcs as chords that end where lines cross the arc: a chord cut
 * elsewhere would leave the circle.
 *
 * @param cutout any
 * @param lines the panel's rim and all other lines to follow
 * @param near distance that counts as touching, m
 */
export function meshRing(cutout: Cutout, lines: readonly Line[], near: number): readonly Spot[] {
  const arcs = arcsOf(cutout);
  if (arcs.length === 0) return ringOf(cutout);
  if (cutout.kind === "circle") {
    const cuts = cutAngles(cutout, lines, near).sort((a, b) => a - b);
    const from = cuts[0] ?? 0;
    return withoutRepeats(chordEnds(cutout, [...cuts, from + 2 * Math.PI], from, widest.circle), near);
  }
  const corners = arcs.flatMap((arc, quarter) => {
    const from = (Math.PI / 2) * (quarter + 2);
    const to = from + Math.PI / 2;
    const cuts = cutAngles(arc, lines, near)
      .map((angle) => angle + 2 * Math.PI * Math.ceil((from - angle) / (2 * Math.PI)))
      .filter((angle) => angle > from && angle < to);
    return chordEnds(arc, [...cuts.sort((a, b) => a - b), to], from, widest.corner);
  });
  return withoutRepeats(corners, near);
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
