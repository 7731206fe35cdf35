import type { RatioInterval } from "../model/index.js";
import type { Verdict } from "./finding.js";

/** Judges demand over capacity: close when the interval of measured scatter straddles 1. */
export function verdictOf(ratio: number, interval?: Pick<RatioInterval, "low" | "high">): Verdict {
  if (interval && interval.low < 1 && interval.high > 1) return "close";
  return ratio <= 1 ? "holds" : "fails";
}

/** The worst of several verdicts; unknown is worse than close, since nobody looked. */
export function worstVerdict(verdicts: readonly Verdict[]): Verdict {
  const order: readonly Verdict[] = ["fails", "unknown", "close", "holds"];
  return order.find((verdict) => verdicts.includes(verdict)) ?? "holds";
}
