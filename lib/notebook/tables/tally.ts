/** How many questions hold, in a sentence, and the one to look at first. */

import { byDanger, type Finding, type Verdict } from "../../findings/index.js";
import { verdictWords } from "../../page/index.js";

/** What to look at first of what does not hold: by danger, then by how far over. */
export function mostWanting(findings: readonly Finding[]): Finding | undefined {
  return byDanger(findings.filter(({ verdict }) => verdict !== "holds"))[0];
}

/** "15 of 26 questions hold, 10 do not, 1 is not known yet", and the answer that is furthest from holding. */
export function tallySentence(findings: readonly Finding[]): string {
  const count = (verdict: Verdict): number =>
    findings.filter((finding) => finding.verdict === verdict).length;
  const others = (["fails", "broken", "close", "unknown"] as const).filter((verdict) => count(verdict) > 0);
  const rest = others.map((verdict) => `${verdictWords[verdict].toLowerCase()}: ${count(verdict)}`);
  const tally = [`${count("holds")} of ${findings.length} questions hold`, ...rest].join("; ");
  const worst = mostWanting(findings);
  return worst ? `${tally}. Look at this first: ${worst.question} ${worst.answer}` : `${tally}.`;
}
