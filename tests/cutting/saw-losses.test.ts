import { expect, test } from "vitest";
import { mitreKerf } from "../../lib/cutting/index.js";
import { degree, mm } from "../../lib/quantity/index.js";

test("a square cut loses the kerf itself", () => {
  expect(mitreKerf({ kerf: mm(3.2), mitre: degree(0) })).toBe(mm(3.2));
});

test("a steeper cut loses more", () => {
  const losses = [0, 15, 22.5, 45, 60].map((angle) => mitreKerf({ kerf: mm(2.4), mitre: degree(angle) }));
  expect([...losses].sort((a, b) => a - b)).toEqual(losses);
});

test("a cut along the bar is no cut", () => {
  expect(() => mitreKerf({ kerf: mm(3), mitre: degree(90) })).toThrow(
    new RangeError("saw.mitre.kerf: mitre must be below 90°, got 90°"),
  );
});
