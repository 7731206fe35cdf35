/** Geometry that a hand can check: 500 mm inside, twice 10 of ply and 1 of laminate, on casters of 120 mm. */
import { expect, test } from "vitest";
import { leaningFigure, pushFigure, windFigure } from "../../../lib/findings/figures/standing-figures.js";
import { footprint, leastTippingArm } from "../../../lib/model/index.js";
import { designOf, rolling, smallJob } from "../../design/small-job.js";

const input = designOf(rolling(smallJob));
const top = 0.12 + 0.522;
const { balance, height } = footprint(input);

function placeOf(figure: ReturnType<typeof pushFigure>, what: string) {
  const found = figure.places?.find((one) => one.what === what);
  if (!found) throw new Error(`no ${what}`);
  return found.at;
}

test("a push acts level at its height, on the side away from the edge that the case tips over", () => {
  const figure = pushFigure(input, top, "90 N");
  const push = figure.arrows?.find(({ words }) => words === "90 N");
  expect(push?.at.y).toBeCloseTo(0.642, 9);
  expect(Math.sin(push?.way ?? 1)).toBeCloseTo(0, 9);
  const edge = placeOf(figure, "edge").x;
  expect(Math.sign(edge - (push?.at.x ?? 0))).toBe(Math.sign(Math.cos(push?.way ?? 0)));
});

test("the weight hangs from the centre of gravity, as high as the case balances, an arm from the edge", () => {
  const figure = pushFigure(input, top, undefined);
  const centre = placeOf(figure, "centre of gravity");
  expect(centre.y).toBeCloseTo(height, 9);
  expect(Math.abs(placeOf(figure, "edge").x - centre.x)).toBeCloseTo(leastTippingArm(footprint(input)), 9);
  const weight = figure.arrows?.find(({ at }) => at === centre);
  expect(weight?.way).toBeCloseTo(-Math.PI / 2, 9);
  expect(weight?.words).toMatch(/kg$/);
});

test("at the lean at which it tips the centre of gravity stands straight over the edge, as far from it as before", () => {
  const figure = leaningFigure(input);
  const [centre, edge] = [placeOf(figure, "centre of gravity"), placeOf(figure, "edge")];
  expect(centre.x).toBeCloseTo(edge.x, 9);
  expect(centre.y).toBeCloseTo(Math.hypot(height, leastTippingArm(footprint(input))), 9);
});

test("the wind blows evenly over the side, between its lower and its upper edge", () => {
  const { arrows = [] } = windFigure(input, "40 km/h");
  const blown = arrows.filter(({ acts }) => acts === "pushing").map(({ at }) => at.y);
  // Quarters of 522 mm, the first in the middle of the lowest.
  expect(blown).toEqual([0.18525, 0.31575, 0.44625, 0.57675].map((y) => expect.closeTo(y, 9)));
  expect(balance.value.mass).toBeGreaterThan(13);
});
