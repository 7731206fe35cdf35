import type { FacingStock, PanelPart } from "../../design/index.js";
import type { Sheet } from "../../fem/index.js";
import type { WorkedLine } from "../../formula.js";
import {
  type LaminatedPanel,
  type Layer,
  plywoodLamination,
  sheetLayer,
  turnedQuarter,
} from "../../material/index.js";
import { Angle, Density, MembraneStiffness, Pressure, Ratio } from "../../quantity/index.js";
import type { ReviewInput } from "../review-input.js";
import { type SheetModuli, sheetModuli } from "./sheet-moduli.js";

/** The two moduli that bend tests give, as numbers to be varied by their scatter. */
export interface BendingModuli {
  /** Along the face grain. */
  readonly along: Pressure;
  /** Across the face grain. */
  readonly across: Pressure;
}

/** Poisson's ratio of a laminate facing; common practice, no source. It moves a panel's stiffness by well under 1 %. */
const facingPoisson = Ratio.si(0.3);

/** The layers of a panel from its inside face out: the sheet as one layer, and its facings. */
export function panelLayers(panel: PanelPart, moduli: SheetModuli, bending: BendingModuli): readonly Layer[] {
  const { sheet, facing } = panel;
  const ply: Layer = {
    thickness: sheet.thickness,
    grain: Angle.si(0),
    modulusAlong: bending.along,
    modulusAcross: bending.across,
    shearModulus: moduli.shear.modulus,
    poissonRatio: moduli.poisson,
    density: sheet.density,
  };
  if (!facing) return [ply];
  const skin = facingLayer(facing.stock);
  return facing.sides === "both" ? [skin, ply, skin] : [ply, skin];
}

/** A laminate of the tables as a layer. */
export function facingLayer({ name, modulus, density, thickness }: FacingStock): Layer {
  return sheetLayer(
    {
      title: name,
      modulus,
      poissonRatio: facingPoisson,
      density: Density.si(density),
      known: "seen",
    },
    thickness,
  );
}

/** Stiffness of a panel along its own u and v, with the worked line. */
export function panelStiffness(
  panel: PanelPart,
  moduli: SheetModuli,
  bending: BendingModuli = { along: moduli.along.modulus, across: moduli.across.modulus },
): { readonly stiffness: LaminatedPanel; readonly because: WorkedLine } {
  const because = plywoodLamination.worked({ layers: panelLayers(panel, moduli, bending) });
  const stiffness = because.value;
  return {
    stiffness: panel.grain === "across" ? stiffness : { ...stiffness, ...turnedQuarter(stiffness) },
    because,
  };
}

/** Shear modulus of plywood through its thickness until it is measured: crossbands roll. Common practice, no source. */
const rollingShear = Pressure.of(180, "MPa");

/** A sheet that shears unevenly over its thickness counts for 5/6 of it. */
const shearShare = 5 / 6;

/** What a panel's sheet has against shear through its thickness; a facing is too thin to add to it. */
export function throughShearOf(
  { sheet }: PanelPart,
  { throughShear }: Pick<SheetModuli, "throughShear">,
): MembraneStiffness {
  return MembraneStiffness.si(shearShare * (throughShear?.modulus ?? rollingShear) * sheet.thickness);
}

/** What the bending moduli along and across the grain of every sheet are multiplied by. */
export interface ModuliShares {
  /** Factor of the modulus along the face grain. */
  readonly along: number;
  /** Factor of the modulus across the face grain. */
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
