import { type Formula, formula } from "../formula.js";
import { Area, Density, Pressure, Ratio } from "../quantity/index.js";
import { cite } from "../source.js";
import { AirFlow } from "./kinds.js";

/** A fan and the openings it blows through. */
export interface FanInCase {
  /** Its flow against nothing. */
  readonly freeFlow: AirFlow;
  /** Its pressure without flow. */
  readonly deadPressure: Pressure;
  /** Share of the free area that a jet fills. */
  readonly discharge: Ratio;
  /** The openings it blows through, as one. */
  readonly area: Area;
  /** 1.2 kg/m3 near sea level. */
  readonly airDensity: Density;
}

/**
 * What a fan moves in its case: where its line from dead pressure to free flow meets the pressure that the openings
 * take, rho/2 (Q / (C A))^2.
 *
 * @source fluid mechanics, operating point of a fan
 * @throws RangeError unless every input is positive
 * @example fanFlow(fanFlow.read({ freeFlow: "0.02 m3/s", deadPressure: "50 Pa", discharge: 1, area: "100 m2", airDensity: "1.2 kg/m3" })) // 72 m3/h
 */
export const fanFlow: Formula<FanInCase, AirFlow> = formula({
  id: "heat.fan",
  title: "What a fan moves in its case",
  equation: String.raw`Q=\frac{2\,p_0}{\frac{p_0}{Q_0}+\sqrt{\left(\frac{p_0}{Q_0}\right)^2+\frac{2\,\rho\,p_0}{(C_D A)^2}}}`,
  inputs: {
    freeFlow: { symbol: "Q_0", kind: AirFlow, meaning: "free flow", above: 0 },
    deadPressure: { symbol: "p_0", kind: Pressure, meaning: "pressure without flow", above: 0 },
    discharge: { symbol: "C_D", kind: Ratio, meaning: "discharge factor", above: 0, max: 1 },
    area: { symbol: "A", kind: Area, meaning: "openings as one", above: 0 },
    airDensity: { symbol: String.raw`\rho`, kind: Density, meaning: "air", above: 0 },
  },
  result: { symbol: "Q", kind: AirFlow, meaning: "air" },
  source: [cite("fluid-flow", "operating point of a fan")],
  validity:
    "A straight fan line, which flatters small axial fans in their middle; use the maker's curve where there is one.",
  compute: ({ freeFlow, deadPressure, discharge, area, airDensity }) => {
    const drag = airDensity / (2 * (discharge * area) ** 2);
    const slope = deadPressure / freeFlow;
    return (2 * deadPressure) / (slope + Math.sqrt(slope ** 2 + 4 * drag * deadPressure));
  },
});
