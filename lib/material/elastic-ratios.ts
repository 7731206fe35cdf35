/**
 * How much softer wood is across the grain. USDA Wood Handbook, tables 5-1 (moduli) and 5-2 (Poisson's
 * ratios), about 12 % moisture; all recalled. Where table 5-2 was not recalled, 0.40 stands as the usual value.
 */
import { Ratio } from "../quantity/index.js";
import { customary, recalled, type Sourced } from "./sourced.js";
import type { SpeciesName } from "./species.js";

/** Moduli as shares of the modulus along the grain: T across the rings' radius, R along it, L along the grain. */
export interface ElasticRatios {
  /** E_T / E_L: in the face of a peeled veneer, across the grain. */
  readonly tangential: Sourced<Ratio>;
  /** E_R / E_L: in the face of a quarter-sliced veneer, across the grain. */
  readonly radial: Sourced<Ratio>;
  /** G_LR / E_L: shear in the face of a quarter-sliced veneer. */
  readonly shearRadial: Sourced<Ratio>;
  /** G_LT / E_L: shear in the face of a peeled veneer. */
  readonly shearTangential: Sourced<Ratio>;
  /** Poisson's ratio LT: pulled along the grain, narrowing along the rings. */
  readonly poisson: Sourced<Ratio>;
}

function row(
  tangential: number,
  radial: number,
  shearRadial: number,
  shearTangential: number,
  poisson: Sourced<number> = customary(0.4),
): ElasticRatios {
  return {
    tangential: recalled(Ratio.si(tangential)),
    radial: recalled(Ratio.si(radial)),
    shearRadial: recalled(Ratio.si(shearRadial)),
    shearTangential: recalled(Ratio.si(shearTangential)),
    poisson: { ...poisson, value: Ratio.si(poisson.value) },
  };
}

/** A species whose ratios are tabulated. */
export type VeneerSpecies = Extract<
  SpeciesName,
  | "yellow birch"
  | "douglas-fir"
  | "yellow-poplar"
  | "red maple"
  | "sugar maple"
  | "loblolly pine"
  | "longleaf pine"
  | "sitka spruce"
  | "basswood"
>;

/** The ratios, by species. */
export const elasticRatios: Readonly<Record<VeneerSpecies, ElasticRatios>> = {
  "yellow birch": row(0.05, 0.078, 0.074, 0.068, recalled(0.451)),
  "douglas-fir": row(0.05, 0.068, 0.064, 0.078, recalled(0.449)),
  "yellow-poplar": row(0.043, 0.092, 0.075, 0.069),
  "red maple": row(0.067, 0.14, 0.133, 0.074),
  "sugar maple": row(0.065, 0.132, 0.111, 0.063),
  "loblolly pine": row(0.078, 0.113, 0.082, 0.081),
  "longleaf pine": row(0.055, 0.102, 0.071, 0.06),
  "sitka spruce": row(0.043, 0.078, 0.064, 0.061),
  basswood: row(0.027, 0.066, 0.056, 0.046),
};
