/** A panel without openings by a Ritz series: its four edges each free, hinged or clamped, or resting on its corners. */
import { type Bare, type Formula, type FormulaSymbols, formula } from "../../formula.js";
import { keptByContent } from "../../kept/index.js";
import { type Citation, cite } from "../../source.js";
import {
  edgeMoments,
  largestDeflection,
  type PlateSeries,
  plateAt,
  type SeriesLoad,
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
  type PlateEdgeMoments,
  type PlateLargest,
  type PlateResponse,
  plateEnergy,
  responseOf,
  responseSymbols,
  seriesOrder,
  thinPlateLimits,
} from "./plate-results.js";

/** A panel under a uniform load. */
export type EdgePlateUniform = PlateShape & PlateEdges & PlatePressure;

/** A panel under a uniform load, and a place to look at. */
export type EdgePlateUniformAt = EdgePlateUniform & PlatePlace;

/** A panel with a load on a rectangle. */
export type EdgePlatePatch = PlateShape & PlateEdges & PlatePatch;

const source: readonly Citation[] = [
  cite("plates-shells", "arts. 41 to 48 (results), 82 and 85 (energy)"),
  cite("stress-strain", "table 11.4"),
];

/**
 * A panel under a uniform load with any mix of edges.
 *
 * @example edgePlateUniform(edgePlateUniform.read({ length: "1 m", width: "1 m",
 *   stiffness: { alongX: "1000 N·m", alongY: "1000 N·m", coupling: "300 N·m", twist: "350 N·m" },
 *   left: "free", right: "free", bottom: "clamped", top: "free", pressure: "1 kPa" })) // deflection 45.85 mm, momentX -23.69 N·m/m, momentY -122.7 N·m/m, momentXY 1.377e-13 N·m/m, largestDeflection 129.1 mm, largestX 500 mm, largestY 1000 mm, clampedMoment -531.7 N·m/m, freeMoment -395 N·m/m
 */
export const edgePlateUniform: Formula<EdgePlateUniform, PlateAnswer> = formula<
  EdgePlateUniform,
  PlateAnswer
>({
  id: "plate.edges.uniform",
  takesTime: true,
  title: "Panel with any mix of edges, uniform load",
  equation: plateEnergy,
  inputs: { ...shapeSymbols, ...edgeSymbols, ...pressureSymbols },
  result: answerSymbols("in the middle"),
  source,
  validity: `${thinPlateLimits} Moments in a corner between a clamped and a free edge are not settled.`,
  refuse: (inputs) => [...shapeFaults(inputs), ...edgeFaults(inputs)],
  compute: (inputs) => keptMiddle(inputs),
});

/** Panels kept: the shelves of a case, and of some edits before. */
const mostPanels = 40;

const keptMiddle: (inputs: EdgePlateUniform) => Bare<PlateAnswer> = keptByContent(mostPanels, (inputs) =>
  answerAt(uniform(inputs), inputs.length / 2, inputs.width / 2),
);

/**
 * One place of a panel under a uniform load with any mix of edges.
 *
 * @example edgePlateUniformAt(edgePlateUniformAt.read({ length: "1 m", width: "1 m",
 *   stiffness: { alongX: "1000 N·m", alongY: "1000 N·m", coupling: "300 N·m", twist: "350 N·m" },
 *   left: "free", right: "free", bottom: "clamped", top: "free", pressure: "1 kPa", x: "0.5 m", y: "1 m" })) // deflection 129.1 mm, momentX 14.99 N·m/m, momentY -0.09941 N·m/m, momentXY 7.152e-13 N·m/m
 */
export const edgePlateUniformAt: Formula<EdgePlateUniformAt, PlateResponse> = formula<
  EdgePlateUniformAt,
  PlateResponse
>({
  id: "plate.edges.uniform.at",
  takesTime: true,
  title: "One place of a panel with any mix of edges, uniform load",
  equation: plateEnergy,
  inputs: { ...shapeSymbols, ...edgeSymbols, ...pressureSymbols, ...placeSymbols },
  result: responseSymbols,
  source,
  validity: edgePlateUniform.declaration.validity,
  refuse: (inputs) => [...shapeFaults(inputs), ...edgeFaults(inputs), ...placeFaults(inputs, inputs)],
  compute: (inputs) => responseOf(plateAt(uniform(inputs), inputs.x, inputs.y)),
});

/**
 * A panel with a load on a rectangle and any mix of edges.
 *
 * @example edgePlatePatch(edgePlatePatch.read({ length: "1 m", width: "2 m", stiffness: { alongX: "1000 N·m",
 *   alongY: "1000 N·m", coupling: "300 N·m", twist: "350 N·m" }, left: "hinged", right: "hinged",
 *   bottom: "hinged", top: "hinged", force: "1 kN", patchX: "0.5 m", patchY: "1 m", patchLength: "0.01 m",
 *   patchWidth: "0.01 m" })) // deflection 16.51 mm, momentX 545.3 N·m/m, momentY 508.9 N·m/m, momentXY 6.778e-9 N·m/m, largestDeflection 16.51 mm, largestX 500 mm, largestY 1000 mm, clampedMoment 0 N·m/m, freeMoment 0 N·m/m
 */
