/** Replies that compare a demand with what is allowed, and say by which criterion and with what margin. */
import type { WorkedLine } from "../formula.js";
import type { RatioInterval } from "../model/index.js";
import { type Kind, Ratio, type ShowStyle } from "../quantity/index.js";
import { type Citation, sources } from "../source.js";
import { amount } from "./amount.js";
import { verdictOf } from "./finding.js";
import type { Reply } from "./guarded.js";

/** What is compared. */
export interface Comparison<T extends number> {
  readonly kind: Kind<T>;
  /** What is asked, in words, and how much. */
  readonly asked: readonly [string, T];
  /** What is there, in words, and how much. */
  readonly there: readonly [string, T];
  /** The first sentence. */
  readonly facts: string;
  /** What to do when it fails. */
  readonly remedy?: string;
  readonly because: readonly WorkedLine[];
  readonly cautions: readonly string[];
  /** The criterion first. */
  readonly source: readonly [Citation, ...Citation[]];
  readonly interval?: RatioInterval;
}

/** Judges asked over there, and closes the answer with criterion and margin. */
export function compared<T extends number>(comparison: Comparison<T>): Reply {
  const { kind, asked, there, facts, remedy, because, cautions, source, interval } = comparison;
  const used = there[1] > 0 ? asked[1] / there[1] : Number.POSITIVE_INFINITY;
  if (!Number.isFinite(used)) throw new RangeError(`${there[0]}: nothing to compare with`);
  const verdict = verdictOf(used, interval);
  const advice = verdict === "holds" || remedy === undefined ? "" : ` ${remedy}`;
  return {
    verdict,
    answer: `${facts}${advice} ${marginWords(used)} ${criterionWords(source[0])}`,
    demand: amount(kind, asked[0], asked[1]),
    capacity: amount(kind, there[0], there[1]),
    ratio: used,
    ...(interval ? { interval } : {}),
    because,
    cautions,
    source,
  };
}

/** How far from the limit, in words. */
export function marginWords(used: number): string {
  const style: ShowStyle = { unit: "%", digits: 2 };
  return used <= 1
    ? `Margin ${Ratio.show(Ratio.si(1 - used), style)}.`
    : `Over by ${Ratio.show(Ratio.si(used - 1), style)}.`;
}

/** Where a limit comes from, short enough for a sentence; the finding's sources say it in full. */
export function criterionWords({ source, where }: Citation): string {
  return `Criterion: ${sources[source].title}, ${where}.`;
}
