/** Reads the deflected plate: deflection and moments at a place, where they are largest, moments along its edges. */

import { distanceTo, reachOf, type Shape } from "../../shape/index.js";
import type { PlateSides } from "./opening-layout.js";
import type { PlateSeries } from "./plate-series.js";
import type { EdgeSupport, StripValues } from "./strip-functions.js";

/** What happens at one place. */
export interface PlatePoint {
  /** m from the left edge. */
  readonly x: number;
  /** m from the lower edge. */
  readonly y: number;
  /** m */
  readonly deflection: number;
  /** Bending moment that bends strips along x, N m per m; positive where the loaded face is hollow. */
  readonly momentX: number;
  /** The same along y. */
  readonly momentY: number;
  /** Twisting moment, N m per m. */
  readonly momentXY: number;
}

/**
 * Deflection and moments at a place: Mx = -(Dx wxx + D1 wyy), My = -(Dy wyy + D1 wxx), Mxy = -2 Dxy wxy.
 *
 * @param series the solved plate
 * @param x m from the left edge
 * @param y m from the lower edge
 */
export function plateAt(series: PlateSeries, x: number, y: number): PlatePoint {
  const fx = series.along.at(x);
  const fy = series.across.at(y);
  const sum = (a: keyof StripValues, b: keyof StripValues): number =>
    series.terms.reduce(
      (total, { i, j, factor }) => total + factor * (fx[a][i] as number) * (fy[b][j] as number),
      0,
    );
  const { alongX, alongY, coupling, twist } = series.plate.stiffness;
  const [wxx, wyy] = [sum("curvature", "value"), sum("value", "curvature")];
  return {
    x,
    y,
    deflection: sum("value", "value"),
    momentX: -(alongX * wxx + coupling * wyy),
    momentY: -(alongY * wyy + coupling * wxx),
    momentXY: -2 * twist * sum("slope", "slope"),
  };
}

/**
 * The place of the largest deflection over the material, either way.
 *
 * @param series the solved plate
 */
export function largestDeflection(series: PlateSeries): PlatePoint {
  const { along, across, terms } = series;
  const [x, y] = largestPlace(series.plate, (x, y) => {
    const fx = along.at(x).value;
    const fy = across.at(y).value;
    let sum = 0;
    for (const { i, j, factor } of terms) sum += factor * (fx[i] as number) * (fy[j] as number);
    return Math.abs(sum);
  });
  return plateAt(series, x, y);
}

/** The largest, by size; zero where there is no such edge. */
export interface EdgeMoments {
  /** Across a clamped edge, N m per m; negative where the loaded face is stretched. */
  readonly clamped: number;
  /** Along a free edge, N m per m. */
  readonly free: number;
}

/** Places looked at along each edge. */
const edgePlaces = 65;

/**
 * Looks along every edge.
 *
 * @param series the solved plate
 */
export function edgeMoments(series: PlateSeries): EdgeMoments {
  const { length, width, left, right, bottom, top } = series.plate;
  const upright = (x: number): Place[] => spread(width).map((y) => [x, y]);
  const level = (y: number): Place[] => spread(length).map((x) => [x, y]);
  const edges: readonly Edge[] = [
    { support: left, places: upright(0), across: "momentX", along: "momentY" },
    { support: right, places: upright(length), across: "momentX", along: "momentY" },
    { support: bottom, places: level(0), across: "momentY", along: "momentX" },
    { support: top, places: level(width), across: "momentY", along: "momentX" },
  ];
  return {
    clamped: largest(series, edges, "clamped", ({ across }) => across),
    free: largest(series, edges, "free", ({ along }) => along),
  };
}

interface Edge {
  /** How the edge is held. */
  readonly support: EdgeSupport;
  /** Places looked at on it. */
  readonly places: readonly Place[];
  /** The moment that bends strips across the edge. */
  readonly across: "momentX" | "momentY";
  /** The moment that bends strips along the edge. */
  readonly along: "momentX" | "momentY";
}

function spread(length: number): number[] {
  return Array.from({ length: edgePlaces }, (_, n) => (n * length) / (edgePlaces - 1));
}

function largest(
  series: PlateSeries,
  edges: readonly Edge[],
  support: EdgeSupport,
  which: (edge: Edge) => keyof PlatePoint,
): number {
  const moments = edges
    .filter((edge) => edge.support === support)
    .flatMap((edge) => {
      const there = edge.places.filter((place) => inMaterial(series.plate, place));
      return there.map(([x, y]) => plateAt(series, x, y)[which(edge)]);
    });
  return moments.reduce((best, moment) => (Math.abs(moment) > Math.abs(best) ? moment : best), 0);
}

/** A plate as a search sees it. */
export interface SearchField extends PlateSides {
  /** Where nothing is looked for. */
  readonly openings: readonly Shape[];
}

/** x and y, m. */
export type Place = readonly [number, number];

/** Lines of the search grid along each side. */
const gridLines = 33;
/** Halvings of the grid step while closing in on the largest. */
const halvings = 10;

/**
 * The place where a smooth function is largest over the material: first on a grid that includes the rims
 * of the openings, then closing in by ever smaller steps.
 *
 * @param field where to look
 * @param size what is to be largest, at x and y
 */
export function largestPlace(field: SearchField, size: (x: number, y: number) => number): Place {
  const { length, width } = field;
  const openings = field.openings.map(reachOf);
  const xs = lines(
    length,
    openings.flatMap(({ left, right }) => [left, (left + right) / 2, right]),
  );
  const ys = lines(
    width,
    openings.flatMap(({ bottom, top }) => [bottom, (bottom + top) / 2, top]),
  );
  let best = largestOf(
    field,
    size,
    xs.flatMap((x) => ys.map((y): Place => [x, y])),
  );
  for (let cut = 1; cut <= halvings; cut++) {
    const step = 1 / gridLines / 2 ** cut;
    best = largestOf(field, size, around(best, step * length, step * width));
  }
  return best;
}

function lines(length: number, rims: readonly number[]): number[] {
  const even = Array.from({ length: gridLines }, (_, n) => (n * length) / (gridLines - 1));
  return [...even, ...rims];
}

function around([x, y]: Place, dx: number, dy: number): Place[] {
  const steps = [0, -1, 1];
  return steps.flatMap((a) => steps.map((b): Place => [x + a * dx, y + b * dy]));
}

/** The first of the largest; places off the plate or in an opening do not count. */
function largestOf(
  field: SearchField,
  size: (x: number, y: number) => number,
  places: readonly Place[],
): Place {
  const rated = places
    .filter((place) => inMaterial(field, place))
    .map((place) => ({ place, size: size(...place) }));
  return rated.reduce((best, one) => (one.size > best.size ? one : best)).place;
}

/** Whether a place is on the plate and not in an opening; rims count. */
export function inMaterial({ length, width, openings }: SearchField, [x, y]: Place): boolean {
  const onPlate = x >= 0 && x <= length && y >= 0 && y <= width;
  return onPlate && !openings.some((opening) => distanceTo(opening, { x, y }) < 0);
}
