/** Readings of a bend test that do not agree with the others. */
import type { Problem } from "../problem.js";
import { Length } from "../quantity/index.js";
import { type BendReading, gaugeDivision, sagOverLoad } from "./bend-reading.js";
import { problemAt } from "./bend-refusal.js";
import { type LineFit, lineFit, outliers, residuals } from "./line-fit.js";

/** Lines whose sag lies off by more than scatter, and by more than two divisions of the gauge. */
export function oddLines(readings: readonly BendReading[], fit: LineFit): readonly number[] {
  const points = sagOverLoad(readings);
  const off = residuals(points, fit);
  const readable = 2 * gaugeDivision(readings);
  return outliers(points, fit)
    .filter((i) => Math.abs(off[i] ?? 0) > readable)
    .flatMap((i) => readings[i]?.line ?? []);
}

/** Refuses a strip whose readings disagree, at the one that is furthest off when it stands out. */
export function scattered(readings: readonly BendReading[], fit: LineFit, file: string): Problem {
  const [{ strip }] = readings as [BendReading];
  const points = sagOverLoad(readings);
  const off = residuals(points, fit).map(Math.abs);
  const furthest = off.indexOf(Math.max(...off));
  const others = readings.filter((_, i) => i !== furthest);
  const odd = readings[furthest] as BendReading;
  if (others.length >= 3 && new Set(others.map(({ load }) => load)).size >= 2) {
    const alone = lineFit(sagOverLoad(others));
    const wanted = Length.si(alone.intercept + alone.slope * odd.load);
    if (alone.residualDeviation < 0.2 * fit.residualDeviation) {
      const expected = `about ${Length.show(wanted, { digits: 2 })} as the other loads of strip ${strip} have it: read it again, and look at its unit`;
      return problemAt(odd, file, "sag", Length.show(odd.sag, { digits: 3 }), expected);
    }
  }
  const expected =
    "readings that agree better, the scatter is as large as the modulus: more loads, heavier loads, a finer sag gauge";
  return problemAt(readings[0] as BendReading, file, "strip", strip, expected);
}
