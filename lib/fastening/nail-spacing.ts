import { type Formula, formula } from "../formula.js";
import { Angle, Length } from "../quantity/index.js";
import { cite } from "../source.js";

/** Nails driven without drilling. */
export interface NailSpacingInputs {
  readonly diameter: Length;
  /** Between load and grain. */
  readonly angle: Angle;
}

/** How near each other and to ends and edges nails may be. */
export type NailSpacing = {
  /** Along the grain. */
  readonly along: Length;
  /** Across the grain. */
  readonly across: Length;
  readonly loadedEnd: Length;
  readonly freeEnd: Length;
  readonly loadedEdge: Length;
  readonly freeEdge: Length;
};

/**
 * Least distances of nails below 5 mm in wood up to 420 kg/m3, not drilled: along the grain (5 + 5 cos a) d, across
 * 5 d, loaded end (10 + 5 cos a) d, free end 10 d, loaded edge (5 + 2 sin a) d, free edge 5 d.
 *
 * @example nailSpacing(nailSpacing.read({ diameter: "3 mm", angle: "0 deg" })) // along 30 mm, across 15 mm, loadedEnd 45 mm, freeEnd 30 mm, loadedEdge 15 mm, freeEdge 15 mm
 */
export const nailSpacing: Formula<NailSpacingInputs, NailSpacing> = formula<NailSpacingInputs, NailSpacing>({
  id: "nail.spacing",
  title: "Least distances of driven nails",
  equation: String.raw`a_1 = (5 + 5\cos\alpha)d,\ a_2 = 5d,\ a_{3t} = (10 + 5\cos\alpha)d,\ a_{4t} = (5 + 2\sin\alpha)d`,
  inputs: {
    diameter: { symbol: "d", kind: Length, meaning: "diameter of the nail", above: 0, below: 0.005 },
    angle: {
      symbol: String.raw`\alpha`,
      kind: Angle,
      meaning: "load to the grain",
      min: 0,
      max: Math.PI / 2,
    },
  },
  result: {
    along: { symbol: "a_1", kind: Length, meaning: "apart, along the grain" },
    across: { symbol: "a_2", kind: Length, meaning: "apart, across the grain" },
    loadedEnd: { symbol: "a_{3t}", kind: Length, meaning: "to a loaded end" },
    freeEnd: { symbol: "a_{3c}", kind: Length, meaning: "to a free end" },
    loadedEdge: { symbol: "a_{4t}", kind: Length, meaning: "to a loaded edge" },
    freeEdge: { symbol: "a_{4c}", kind: Length, meaning: "to a free edge" },
  },
  source: [cite("en-1995", "8.3.1.2, table 8.2")],
  validity:
    "Solid wood up to 420 kg/m3; for panels on wood 0.85 of the distances apart. Drill, and they may be nearer.",
  compute: ({ diameter: d, angle }) => ({
    along: (5 + 5 * Math.cos(angle)) * d,
    across: 5 * d,
    loadedEnd: (10 + 5 * Math.cos(angle)) * d,
    freeEnd: 10 * d,
    loadedEdge: (5 + 2 * Math.sin(angle)) * d,
    freeEdge: 5 * d,
  }),
});
