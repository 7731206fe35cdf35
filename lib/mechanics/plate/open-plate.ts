/** A panel with openings: a window, a port, a slot, a notch at its rim. */
import { type Formula, type FormulaSymbols, formula } from "../../formula.js";
import { listOf, type PlateMoment, Ratio } from "../../quantity/index.js";
import { boundsOf, outlineKind, type Shape } from "../../shape/index.js";
import { type Citation, cite } from "../../source.js";
import {
  cutAwayShare,
  edgeMoments,
  inMaterial,
  largestDeflection,
  narrowestBar,
  openingFaults,
  openingsNotFollowed,
  type PlateSeries,
  plateAt,
  roundedBoxes,
  type SeriesLoad,
  type SeriesOrder,
  type SeriesPlate,
  shareArea,
  solvePlate,
} from "../series/index.js";
import {
  edgeFaults,
  edgeSymbols,
  type PlateEdges,
  type PlatePatch,
  type PlatePlace,
  type PlatePressure,
  type PlateShape,
  patchFaults,
  patchLoad,
  patchRectangle,
  patchSymbols,
  placeFaults,
  placeSymbols,
  pressureSymbols,
  shapeFaults,
  shapeSymbols,
  solidPlate,
} from "./plate-inputs.js";
import {
  edgeMomentSymbols,
  largestOf,
  largestSymbols,
  type PlateLargest,
  type PlateResponse,
  plateEnergy,
  responseOf,
  responseSymbols,
  seriesOrder,
  thinPlateLimits,
} from "./plate-results.js";

/** What is cut out of the panel. */
export interface PlateOpenings {
  /** Rectangles, their corners sharp or round; none may overlap, one that reaches the rim is a notch. */
  readonly openings: readonly Shape[];
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
    kind: listOf(outlineKind),
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
    ...(openingsNotFollowed(inputs, inputs.openings.map(boundsOf)) > 0
      ? ["there are more openings than the series can follow: the panel will sag more than this"]
      : []),
    ...(unsettled > unsettledLimit
      ? [`the estimate has not settled: expect up to ${percent(unsettled)} more sag`]
      : []),
  ];
}

/** A panel with openings under a pressure on its material. */
export type OpenPlateUniform = PlateShape & PlateEdges & PlateOpenings & PlatePressure;

/** The same, and a place to look at. */
export type OpenPlateUniformAt = OpenPlateUniform & PlatePlace;

/** A panel with openings and a load on a rectangle. */
export type OpenPlatePatch = PlateShape & PlateEdges & PlateOpenings & PlatePatch;

const source: readonly Citation[] = [
  cite("plates-shells", "arts. 82 and 85 (energy)"),
  cite("finite-element-cases", "panels P1 to P8, thin-plate limit"),
];

const validity = `${thinPlateLimits} A stiff-side estimate: against eight finite-element panels with 8 to 53 % cut away its largest sag was up to 0.6 % too small. Openings are rectangles with corners of any radius, circles included; stress at a rim or a sharp corner is not resolved.`;

/**
 * A panel with openings under a pressure on what is left of it.
 *
 * @example openPlateUniform(openPlateUniform.read({ length: "900 mm", width: "450 mm",
 *   stiffness: { alongX: "518939.17 N·mm", alongY: "256417.00 N·mm", coupling: "25641.70 N·mm",
 *   twist: "39487.50 N·mm" }, left: "clamped", right: "clamped", bottom: "free", top: "free",
 *   openings: [{ left: "250 mm", bottom: "125 mm", width: "400 mm", height: "200 mm", cornerRadius: "0 mm" }],
 *   pressure: "1 kPa" })) // largestDeflection 2.985 mm, largestX 450 mm, largestY 450 mm, clampedMoment -59.96 N·m/m, cutAway 0.1975, unsettled 8.942e-5
 */
export const openPlateUniform: Formula<OpenPlateUniform, OpenPlateAnswer> = formula<
  OpenPlateUniform,
  OpenPlateAnswer
>({
  id: "plate.edges.openings.uniform",
  takesTime: true,
  title: "Panel with openings, uniform load",
  equation: plateEnergy,
  inputs: { ...shapeSymbols, ...edgeSymbols, ...openingSymbols, ...pressureSymbols },
  result: openAnswerSymbols,
  source,
  validity,
  refuse: faults,
  warn: openPlateWarnings,
  compute: (inputs) => {
    const load = { pressure: inputs.pressure };
    return answer(solvePlate(openPlate(inputs), load, seriesOrder), load);
  },
});

