/** Clocks that end at a time of day. */
import { expect, test } from "vitest";
import { clockWords, endedBetween, started } from "../../../lib/live/bench/clock.js";

const open = { adhesive: "wood glue", what: "open", seconds: 480, words: "8 min" } as const;

test("a clock shows what is left after any sleep, and for how long it is over", () => {
  const [clock] = started([], open, 1000);
  if (!clock) throw new Error("no clock");
  const after = (seconds: number): string => clockWords(clock, 1000 + seconds * 1000);
  expect([0, 1, 421, 480, 600].map(after)).toEqual([
    "8:00 min left",
    "7:59 min left",
    "0:59 min left",
    "over for 0:00 min",
    "over for 2:00 min",
  ]);
  expect(clockWords({ ...clock, ends: 1000 + 86_400_000 }, 1000)).toBe("24 h 0 min left");
});

test("a clock that is started again begins anew, others run on", () => {
  const cure = { ...open, what: "cure", seconds: 86_400 } as const;
  const running = started(started(started([], open, 0), cure, 0), open, 60_000);
  expect(running.map(({ what, ends }) => [what, ends])).toEqual([
    ["cure", 86_400_000],
    ["open", 540_000],
  ]);
  expect(endedBetween(running, 500_000, 600_000).map(({ what }) => what)).toEqual(["open"]);
  expect(endedBetween(running, 540_000, 600_000)).toEqual([]);
});
