import { type MissingMeasurement, Refusal } from "../refusal.js";
import type { Finding } from "./finding.js";

/** What a finding is about, before anything is worked out. */
export type Question = Pick<Finding, "id" | "topic" | "subject" | "question">;

const old = { tier: "strength", assumes: [], remedies: [] } as const;

/** What working it out adds. */
export type Reply = Omit<Finding, keyof Question | keyof typeof old>;

/**
 * Answers a question, or says why it cannot be: a formula that refuses its inputs makes the finding unknown,
 * with the formula's own words, and the rest of the review goes on. What can hurt somebody keeps its cautions
 * either way.
 */
export function guarded(question: Question, work: () => Reply, cautions: readonly string[] = []): Finding {
  try {
    return { ...old, ...question, ...work() };
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    const { would } = error instanceof Refusal ? error : new Refusal(error.message);
    return unknown(question, would, cautions);
  }
}

/** A finding that waits for a measurement. */
export function unknown(
  question: Question,
  missing: MissingMeasurement,
  cautions: readonly string[] = [],
): Finding {
  return {
    ...old,
    ...question,
    verdict: "unknown",
    answer: `Not known yet. Needed: ${missing.measure}.`,
    because: [],
    cautions,
    source: [],
    missing,
  };
}
