import { type Formula, formula } from "../formula.js";
import { Length, Ratio } from "../quantity/index.js";
import { cite } from "../source.js";

/** A piece of facing cut larger than its panel. */
export interface OversizeInputs {
  /** Of the panel. */
  readonly width: Length;
  readonly height: Length;
  /** Added to each dimension, trimmed off after gluing. */
  readonly oversize: Length;
}

/**
 * Share of a facing piece that is trimmed off: w = 1 - b h / ((b + o) (h + o)).
 *
 * @example oversizeWaste(oversizeWaste.read({ width: "4 in", height: "4 in", oversize: "4 in" })) // 0.75
 */
export const oversizeWaste: Formula<OversizeInputs, Ratio> = formula({
  id: "facing.oversize.waste",
  title: "Facing trimmed off after gluing",
  equation: String.raw`w = 1 - \frac{b\,h}{(b + o)(h + o)}`,
  inputs: {
    width: { symbol: "b", kind: Length, meaning: "width of the panel", above: 0 },
    height: { symbol: "h", kind: Length, meaning: "height of the panel", above: 0 },
    oversize: { symbol: "o", kind: Length, meaning: "added to each dimension", min: 0 },
  },
  result: { symbol: "w", kind: Ratio, meaning: "share trimmed off" },
  source: [cite("geometry", "areas of rectangles")],
  validity: "What cutting the pieces out of a sheet wastes comes on top.",
  compute: ({ width, height, oversize }) => 1 - (width * height) / ((width + oversize) * (height + oversize)),
});
