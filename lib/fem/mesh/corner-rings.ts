/**
 * Rings of elements around corners where strains pile up, each ring a fixed share of the one outside it (I. Babuska,
 * B. Guo, The h-p version of the finite element method, Comput. Mech. 1, 1986: the geometric mesh). Only the elements
 * that touch the corner are divided, so no line of small elements runs through the rest of the panel.
 */
import { apart, type Spot } from "./outline.js";
import type { Quad } from "./quad-mesh.js";
import type { CornerMesh } from "./rim-row.js";

/** Size of a ring as a share of the one outside it. */
const ringShare = 0.25;
/** How many rings. */
const ringCount = 3;

/**
 * Adds rings around corners that are nodes of the mesh; places that are none are passed over.
 *
 * @param mesh without rings
 * @param corners where strains pile up
 */
export function withCornerRings(mesh: CornerMesh, corners: readonly Spot[]): CornerMesh {
  const near = 1e-7 * Math.max(...mesh.places.flat());
  return corners.reduce((before, corner) => {
    const node = before.places.findIndex((place) => apart(place, corner) < near);
    return node < 0 ? before : ringed(before, node);
  }, mesh);
}

function ringed({ places, quads }: CornerMesh, node: number): CornerMesh {
  const all = [...places];
  const [cx, cy] = places[node]!;
  const inwards = new Map<number, readonly number[]>();
  /** A place and what it becomes on each ring, the outermost first. */
  const towards = (from: number): readonly number[] => {
    const known = inwards.get(from);
    if (known) return known;
    const [x, y] = places[from]!;
    const added = Array.from({ length: ringCount }, (_, i) => {
      const share = ringShare ** (i + 1);
      return all.push([cx + share * (x - cx), cy + share * (y - cy)]) - 1;
    });
    const line = [from, ...added];
    inwards.set(from, line);
    return line;
  };
  const divided = quads.flatMap((quad): readonly Quad[] => {
    const first = quad.indexOf(node);
    if (first < 0) return [quad];
    const [a, b, d] = [1, 2, 3].map((step) => towards(quad[(first + step) % 4]!)) as [
      number[],
      number[],
      number[],
    ];
    const rings = Array.from({ length: ringCount }, (_, i): Quad[] => [
      [a[i + 1]!, a[i]!, b[i]!, b[i + 1]!],
      [d[i + 1]!, b[i + 1]!, b[i]!, d[i]!],
    ]);
    return [[node, a[ringCount]!, b[ringCount]!, d[ringCount]!], ...rings.flat()];
  });
  return { places: all, quads: divided };
}
