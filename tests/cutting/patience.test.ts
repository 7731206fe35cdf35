import { afterEach, describe, expect, test, vi } from "vitest";
import { bestValueSheet, planBars, planSheets, shortestStrip } from "../../lib/cutting/index.js";
import { counted, patienceFor } from "../../lib/cutting/patience.js";
import { type Length, mm, money, Time } from "../../lib/quantity/index.js";

const usual = Time.of(5, "s");

/** A clock on which a second passes at every look: a machine far slower than any. */
function slowDown(): void {
  let now = 0;
  vi.spyOn(performance, "now").mockImplementation(() => {
    now += 1000;
    return now;
  });
}

afterEach(() => {
  vi.restoreAllMocks();
});

describe("patience", () => {
  test("is over after its work, and not before", () => {
    const patience = counted(Time.of(1, "s"));
    patience.spend(0.9e6);
    expect(patience.isOver).toBe(false);
    patience.spend(0.2e6);
    expect(patience.isOver).toBe(true);
  });

  test("of a share is over with its part, and counts for the whole", () => {
    const patience = counted(Time.of(1, "s"));
    const half = patience.share(0.5);
    half.spend(0.6e6);
    expect([half.isOver, patience.isOver]).toEqual([true, false]);
    patience.spend(0.5e6);
    expect(patience.isOver).toBe(true);
    expect(patience.share(0.5).isOver).toBe(true);
  });

  test("goes by the clock where a time limit is set, whatever is spent", () => {
    const patience = patienceFor({ timeLimit: Time.of(10, "s"), effort: Time.of(0, "s") }, usual);
    patience.spend(1e12);
    expect(patience.isOver).toBe(false);
    const half = patience.share(0.5);
    vi.spyOn(performance, "now").mockReturnValue(performance.now() + 7000);
    expect([half.isOver, patience.isOver]).toEqual([true, false]);
  });
});

describe("a busy machine comes to the same plan", () => {
  const sizes = [811, 733, 677, 613, 541, 487, 419, 367, 311, 263];
  const pieces = sizes.map((length, i) => ({
    name: `piece ${i}`,
    length: mm(length),
    width: mm(sizes[9 - i] as number),
    count: 2,
    grain: "free" as const,
  }));
  const kerf = mm(3);
  const sheet = { name: "ply", length: mm(2440), width: mm(1220), price: money(60, "USD") };
  const bar = (length: Length) => ({ name: `bar ${length}`, length, price: money(length * 7, "USD") });
  const bars = { pieces, stock: [bar(mm(2000)), bar(mm(3000))], kerf };
  const offcut = { pieces: pieces.map((one) => ({ ...one, value: one.length * one.width, max: 2 })) };

  test.each([
    ["sheets", () => planSheets({ pieces, stock: [sheet], kerf })],
    ["bars", () => planBars(bars)],
    ["a strip", () => shortestStrip({ pieces, width: mm(1220), kerf, effort: Time.of(0.2, "s") })],
    [
      "an offcut",
      () => bestValueSheet({ ...offcut, length: mm(1220), width: mm(900), effort: Time.of(0.2, "s") }),
    ],
  ])("for %s", (_, plan) => {
    const onIdle = plan();
    slowDown();
    expect(plan()).toEqual(onIdle);
  });
});
