import { expect, test } from "vitest";
import { styleOf } from "../../../lib/findings/index.js";
import { findingView, firstPageOf, openJob, reviewCase } from "../../../lib/index.js";
import { type FindingView, firstLookHtml } from "../../../lib/page/index.js";
import { designOf, smallJob, spoilt } from "../../design/small-job.js";

const job = openJob("soil-lab");

/** A finding of an invented question. */
function finding(id: string, change: Partial<FindingView>): FindingView {
  return {
    ...{
      kind: "finding",
      id,
      asks: id.split(".").slice(0, 2).join("."),
      topic: id.replace(/\..*/, ""),
      subject: "case",
      question: `${id}?`,
    },
    ...{ tier: "feel", verdict: "holds", answer: `${id} is so. More of it.` },
    ...{ because: [], cautions: [], assumes: [], remedies: [], source: [] },
    ...change,
  };
}

test("what is settled first keeps the case from release, then fails, one of a kind, three at most", () => {
  const remedies = [{ words: "Do this.", gives: [] }];
  const page = firstPageOf(job, [
    finding("travel.lift.upper", { tier: "handling", verdict: "fails", ratio: 2 }),
    finding("travel.lift.lower", { tier: "handling", verdict: "fails", ratio: 3, remedies }),
    finding("strength.lean.top", { tier: "strength", verdict: "close", ratio: 1.1 }),
    finding("travel.tip", { tier: "safety", verdict: "unknown", missing: { measure: "m", how: "h" } }),
    finding("stiffness.upper.front", { verdict: "close", ratio: 1.2 }),
    finding("money.x", {}),
  ]);
  expect(page.settle.map(({ id }) => id)).toEqual(["travel.tip", "travel.lift.lower", "strength.lean.top"]);
  expect(page.settle[1]).toMatchObject({ sentence: "travel.lift.lower is so.", remedy: "Do this." });
  expect(page.released).toBe(false);
  expect(page.release).toBe("1 question of safety or strength is not answered with yes.");
  expect(firstPageOf(job, [finding("money.x", {})]).released).toBe(true);
});

test("what is measured next settles most questions, with how to measure it", () => {
  const missing = { measure: "the pull", how: "with a scale" };
  const shares = [
    { input: "modulus", share: 0.8 },
    { input: "load", share: 0.2 },
  ];
  const page = firstPageOf(job, [
    finding("a.one", { verdict: "unknown", missing: { measure: "the gap", how: "with a feeler" } }),
    finding("a.two", { verdict: "unknown", missing }),
    finding("a.three", { verdict: "unknown", missing }),
    finding("a.four", { verdict: "close", interval: { low: 0.9, high: 1.1, shares } }),
  ]);
  expect(page.measure.map(({ sentence }) => sentence)).toEqual([
    "Measure the pull: it settles 2 questions.",
    "Measure the gap: it settles 1 question.",
    "More readings of modulus may settle 1 question.",
  ]);
  expect(page.measure[0]?.how).toBe("With a scale.");
});

test("the demo's facts are its sizes over metal, both weights, material and work; its door's side is seen", () => {
  const style = styleOf(job.case);
  const page = firstPageOf(
    job,
    job.review.travel.map((one) => findingView(one, style)),
  );
  expect(page.facts.map(({ name }) => name)).toEqual([
    "Size over metal",
    "Empty",
    "Loaded",
    "Material",
    "Work",
  ]);
  expect(page.picture?.description).toBe("Travelling soil lab from its front left corner.");
  const markup = String(
    firstLookHtml(page, { finding: (id) => (id.startsWith("travel") ? `#${id}` : undefined) }),
  );
  expect(markup).toContain('<a href="#travel.');
  expect(markup).toContain("cw-solids");
});

test("a case over a metre is told to the millimetre", () => {
  const sizeOf = (texts: Readonly<Record<string, string>>) => {
    const design = designOf(texts);
    const [size] = firstPageOf({ ...design, review: reviewCase(design) }, []).facts;
    return (size?.value ?? "").split(" × ").map((one) => Number(one.replace(/[^\d.]/g, "")));
  };
  const tall = sizeOf(spoilt("case.yaml", "depth: 400, height: 500 }", "depth: 400, height: 1103 }"));
  expect(tall[2]).toBeGreaterThan(1000);
  expect(tall[2]).toBe(Math.round((sizeOf(smallJob)[2] ?? 0) + 603));
});
