/** What goes on at one place of a panel: stress at its face, pressure beside openings that are closed. */
import { type Formula, formula } from "../../formula.js";
import { Length, LineLoad, PlateMoment, Pressure, Ratio } from "../../quantity/index.js";
import { cite } from "../../source.js";

/** A bent panel. */
export interface BentPanel {
  /** Bending moment for each unit of width. */
  readonly moment: PlateMoment;
  /** Thickness of the panel. */
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

/** A panel with a shear force through it. */
export interface ShearedPanel {
  /** Shear force for each unit of width. */
  readonly shear: LineLoad;
  /** Thickness of the panel. */
  readonly thickness: Length;
}

/**
 * Shear stress through the middle of a panel, as if it were one material; the way plywood's strength against shear in
 * its plane is given.
 *
 * @example plateShearStress(plateShearStress.read({ shear: "10 N/mm", thickness: "10 mm" })) // 1.5 MPa
 */
export const plateShearStress: Formula<ShearedPanel, Pressure> = formula<ShearedPanel, Pressure>({
  id: "plate.shear.stress",
  title: "Shear stress through a panel",
  equation: String.raw`\tau=\frac{3Q}{2t}`,
  inputs: {
    shear: { symbol: "Q", kind: LineLoad, meaning: "shear force per width" },
    thickness: { symbol: "t", kind: Length, meaning: "panel thickness", above: 0 },
  },
  result: { symbol: String.raw`\tau`, kind: Pressure, meaning: "shear stress in the middle" },
  source: [
    cite("strength-of-materials", "shear of a rectangular section"),
    cite("wood-handbook", "ch. 9, shear"),
  ],
  validity:
    "Compare it with a strength worked out the same way. In plywood the veneers across the span roll.",
  compute: ({ shear, thickness }) => (1.5 * shear) / thickness,
});

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
