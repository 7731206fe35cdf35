import type { WorkedLine } from "../../formula.js";
import { Altitude, airThinness } from "../../inside/index.js";
import { Density, type Ratio } from "../../quantity/index.js";
import type { ReviewInput } from "../review-input.js";

/** Air near the sea. */
const seaAir = 1.2;

/** The air where the case works. */
export interface OutdoorAir {
  /** Density over that near the sea. */
  readonly thinness: Ratio;
  readonly density: Density;
  readonly because: readonly WorkedLine[];
}

/** The air at the height that the case file names, or near the sea. */
export function outdoorAir(input: ReviewInput): OutdoorAir {
  const { altitude } = input.case.services;
  const line = airThinness.worked({ height: altitude ?? Altitude.si(0) });
  return {
    thinness: line.value,
    density: Density.si(seaAir * line.value),
    because: altitude === undefined ? [] : [line],
  };
}
