import fc from "fast-check";
import { expect, test } from "vitest";
import { fewestAtOdds } from "../../lib/improve/at-odds.js";
import { type Candidate, noWeights } from "../../lib/improve/cover.js";

const findings = ["a", "b", "c", "d"];

const candidates: fc.Arbitrary<readonly Candidate[]> = fc
  .array(
    fc.record({
      lever: fc.constantFrom("v", "w", "x"),
      mends: fc.subarray(findings, { minLength: 1, maxLength: 2 }),
    }),
    { maxLength: 6 },
  )
  .map((all) =>
    all.map(({ lever, mends }, i) => ({ id: `${i}`, lever, mends: new Set(mends), weights: noWeights })),
  );

/** Every subset of a list. */
function subsetsOf<One>(all: readonly One[]): readonly (readonly One[])[] {
  const sets: (readonly One[])[] = [[]];
  for (const one of all) sets.push(...sets.map((set) => [...set, one]));
  return sets;
}

/** Whether some choice mends all, by trying every one. */
function isMendable(wanted: readonly string[], all: readonly Candidate[]): boolean {
  return subsetsOf(all).some(
    (chosen) =>
      new Set(chosen.map(({ lever }) => lever)).size === chosen.length &&
      wanted.every((id) => chosen.some(({ mends }) => mends.has(id))),
  );
}

test("are as few as trying every set finds, and no choice mends them together", () => {
  fc.assert(
    fc.property(candidates, (all) => {
      const found = fewestAtOdds(findings, all);
      const sizes = subsetsOf(findings)
        .filter((set) => !isMendable(set, all))
        .map((set) => set.length);
      expect(found.length).toBe(sizes.length === 0 ? 0 : Math.min(...sizes));
      if (found.length > 0) expect(isMendable(found, all)).toBe(false);
    }),
    { numRuns: 300 },
  );
});
