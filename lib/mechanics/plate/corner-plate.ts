/** A panel that rests on its four corners only, like a floor on casters or feet. */
import { type Formula, formula } from "../../formula.js";
import { type Citation, cite } from "../../source.js";
import { type PlateSeries, type SeriesLoad, solvePlate } from "../series/index.js";
import { answerAt, answerSymbols, type PlateAnswer } from "./plate-answer.js";
import {
  type PlatePatch,
  type PlatePressure,
  type PlateShape,
  patchFaults,
  patchLoad,
  patchSymbols,
  pressureSymbols,
  shapeFaults,
  shapeSymbols,
} from "./plate-inputs.js";
import { plateEnergy, seriesFineness, thinPlateLimits } from "./plate-results.js";

/** A panel on its corners under a uniform load. */
export type CornerPlateUniform = PlateShape & PlatePressure;

/** A panel on its corners with a load on a rectangle. */
export type CornerPlatePatch = PlateShape & PlatePatch;

const source: readonly Citation[] = [cite("plates-shells", "art. 49 (corners), 82 and 85 (energy)")];
const validity = `${thinPlateLimits} Corners rest on points and may tilt; moments right at a corner are not settled.`;

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
  title: "Panel resting on its four corners, uniform load",
  equation: plateEnergy,
  inputs: { ...shapeSymbols, ...pressureSymbols },
  result: answerSymbols("in the middle"),
  source,
  validity,
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
  title: "Panel resting on its four corners, load on a rectangle",
  equation: plateEnergy,
  inputs: { ...shapeSymbols, ...patchSymbols },
  result: answerSymbols("under the load"),
  source,
  validity,
  refuse: (inputs) => [...shapeFaults(inputs), ...patchFaults(inputs, inputs)],
  compute: (inputs) => answerAt(onCorners(inputs, patchLoad(inputs)), inputs.patchX, inputs.patchY),
});

function onCorners({ length, width, stiffness }: PlateShape, load: SeriesLoad): PlateSeries {
  const free = { left: "free", right: "free", bottom: "free", top: "free" } as const;
  return solvePlate(
    { length, width, stiffness, ...free, cornersHeld: true, openings: [] },
    load,
    seriesFineness,
  );
}