/**
 * One place of a panel with openings under a pressure.
 *
 * @example openPlateUniformAt(openPlateUniformAt.read({ length: "900 mm", width: "450 mm",
 *   stiffness: { alongX: "518939.17 N·mm", alongY: "256417.00 N·mm", coupling: "25641.70 N·mm",
 *   twist: "39487.50 N·mm" }, left: "clamped", right: "clamped", bottom: "free", top: "free",
 *   openings: [{ left: "250 mm", bottom: "125 mm", width: "400 mm", height: "200 mm", cornerRadius: "0 mm" }],
 *   pressure: "1 kPa", x: "450 mm", y: "0 mm" })) // deflection 2.985 mm, momentX 30.57 N·m/m, momentY -0.04776 N·m/m, momentXY -1.687e-14 N·m/m
 */
export const openPlateUniformAt: Formula<OpenPlateUniformAt, PlateResponse> = formula<
  OpenPlateUniformAt,
  PlateResponse
>({
  id: "plate.edges.openings.uniform.at",
  takesTime: true,
  title: "One place of a panel with openings, uniform load",
  equation: plateEnergy,
  inputs: { ...shapeSymbols, ...edgeSymbols, ...openingSymbols, ...pressureSymbols, ...placeSymbols },
  result: responseSymbols,
  source,
  validity: `${validity} Sag elsewhere was up to 1.2 %, moments away from rims up to 7 % off.`,
  refuse: (inputs) => [
    ...faults(inputs),
    ...placeFaults(inputs, inputs),
    ...(inMaterial(inputs, [inputs.x, inputs.y]) ? [] : ["the place lies in an opening"]),
  ],
  compute: (inputs) => {
    const series = solvePlate(openPlate(inputs), { pressure: inputs.pressure }, seriesOrder);
    return responseOf(plateAt(series, inputs.x, inputs.y));
  },
});

/**
 * A panel with openings and a load on a rectangle of its material.
 *
 * @example openPlatePatch(openPlatePatch.read({ length: "400 mm", width: "300 mm",
 *   stiffness: { alongX: "153759.75 N·mm", alongY: "75975.41 N·mm", coupling: "7597.54 N·mm",
 *   twist: "11700.00 N·mm" }, left: "clamped", right: "free", bottom: "free", top: "free",
 *   openings: [{ left: "120 mm", bottom: "120 mm", width: "160 mm", height: "60 mm", cornerRadius: "0 mm" }],
 *   force: "50 N", patchX: "355 mm", patchY: "55 mm", patchLength: "50 mm", patchWidth: "50 mm" })) // largestDeflection 32.83 mm, largestX 400 mm, largestY 0 mm, clampedMoment -111.9 N·m/m, cutAway 0.08, unsettled 0.0004449
 */
export const openPlatePatch: Formula<OpenPlatePatch, OpenPlateAnswer> = formula<
  OpenPlatePatch,
  OpenPlateAnswer
>({
  id: "plate.edges.openings.patch",
  takesTime: true,
  title: "Panel with openings, load on a rectangle",
  equation: plateEnergy,
  inputs: { ...shapeSymbols, ...edgeSymbols, ...openingSymbols, ...patchSymbols },
  result: openAnswerSymbols,
  source,
  validity,
  refuse: (inputs) => [...faults(inputs), ...patchFaults(inputs, inputs), ...patchOverOpening(inputs)],
  warn: openPlateWarnings,
  compute: (inputs) => {
    const load = patchLoad(inputs);
    return answer(solvePlate(openPlate(inputs), load, seriesOrder), load);
  },
});

function faults(inputs: OpenPlate): string[] {
  return [...shapeFaults(inputs), ...edgeFaults(inputs), ...openingFaults(inputs, inputs.openings)];
}

function patchOverOpening(inputs: OpenPlatePatch): string[] {
  const patch = { ...patchRectangle(inputs), radius: 0 };
  return roundedBoxes(inputs.openings).some((opening) => shareArea(opening, patch))
    ? ["the patch must not lie over an opening"]
    : [];
}

function openPlate(inputs: OpenPlate): SeriesPlate {
  return { ...solidPlate(inputs), openings: inputs.openings };
}

/** The coarser series that tells how far the finer has settled. */
const coarseOrder: SeriesOrder = { shapes: 17, leastDegree: 3 };

function answer(
  series: PlateSeries,
  load: SeriesLoad,
): { readonly [Field in keyof OpenPlateAnswer]: number } {
  const { plate } = series;
  const largest = largestDeflection(series);
  const coarse = plateAt(solvePlate(plate, load, coarseOrder), largest.x, largest.y);
  return {
    ...largestOf(largest),
    clampedMoment: edgeMoments(series).clamped,
    cutAway: cutAwayShare(plate, plate.openings),
    unsettled: Math.abs(1 - coarse.deflection / largest.deflection),
  };
}
