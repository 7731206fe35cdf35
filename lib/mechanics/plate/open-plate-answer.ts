/** What the formulas of a panel with openings take and answer, and what they warn of. */
import type { FormulaSymbols } from "../../formula.js";
import { listOf, type PlateMoment, Ratio } from "../../quantity/index.js";
import { narrowestBar, openingsNotFollowed } from "../series/index.js";
import { Opening } from "./opening.js";
import type { PlateEdges, PlateShape } from "./plate-inputs.js";
import { edgeMomentSymbols, largestSymbols, type PlateLargest } from "./plate-results.js";

/** What is cut out of the panel. */
export interface PlateOpenings {
  /** None may overlap; one that reaches the rim is a notch. */
  readonly openings: readonly Opening[];
}

/** A panel with openings, whatever loads it. */
export type OpenPlate = PlateShape & PlateEdges & PlateOpenings;

/** Where the panel sags most, and how far the estimate can be trusted. */
export type OpenPlateAnswer = PlateLargest & {
  /** Across a clamped edge; zero when none is clamped. */
  readonly clampedMoment: PlateMoment;
  /** Share of the area that is cut away. */
  readonly cutAway: Ratio;
  /** How much more the panel sagged when the series was last refined; about as much may still be missing. */
  readonly unsettled: Ratio;
};

/** Symbols of the openings. */
export const openingSymbols: FormulaSymbols<PlateOpenings> = {
  openings: {
    symbol: String.raw`\{x,y,w,h,r\}_k`,
    kind: listOf(Opening),
    meaning: "openings, each from the panel's lower left corner",
  },
};

/** Symbols of the answer. */
export const openAnswerSymbols: FormulaSymbols<OpenPlateAnswer> = {
  ...largestSymbols,
  clampedMoment: edgeMomentSymbols.clampedMoment,
  cutAway: { symbol: "s", kind: Ratio, meaning: "share cut away" },
  unsettled: { symbol: String.raw`\Delta`, kind: Ratio, meaning: "change at the last refinement" },
};

/** The most cut away, and the narrowest bar left, among the panels compared. */
const compared = { cutAway: 0.535, narrowestBar: 0.05 };
/** Change at the last refinement from which a warning is due. */
const unsettledLimit = 0.03;

/**
 * What to warn of: more cut away or thinner left than was compared, more openings than can be followed, or an
 * estimate that still moves.
 *
 * @param inputs the panel
 * @param answer what came out
 */
export function openPlateWarnings(inputs: OpenPlate, { cutAway, unsettled }: OpenPlateAnswer): string[] {
  const percent = (share: number): string => `${(100 * share).toFixed(1)} %`;
  const bar = narrowestBar(inputs, inputs.openings);
  return [
    ...(cutAway > compared.cutAway ? [`${percent(cutAway)} is cut away, more than was ever compared`] : []),
    ...(bar < compared.narrowestBar
      ? [`the narrowest bar is ${percent(bar)} of the side across it, narrower than was ever compared`]
      : []),
    ...(openingsNotFollowed(inputs, inputs.openings) > 0
      ? ["there are more openings than the series can follow: the panel will sag more than this"]
      : []),
    ...(unsettled > unsettledLimit
      ? [`the estimate has not settled: expect up to ${percent(unsettled)} more sag`]
      : []),
  ];
}
