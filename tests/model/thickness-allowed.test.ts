/** How thick a sheet may turn out before its rivets no longer close; figures by hand. */
import { expect, test } from "vitest";
import { openJob } from "../../lib/job/index.js";
import { thicknessAllowed, thicknessTolerance } from "../../lib/model/index.js";
import { Length } from "../../lib/quantity/index.js";

const demo = openJob("soil-lab");
const [ply] = demo.stock.sheets.filter(({ name }) => name === "birch ply 3/8");
if (!ply) throw new Error("the demo has birch ply 3/8");

/** The demo with other ends of the range of its short rivet. */
function withRange(low: Length, high: Length) {
  const fastenings = demo.parts.fastenings.map((group) =>
    group.fastener.name === "rivet 3/16 short"
      ? { ...group, fastener: { ...group.fastener, gripMin: low, gripMax: high } }
      : group,
  );
  return { ...demo.parts, fastenings };
}

test("rivets with room to spare leave a sheet what plywood may be off", () => {
  const wide = withRange(Length.of(1, "mm"), Length.of(40, "mm"));
  expect(thicknessAllowed(ply, wide)).toEqual(thicknessTolerance(ply.thickness));
});

test("a rivet whose range ends sooner leaves no more than its range does", () => {
  // ply 9.1, laminate 1.0, a paddle latch's flange of 1.6 and a washer of 1.0: 12.7 mm is the thickest stack
  const { over } = thicknessAllowed(ply, withRange(Length.of(9, "mm"), Length.of(12.8, "mm")));
  expect(1000 * over).toBeCloseTo(0.1, 6);
});

test("a stack that no rivet closes as planned says nothing of the sheet", () => {
  const none = withRange(Length.of(1, "mm"), Length.of(2, "mm"));
  expect(thicknessAllowed(ply, none)).toEqual(thicknessTolerance(ply.thickness));
});
