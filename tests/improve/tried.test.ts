import { describe, expect, test } from "vitest";
import type { Finding } from "../../lib/findings/index.js";
import { holdsForSure } from "../../lib/improve/standing.js";
import { builtThenCheapest, lockChange, type Mending, triedFor } from "../../lib/improve/tried.js";
import { type Job, openJob } from "../../lib/job/index.js";

const draft = openJob("soil-lab-draft");
const style = { system: draft.case.units } as const;

function findingOf(job: Job, id: string): Finding {
  const found = job.review.findings.find((one) => one.id === id);
  if (!found) throw new Error(`no finding ${id}`);
  return found;
}

function mendingsOf(job: Job, finding: Finding): readonly Mending[] {
  return [...triedFor(job, finding, style)].filter((one) => one !== undefined);
}

describe("what mends a finding", () => {
  const id = "travel.ramp-down";
  const mendings = mendingsOf(draft, findingOf(draft, id));

  test("is tried: with each change alone it holds, in a fresh review", () => {
    expect(mendings.length).toBeGreaterThan(0);
    for (const { changes } of mendings) {
      const after = draft.with(...changes).review.findings.find((one) => one.id === id);
      expect(after === undefined || holdsForSure(after)).toBe(true);
    }
  });

  test("holds under another name, where the change gives the thing another", () => {
    const lab = openJob("soil-lab");
    const mended = mendingsOf(lab, findingOf(lab, "joints.drop-corner.lower.ball corner"));
    expect(mended.length).toBeGreaterThan(0);
    for (const { changes } of mended) {
      const after = lab
        .with(...changes)
        .review.steps.filter((step) => step.id === "joints.drop-corner")
        .flatMap(({ ask }) => ask());
      expect(after.filter((one) => !holdsForSure(one)).map((one) => one.id)).toEqual([]);
    }
  });

  test("is not offered again once what it moves is locked", () => {
    const locked = mendings.find(({ lock }) => lock !== undefined);
    expect(locked?.lock).toBeDefined();
    const kept = draft.with(lockChange(draft.case.keep, locked?.lock ?? ""));
    expect(kept.case.keep).toContain(locked?.lock);
    const words = mendingsOf(kept, findingOf(kept, id)).map((one) => one.words);
    expect(words).not.toContain(locked?.words);
  });

  test("a finding for which nothing is offered has none", () => {
    const nothing = findingOf(draft, id);
    expect(mendingsOf(draft, { ...nothing, id: "no.such.question" })).toEqual([]);
  });
});

test("a lock is added to those that are there", () => {
  expect(lockChange(["sections"], "hardware.caster")).toEqual({
    kind: "set",
    at: "keep",
    to: '["sections", "hardware.caster"]',
  });
});

test("what is built or bought stands before a rule, each the cheapest first", () => {
  const of = (words: string, moreCost: number, rule: boolean) => ({ words, moreCost, rule }) as Mending;
  const found = [of("keep to it", -5, true), of("a thicker sheet", 12, false), of("a batten", 4, false)];
  expect(found.sort(builtThenCheapest).map(({ words }) => words)).toEqual([
    "a batten",
    "a thicker sheet",
    "keep to it",
  ]);
});
