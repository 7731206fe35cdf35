import { expect, test } from "vitest";
import { thrownFigure } from "../../../lib/findings/figures/thrown-figures.js";
import { openJob } from "../../../lib/job/index.js";
import { thrownAt } from "../../../lib/model/index.js";

test("what is thrown flies from where it stands to the side that stops it, as far as it is free to", () => {
  const input = openJob("soil-lab-draft");
  const targets = input.parts.panels.flatMap((panel) =>
    thrownAt(panel, input).map((thrown) => ({ panel, thrown })),
  );
  expect(targets.length).toBeGreaterThan(0);
  for (const { panel, thrown } of targets) {
    const { shapes, arrows, sizes } = thrownFigure(input, panel, thrown, "2 kN");
    const xs = (what: string): number[] =>
      shapes.filter((shape) => shape.what === what).flatMap(({ points }) => points.map(({ x }) => x));
    const [side, thing] = [xs("pressed"), xs("thing")];
    const gap = Math.max(Math.min(...side) - Math.max(...thing), Math.min(...thing) - Math.max(...side));
    expect(Math.max(0, gap)).toBeCloseTo(thrown.way, 6);
    expect(sizes?.length).toBe(thrown.way > 0 ? 1 : 0);
    const towards = Math.sign(side[0]! - thing[0]!);
    expect(Math.cos(arrows?.[0]?.way ?? 0)).toBeCloseTo(towards, 9);
  }
});
