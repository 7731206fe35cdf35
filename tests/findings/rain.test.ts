/** Whether rain stays out, and whether sockets may be used outdoors. */
import { expect, test } from "vitest";
import { outdoorSockets, rain } from "../../lib/findings/fit-out/rain.js";
import { openJob } from "../../lib/job/index.js";
import { Current, gram, minute, Voltage } from "../../lib/quantity/index.js";

const job = openJob("soil-lab");
const { sprayTest: _, ...journey } = job.case.journey;
const { mains } = job.case.services;

const sprayed = (minutes: number, grams: number) =>
  rain({
    ...job,
    case: { ...job.case, journey: { ...journey, sprayTest: { time: minute(minutes), water: gram(grams) } } },
  })[0]!;

test("rain stays out of what stayed dry under a shower head, a minute a square metre and five at least", () => {
  // Two sections of about 31 x 25 x 25 in: 4.7 square metres.
  expect([sprayed(5.1, 0).verdict, sprayed(4.9, 0).verdict]).toEqual(["holds", "fails"]);
  expect(sprayed(5.1, 0).answer).toContain("5 openings have neither door, pane nor drawer");
});

test("any water inside is a plain no, however long it was sprayed", () => {
  expect([sprayed(60, 5).verdict, sprayed(60, 5).ratio]).toEqual(["fails", undefined]);
});

test("rain is unknown until somebody sprays it, and not asked of what stays indoors", () => {
  const [open] = rain({ ...job, case: { ...job.case, journey } });
  expect([open?.verdict, open?.missing?.measure]).toEqual(["unknown", "a test under a shower head"]);
  expect(open?.cautions.join()).toContain("kill");
  const { gust: __, ...indoors } = journey;
  expect(rain({ ...job, case: { ...job.case, journey: indoors } })).toEqual([]);
});

test.each([
  [6, 120, "holds"],
  [10, 120, "fails"],
  [30, 230, "holds"],
  [100, 230, "fails"],
])("a breaker that trips at %d mA to earth, outdoors at %d V: %s", (milliamperes, volts, verdict) => {
  const changed = { ...mains!, residual: Current.of(milliamperes, "mA"), voltage: Voltage.of(volts, "V") };
  const found = outdoorSockets({
    ...job,
    case: { ...job.case, services: { ...job.case.services, mains: changed } },
  })[0]!;
  expect([found.tier, found.verdict]).toEqual(["safety", verdict]);
  expect(found.cautions.join()).toContain("ground-fault");
});

test("sockets outdoors are unknown until somebody reads the breaker", () => {
  const { residual: ___, ...unread } = mains!;
  const found = outdoorSockets({
    ...job,
    case: { ...job.case, services: { ...job.case.services, mains: unread } },
  })[0]!;
  expect([found.verdict, found.cautions.length]).toEqual(["unknown", 1]);
});
