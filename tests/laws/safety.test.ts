/** What can hurt somebody: every finding of the demo and of a bare job with a caution says it in full. */
import { describe, expect, test } from "vitest";
import { type Finding, reviewCase } from "../../lib/findings/index.js";
import { saidInFull } from "../../lib/findings/said-in-full.js";
import { openJob } from "../../lib/job/index.js";
import { cite } from "../../lib/source.js";
import { designOf, smallJob } from "../design/small-job.js";

const jobs = [
  ["the demo", openJob("soil-lab").review.findings],
  ["a job that tells little", reviewCase(designOf(smallJob)).findings],
] as const;

/** Questions of stiffness alone, of what fits a hole, of money, and of rattle hurt nobody. */
const harmless = /^(stiffness|joints\.grip|joints\.edges|money|fit-out\.rattle)\b/;

const ids = (findings: readonly Finding[]): string[] => findings.map(({ id }) => id);

describe.each(jobs)("%s", (_, findings) => {
  const careful = findings.filter(({ cautions }) => cautions.length > 0);
  const answered = careful.filter(({ verdict }) => verdict !== "unknown");

  test("has a caution on every finding but the harmless ones", () => {
    expect(ids(findings.filter(({ id, cautions }) => cautions.length === 0 && !harmless.test(id)))).toEqual(
      [],
    );
  });

  test("says criterion and margin, and cites both working and limit, wherever there is a caution", () => {
    expect(answered.length).toBeGreaterThan(5);
    expect(ids(answered.filter(({ answer }) => !/Criterion: [^.]+/.test(answer)))).toEqual([]);
    expect(
      ids(answered.filter(({ answer }) => !/(Margin|Over by) [\d.]+ %|Margin 0 %/.test(answer))),
    ).toEqual([]);
    expect(ids(answered.filter(({ source }) => source.length === 0))).toEqual([]);
  });

  test("says each once", () => {
    const twice = answered.filter(({ answer }) => answer.split("Criterion: ").length !== 2);
    expect(ids(twice)).toEqual([]);
  });

  test("names the measurement and the way to make it wherever something is unknown", () => {
    const open = careful.filter(({ verdict }) => verdict === "unknown");
    expect(ids(open.filter(({ missing }) => !missing?.measure || !missing.how))).toEqual([]);
    expect(ids(open.filter(({ ratio, demand }) => ratio !== undefined || demand !== undefined))).toEqual([]);
  });
});

describe("saying it in full", () => {
  const finding: Finding = {
    id: "joints.hook",
    topic: "joints",
    subject: "hook",
    question: "Does the hook hold?",
    tier: "safety",
    verdict: "holds",
    answer: "It does.",
    ratio: 0.4,
    because: [],
    cautions: ["Look up."],
    assumes: [],
    remedies: [],
    source: [cite("statics", "equal shares"), cite("en-1995", "8.7.2")],
  };

  test("takes the code for the criterion, not the textbook", () => {
    expect(saidInFull(finding).answer).toBe(
      "It does. Margin 60 %. Criterion: EN 1995-1-1 Design of timber structures, with A1 and A2, 8.7.2.",
    );
  });

  test("says how far over", () => {
    expect(saidInFull({ ...finding, ratio: 1.25 }).answer).toContain("Over by 25 %.");
  });

  test("leaves alone what is unknown, harmless, or said already", () => {
    const said = saidInFull(finding);
    for (const one of [said, { ...finding, verdict: "unknown" }, { ...finding, cautions: [] }] as const) {
      expect(saidInFull(one)).toEqual(one);
    }
  });
});
