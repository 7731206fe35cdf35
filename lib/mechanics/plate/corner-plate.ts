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

/** A panel that rests on its four corners, under a uniform load. */
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

/** A panel that rests on its four corners, with a load on a rectangle. */
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
