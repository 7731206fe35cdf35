/** Thresholds and gaps. */
import { type Formula, formula } from "../formula.js";
import { Force, Length } from "../quantity/index.js";
import { cite } from "../source.js";

/** A wheel against a step. */
export interface WheelAtStep {
  /** On the wheels that climb, together. */
  readonly load: Force;
  /** Of the wheel. */
  readonly diameter: Length;
  /** Of the step; a gap counts by how deep the wheel sinks. */
  readonly step: Length;
}

/**
 * Level push at the axle that lifts a wheel over a step: F sqrt(2 r s - s2) / (r - s).
 *
 * @source moments about the edge of the step
 * @throws Refusal unless the load is positive and the step lower than the axle
 * @example stepPush({ load: newton(7.84), diameter: mm(120), step: mm(30) }) // 13.58 N
 */
export const stepPush: Formula<WheelAtStep, Force> = formula({
  id: "roll.step",
  title: "Push over a threshold",
  equation: String.raw`P=F\,\frac{\sqrt{2rs-s^2}}{r-s},\quad r=\tfrac{D}{2}`,
  inputs: {
    load: { symbol: "F", kind: Force, meaning: "load on the climbing wheels", above: 0 },
    diameter: { symbol: "D", kind: Length, meaning: "diameter of the wheel", above: 0 },
    step: { symbol: "s", kind: Length, meaning: "height of the step", min: 0 },
  },
  result: { symbol: "P", kind: Force, meaning: "level push at the axle" },
  source: [cite("statics", "moments about the edge of the step")],
  validity:
    "A slow push; a run-up takes less and breaks casters. Tilt the case and lift wheel by wheel instead.",
  refuse: ({ diameter, step }) =>
    step < diameter / 2 ? [] : ["step must be lower than the axle: no push gets over it"],
  compute: ({ load, diameter, step }) => {
    const radius = diameter / 2;
    return (load * Math.sqrt(2 * radius * step - step ** 2)) / (radius - step);
  },
});

/**
 * How deep a wheel sinks into a gap: r - sqrt(r2 - (g/2)2); it must climb as much at the far side.
 *
 * @source geometry of a chord
 * @throws Refusal unless the gap is narrower than the wheel
 * @example gapDepth(gapDepth.read({ diameter: "4 in", gap: "0 in" })) // 0 mm
 */
export const gapDepth: Formula<{ readonly diameter: Length; readonly gap: Length }, Length> = formula({
  id: "roll.gap",
  title: "How deep a wheel sinks into a gap",
  equation: String.raw`s=\tfrac{D}{2}-\sqrt{\left(\tfrac{D}{2}\right)^2-\left(\tfrac{g}{2}\right)^2}`,
  inputs: {
    diameter: { symbol: "D", kind: Length, meaning: "diameter of the wheel", above: 0 },
    gap: { symbol: "g", kind: Length, meaning: "width of the gap", min: 0 },
  },
  result: { symbol: "s", kind: Length, meaning: "depth it sinks" },
  source: [cite("geometry", "sagitta of a chord")],
  validity: "A gap square across the way; a wheel that runs along it falls in.",
  refuse: ({ diameter, gap }) => (gap < diameter ? [] : ["gap must be narrower than the wheel"]),
  compute: ({ diameter, gap }) => diameter / 2 - Math.sqrt((diameter / 2) ** 2 - (gap / 2) ** 2),
});
