/** What a pressure on the whole of a face does to what is left of it beside its openings. */
import { type Formula, formula } from "../../formula.js";
import { Pressure, Ratio } from "../../quantity/index.js";
import { cite } from "../../source.js";

/** A face whose openings are closed by glass, screens or doors. */
export interface GlazedFace {
  /** On the whole face. */
  readonly pressure: Pressure;
  /** Share of the face that is cut away. */
  readonly cutAway: Ratio;
}

/**
 * Pressure on what is left of a face when its glass, screens and doors pass their share on to it.
 *
 * @example glazedPressure(glazedPressure.read({ pressure: "1 kPa", cutAway: "0 %" })) // 1 kPa
 */
export const glazedPressure: Formula<GlazedFace, Pressure> = formula<GlazedFace, Pressure>({
  id: "plate.glazed.pressure",
  title: "Pressure passed on from openings that are closed",
  equation: String.raw`q'=\frac{q}{1-s}`,
  inputs: {
    pressure: { symbol: "q", kind: Pressure, meaning: "pressure on the whole face", min: 0 },
    cutAway: { symbol: "s", kind: Ratio, meaning: "share cut away", min: 0, below: 1 },
  },
  result: { symbol: "q'", kind: Pressure, meaning: "pressure on what is left" },
  source: [cite("statics", "the whole load stays on the face")],
  validity:
    "Spread over what is left; in truth it comes in along the rims of the openings, which a pane or door held at its rim stiffens a little.",
  compute: ({ pressure, cutAway }) => pressure / (1 - cutAway),
});
