import { expect, test } from "vitest";
import { fallingFigure, strappedFigure } from "../../../lib/findings/figures/riding-figures.js";
import { openJob } from "../../../lib/job/index.js";
import { sectionFootprint } from "../../../lib/model/index.js";
import { mm } from "../../../lib/quantity/index.js";

const input = openJob("soil-lab");

test.each(["flat", "edge", "corner", "side", "casters"] as const)(
  "a section that falls %s begins as high as it falls from",
  (landing) => {
    const { shapes } = fallingFigure(input, "lower", landing, mm(300));
    expect(Math.min(...shapes.flatMap(({ points }) => points.map(({ y }) => y)))).toBeCloseTo(0.3, 9);
  },
);

test("on an edge the centre of gravity stands over a corner of the outline", () => {
  const { shapes, places } = fallingFigure(input, "upper", "edge", mm(300));
  const outline = shapes[0]?.points ?? [];
  const [lowest] = [...outline].sort((a, b) => a.y - b.y);
  expect(places?.[0]?.at.x).toBeCloseTo(lowest!.x, 9);
});

test("straps run over the top corners to the floor at their own angle, and the road pushes at the centre of gravity", () => {
  const straps = input.case.journey.lashing!;
  const figure = strappedFigure(
    input,
    { sections: ["upper"], standing: sectionFootprint(input, "upper"), straps },
    "2 kN",
  );
  const strap = figure.lines?.find(({ what }) => what === "strap")?.points ?? [];
  const [foot, corner] = [strap[0]!, strap[1]!];
  expect(foot.y).toBe(0);
  expect(Math.atan2(corner.y - foot.y, corner.x - foot.x)).toBeCloseTo(straps.angle, 9);
  const push = figure.arrows?.find(({ words }) => words === "push of the road");
  expect(push?.at.y).toBeCloseTo(figure.places?.[0]?.at.y ?? 0, 9);
});
