import { beforeAll, describe, expect, test } from "vitest";
import { set } from "../../lib/design/index.js";
import { type HowFar, howFar } from "../../lib/improve/how-far.js";
import { numbersOf, writtenNumber } from "../../lib/improve/numbers.js";
import { graveTiers, holdsForSure } from "../../lib/improve/standing.js";
import { type Job, openJob } from "../../lib/job/index.js";
import { otherJob } from "../other-jobs.js";

let job: Job;
beforeAll(async () => {
  const bare = openJob(await otherJob("bare-box"));
  job = bare.with(set("demands.push", "40 N"));
});

function numberAt(place: string) {
  return numbersOf(job.texts).find((one) => one.place === place);
}

describe("numbers of a case file", () => {
  test("have their place, their value and their unit", () => {
    expect(numberAt("demands.allowed sag")).toMatchObject({ text: "1/180", value: 1 / 180, unit: "" });
    expect(numberAt("journey.lifting time")).toMatchObject({ text: "20 min", value: 20, unit: "min" });
    expect(numberAt("sections.box.inside.depth")).toMatchObject({ text: "400", value: 400, counts: false });
    expect(numberAt("journey.people")).toMatchObject({ value: 1, counts: true });
  });

  test("leave names with a figure alone, and money", () => {
    expect(numberAt("build.sheet")).toBeUndefined();
    expect(numberAt("business.ready made")).toBeUndefined();
  });

  test("are written with their unit, counts whole", () => {
    expect(writtenNumber({ unit: "lbf", counts: false }, 12.3456789)).toBe("12.346 lbf");
    expect(writtenNumber({ unit: "", counts: true }, 2.6)).toBe("3");
  });
});

describe("how far", () => {
  let found: HowFar;
  beforeAll(async () => {
    const questions = job.review.steps.map(({ id }) => id).filter((id) => /^(travel|joints)\./.test(id));
    found = await howFar(job, { places: ["demands.push", "inside.depth"], questions, seconds: 200 });
  }, 240_000);

  function holding(one: Job, id: string): boolean {
    const finding = one.review.travel.find((each) => each.id === id);
    return finding !== undefined && holdsForSure(finding);
  }

  test("just inside holds and just outside fails, on a fresh review", () => {
    for (const { number, up, down } of found.reaches) {
      for (const stop of [up, down]) {
        const [id] = stop?.fails ?? [];
        if (!stop?.failsAt || id === undefined) continue;
        expect(holding(job.with(set(number.place, stop.holdsAt)), id)).toBe(true);
        expect(holding(job.with(set(number.place, stop.failsAt)), id)).toBe(false);
      }
    }
    expect(found.reaches.flatMap(({ up, down }) => [...(up?.fails ?? []), ...(down?.fails ?? [])])).toContain(
      "travel.push",
    );
  });

  test("a push may grow by its margin, as the moment of a push is in proportion to it", () => {
    const ratio = job.review.travel.find(({ id }) => id === "travel.push")?.ratio ?? 0;
    const up = found.reaches.find(({ number }) => number.place === "demands.push")?.up;
    expect(Number.parseFloat(up?.holdsAt ?? "0")).toBeLessThanOrEqual(40 / ratio);
    expect(Number.parseFloat(up?.failsAt ?? "0")).toBeGreaterThan(40 / ratio);
    expect(Number.parseFloat(up?.failsAt ?? "0") - 40 / ratio).toBeLessThan(0.3);
    expect(up?.steady).toBe(true);
    const mover = found.moved
      .find(({ id }) => id === "travel.push")
      ?.movers.find(({ place }) => place === "demands.push");
    expect(mover?.elasticity).toBeCloseTo(1, 3);
  });

  test("asks only of safety and strength", () => {
    const tiers = new Map(job.review.findings.map(({ id, tier }) => [id, tier]));
    for (const { id } of found.moved) expect(graveTiers).toContain(tiers.get(id));
  });
});

test("a panel's pressure is told just inside and just outside what it bears, on a fresh review", async () => {
  const pressed = job.with(set("demands.side pressure", "8 kPa"));
  const { reaches, questions } = await howFar(pressed, { places: ["demands.side pressure"], seconds: 200 });
  expect(questions).toContain("strength.lean");
  const [reach] = reaches;
  const { holdsAt = "", failsAt = "", fails = [] } = reach?.up ?? {};
  const holds = (value: string, id: string): boolean => {
    const { findings } = pressed.with(set("demands.side pressure", value)).review;
    return findings.some((one) => one.id === id && holdsForSure(one));
  };
  expect(fails.length).toBeGreaterThan(0);
  for (const id of fails) expect([id, holds(holdsAt, id), holds(failsAt, id)]).toEqual([id, true, false]);
}, 240_000);
