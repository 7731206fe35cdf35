/** What works loose on the road is looked at often enough, or not, or nobody says. */
import { expect, test } from "vitest";
import { workingLoose } from "../../lib/findings/joints/loosening.js";
import { openJob } from "../../lib/job/index.js";
import { looseningCount, type ReviewInput } from "../../lib/model/index.js";

const draft: ReviewInput = openJob("soil-lab-draft");

function travelling(change: Partial<ReviewInput["case"]["journey"]>): ReviewInput {
  return { ...draft, case: { ...draft.case, journey: { ...draft.case.journey, ...change } } };
}

const verdict = (input: ReviewInput) => workingLoose(input).map((finding) => finding.verdict);

test("a look after every 10 trips is enough, after 11 not, and after 6 not where it is handled roughly", () => {
  expect(verdict(travelling({ handling: "usual", tripsPerLook: 10 }))).toEqual(["holds"]);
  expect(verdict(travelling({ handling: "usual", tripsPerLook: 11 }))).toEqual(["fails"]);
  expect(verdict(travelling({ handling: "rough", tripsPerLook: 6 }))).toEqual(["fails"]);
  expect(verdict(travelling({ handling: "parcel", tripsPerLook: 5 }))).toEqual(["holds"]);
});

test("it tells what to do with what there is, and that no rule was found", () => {
  const [finding] = workingLoose(travelling({ tripsPerLook: 20 }));
  expect(finding?.answer).toContain("Look after the first trip too");
  expect(finding?.answer).toContain("no published rule was found");
  expect(finding?.answer).toMatch(/Press beside [\d\s]+ rivets/);
  const bolted = draft.parts.fastenings.filter(({ fastener }) => fastener.kind === "bolt");
  const input = travelling({ tripsPerLook: 20 });
  const [only] = workingLoose({ ...input, parts: { ...input.parts, fastenings: bolted } });
  expect(only?.answer).not.toMatch(/rivet|wood screw/);
  expect(looseningCount({ ...input, parts: { ...input.parts, fastenings: bolted } })).toMatchObject({
    rivets: 0,
    screws: 0,
  });
});

test("is not known where nobody says how often, and is not asked where nothing is fastened or moved", () => {
  const [open] = workingLoose(draft);
  expect(open).toMatchObject({ verdict: "unknown", tier: "handling" });
  expect(open?.missing?.how).toContain("trips per look: 10");
  expect(verdict({ ...draft, parts: { ...draft.parts, fastenings: [] } })).toEqual([]);
  expect(verdict({ ...draft, case: { ...draft.case, leftOut: ["journey"] } })).toEqual([]);
});
