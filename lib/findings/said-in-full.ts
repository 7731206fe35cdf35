import type { Citation, SourceKey } from "../source.js";
import { criterionWords, marginWords } from "./compared.js";
import type { Finding } from "./finding.js";

/** Works that say how to reckon, not what is allowed. */
const textbooks: readonly SourceKey[] = [
  "statics",
  "geometry",
  "dynamics",
  "strength-of-materials",
  "machine-design",
  "mixed-interpolated-plates",
  "finite-element-procedures",
];

/**
 * A finding that can hurt somebody, its answer closed with margin and criterion where it does not say them yet.
 * Others, and what is not known, are left as they are.
 */
export function saidInFull(finding: Finding): Finding {
  const { verdict, answer, cautions, ratio, source } = finding;
  const criterion = criterionOf(source);
  if (verdict === "unknown" || cautions.length === 0 || ratio === undefined || !criterion) return finding;
  if (answer.includes("Criterion: ")) return finding;
  return { ...finding, answer: `${answer} ${marginWords(ratio)} ${criterionWords(criterion)}` };
}

/** What sets the limit: the first that is no textbook. */
function criterionOf(source: readonly Citation[]): Citation | undefined {
  return source.find(({ source: work }) => !textbooks.includes(work)) ?? source[0];
}
