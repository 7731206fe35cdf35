/** An opening that is an ellipse, from the case file to the panel. */
import { expect, test } from "vitest";
import { deriveParts } from "../../lib/design/index.js";
import { designOf, problemsOf, spoilt } from "./small-job.js";

const port = "port: { circle: { diameter: 100 }";
const withPort = (shape: string): Record<string, string> =>
  spoilt("case.yaml", port, `port: { ${shape}, to: centre`);

function openingOf(texts: Record<string, string>) {
  const design = designOf(texts);
  const { panels } = deriveParts(design.case, design.stock, []);
  return panels.find(({ id }) => id === "box.front")!.openings.find(({ name }) => name === "port")!;
}

test("an ellipse is as wide and as high as the case file says, and its area that of an ellipse", () => {
  const opening = openingOf(withPort("ellipse: { width: 120, height: 80 }"));
  expect(opening.kind).toBe("ellipse");
  expect(opening.width).toBeCloseTo(0.12, 9);
  expect(opening.height).toBeCloseTo(0.08, 9);
  expect(Math.abs(opening.area / (Math.PI * 0.06 * 0.04) - 1)).toBeLessThan(1e-3);
});

test("an ellipse as high as wide is the circle", () => {
  const round = openingOf(withPort("circle: { diameter: 100 }"));
  const ellipse = openingOf(withPort("ellipse: { width: 100, height: 100 }"));
  expect(ellipse.outline).toEqual(round.outline);
});

test("an ellipse without height is refused", () => {
  const [problem] = problemsOf(withPort("ellipse: { width: 100, height: 0 }"));
  expect(problem).toMatchObject({
    column: "sections.box.panels.front.openings.port.ellipse.height",
    value: "0",
  });
});
