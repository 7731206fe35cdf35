import type { PanelPart } from "../../design/index.js";
import type { Sheet } from "../../fem/index.js";
import { Pressure } from "../../quantity/index.js";
import type { ReviewInput } from "../review-input.js";
import { panelStiffness, throughShearOf } from "./panel-stiffness.js";
import { sheetModuli } from "./sheet-moduli.js";

/** What the bending moduli along and across the grain of every sheet are multiplied by. */
export interface ModuliShares {
  readonly along: number;
  readonly across: number;
}

const asMeasured: ModuliShares = { along: 1, across: 1 };

/** The panel's stiffness along its own u and v, in its plane too. */
export function panelSheet(panel: PanelPart, input: ReviewInput, shares: ModuliShares = asMeasured): Sheet {
  const moduli = sheetModuli(panel.sheet, input.measurements);
  const { stiffness } = panelStiffness(panel, moduli, {
    along: Pressure.si(shares.along * moduli.along.modulus),
    across: Pressure.si(shares.across * moduli.across.modulus),
  });
  const { membraneX, membraneY, membraneCoupling, membraneShear, thickness } = stiffness;
  const [alongU, alongV] = panel.grain === "across" ? [membraneX, membraneY] : [membraneY, membraneX];
  const through = throughShearOf(panel, moduli);
  return {
    membrane: [
      [alongU, membraneCoupling, 0],
      [membraneCoupling, alongV, 0],
      [0, 0, membraneShear],
    ],
    coupling: [
      [0, 0, 0],
      [0, 0, 0],
      [0, 0, 0],
    ],
    bending: [
      [stiffness.alongX, stiffness.coupling, 0],
      [stiffness.coupling, stiffness.alongY, 0],
      [0, 0, stiffness.twist],
    ],
    shear: [through, 0, through],
    mass: [stiffness.massPerArea, 0, 0],
    faces: [thickness / 2, -thickness / 2],
  };
}
