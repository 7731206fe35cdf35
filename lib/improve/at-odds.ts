/** The fewest demands that nothing known meets together. */
import { type Candidate, canMendAll, separateGroups } from "./cover.js";

/**
 * The fewest findings that no choice of candidates mends together, one of a lever at the most; nothing where a choice
 * mends all. A finding that no candidate mends is such a set by itself. What separates is looked at by itself; in each
 * group all sets are gone through, the smallest first.
 */
export function fewestAtOdds(
  findings: readonly string[],
  candidates: readonly Candidate[],
): readonly string[] {
  return separateGroups(findings, candidates)
    .map((group) => fewestOf(group.findings, group.candidates))
    .filter((found) => found.length > 0)
    .reduce<readonly string[]>(
      (least, one) => (least.length === 0 || one.length < least.length ? one : least),
      [],
    );
}

function fewestOf(findings: readonly string[], candidates: readonly Candidate[]): readonly string[] {
  if (canMendAll(findings, candidates)) return [];
  for (let size = 1; size < findings.length; size++) {
    const found = unmetOf(findings, candidates, size);
    if (found) return found;
  }
  return findings;
}

/** The first set of a size that nothing mends together. */
function unmetOf(
  findings: readonly string[],
  candidates: readonly Candidate[],
  size: number,
  taken: readonly string[] = [],
): readonly string[] | undefined {
  if (taken.length === size) return canMendAll(taken, candidates) ? undefined : taken;
  for (const [i, one] of findings.entries()) {
    const found = unmetOf(findings.slice(i + 1), candidates, size, [...taken, one]);
    if (found) return found;
  }
  return undefined;
}
