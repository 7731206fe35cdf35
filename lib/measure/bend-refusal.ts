/** Why the readings of one strip cannot be used, and what the builder can do about it. */
import type { Problem } from "../problem.js";
import { Force, Length } from "../quantity/index.js";
import { leastSpan } from "./bend-modulus.js";
import { type BendReading, ownSag, sagOverLoad } from "./bend-reading.js";
import { lineFit } from "./line-fit.js";

const sizes = ["span", "width", "thickness"] as const;

/** The first reason to refuse a strip, at its row; undefined when it can be measured. */
export function refusal(readings: readonly BendReading[], file: string): Problem | undefined {
  return (
    unlikeSizes(readings, file) ??
    fewLoads(readings, file) ??
    shortSpan(readings, file) ??
    notGrowing(readings, file)
  );
}

/** A problem at one reading's row. */
export function problemAt(
  { line }: BendReading,
  file: string,
  column: string,
  value: string,
  expected: string,
): Problem {
  return { file, ...(line === undefined ? {} : { row: line }), column, value, expected };
}

function unlikeSizes(readings: readonly BendReading[], file: string): Problem | undefined {
  const [first] = readings as [BendReading];
  const other = readings.find((one) => sizes.some((size) => one[size] !== first[size]));
  if (!other) return undefined;
  const expected = `the size of strip ${first.strip} as in its first row, ${showSize(first)}`;
  return problemAt(other, file, sizes.join(", "), showSize(other), expected);
}

function showSize(reading: BendReading): string {
  return sizes.map((size) => Length.show(reading[size])).join(" x ");
}

function fewLoads(readings: readonly BendReading[], file: string): Problem | undefined {
  const [first] = readings as [BendReading];
  const loads = new Set(readings.map(({ load }) => load)).size;
  if (loads >= 3) return undefined;
  const expected = `at least 3 different loads on a strip, got ${loads}: hang more weights on it`;
  return problemAt(first, file, "strip", first.strip, expected);
}

function shortSpan(readings: readonly BendReading[], file: string): Problem | undefined {
  const [first] = readings as [BendReading];
  const least = leastSpan(first.thickness);
  if (first.span >= least) return undefined;
  const expected = `a span of at least 10 thicknesses (${Length.show(least)}), better 20: move the rests apart`;
  return problemAt(first, file, "span", Length.show(first.span), expected);
}

/** Sag must grow with the load over the whole strip; names the row that sags no more than the one before. */
function notGrowing(readings: readonly BendReading[], file: string): Problem | undefined {
  const points = sagOverLoad(readings);
  const flat = points.y.every((sag) => sag === points.y[0]);
  if (!flat && lineFit(points).slope > 0) return undefined;
  const byLoad = [...readings].sort((a, b) => a.load - b.load);
  const culprit = byLoad.find((one, i) => i > 0 && ownSag(one) <= ownSag(byLoad[i - 1] ?? one));
  if (!culprit) throw new Error(`bend test: a falling line without a falling sag in ${file}`);
  const expected = `sag that grows with the load (here ${Force.show(culprit.load)}): read this row again, or bend the strip anew`;
  return problemAt(culprit, file, "sag", Length.show(culprit.sag), expected);
}
