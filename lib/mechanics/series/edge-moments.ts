/** Reads the largest bending moments along the edges of a solved plate. */
import { inMaterial, type Place } from "./largest-place.js";
import { type PlatePoint, plateAt } from "./plate-field.js";
import type { PlateSeries } from "./plate-series.js";
import type { EdgeSupport } from "./strip-functions.js";

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
  readonly support: EdgeSupport;
  readonly places: readonly Place[];
  readonly across: "momentX" | "momentY";
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
