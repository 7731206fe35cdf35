/** Every line a mesh must follow, cut where lines meet, with no place twice. */
import type { MeshGuides } from "./grid-corners.js";
import { apart, type Cutout, type Outline, ringOf, type Spot } from "./outline.js";
import { toSide } from "./outline-faults.js";

/** Places, and pairs of them that are joined. */
export interface PlanarSides {
  readonly places: readonly Spot[];
  readonly sides: readonly (readonly [number, number])[];
}

/**
 * The sides of the outline, its cutouts, and the guides, inside the panel.
 *
 * @param outline the panel
 * @param guides boxes and places to follow
 */
export function planarSides(outline: Outline, guides: MeshGuides): PlanarSides {
  const { length, width, cutouts } = outline;
  const near = 1e-7 * Math.max(length, width);
  const rings = [
    boxRing({ left: 0, bottom: 0, width: length, height: width }),
    ...cutouts.map((cutout) => ringOf(cutout, chordsOf(cutout))),
    ...guides.boxes.map(boxRing),
  ];
  const lines = rings.flatMap((ring) =>
    ring.map((place, i) => [place, ring[(i + 1) % ring.length]!] as const),
  );
  const places: Spot[] = [];
  const numberOf = (place: Spot): number => {
    const known = places.findIndex((other) => apart(other, place) < near);
    return known >= 0 ? known : places.push(place) - 1;
  };
  const sides = new Map<string, readonly [number, number]>();
  for (const line of lines) {
    const cuts = cutsOf(line, lines, guides.places, near).filter(
      ([x, y]) => inPanel(x, length, near) && inPanel(y, width, near),
    );
    for (let i = 0; i + 1 < cuts.length; i++) {
      const [a, b] = [numberOf(cuts[i]!), numberOf(cuts[i + 1]!)];
      if (a !== b) sides.set(a < b ? `${a} ${b}` : `${b} ${a}`, [a, b]);
    }
  }
  for (const place of guides.places) numberOf(place);
  return { places, sides: [...sides.values()] };
}

/** A round hole begins with twelve chords, a rounded corner with two; refining halves those that are too long. */
function chordsOf({ kind }: Cutout): number {
  return kind === "circle" ? 3 : 2;
}

function inPanel(at: number, extent: number, near: number): boolean {
  return at > -near && at < extent + near;
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

/** The line's ends and where others meet it, in order along it. */
function cutsOf(
  [from, to]: readonly [Spot, Spot],
  lines: readonly (readonly [Spot, Spot])[],
  places: readonly Spot[],
  near: number,
): Spot[] {
  const on = (place: Spot): boolean => toSide(place, from, to) < near;
  const ends = [...lines.flat(), ...places].filter(on);
  const crossings = lines.flatMap(([a, b]) => crossing(from, to, a, b) ?? []);
  const along = (place: Spot): number => apart(from, place);
  return [from, to, ...ends, ...crossings]
    .sort((a, b) => along(a) - along(b))
    .filter((place, i, all) => i === 0 || apart(place, all[i - 1]!) > near);
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
