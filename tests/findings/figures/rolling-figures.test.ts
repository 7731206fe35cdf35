import { expect, test } from "vitest";
import {
  obstacleFigure,
  rolledFigure,
  slopeFigure,
  wheelLoadFigure,
} from "../../../lib/findings/figures/rolling-figures.js";
import { mm } from "../../../lib/quantity/index.js";
import { designOf, rolling, smallJob } from "../../design/small-job.js";

const input = designOf(rolling(smallJob));

test("a step is drawn as high as it is, its lip where the wheel touches it", () => {
  const wheel = { ...input, case: { ...input.case, journey: { ...input.case.journey, wheel: mm(100) } } };
  const { places = [] } = obstacleFigure(wheel, { kind: "step", size: mm(20), words: "20 mm" }, undefined);
  const lip = places.find(({ what }) => what === "edge")?.at;
  expect(lip?.y).toBeCloseTo(0.02, 9);
  // A wheel of 50 mm radius touches a step of 20 mm sqrt(50² - 30²) = 40 mm before its axle, which is at 111 + 10 mm.
  const front = Math.min(
    ...(rolledFigure(input, undefined).arrows ?? []).filter(({ at }) => at.y === 0).map(({ at }) => at.x),
  );
  expect((lip?.x ?? 0) - front).toBeCloseTo(-0.04, 9);
});

test("on a ramp the pull runs along the ground, uphill", () => {
  const slope = (10 * Math.PI) / 180;
  const figure = slopeFigure(input, { title: "t", slope, words: "10°" }, "42 N");
  const [from, to] = figure.lines?.[0]?.points ?? [];
  const pull = figure.arrows?.find(({ words }) => words === "42 N");
  expect(Math.tan(pull?.way ?? 0)).toBeCloseTo((to!.y - from!.y) / (to!.x - from!.x), 9);
  expect(Math.sin(pull?.way ?? 0)).toBeGreaterThan(0);
});

test("the longest arrow is under the wheels nearer to the centre of gravity, and has the words", () => {
  const figure = wheelLoadFigure(input, "90 N");
  const centre = figure.places?.[0]?.at.x ?? 0;
  const wheels = (figure.arrows ?? []).filter(({ at }) => at.y === 0);
  const [near] = [...wheels].sort((a, b) => Math.abs(a.at.x - centre) - Math.abs(b.at.x - centre));
  expect(near?.words).toBe("90 N");
  expect(wheels.every(({ share = 1 }) => share <= (near?.share ?? 1))).toBe(true);
});
