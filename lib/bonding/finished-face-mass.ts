import { type Formula, formula } from "../formula.js";
import { AreaDensity, Density, Length, Ratio } from "../quantity/index.js";
import { cite } from "../source.js";

/** One facing and its dried glue. */
export interface FaceMassInputs {
  readonly facingThickness: Length;
  readonly facingDensity: Density;
  /** Wet, on the sheet. */
  readonly sheetRate: AreaDensity;
  /** Wet, on the back of the facing; zero for a glue that goes on one face. */
  readonly facingRate: AreaDensity;
  /** Share of the wet glue that stays after drying. */
  readonly solids: Ratio;
}

/** For one side of a panel. */
export type FaceMass = {
  readonly facing: AreaDensity;
  readonly dryAdhesive: AreaDensity;
  readonly total: AreaDensity;
};

/**
 * Mass that a finished face adds to its sheet: rho t + s (r_1 + r_2). Overspray is not on the panel.
 *
 * @example finishedFaceMass(finishedFaceMass.read({ facingThickness: "0.8 mm", facingDensity: "1400 kg/m3",
 *   sheetRate: "120 g/m2", facingRate: "120 g/m2", solids: 0.25 })) // facing 1.12 kg/m2, dryAdhesive 60 g/m2, total 1.18 kg/m2
 */
export const finishedFaceMass: Formula<FaceMassInputs, FaceMass> = formula<FaceMassInputs, FaceMass>({
  id: "finished.face.mass",
  title: "Mass of a finished face",
  equation: String.raw`m = \rho\,t + s\,(r_1 + r_2)`,
  inputs: {
    facingThickness: { symbol: "t", kind: Length, meaning: "thickness of the facing", above: 0 },
    facingDensity: { symbol: String.raw`\rho`, kind: Density, meaning: "density of the facing", above: 0 },
    sheetRate: { symbol: "r_1", kind: AreaDensity, meaning: "wet rate on the sheet", min: 0 },
    facingRate: { symbol: "r_2", kind: AreaDensity, meaning: "wet rate on the facing", min: 0 },
    solids: { symbol: "s", kind: Ratio, meaning: "share that stays after drying", min: 0, max: 1 },
  },
  result: {
    facing: { symbol: "m_f", kind: AreaDensity, meaning: "facing" },
    dryAdhesive: { symbol: "m_g", kind: AreaDensity, meaning: "dried glue, both faces" },
    total: { symbol: "m", kind: AreaDensity, meaning: "added to the sheet, one side" },
  },
  source: [cite("geometry", "density times thickness, rate times solids")],
  validity: "One side of the panel, before openings are cut.",
  compute: ({ facingThickness, facingDensity, sheetRate, facingRate, solids }) => {
    const facing = facingDensity * facingThickness;
    const dryAdhesive = solids * (sheetRate + facingRate);
    return { facing, dryAdhesive, total: facing + dryAdhesive };
  },
});
