import type { KerfTest, Measurements } from "../../design/index.js";
import { kerfFromCuts, measuredMean } from "../../measure/index.js";
import type { ReviewInput } from "../../model/index.js";
import { Length } from "../../quantity/index.js";

/** A blade's cut, and whether it was measured. */
export interface KnownKerf {
  readonly kerf: Length;
  readonly from: "measured" | "common practice";
}

/** Common practice, no source: an eighth of an inch, for a blade nobody measured. */
const usualKerf = Length.of(1 / 8, "in");

/** Common practice, no source: one fastener in ten bought beyond the count. */
export const spareShare = 0.1;

/** Kerf of the blade for sheets or for bars: the mean of the builder's trials, or the usual one. */
export function kerfFor(use: "sheets" | "bars", { measurements }: ReviewInput): KnownKerf {
  const trials = trialsFor(use, measurements).map(kerfFromCuts);
  const [first, ...others] = trials;
  if (first === undefined) return { kerf: usualKerf, from: "common practice" };
  return { kerf: others.length === 0 ? first : measuredMean(trials).mean, from: "measured" };
}

/** The trials with the thinnest and the thickest kerf; nothing where fewer than two were made. */
export function kerfRange(
  use: "sheets" | "bars",
  { measurements }: ReviewInput,
): readonly [KerfTest, KerfTest] | undefined {
  const trials = [...trialsFor(use, measurements)].sort((a, b) => kerfFromCuts(a) - kerfFromCuts(b));
  const [thinnest, thickest] = [trials[0], trials.at(-1)];
  return trials.length > 1 && thinnest && thickest ? [thinnest, thickest] : undefined;
}

function trialsFor(use: "sheets" | "bars", { kerfs }: Measurements): readonly KerfTest[] {
  return kerfs.filter((row) => row.use === use || row.use === "both");
}