export const edgePlatePatch: Formula<EdgePlatePatch, PlateAnswer> = formula<EdgePlatePatch, PlateAnswer>({
  id: "plate.edges.patch",
  takesTime: true,
  title: "Panel with any mix of edges, load on a rectangle",
  equation: plateEnergy,
  inputs: { ...shapeSymbols, ...edgeSymbols, ...patchSymbols },
  result: answerSymbols("under the load"),
  source,
  validity: `${edgePlateUniform.declaration.validity} Under a load on a small patch the moment at a clamped edge comes out up to 3 % low.`,
  refuse: (inputs) => [...shapeFaults(inputs), ...edgeFaults(inputs), ...patchFaults(inputs, inputs)],
  compute: (inputs) => answerAt(patched(inputs), inputs.patchX, inputs.patchY),
});

function uniform(inputs: EdgePlateUniform): PlateSeries {
  return solvePlate(solidPlate(inputs), { pressure: inputs.pressure }, seriesOrder);
}

function patched(inputs: EdgePlatePatch): PlateSeries {
  return solvePlate(solidPlate(inputs), patchLoad(inputs), seriesOrder);
}

/** A panel on its corners under a uniform load. */
export type CornerPlateUniform = PlateShape & PlatePressure;

/** A panel on its corners with a load on a rectangle. */
export type CornerPlatePatch = PlateShape & PlatePatch;

const cornerSource: readonly Citation[] = [cite("plates-shells", "art. 49 (corners), 82 and 85 (energy)")];
const cornerValidity = `${thinPlateLimits} Corners rest on points and may tilt; moments right at a corner are not settled.`;

/**
 * A panel that rests on its four corners, under a uniform load.
 *
 * @example cornerPlateUniform(cornerPlateUniform.read({ length: "1 m", width: "1 m",
 *   stiffness: { alongX: "1000 N·m", alongY: "1000 N·m", coupling: "300 N·m", twist: "350 N·m" },
 *   pressure: "1 kPa" })) // deflection 25.51 mm, momentX 111.7 N·m/m, momentY 111.7 N·m/m, momentXY -6.905e-15 N·m/m, largestDeflection 25.51 mm, largestX 500 mm, largestY 500 mm, clampedMoment 0 N·m/m, freeMoment 150.4 N·m/m
 */
export const cornerPlateUniform: Formula<CornerPlateUniform, PlateAnswer> = formula<
  CornerPlateUniform,
  PlateAnswer
>({
  id: "plate.corners.uniform",
  takesTime: true,
  title: "Panel resting on its four corners, uniform load",
  equation: plateEnergy,
  inputs: { ...shapeSymbols, ...pressureSymbols },
  result: answerSymbols("in the middle"),
  source: cornerSource,
  validity: cornerValidity,
  refuse: shapeFaults,
  compute: (inputs) =>
    answerAt(onCorners(inputs, { pressure: inputs.pressure }), inputs.length / 2, inputs.width / 2),
});

/**
 * A panel that rests on its four corners, with a load on a rectangle.
 *
 * @example cornerPlatePatch(cornerPlatePatch.read({ length: "1 m", width: "1 m",
 *   stiffness: { alongX: "1000 N·m", alongY: "1000 N·m", coupling: "300 N·m", twist: "350 N·m" },
 *   force: "1 kN", patchX: "0.5 m", patchY: "0.5 m", patchLength: "0.01 m", patchWidth: "0.01 m" })) // deflection 39.14 mm, momentX 605.9 N·m/m, momentY 605.9 N·m/m, momentXY -1.761e-9 N·m/m, largestDeflection 39.14 mm, largestX 500 mm, largestY 500 mm, clampedMoment 0 N·m/m, freeMoment 205.9 N·m/m
 */
export const cornerPlatePatch: Formula<CornerPlatePatch, PlateAnswer> = formula<
  CornerPlatePatch,
  PlateAnswer
>({
  id: "plate.corners.patch",
  takesTime: true,
  title: "Panel resting on its four corners, load on a rectangle",
  equation: plateEnergy,
  inputs: { ...shapeSymbols, ...patchSymbols },
  result: answerSymbols("under the load"),
  source: cornerSource,
  validity: cornerValidity,
  refuse: (inputs) => [...shapeFaults(inputs), ...patchFaults(inputs, inputs)],
  compute: (inputs) => answerAt(onCorners(inputs, patchLoad(inputs)), inputs.patchX, inputs.patchY),
});

function onCorners({ length, width, stiffness }: PlateShape, load: SeriesLoad): PlateSeries {
  const free = { left: "free", right: "free", bottom: "free", top: "free" } as const;
  return solvePlate(
    { length, width, stiffness, ...free, cornersHeld: true, openings: [] },
    load,
    seriesOrder,
  );
}

/** Deflection and moments in the middle (or under the middle of the patch), where it sags most, and its edges. */
export type PlateAnswer = PlateResponse & PlateLargest & PlateEdgeMoments;

/**
 * Symbols of the answer.
 *
 * @param place what the first deflection is: "in the middle", "under the load"
 */
export function answerSymbols(place: string): FormulaSymbols<PlateAnswer> {
  const deflection = { ...responseSymbols.deflection, meaning: `deflection ${place}` };
  return { ...responseSymbols, deflection, ...largestSymbols, ...edgeMomentSymbols };
}

/**
 * Reads the answer from the solved plate.
 *
 * @param series the solved plate
 * @param x place of the first deflection and moments, m
 * @param y the same along y, m
 */
export function answerAt(
  series: PlateSeries,
  x: number,
  y: number,
): { readonly [Field in keyof PlateAnswer]: number } {
  const { clamped, free } = edgeMoments(series);
  return {
    ...responseOf(plateAt(series, x, y)),
    ...largestOf(largestDeflection(series)),
    clampedMoment: clamped,
    freeMoment: free,
  };
}
