/** A control that picks among rows computed beforehand, since a page cannot call back into the kernel. */

import type { ChartSpec } from "../page/index.js";
import { Refusal } from "../refusal.js";
import { axisTitle, type ChartRow, type NumberField } from "./chart-parts.js";

/** A numeric field the reader chooses a value of. */
export interface Slider<Row> extends NumberField<Row> {
  /** Where it stands at first; the middle value if left out. */
  readonly start?: number;
}

/** The chart's parameter, and the test that keeps the rows of the chosen value. */
export interface SliderParts {
  /** What the slider sets. */
  readonly params: readonly ChartSpec[];
  /** Keeps the rows that it chooses. */
  readonly filter: ChartSpec;
}

/**
 * A slider where the values are evenly spaced, else a choice among them.
 *
 * @throws Refusal when the field holds fewer than two values, or not the starting one
 */
export function sliderParts<Row>(rows: readonly ChartRow[], slider: Slider<Row>): SliderParts {
  const values = [...new Set(rows.map((row) => Number(row[slider.field])))].sort((a, b) => a - b);
  const start = slider.start ?? values[Math.floor((values.length - 1) / 2)] ?? 0;
  if (values.length < 2) {
    throw new Refusal(`slider ${slider.field}: expected at least two values, got ${values.length}`);
  }
  const nearest = values.find((value) => Math.abs(value - start) <= 1e-5 * Math.abs(start));
  if (nearest === undefined) {
    throw new Refusal(`slider ${slider.field}: no row at ${start}, expected one of ${values.join(", ")}`);
  }
  const name = axisTitle(slider);
  const step = evenStep(values);
  const bind: ChartSpec =
    step === undefined
      ? { input: "select", options: values, name }
      : { input: "range", min: values[0] ?? 0, max: values.at(-1) ?? 0, step, name };
  const reach = (step ?? smallestGap(values)) / 2;
  return {
    params: [{ name: "chosen", value: nearest, bind }],
    filter: { filter: `abs(datum["${slider.field}"] - chosen) < ${reach}` },
  };
}

function gaps(values: readonly number[]): number[] {
  return values.slice(1).map((value, i) => value - (values[i] ?? 0));
}

function smallestGap(values: readonly number[]): number {
  return Math.min(...gaps(values));
}

/** The common step; undefined where steps differ. */
function evenStep(values: readonly number[]): number | undefined {
  const steps = gaps(values);
  const first = steps[0] ?? 0;
  return steps.every((step) => Math.abs(step - first) < 1e-4 * first)
    ? Number(first.toPrecision(4))
    : undefined;
}
