/** Outlines of the faces of a load case's bodies, where they were and how they moved. */
import { type BoxSpot, boxFreedoms, type FaceName, onFace, rimOf, type Spot } from "../../fem/index.js";
import { movedAgainstCorners } from "./case-outcomes.js";
import type { LoadedCase } from "./load-cases.js";

/** A place of the stacked case and its movement, m. */
export interface MovedPlace {
  readonly at: BoxSpot;
  readonly by: BoxSpot;
}

/** A closed line: a face's four sides, an opening's rim, a door leaf. */
export interface MovedOutline {
  readonly what: "face" | "opening" | "leaf";
  readonly name: string;
  readonly places: readonly MovedPlace[];
}

/**
 * Outlines of some faces, those that lie behind first, each followed by its openings; leaves last.
 *
 * @param loaded a load case
 * @param names of the faces to show
 */
export function movedOutlines(loaded: LoadedCase, names: readonly FaceName[]): readonly MovedOutline[] {
  const { bodies, system } = loaded;
  const moved = movedAgainstCorners(loaded);
  const outlines = bodies.parts.flatMap(({ structure, at }, i) => {
    const leaf = system.model.bodies[bodies.numbers[i]!]!;
    const isLeaf = leaf.name !== leaf.section;
    return structure.faces
      .filter(({ name }) => names.includes(name))
      .flatMap(({ name, mesh, numbers }): MovedOutline[] => {
        const place = (node: number, spot: Spot): MovedPlace => ({
          at: onFace(structure.problem, name, spot).map((own, axis) => own + at[axis]!) as unknown as BoxSpot,
          by: Array.from(
            moved[i]!.subarray(boxFreedoms * node, boxFreedoms * node + 3),
          ) as unknown as BoxSpot,
        });
        const sides = Array.from(numbers, (node, k) => ({ node, x: mesh.x[k]!, y: mesh.y[k]! }));
        const size: Spot = [Math.max(...mesh.x), Math.max(...mesh.y)];
        const rim = sides.filter(({ x, y }) => isEnd(x, size[0]) || isEnd(y, size[1]));
        const ring = (nodes: typeof sides): readonly MovedPlace[] =>
          aroundMiddle(nodes).map(({ node, x, y }) => place(node, [x, y]));
        const face: MovedOutline = { what: isLeaf ? "leaf" : "face", name: leaf.name, places: ring(rim) };
        const openings = (structure.problem.faces[name]?.cutouts ?? []).map(
          (cutout): MovedOutline => ({
            what: "opening",
            name: cutout.name,
            places: ring([...rimOf(structure, name, cutout)]),
          }),
        );
        return [face, ...openings];
      });
  });
  return [
    ...outlines.filter(({ what }) => what !== "leaf"),
    ...outlines.filter(({ what }) => what === "leaf"),
  ];
}

function isEnd(at: number, extent: number): boolean {
  return at < 1e-9 || at > extent - 1e-9;
}

/** In the order of their angle about their middle. */
function aroundMiddle<Place extends { readonly x: number; readonly y: number }>(
  places: readonly Place[],
): readonly Place[] {
  const mean = (of: (place: Place) => number): number =>
    places.reduce((sum, place) => sum + of(place), 0) / places.length;
  const [x, y] = [(axis: Place) => axis.x, (axis: Place) => axis.y].map(mean) as [number, number];
  const angle = (place: Place): number => Math.atan2(place.y - y, place.x - x);
  return [...places].sort((a, b) => angle(a) - angle(b));
}
