/** Stress at the face of a bent panel. */
import { type Formula, formula } from "../../formula.js";
import { Length, PlateMoment, Pressure } from "../../quantity/index.js";
import { cite } from "../../source.js";

/** A bent panel. */
export interface BentPanel {
  /** Bending moment for each unit of width. */
  readonly moment: PlateMoment;
  readonly thickness: Length;
}

/**
 * Stress at the face, as if the panel were one material; the way plywood's bending strength is given.
 *
 * @example plateBendingStress(plateBendingStress.read({ moment: "47.9 N", thickness: "10 mm" })) // 2.874 MPa
 */
export const plateBendingStress: Formula<BentPanel, Pressure> = formula<BentPanel, Pressure>({
  id: "plate.bending.stress",
  title: "Bending stress at the face of a panel",
  equation: String.raw`\sigma=\frac{6M}{t^2}`,
  inputs: {
    moment: { symbol: "M", kind: PlateMoment, meaning: "bending moment per width" },
    thickness: { symbol: "t", kind: Length, meaning: "panel thickness", above: 0 },
  },
  result: { symbol: String.raw`\sigma`, kind: Pressure, meaning: "stress at the face" },
  source: [cite("plates-shells", "eq. (44)"), cite("stress-strain", "table 11.4, notation")],
  validity:
    "Compare it with a strength from a bend test worked out the same way. Across a layered panel the true stress goes in steps and the outer ply carries more.",
  compute: ({ moment, thickness }) => (6 * moment) / thickness ** 2,
});
