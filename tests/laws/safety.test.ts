/** What can hurt somebody: every finding of the demo and of a bare job with a caution says it in full. */
import { describe, expect, test } from "vitest";
import type { Journey } from "../../lib/design/index.js";
import { assemblyQuestions } from "../../lib/findings/assembly/index.js";
import { fitOutQuestions } from "../../lib/findings/fit-out/index.js";
import { type Finding, reviewCase } from "../../lib/findings/index.js";
import { jointQuestions } from "../../lib/findings/joints/index.js";
import { moneyQuestions } from "../../lib/findings/money.js";
import { builtQuestions } from "../../lib/findings/money-as-built.js";
import { stiffnessQuestions } from "../../lib/findings/stiffness/index.js";
import { strengthQuestions } from "../../lib/findings/strength/index.js";
import { travelQuestions } from "../../lib/findings/travel/index.js";
import { openJob } from "../../lib/job/index.js";
import { designOf, smallJob } from "../design/small-job.js";

const job = openJob("soil-lab-draft");
const demo = job.review.findings;

/** The demo with nothing in its journey and services but what cannot be left out, and no test of a fastener. */
const withoutMeasurements = {
  ...job,
  measurements: { ...job.measurements, pulls: [] },
  case: {
    ...job.case,
    services: { cooling: job.case.services.cooling },
    journey: bareJourney(job.case.journey),
  },
};

function bareJourney({
  people,
  vehicle,
  floor,
  reach,
  liftFrom,
  liftTo,
  liftsPerMinute,
  liftingTime,
  grip,
}: Journey): Journey {
  return { people, vehicle, floor, reach, liftFrom, liftTo, liftsPerMinute, liftingTime, grip };
}

const jobs = [
  ["the demo", demo],
  ["a job that tells little", reviewCase(designOf(smallJob)).findings],
] as const;

/** Questions of stiffness alone, of what fits a hole, of fasteners in each other's way, of money, and of rattle hurt nobody. */
const harmless =
  /^(stiffness|joints\.grip|joints\.edges|money|fit-out\.rattle|assembly\.(inside|heads|parts))\b/;

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
    expect(ids(answered.filter(({ answer }) => !/The criterion is [^.]+/.test(answer)))).toEqual([]);
    expect(
      ids(
        answered.filter(
          ({ answer }) =>
            !/(The margin is|It is over by|It is over by more than) [\d.]+ %|It has no margin/.test(answer),
        ),
      ),
    ).toEqual([]);
    expect(ids(answered.filter(({ source }) => source.length === 0))).toEqual([]);
  });

  test("says each once", () => {
    const twice = answered.filter(({ answer }) => answer.split("The criterion is ").length !== 2);
    expect(ids(twice)).toEqual([]);
  });

  test("names the measurement and the way to make it wherever something is unknown", () => {
    const open = careful.filter(({ verdict }) => verdict === "unknown");
    expect(ids(open.filter(({ missing }) => !missing?.measure || !missing.how))).toEqual([]);
    expect(ids(open.filter(({ ratio, demand }) => ratio !== undefined || demand !== undefined))).toEqual([]);
  });
});

describe.each(jobs)("%s, of every tier", (_, findings) => {
  test("keeps its cautions on whatever may hurt somebody, known or not", () => {
    const safety = findings.filter(({ tier }) => tier === "safety");
    expect(safety.filter(({ verdict }) => verdict === "unknown").length).toBeGreaterThan(0);
    expect(ids(safety.filter(({ cautions }) => cautions.length === 0))).toEqual([]);
  });

  test("says criterion and margin once on every answer, hurtful or not", () => {
    const answered = findings.filter(({ verdict }) => verdict !== "unknown");
    const full =
      /(The margin is [\d.]+ %|It is over by (more than )?[\d. \u00a0\u202f]+ %|It has no margin)\. The criterion is [^.]/;
    expect(ids(answered.filter(({ answer }) => !full.test(answer)))).toEqual([]);
    expect(ids(answered.filter(({ answer }) => answer.split("The criterion is ").length !== 2))).toEqual([]);
  });

  test("computes every answer", () => {
    expect(ids(findings.filter(({ verdict }) => verdict === "broken"))).toEqual([]);
  });
});

describe("of every question declared", () => {
  const questions = [
    stiffnessQuestions,
    strengthQuestions,
    jointQuestions,
    travelQuestions,
    fitOutQuestions,
    assemblyQuestions,
    moneyQuestions,
    builtQuestions,
  ].flat();

  test("each has an id of its own", () => {
    const all = questions.map(({ id }) => id);
    expect(new Set(all).size).toBe(all.length);
  });

  test("some are of each tier", () => {
    expect(new Set(questions.map(({ tier }) => tier))).toEqual(
      new Set(["safety", "strength", "handling", "feel"]),
    );
  });

  test("one that cannot be worked out carries the cautions of one that can", () => {
    const open = reviewCase(withoutMeasurements).findings;
    const told = new Map(demo.map(({ id, cautions }) => [id, cautions]));
    const lost = open.filter(({ id, tier, cautions }) => {
      const before = told.get(id);
      return tier === "safety" && before !== undefined && cautions.join() !== before.join();
    });
    expect(
      open.filter(({ tier, verdict }) => tier === "safety" && verdict === "unknown").length,
    ).toBeGreaterThan(5);
    expect(ids(lost)).toEqual([]);
  });
});
