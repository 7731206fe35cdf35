/** Shelves, drawers, cables and hands as they are drawn, against what the model says of them. */
import { describe, expect, test } from "vitest";
import { cableFigure, holeFigure } from "../../../lib/findings/figures/cable-figures.js";
import type { Figure, FigureStuff } from "../../../lib/findings/figures/figure.js";
import { gripFigure, handsFigure } from "../../../lib/findings/figures/hand-figures.js";
import {
  joltedFigure,
  pulledOutFigure,
  riddenShelfFigure,
} from "../../../lib/findings/figures/inside-figures.js";
import { openJob } from "../../../lib/job/index.js";
import { handlesByEnd, pulledOut } from "../../../lib/model/index.js";
import { inch, mm } from "../../../lib/quantity/index.js";

const job = openJob("soil-lab");
const shelf = job.parts.shelves.find(({ shelf: { name } }) => name === "instrument shelf")!;
const xs = ({ shapes }: Figure, what: FigureStuff): readonly number[] =>
  shapes.filter((shape) => shape.what === what).flatMap(({ points }) => points.map(({ x }) => x));

describe("a shelf", () => {
  const room = inch(1.5);
  const jolted = joltedFigure(job, shelf, { load: "58 lbf", room, free: "1-1/2 in" });

  test("in a jolt bends below its two ends, and is free under it as far as was found", () => {
    const [left, right] = jolted.places?.map(({ at }) => at) ?? [];
    expect(right!.x - left!.x).toBeCloseTo(shelf.panel.box.size.x, 9);
    const bent = jolted.lines?.[0]?.points ?? [];
    expect(Math.max(...bent.map(({ y }) => y))).toBeCloseTo(left!.y, 9);
    expect(Math.min(...bent.map(({ y }) => y))).toBeLessThan(left!.y);
    const [free] = jolted.sizes ?? [];
    expect(free!.to.y - free!.from.y).toBeCloseTo(room, 9);
    expect(free!.to.y).toBeCloseTo(left!.y, 9);
  });

  test.each([
    ["forward", -1, "y"],
    ["rearward", 1, "y"],
    ["sideways", 1, "x"],
  ] as const)("pushed %s is held at both its ends", (ride, way, axis) => {
    const { arrows, places } = riddenShelfFigure(job, shelf, ride, "20 N");
    expect(Math.cos(arrows![0]!.way)).toBeCloseTo(way, 9);
    expect(places![1]!.at.x - places![0]!.at.x).toBeCloseTo(shelf.panel.box.size[axis], 9);
  });
});

test("a drawer is drawn as far out as its slides let it, on the side that it opens on", () => {
  const { drawer, face, box } = job.parts.drawers[0]!;
  const out = pulledOut(job, drawer);
  const figure = pulledOutFigure(job, { ...drawer, side: face, box, out }, "10 kg");
  const [shut, open] = [xs(figure, "hidden"), xs(figure, "thing")];
  expect(Math.min(...shut) - Math.min(...open)).toBeCloseTo(out, 9);
  expect(Math.max(...open) - Math.min(...open)).toBeCloseTo(box.size.y, 9);
});

describe("a cable", () => {
  const asked = { name: "inverter", plug: mm(40), cable: mm(10), radius: mm(60), needed: mm(110) };

  test("takes plug, bend and its own thickness, and ends before a wall that is far enough", () => {
    const figure = cableFigure({ ...asked, room: mm(200) }, {});
    expect(Math.max(...xs(figure, "laminate"))).toBeCloseTo(asked.needed, 9);
    expect(Math.min(...xs(figure, "sheet"))).toBeCloseTo(0.2, 9);
    expect(figure.sizes?.map(({ words }) => words)).toEqual(["needs 110 mm", "free 200 mm"]);
  });

  test("is drawn without a wall that is far off", () => {
    const figure = cableFigure({ ...asked, room: mm(900) }, {});
    expect(xs(figure, "sheet")).toEqual([]);
    expect(figure.description).toContain("farther off");
  });

  test("lies beside the next one in a hole, and over it where the row is full", () => {
    const hole = { width: mm(25), height: mm(40) };
    const { shapes } = holeFigure("lower", { hole, across: [mm(10), mm(10), mm(10)], what: "cables" }, {});
    const middles = shapes
      .filter(({ what }) => what === "laminate")
      .map(({ points }) => ["x", "y"].map((way) => points.reduce((sum, at) => sum + at[way as "x"], 0) / 20));
    [
      [0.005, 0.005],
      [0.015, 0.005],
      [0.005, 0.015],
    ].forEach(([x, y], i) => {
      expect(middles[i]![0]).toBeCloseTo(x!, 9);
      expect(middles[i]![1]).toBeCloseTo(y!, 9);
    });
  });
});

describe("hands", () => {
  test("have their room laid over the middle of the handle's cut-out", () => {
    const figure = gripFigure(
      job,
      "lower",
      { length: mm(120), clearance: mm(60) },
      { length: mm(130), clearance: mm(90) },
    );
    const [cut, hand] = [xs(figure, "opening"), xs(figure, "hidden")];
    expect(Math.min(...hand) + Math.max(...hand)).toBeCloseTo(Math.min(...cut) + Math.max(...cut), 9);
    expect(Math.max(...hand) - Math.min(...hand)).toBeCloseTo(0.13, 9);
  });

  test("lift at every handle of an end, and what finds none under the edge", () => {
    const [first] = handlesByEnd(job, "lower");
    const { arrows } = handsFigure(job, "lower", 2, () => 1);
    expect(first.length).toBe(1);
    expect(arrows?.map(({ words }) => words)).toEqual(["1 hand", "1 hand"]);
    expect(handsFigure(job, "lower", 1, () => 1).arrows).toHaveLength(1);
  });
});
