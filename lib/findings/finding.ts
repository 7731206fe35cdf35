import type { WorkedLine } from "../formula.js";
import type { RatioInterval } from "../model/index.js";
import type { ShowStyle } from "../quantity/index.js";
import type { MissingMeasurement } from "../refusal.js";
import type { Citation } from "../source.js";
import type { Figure } from "./figures/figure.js";

/** What a finding comes to. `unknown` names the measurement to make; `broken` is a mistake of this program. */
export type Verdict = "holds" | "close" | "fails" | "unknown" | "broken";

/**
 * What happens where the answer is no: somebody is hurt, something breaks, it is harder to handle than guidance
 * allows, or comfort, looks and marks suffer.
 */
export type Tier = "safety" | "strength" | "handling" | "feel";

/** A quantity under a name, ready to show in the reader's units. */
export interface Amount {
  /** What it is, in words: "under the most loaded caster". */
  readonly meaning: string;
  /** Its value with a unit of the reader's. */
  show(style?: ShowStyle): string;
}

/** Something to do about an answer that is not yes. */
export interface Remedy {
  /** What to do, as a sentence. */
  readonly words: string;
  /** What it gave when it was tried; absent for advice that nobody has tried on this case. */
  readonly gives?: readonly Amount[];
}

/** One question about the case, answered with its working. */
export interface Finding {
  /** Dotted path, unique in a review: "stiffness.upper.front". */
  readonly id: string;
  /** The id of its question, without the subject's: "stiffness". Findings that share it are alike. */
  readonly asks: string;
  /** The trade that asks: stiffness, joints, travel, fit-out, money. */
  readonly topic: string;
  /** The part it is about: "upper.front", "handles". */
  readonly subject: string;
  /** The question as a builder would ask it. */
  readonly question: string;
  /** What is at stake. */
  readonly tier: Tier;
  /** What the answer comes to. */
  readonly verdict: Verdict;
  /** The answer in sentences computed from the values. */
  readonly answer: string;
  /** What is asked for, where it is an amount. */
  readonly demand?: Amount;
  /** What is there or allowed, where it is an amount. */
  readonly capacity?: Amount;
  /** Demand over capacity. */
  readonly ratio?: number;
  /** What the builder's own scatter leaves open about the ratio. */
  readonly interval?: RatioInterval;
  /** The worked lines behind it, in order. */
  readonly because: readonly WorkedLine[];
  /** What somebody must be told who may be hurt. */
  readonly cautions: readonly string[];
  /** What the answer takes for granted. */
  readonly assumes: readonly string[];
  /** What would help, where the answer is not yes. */
  readonly remedies: readonly Remedy[];
  /** The criterion first, then what the working rests on. */
  readonly source: readonly Citation[];
  /** What an unknown answer waits for. */
  readonly missing?: MissingMeasurement;
  /** What went wrong inside this program, of a broken answer, for a report. */
  readonly error?: string;
  /** Its picture, made when a page asks for it; undefined where something is missing to make it. */
  figure?(): Figure | undefined;
}

/** Judges demand over capacity: close when the interval of measured scatter straddles 1. */
export function verdictOf(ratio: number, interval?: Pick<RatioInterval, "low" | "high">): Verdict {
  if (interval && interval.low < 1 && interval.high > 1) return "close";
  return ratio <= 1 ? "holds" : "fails";
}

/** What decides where a finding stands. */
export type Standing = Pick<Finding, "tier" | "verdict"> & { readonly ratio?: number | undefined };

const tierOrder: readonly Tier[] = ["safety", "strength", "handling", "feel"];
const verdictOrder: readonly Verdict[] = ["fails", "broken", "unknown", "close", "holds"];

/** By danger: who can be hurt first, then what fails, then by how far over; a plain no is over all measure. */
export function byDanger<One extends Standing>(findings: readonly One[]): One[] {
  const over = ({ verdict, ratio }: Standing): number =>
    ratio ?? (verdict === "fails" ? Number.POSITIVE_INFINITY : 0);
  return [...findings].sort(
    (a, b) =>
      tierOrder.indexOf(a.tier) - tierOrder.indexOf(b.tier) ||
      verdictOrder.indexOf(a.verdict) - verdictOrder.indexOf(b.verdict) ||
      (over(a) === over(b) ? 0 : over(b) - over(a)),
  );
}

/** Whether it keeps a case from being built as it is: safety or strength that fails, or that nobody knows. */
export function keepsFromRelease({ tier, verdict }: Standing): boolean {
  const hurts = tier === "safety" || tier === "strength";
  return hurts && (verdict === "fails" || verdict === "unknown" || verdict === "broken");
}

/** The worst of several verdicts; unknown and broken are worse than close, since nobody could look. */
export function worstVerdict(verdicts: readonly Verdict[]): Verdict {
  return verdictOrder.find((verdict) => verdicts.includes(verdict)) ?? "holds";
}
