/** A finding's answer as one short sentence, and what it says beyond that. */
import { capitalised } from "../findings/amount.js";
import { sentencesOf } from "./sentences.js";
import { readableValue } from "./text.js";
import type { FindingView } from "./view.js";

/** Words of the longest sentence that a builder reads at one go. */
export const mostWords = 25;

/** The answer as one short sentence with the number that matters. */
export function shortAnswer({
  answer,
  demand,
  capacity,
  missing,
}: Pick<FindingView, "answer" | "demand" | "capacity" | "missing">): string {
  if (missing) return `It waits for ${missing.measure}.`;
  const [first = ""] = sentencesOf(answer);
  if (first.split(" ").length <= mostWords || !demand || !capacity) return first;
  return `${capitalised(demand.meaning)}: ${readableValue(demand.value)}; ${capacity.meaning}: ${readableValue(capacity.value)}.`;
}

/** The sentences of the answer beyond the short one, remedies, and margin, each of which stands elsewhere. */
export function furtherSentences(
  finding: Pick<FindingView, "answer" | "demand" | "capacity" | "missing" | "remedies">,
): readonly string[] {
  const said = new Set([
    shortAnswer(finding),
    ...finding.remedies.flatMap(({ words }) => sentencesOf(words)),
  ]);
  return sentencesOf(finding.answer).filter(
    (one) => !said.has(one) && !/^(The margin is|It is over by) /.test(one),
  );
}
