import { expect, test } from "vitest";
import { heatFigure } from "../../../lib/findings/figures/heat-figures.js";
import { openJob } from "../../../lib/job/index.js";
import { ventsOf } from "../../../lib/model/index.js";

const input = openJob("soil-lab");
const cooling = input.case.services.cooling.find(({ section }) => section === "upper")!;

test("air comes in by the lower vent and leaves by the upper, as far apart as the vents are", () => {
  const { lines = [], arrows = [] } = heatFigure(input, "upper");
  const way = lines.find(({ what }) => what === "air")?.points ?? [];
  expect(way.at(-1)!.y - way[0]!.y).toBeCloseTo(ventsOf(input, cooling).apart, 9);
  const [into, out] = arrows;
  expect([into?.acts, out?.acts]).toEqual(["pushing", "pulling"]);
  expect(into!.at.y).toBeLessThan(out!.at.y);
  expect(out?.words).toMatch(/warmer$/);
});

test("each thing that draws power is there with its watts", () => {
  const { shapes } = heatFigure(input, "upper");
  const loads = input.parts.contents.filter(
    ({ content }) => content.section === "upper" && (content.power ?? 0) > 0,
  );
  expect(shapes.filter(({ what, words }) => what === "thing" && /W$/.test(words ?? ""))).toHaveLength(
    loads.length,
  );
});

test("a section without vents says that it is shut, and has no way of the air", () => {
  const shut = { ...input, case: { ...input.case, services: { ...input.case.services, cooling: [] } } };
  const figure = heatFigure(shut, "upper", "sun");
  expect(figure.description).toMatch(/It is shut/);
  expect(figure.lines).toEqual([]);
  expect(figure.arrows).toMatchObject([{ words: "sun" }]);
});
