import { type Formula, formula } from "../formula.js";
import { Length, listOf } from "../quantity/index.js";
import { cite } from "../source.js";

/** What one fastener closes. */
export interface StackInputs {
  /** Thickness of each layer: metal, facing, ply. */
  readonly layers: readonly Length[];
  /** Thickness of the washer at the back, zero for none. */
  readonly washer: Length;
}

/**
 * Grip a rivet needs: the layers and the washer added up.
 *
 * @throws RangeError for an empty stack or a layer that is not positive
 * @example gripNeeded(gripNeeded.read({ layers: ["1/16 in", "1/4 in"], washer: "0 in" })) // 7.938 mm
 */
export const gripNeeded: Formula<StackInputs, Length> = formula({
  id: "stack.grip",
  title: "Grip needed for a stack",
  equation: String.raw`g = \sum t_i + t_w`,
  inputs: {
    layers: { symbol: "t_i", kind: listOf(Length), meaning: "thickness of each layer" },
    washer: { symbol: "t_w", kind: Length, meaning: "thickness of the washer", min: 0 },
  },
  result: { symbol: "g", kind: Length, meaning: "grip needed" },
  source: [cite("geometry", "thicknesses added up")],
  validity: "Measured thicknesses: nominal ply is often half a millimetre off.",
  refuse: ({ layers }) => [
    ...(layers.length > 0 ? [] : ["at least one layer, got none"]),
    ...(layers.every((layer) => layer > 0) ? [] : ["every layer must be positive"]),
  ],
  compute: ({ layers, washer }) => layers.reduce((sum: number, layer) => sum + layer, washer),
});
