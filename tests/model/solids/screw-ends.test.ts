/** Points of screws and stands of slides follow what is moved under them. */
import { expect, test } from "vitest";
import { type Design, remove, set } from "../../../lib/design/index.js";
import { openJob } from "../../../lib/job/index.js";
import { pointsOut, slideStands } from "../../../lib/model/index.js";
import { Length } from "../../../lib/quantity/index.js";

/** The demo without the boards beside its drawers, and with long screws in its pass-through. */
const demo: Design = openJob("soil-lab").with(
  remove("stiffeners.left upright"),
  remove("stiffeners.right upright"),
  set({ file: "hardware.csv", row: "brush pass-through", column: "fastener" }, "wood screw 8"),
);

/** The demo with its lower left wall further right. */
function wallMoved(by: number): Design {
  const panels = demo.parts.panels.map((panel) => {
    const { low } = panel.box;
    return panel.id === "lower.left"
      ? { ...panel, box: { ...panel.box, low: { ...low, x: Length.si(low.x + by) } } }
      : panel;
  });
  return { ...demo, parts: { ...demo.parts, panels } };
}

test("a wall that comes nearer leaves that much less gap, and none when it touches", () => {
  const gapsOf = (design: Design) =>
    slideStands(design).map(({ gaps }) => gaps.map(({ wall, gap }) => ({ wall, gap })));
  const before = gapsOf(demo);
  expect(before.length).toBeGreaterThan(0);
  const [[{ gap: far } = { gap: 0 }] = []] = before;
  expect(far).toBeGreaterThan(0.1);
  for (const by of [0.05, far]) {
    const after = gapsOf(wallMoved(by));
    const expected = before.map((gaps) =>
      gaps.map(({ wall, gap }) => ({ wall, gap: expect.closeTo(wall === "lower.left" ? gap - by : gap, 9) })),
    );
    expect(after).toEqual(expected);
  }
});

test("a screw longer by so much comes out by so much more", () => {
  const longer = 0.004;
  const isLong = ({ holds }: { readonly holds: string }): boolean => holds.startsWith("cable pass-through");
  const fastenings = demo.parts.fastenings.map((group) =>
    isLong(group)
      ? { ...group, fastener: { ...group.fastener, length: Length.si(group.fastener.length + longer) } }
      : group,
  );
  const before = pointsOut(demo).filter(({ tip }) => tip.part.startsWith("cable pass-through"));
  const after = pointsOut({ ...demo, parts: { ...demo.parts, fastenings } });
  expect(before).toHaveLength(4);
  for (const { tip, by } of before)
    expect(after.find((one) => one.tip.part === tip.part)?.by).toBeCloseTo(by + longer, 9);
});
