/** How much of its gap a door loses as the opening around it moves. */
import { boxFreedoms, frames, rimOf } from "../../fem/index.js";
import { byValue, movementsOf, type NamedValue } from "./case-outcomes.js";
import type { LoadedCase } from "./load-cases.js";

/** Shares of a side at which its gap is looked at: where its corners are not yet round, and in the middle. */
const lookedAt = [0.1, 0.5, 0.9];

/** The gap that each door of a load case loses at its tightest place, m, the largest first. */
export function doorRoom(loaded: LoadedCase): readonly NamedValue[] {
  const { bodies, system } = loaded;
  return byValue(
    bodies.numbers.flatMap((number, i) => {
      const body = system.model.bodies[number]!;
      const frame = bodies.numbers.findIndex((other) => system.model.bodies[other]!.name === body.section);
      return body.name === body.section || frame < 0
        ? []
        : [{ name: body.name, value: lost(loaded, i, frame) }];
    }),
  );
}

function lost(loaded: LoadedCase, leaf: number, frame: number): number {
  const moved = movementsOf(loaded);
  const [own, around] = [loaded.bodies.parts[leaf]!, loaded.bodies.parts[frame]!];
  const [face] = own.structure.faces;
  const { name } = face!;
  const [along, across] = frames[name].axes;
  const opening = around.structure.problem.faces[name]?.cutouts.find((cutout) =>
    own.structure.problem.name.endsWith(cutout.name),
  );
  if (!opening) throw new RangeError(`box: no opening is left for ${own.structure.problem.name}`);
  const offset = ([along, across] as const).map((axis) => own.at[axis] - around.at[axis]);
  const size = [Math.max(...face!.mesh.x), Math.max(...face!.mesh.y)] as const;
  const ownRim = [...new Set(face!.mesh.rim.flat())].map((node) => ({
    x: face!.mesh.x[node]! + offset[0]!,
    y: face!.mesh.y[node]! + offset[1]!,
    node: face!.numbers[node]!,
  }));
  const rim = rimOf(around.structure, name, opening);
  const losses = ([0, 1] as const).flatMap((side) =>
    [-1, 1].flatMap((out) =>
      lookedAt.map((share) => {
        const place: [number, number] = [0, 0];
        place[side] = offset[side]! + (out > 0 ? size[side] : 0);
        place[1 - side] = offset[1 - side]! + share * size[1 - side]!;
        const axis = side === 0 ? along : across;
        const of = (nodes: typeof rim, displacement: Float64Array): number =>
          displacement[boxFreedoms * nearest(nodes, place) + axis]!;
        return -out * (of(rim, moved[frame]!) - of(ownRim, moved[leaf]!));
      }),
    ),
  );
  return Math.max(0, ...losses);
}

function nearest(
  nodes: readonly { readonly x: number; readonly y: number; readonly node: number }[],
  [x, y]: readonly [number, number],
): number {
  const away = (one: (typeof nodes)[number]): number => Math.hypot(one.x - x, one.y - y);
  return nodes.reduce((best, one) => (away(one) < away(best) ? one : best)).node;
}
