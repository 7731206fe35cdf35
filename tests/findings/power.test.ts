/** The battery cold and aged, and the wire behind its fuse, against figures from outside. */
import { expect, test } from "vitest";
import type { Battery } from "../../lib/design/index.js";
import { battery, batteryDrop, batteryFuse } from "../../lib/findings/fit-out/power.js";
import type { Question } from "../../lib/findings/question.js";
import { openJob } from "../../lib/job/index.js";
import type { ReviewInput } from "../../lib/model/index.js";
import { Current, inch, ratio, Temperature, Time } from "../../lib/quantity/index.js";

const draft = openJob("soil-lab-draft");
const given = draft.case.services.battery;
if (!given) throw new Error("the draft has a battery");
const own: Battery = given;

function withBattery(change: Partial<Battery>): ReviewInput {
  return {
    ...draft,
    case: { ...draft.case, services: { ...draft.case.services, battery: { ...own, ...change } } },
  };
}

function asked(question: Question, change: Partial<Battery> = {}) {
  const [finding] = question(withBattery(change));
  if (!finding) throw new Error(`nothing is asked by ${question.id}`);
  return finding;
}

test("a battery that lasts 8.5 h new and warm lasts 5.7 h on a cool morning at the end of its life", () => {
  const new_ = asked(battery, { coldest: Temperature.of(25, "°C"), age: ratio(1) });
  expect(Time.in(own.hours, "h") / (new_.ratio ?? 0)).toBeCloseTo(8.5, 1);
  const aged = asked(battery);
  expect(aged.verdict).toBe("fails");
  expect(Time.in(own.hours, "h") / (aged.ratio ?? 0)).toBeCloseTo(5.7, 1);
  expect(aged.assumes.join()).toMatch(/cool morning.*left 80 %/);
  expect(new_.assumes).toEqual([]);
});

test("a fuse up to 150 % of its wire holds, a larger one fails, and none is asked for", () => {
  const wired = { wireGauge: 12, wireLength: inch(30) };
  expect(asked(batteryFuse, { ...wired, fuse: Current.of(37, "A") }).verdict).toBe("holds");
  expect(asked(batteryFuse, { ...wired, fuse: Current.of(40, "A") })).toMatchObject({
    verdict: "fails",
    tier: "safety",
  });
  const open = asked(batteryFuse, wired);
  expect(open.verdict).toBe("unknown");
  expect(open.cautions.length).toBeGreaterThan(0);
});

test("the wire loses what its resistance makes of all loads", () => {
  // 83 W at 88 % of 12.8 V are 7.368 A; 12 AWG solid has 1.93 ohm per 1000 ft at 75 °C by the electrical code,
  // a fifth more as flexible cord.
  const drop = asked(batteryDrop, { wireGauge: 12, wireLength: inch(30) });
  expect(drop.ratio).toBeCloseTo((2 * 7.368 * 1.2 * 1.93 * (2.5 / 1000)) / 12.8 / 0.03, 2);
});
