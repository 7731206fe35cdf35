import { type Formula, formula } from "../formula.js";
import { listOf, Pressure, Ratio, recordOf } from "../quantity/index.js";
import { cite } from "../source.js";

/** One point of a cushion curve. */
export interface CurvePoint {
  /** Pressure at rest. */
  readonly stress: Pressure;
  /** Greatest deceleration measured, in gravities. */
  readonly deceleration: Ratio;
}

/** A measured curve and the pressure to read it at. */
export interface CurveReading {
  /** At least two, at rising pressures. */
  readonly points: readonly CurvePoint[];
  /** Within the curve. */
  readonly stress: Pressure;
}

/**
 * Deceleration that a cushion curve gives at a pressure, straight between its points.
 *
 * @source linear interpolation
 * @throws Refusal for fewer than two points, pressures that do not rise, or a pressure off the curve
 * @example readCushionCurve(readCushionCurve.read({ points: [{ stress: "1 kPa", deceleration: 80 },
 *   { stress: "3 kPa", deceleration: 50 }, { stress: "6 kPa", deceleration: 65 }], stress: "2 kPa" })) // 65
 */
export const readCushionCurve: Formula<CurveReading, Ratio> = formula<CurveReading, Ratio>({
  id: "cushion.curve",
  title: "Reading a cushion curve",
  equation: String.raw`G=G_i+(G_{i+1}-G_i)\frac{\sigma-\sigma_i}{\sigma_{i+1}-\sigma_i}`,
  inputs: {
    points: {
      symbol: String.raw`\sigma_i, G_i`,
      kind: listOf(recordOf<CurvePoint>("point", { stress: Pressure, deceleration: Ratio })),
      meaning: "points of the curve",
    },
    stress: { symbol: String.raw`\sigma`, kind: Pressure, meaning: "pressure at rest", above: 0 },
  },
  result: { symbol: "G", kind: Ratio, meaning: "deceleration, in gravities" },
  source: [cite("geometry", "straight between two points")],
  validity: "One foam, one thickness, one drop height; never beyond its ends.",
  refuse: ({ points, stress }) => {
    const [first, last] = [points[0], points.at(-1)];
    if (!first || !last || points.length < 2) return [`a curve has at least 2 points, got ${points.length}`];
    if (points.some((point, i) => i > 0 && point.stress <= (points[i - 1]?.stress ?? 0)))
      return ["pressures must rise from point to point"];
    return stress >= first.stress && stress <= last.stress
      ? []
      : [
          `stress must be within the curve, ${Pressure.show(first.stress)} to ${Pressure.show(last.stress)}, got ${Pressure.show(stress)}`,
        ];
  },
  compute: ({ points, stress }) => {
    const next = Math.max(
      1,
      points.findIndex((point) => point.stress >= stress),
    );
    const [low, high] = [points[next - 1], points[next]];
    if (!low || !high) return 0;
    return (
      low.deceleration +
      ((high.deceleration - low.deceleration) * (stress - low.stress)) / (high.stress - low.stress)
    );
  },
});
