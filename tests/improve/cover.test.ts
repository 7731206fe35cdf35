import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  addedWeights,
  byCost,
  type Candidate,
  type Cover,
  dominates,
  leastCovers,
  noWeights,
  separateGroups,
  spread,
  undominated,
} from "../../lib/improve/cover.js";

const findings = ["a", "b", "c", "d"];

/** A few candidates over four findings and four levers, with small whole weights so that ties are exact. */
const candidates: fc.Arbitrary<readonly Candidate[]> = fc
  .array(
    fc.record({
      lever: fc.constantFrom("v", "w", "x", "y"),
      mends: fc.subarray(findings, { minLength: 1 }),
      weights: fc.record({
        cost: fc.integer({ min: -2, max: 5 }),
        mass: fc.integer({ min: 0, max: 3 }),
        time: fc.integer({ min: 0, max: 3 }),
        rules: fc.integer({ min: 0, max: 1 }),
        changes: fc.constant(1),
      }),
    }),
    { maxLength: 7 },
  )
  .map((all) => all.map((one, i) => ({ ...one, id: `${i}`, mends: new Set(one.mends) })));

/** Every choice of candidates with one of a lever at the most that mends all. */
function everyCover(wanted: readonly string[], all: readonly Candidate[]): readonly Cover[] {
  const subsets: (readonly Candidate[])[] = [[]];
  for (const one of all) subsets.push(...subsets.map((set) => [...set, one]));
  return subsets
    .filter((chosen) => new Set(chosen.map(({ lever }) => lever)).size === chosen.length)
    .filter((chosen) => wanted.every((id) => chosen.some(({ mends }) => mends.has(id))))
    .map((chosen) => ({
      chosen,
      weights: chosen.map(({ weights }) => weights).reduce(addedWeights, noWeights),
    }));
}

/** A saving that mends nothing needed is no part of a least cover: only covers from which nothing can be left out count. */
function isNeeded(wanted: readonly string[], { chosen }: Cover): boolean {
  return chosen.every((left) =>
    wanted.some((id) => left.mends.has(id) && !chosen.some((one) => one !== left && one.mends.has(id))),
  );
}

const positive = candidates.map((all) =>
  all.map((one) => ({ ...one, weights: { ...one.weights, cost: Math.abs(one.weights.cost) } })),
);

describe("least covers", () => {
  test("are those that trying every choice finds, where all can be mended", () => {
    fc.assert(
      fc.property(positive, (all) => {
        const wanted = findings.filter((id) => all.some(({ mends }) => mends.has(id)));
        const every = everyCover(wanted, all);
        fc.pre(every.length > 0);
        const best = undominated(every.filter((one) => isNeeded(wanted, one))).map(({ weights }) => weights);
        const found = leastCovers(findings, all).map(({ weights }) => weights);
        const sorted = (list: readonly object[]): readonly string[] =>
          list.map((one) => JSON.stringify(one)).sort();
        expect(sorted(found)).toEqual(sorted(best));
      }),
      { numRuns: 400 },
    );
  });

  test("take one option of a lever at the most", () => {
    fc.assert(
      fc.property(candidates, (all) => {
        for (const { chosen } of leastCovers(findings, all)) {
          expect(new Set(chosen.map(({ lever }) => lever)).size).toBe(chosen.length);
        }
      }),
    );
  });

  test("are never worse with more candidates, where both mend all", () => {
    fc.assert(
      fc.property(positive, positive, (some, others) => {
        const more = [...some, ...others.map((one) => ({ ...one, id: `other ${one.id}` }))];
        fc.pre(everyCover(findings, some).length > 0);
        for (const { weights } of leastCovers(findings, some)) {
          const matched = leastCovers(findings, more).some(
            (one) =>
              dominates(one.weights, weights) || JSON.stringify(one.weights) === JSON.stringify(weights),
          );
          expect(matched).toBe(true);
        }
      }),
    );
  });

  test("leave out one finding where two options of one lever would be needed", () => {
    const one = (id: string, mends: string, cost: number): Candidate => ({
      id,
      lever: "handle",
      mends: new Set([mends]),
      weights: { ...noWeights, cost },
    });
    const found = leastCovers(["a", "b"], [one("rated", "a", 2), one("riveted", "b", 1)]);
    expect(found.map(({ chosen }) => chosen.map(({ id }) => id))).toEqual([["riveted"]]);
  });
});

test("groups have no finding and no lever in common", () => {
  fc.assert(
    fc.property(candidates, (all) => {
      const groups = separateGroups(findings, all);
      expect(groups.flatMap((group) => group.findings).sort()).toEqual(findings);
      const levers = groups.flatMap((group) => [...new Set(group.candidates.map(({ lever }) => lever))]);
      expect(new Set(levers).size).toBe(levers.length);
    }),
  );
});

test("the cheapest stands first", () => {
  const cover = (cost: number): Cover => ({ chosen: [], weights: { ...noWeights, cost } });
  expect([cover(2), cover(-1), cover(0)].sort(byCost).map(({ weights }) => weights.cost)).toEqual([-1, 0, 2]);
});

test("some of many choices begin with the cheapest and lie apart", () => {
  const cover = (cost: number, mass: number): Cover => ({
    chosen: [],
    weights: { ...noWeights, cost, mass },
  });
  const all = [cover(5, 0), cover(1, 9), cover(1.1, 9), cover(3, 4)];
  expect(spread(all, 3).map(({ weights: { cost, mass } }) => [cost, mass])).toEqual([
    [1, 9],
    [5, 0],
    [3, 4],
  ]);
  expect(spread(all, 7)).toHaveLength(4);
  expect(spread([], 7)).toEqual([]);
});
