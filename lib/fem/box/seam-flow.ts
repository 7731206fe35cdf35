/** What the fasteners of a seam carry. */
import { spaceFreedoms } from "../element/index.js";
import type { BoxSeam, BoxSpot } from "./box-problem.js";
import type { BoxStructure } from "./box-structure.js";
import { laidSeam } from "./seam-springs.js";

/** Force on each metre of one side of a seam, with which its first face holds the second, N/m. */
export interface SeamFlow {
  /** Middle of the side. */
  readonly at: BoxSpot;
  /** Length of the side, m. */
  readonly length: number;
  /** Along x, y, z of the box, the mean over the side. */
  readonly force: BoxSpot;
}

/** Mean over a side of its parabolas. */
const shares = [1 / 6, 2 / 3, 1 / 6];

/**
 * Forces along a seam, side by side from its low end.
 *
 * @param structure of the box
 * @param displacement of all its freedoms
 * @param seam one of the box's own
 */
export function seamFlows(
  structure: BoxStructure,
  displacement: Float64Array,
  seam: BoxSeam,
): readonly SeamFlow[] {
  const { axis, sides } = laidSeam(structure, seam);
  return sides.map(({ nodes, others, length }) => {
    const force = ([0, 1, 2] as const).map((way) => {
      const gap = shares.reduce(
        (sum, share, k) =>
          sum + share * (at(displacement, nodes[k]!, way) - at(displacement, others[k]!, way)),
        0,
      );
      return (way === axis ? seam.slip : seam.parting) * gap;
    });
    return { at: structure.nodes[nodes[1]]!, length, force: force as unknown as BoxSpot };
  });
}

function at(displacement: Float64Array, node: number, way: number): number {
  return displacement[spaceFreedoms * node + way]!;
}

/** The mean and the largest force on each metre of a seam, N/m. */
export interface SeamLoad {
  readonly mean: number;
  readonly peak: number;
  /** Where the largest acts. */
  readonly at: BoxSpot;
}

/** Sums up a seam's flows by their size, whatever their direction. */
export function seamLoad(flows: readonly SeamFlow[]): SeamLoad {
  const size = ({ force }: SeamFlow): number => Math.hypot(...force);
  const whole = flows.reduce((sum, { length }) => sum + length, 0);
  const most = flows.reduce((best, flow) => (size(flow) > size(best) ? flow : best));
  return {
    mean: flows.reduce((sum, flow) => sum + size(flow) * flow.length, 0) / whole,
    peak: size(most),
    at: most.at,
  };
}
