/** How many questions hold, in a sentence, and the one to look at first. */

import { byDanger, type Finding, type Verdict } from "../../findings/index.js";
import { mostWords, sentencesOf, verdictCount } from "../../page/index.js";

/** What to look at first of what does not hold: by danger, then by how far over. */
export function mostWanting(findings: readonly Finding[]): Finding | undefined {
  return byDanger(findings.filter(({ verdict }) => verdict !== "holds"))[0];
}

/** "15 of 26 questions hold; 1 is not known yet." and the one that is furthest from holding, in two sentences. */
export function tallySentence(findings: readonly Finding[]): string {
  const count = (verdict: Verdict): number =>
    findings.filter((finding) => finding.verdict === verdict).length;
  const others = (["fails", "broken", "close", "unknown"] as const).filter((verdict) => count(verdict) > 0);
  const rest = others.map((verdict) => verdictCount(verdict, count(verdict)));
  const holds = count("holds");
  const [questions, hold] =
    findings.length === 1 ? ["question", "holds"] : ["questions", holds === 1 ? "holds" : "hold"];
  const tally = [`${holds} of ${findings.length} ${questions} ${hold}`, ...rest].join(", ");
  const worst = mostWanting(findings);
  if (!worst) return `All ${findings.length} questions hold.`;
  return `${tally}. ${lookAt(worst)}`;
}

/** "Look first at upper.front: it sags 4.85 mm; 3.4 mm is allowed.", or the question where that is no short sentence. */
function lookAt({ subject, question, answer, verdict }: Finding): string {
  const [first = ""] = sentencesOf(answer);
  const named = [`${subject} `, `The ${subject} `].find((words) => first.startsWith(words));
  const about = named === undefined ? lowered(first) : `it ${first.slice(named.length)}`;
  const told = `Look first at ${subject}: ${about}`;
  const isShort = verdict !== "unknown" && told.split(" ").length <= mostWords;
  return isShort ? told : `Look first at this: ${question}`;
}

/** Words in the middle of a sentence. */
function lowered(words: string): string {
  return /^[A-Z][a-z]*[ ,]/.test(words) ? words.charAt(0).toLowerCase() + words.slice(1) : words;
}
