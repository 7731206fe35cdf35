import { expect, test } from "vitest";
import type { MovableThing } from "../../lib/live/index.js";
import { bareLength, moveChanges, movedBy } from "../../lib/live/move.js";

const inch = 0.0254;
const port: MovableThing = {
  name: "port",
  place: "sections.upper.panels.front.openings.port",
  from: "top-right",
  across: 3 * inch,
  up: 2 * inch,
  path: "",
  box: [0, 0, 0, 0],
  kind: "opening",
};

test("writes inches as the builder does, to a sixteenth, and whole millimetres", () => {
  expect([3, 3.5, 0.3125, 8.25, 0].map((one) => bareLength(one * inch, "in"))).toEqual([
    "3",
    "3-1/2",
    "5/16",
    "8-1/4",
    "0",
  ]);
  expect(bareLength(0.3684, "mm")).toBe("368");
});

test("measures from the thing's own corner, snaps, and stops at its edges", () => {
  const to = movedBy(port, 1.02 * inch, -0.51 * inch, "in");
  expect([to.across / inch, to.up / inch]).toEqual([expect.closeTo(2, 9), expect.closeTo(2.5, 9)]);
  expect(movedBy(port, 10 * inch, 10 * inch, "in")).toEqual({ across: 0, up: 0 });
});

test("changes only what has moved", () => {
  const changes = moveChanges(port, movedBy(port, inch, 0, "in"), "in");
  expect(changes).toEqual([{ kind: "set", at: `${port.place}.across`, to: "2" }]);
});
