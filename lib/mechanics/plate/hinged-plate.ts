/** A panel on four hinged edges, by Navier's series. */
import { type Formula, formula } from "../../formula.js";
import { Force } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { navierSeries } from "../series/index.js";
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
import {
  largestOf,
  largestSymbols,
  type PlateLargest,
  type PlateResponse,
  responseOf,
  responseSymbols,
  thinPlateLimits,
} from "./plate-results.js";

/** A hinged panel under a uniform load. */
export type HingedPlateUniform = PlateShape & PlatePressure;

/** What it does in the middle, where it sags most, and how hard its corners pull up. */
export type HingedPlateAnswer = Omit<PlateResponse, "momentXY"> & {
  /** Force that each corner needs to be held down with. */
  readonly cornerForce: Force;
};

const navier = String.raw`w=\sum_m\sum_n\frac{q_{mn}\,\sin\frac{m\pi x}{a}\sin\frac{n\pi y}{b}}{\pi^4\left[D_x\frac{m^4}{a^4}+2(D_1+2D_{xy})\frac{m^2n^2}{a^2b^2}+D_y\frac{n^4}{b^4}\right]}`;

/**
 * Middle of a panel on four hinged edges under a uniform load.
 *
 * @example hingedPlateUniform(hingedPlateUniform.read({ length: "1 m", width: "1 m",
 *   stiffness: { alongX: "1000 N·m", alongY: "1000 N·m", coupling: "300 N·m", twist: "350 N·m" },
 *   pressure: "1 kPa" })) // deflection 4.062 mm, momentX 47.89 N·m/m, momentY 47.89 N·m/m, cornerForce 64.96 N
 */
export const hingedPlateUniform: Formula<HingedPlateUniform, HingedPlateAnswer> = formula<
  HingedPlateUniform,
  HingedPlateAnswer
>({
  id: "plate.hinged.uniform",
  title: "Panel hinged on four edges, uniform load",
  equation: navier,
  inputs: { ...shapeSymbols, ...pressureSymbols },
  result: {
    deflection: { ...responseSymbols.deflection, meaning: "deflection in the middle" },
    momentX: responseSymbols.momentX,
    momentY: responseSymbols.momentY,
    cornerForce: { symbol: "R", kind: Force, meaning: "hold-down force at each corner" },
  },
  source: [cite("plates-shells", "arts. 28, 30, 85; table 8"), cite("stress-strain", "table 11.4, case 1a")],
  validity: `${thinPlateLimits} The corners must be held down, or they lift.`,
  refuse: shapeFaults,
  compute: ({ length, width, stiffness, pressure }) => {
    const over = { left: 0, bottom: 0, width: length, height: width };
    const series = navierSeries({ length, width, stiffness, pressure, over });
    const { deflection, momentX, momentY } = series.at(length / 2, width / 2);
    return { deflection, momentX, momentY, cornerForce: 2 * Math.abs(series.at(0, 0).momentXY) };
  },
});

/** A hinged panel with a load on part of it. */
export type HingedPlatePatch = PlateShape & PlatePatch;

/** What it does under the middle of the load, and where it sags most. */
export type HingedPatchAnswer = Omit<PlateResponse, "momentXY"> & PlateLargest;

/**
 * A panel on four hinged edges with a load on a rectangle.
 *
 * @example hingedPlatePatch(hingedPlatePatch.read({ length: "1 m", width: "2 m",
 *   stiffness: { alongX: "1000 N·m", alongY: "1000 N·m", coupling: "300 N·m", twist: "350 N·m" },
 *   force: "1 kN", patchX: "0.5 m", patchY: "1 m", patchLength: "0.01 m", patchWidth: "0.01 m" })) // deflection 16.52 mm, momentX 537.4 N·m/m, momentY 471 N·m/m, largestDeflection 16.52 mm, largestX 500 mm, largestY 1000 mm
 */
export const hingedPlatePatch: Formula<HingedPlatePatch, HingedPatchAnswer> = formula<
  HingedPlatePatch,
  HingedPatchAnswer
>({
  id: "plate.hinged.patch",
  title: "Panel hinged on four edges, load on a rectangle",
  equation: navier,
  inputs: { ...shapeSymbols, ...patchSymbols },
  result: {
    deflection: { ...responseSymbols.deflection, meaning: "deflection under the load" },
    momentX: responseSymbols.momentX,
    momentY: responseSymbols.momentY,
    ...largestSymbols,
  },
  source: [cite("plates-shells", "arts. 29, 34, 85; table 23"), cite("stress-strain", "table 11.4, case 1b")],
  validity: `${thinPlateLimits} Moments under a patch smaller than a twentieth of the side are cut off.`,
  refuse: (inputs) => [...shapeFaults(inputs), ...patchFaults(inputs, inputs)],
  warn: ({ length, width, patchLength, patchWidth }) =>
    Math.min(patchLength / length, patchWidth / width) < 0.05
      ? ["the load is so concentrated that the moment under it is too low here; the deflection holds"]
      : [],
  compute: (inputs) => {
    const { length, width, stiffness } = inputs;
    const series = navierSeries({ length, width, stiffness, ...patchLoad(inputs) });
    const { deflection, momentX, momentY } = responseOf(series.at(inputs.patchX, inputs.patchY));
    return { deflection, momentX, momentY, ...largestOf(series.largest()) };
  },
});
