/** A question is declared once: what is unknown, what fails and what is a bug come from one place. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { amount } from "../../lib/findings/amount.js";
import type { Finding } from "../../lib/findings/finding.js";
import { type Answer, question } from "../../lib/findings/question.js";
import { measured, stackedCase } from "../../lib/findings/subjects.js";
import { renderViews, toViews, verdictWords } from "../../lib/page/index.js";
import { Force, newton } from "../../lib/quantity/index.js";
import { Refusal } from "../../lib/refusal.js";
import { cite } from "../../lib/source.js";
import { designOf, smallJob } from "../design/small-job.js";

const input = designOf(smallJob);

const reply = (demand: number, capacity: number): Answer => ({
  demand: amount(Force, "pull on the hook", newton(demand)),
  capacity: amount(Force, "the hook allows", newton(capacity)),
  facts: "It is pulled.",
  remedies: [{ words: "A larger hook." }],
  because: [],
  limit: cite("en-1995", "8.7.2"),
  sources: [cite("statics", "equal shares")],
});

function asked(answer: () => Answer, pull?: number): Finding {
  const hook = question({
    id: "joints.hook",
    about: stackedCase,
    ask: "Does the hook hold?",
    tier: "safety",
    cautions: ["Look up."],
    assumes: ["Nobody swings on it."],
    needs: { pull: measured(() => pull, "the pull on the hook", "hang a scale between") },
    answer,
  });
  const [finding] = hook(input);
  if (!finding) throw new Error("nothing was asked");
  return finding;
}

describe("an answer", () => {
  test("has its verdict and ratio from demand and capacity, and ends in margin and criterion", () => {
    expect(asked(() => reply(40, 100), 1)).toMatchObject({
      id: "joints.hook",
      topic: "joints",
      subject: "case",
      verdict: "holds",
      ratio: 0.4,
      answer: "It is pulled. The margin is 60 %. The criterion is a standard or code: EN 1995-1-1, 8.7.2.",
      cautions: ["Look up."],
      assumes: [
        "Nobody swings on it.",
        "Nobody measured how sure this is. It depends most on the figures of the case file and the tables, all alike.",
      ],
      remedies: [],
      source: [cite("en-1995", "8.7.2"), cite("statics", "equal shares")],
    });
  });

  test("says what would help and how far over where it fails", () => {
    const { verdict, answer, remedies } = asked(() => reply(125, 100), 1);
    expect([verdict, remedies]).toEqual(["fails", [{ words: "A larger hook." }]]);
    expect(answer).toContain("It is pulled. A larger hook. It is over by 25 %.");
  });

  test("is close where the scatter lies about the limit", () => {
    const interval = { low: 0.9, high: 1.2, shares: [] };
    expect(asked(() => ({ ...reply(95, 100), interval }), 1)).toMatchObject({ verdict: "close", interval });
  });

  test("is a plain no where something is asked of nothing", () => {
    const { verdict, answer, ratio } = asked(() => reply(125, 0), 1);
    expect([verdict, ratio]).toEqual(["fails", undefined]);
    expect(answer).toContain("It has no margin.");
  });

  test("is not known where nothing is asked of nothing", () => {
    expect(asked(() => reply(0, 0), 1)).toMatchObject({
      verdict: "unknown",
      missing: { how: expect.stringContaining("the hook allows: nothing to compare with") },
    });
  });
});

describe("what is not known", () => {
  test("names the need that nobody measured, and keeps its cautions", () => {
    expect(asked(() => reply(1, 2))).toMatchObject({
      verdict: "unknown",
      answer: "It waits for the pull on the hook.",
      missing: { measure: "the pull on the hook", how: "hang a scale between" },
      cautions: ["Look up."],
    });
  });

  test("is also what a formula refuses, with what would give the answer", () => {
    const refuse = (): Answer => {
      throw new Refusal("hook.pull: arm must be positive, got 0 mm");
    };
    expect(asked(refuse, 1)).toMatchObject({
      verdict: "unknown",
      missing: {
        measure: "a change of what stands in its way",
        how: "hook.pull: arm must be positive, got 0 mm; change that in the case file or in its tables",
      },
    });
  });
});

describe("a bug", () => {
  const overflow = (): Answer => overflow();
  const tooLong = (): Answer => {
    throw new Error(String(new Array(input.case.sections.length - 1_000)));
  };
  const missingField = (): Answer => (undefined as unknown as { make(): Answer }).make();

  test.each([
    ["a field of nothing", missingField, /^TypeError: Cannot read properties of undefined/],
    ["a stack overflow", overflow, /^RangeError: Maximum call stack size exceeded/],
    ["an array of negative length", tooLong, /^RangeError: Invalid array length/],
  ])("%s is shown as one, never as a measurement to make", (_, bug, error) => {
    const finding = asked(bug, 1);
    expect(finding).toMatchObject({
      verdict: "broken",
      answer: "This could not be computed; please report it.",
      error: expect.stringMatching(error),
      cautions: ["Look up."],
    });
    expect(finding.missing).toBeUndefined();
    const shown = String(renderViews(toViews(finding)));
    expect(shown).toContain(verdictWords.broken);
    expect(shown).toContain("<b>What went wrong:</b>");
  });

  test("in finding what a question is about leaves the other questions alone", () => {
    const lost = question({
      id: "joints.lost",
      about: { ...stackedCase, each: () => missingField() as never },
      ask: "Where is it?",
      tier: "strength",
      cautions: [],
      answer: () => reply(1, 2),
    });
    expect([...lost(input), asked(() => reply(1, 2), 1)]).toMatchObject([
      { id: "joints.lost", verdict: "broken" },
      { id: "joints.hook", verdict: "holds" },
    ]);
  });
});

describe("a law of every question of safety", () => {
  const positive = fc.double({ min: 1e-3, max: 1e6, noNaN: true });

  test("its demand doubled past the capacity fails, and what held before says by how much", () => {
    fc.assert(
      fc.property(positive, fc.double({ min: 0.501, max: 1, noNaN: true }), (capacity, share) => {
        const before = asked(() => reply(share * capacity, capacity), 1);
        const doubled = asked(() => reply(2 * share * capacity, capacity), 1);
        expect(before.verdict).toBe("holds");
        expect(doubled.verdict).toBe("fails");
        expect(doubled.answer).toContain("It is over by");
      }),
    );
  });

  test("it keeps its cautions whatever comes out, and while nothing is known", () => {
    fc.assert(
      fc.property(positive, positive, fc.boolean(), (demand, capacity, isKnown) => {
        const finding = asked(() => reply(demand, capacity), isKnown ? 1 : undefined);
        expect(finding.cautions).toEqual(["Look up."]);
        expect(finding.verdict === "unknown").toBe(!isKnown);
      }),
    );
  });

  test("a margin is told to a tenth of a percent, and what is far over without a figure", () => {
    expect(asked(() => reply(1 - 7.8e-16, 1), 1).answer).toContain("The margin is 0 %.");
    expect(asked(() => reply(0.99876, 1), 1).answer).toContain("The margin is 0.1 %.");
    expect(asked(() => reply(400, 1), 1).answer).toContain("It is over by more than 900 %.");
  });
});
