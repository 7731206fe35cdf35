/** One layer of a bonded panel: a veneer, or a facing. */
import { Angle, Density, type Kind, Length, Pressure, Ratio, recordOf } from "../quantity/index.js";
import { elasticRatios, type VeneerSpecies } from "./elastic-ratios.js";
import type { SheetMaterial } from "./sheet-material.js";
import { species } from "./species.js";
import { modulusAlong, woodDensity } from "./wood.js";

/** One layer, with its elastic constants along and across its own grain. */
export interface Layer {
  readonly thickness: Length;
  /** Grain from the panel's x axis: 0 along the face grain, 90 degrees for a crossband. */
  readonly grain: Angle;
  /** E1, modulus along the grain. */
  readonly modulusAlong: Pressure;
  /** E2, modulus across the grain. */
  readonly modulusAcross: Pressure;
  /** G12, shear modulus in the plane of the layer. */
  readonly shearModulus: Pressure;
  /** nu12, narrowing across when pulled along the grain. */
  readonly poissonRatio: Ratio;
  readonly density: Density;
}

/** A layer as text. */
export const Layer: Kind<Layer> = recordOf<Layer>("layer", {
  thickness: Length,
  grain: Angle,
  modulusAlong: Pressure,
  modulusAcross: Pressure,
  shearModulus: Pressure,
  poissonRatio: Ratio,
  density: Density,
});

/** Moisture of the tabulated species. */
const tabulatedMoisture = Ratio.si(0.12);

/**
 * A peeled veneer of a tabulated species, at 12 % moisture.
 *
 * @param name species
 * @param thickness of the veneer
 * @param grain from the panel's x axis
 */
export function veneerLayer(name: VeneerSpecies, thickness: Length, grain: Angle): Layer {
  const { tangential, shearTangential, poisson } = elasticRatios[name];
  const { bendingModulus, specificGravity } = species[name];
  const along = modulusAlong({ bendingModulus: bendingModulus.value });
  return {
    thickness,
    grain,
    modulusAlong: along,
    modulusAcross: Pressure.si(along * tangential.value),
    shearModulus: Pressure.si(along * shearTangential.value),
    poissonRatio: poisson.value,
    density: woodDensity({ specificGravity: specificGravity.value, moisture: tabulatedMoisture }),
  };
}

/**
 * A bonded sheet that is alike in every direction, such as a laminate or metal facing.
 *
 * @param material modulus, Poisson's ratio and density
 * @param thickness of the sheet
 */
export function sheetLayer({ modulus, poissonRatio, density }: SheetMaterial, thickness: Length): Layer {
  return {
    thickness,
    grain: Angle.si(0),
    modulusAlong: modulus,
    modulusAcross: modulus,
    shearModulus: Pressure.si(modulus / (2 * (1 + poissonRatio))),
    poissonRatio,
    density,
  };
}

/**
 * What is wrong with a stack of layers.
 *
 * @returns reasons with the number of the layer, counted from 1 at the bottom
 */
export function layerFaults(layers: readonly Layer[]): string[] {
  if (layers.length === 0) return ["layers must hold at least one layer"];
  return layers.flatMap((layer, i) => {
    const wrong = (["thickness", "modulusAlong", "modulusAcross", "shearModulus"] as const)
      .filter((field) => !(layer[field] > 0))
      .map((field) => `${field} of layer ${i + 1} must be positive, got ${layer[field]}`);
    const { poissonRatio, modulusAlong: along, modulusAcross: across } = layer;
    const sound = poissonRatio >= 0 && poissonRatio ** 2 * across < along;
    return sound
      ? wrong
      : [...wrong, `poissonRatio of layer ${i + 1} does not fit its moduli, got ${poissonRatio}`];
  });
}
