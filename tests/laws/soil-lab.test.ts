/** The demo job keeps the promises that the book is written on. */
import { expect, test } from "vitest";
import { openJob } from "../../lib/job/index.js";

const { case: soilLab, stock, measurements, parts } = openJob("soil-lab");
const panel = (id: string) => parts.panels.find((one) => one.id === id);

test("the upper front has three openings that take 35 to 50 % of it", () => {
  const front = panel("upper.front");
  expect(front?.openings.map(({ name }) => name)).toEqual(["display window", "sample port", "rack opening"]);
  const share = 1 - (front?.netArea ?? 0) / (front?.grossArea ?? 1);
  expect(share).toBeGreaterThan(0.35);
  expect(share).toBeLessThan(0.5);
});

test("the lower section has a side door with hinges and a latch on its leaf", () => {
  expect(panel("lower.left.side door")?.role).toBe("leaf");
  const onLeaf = parts.fastenings
    .filter((one) => one.panel === "lower.left.side door")
    .map(({ holds }) => holds);
  expect(onLeaf).toEqual(["door hinge 1", "door hinge 2", "door latch 1"]);
});

test("every edge has an extrusion, every corner six rivets, every handle ten", () => {
  expect(parts.bars).toHaveLength(24);
  const rivets = (duty: string): number[] => [
    ...new Set(
      parts.hardware
        .filter(({ item }) => item.duty === duty)
        .map(({ id }) =>
          parts.fastenings.filter(({ holds }) => holds === id).reduce((sum, { count }) => sum + count, 0),
        ),
    ),
  ];
  expect(rivets("protect")).toEqual([6]);
  expect(rivets("lift")).toEqual([10]);
});

test("what hangs from the top has a second hold", () => {
  const hung = soilLab.contents.filter(({ held }) => held.by === "hung");
  expect(hung.map(({ held }) => held)).toMatchObject([{ secondHold: { count: 1 } }]);
});

test("it rolls on four casters and goes through the door of a van, 48 in wide and 72 in high", () => {
  const casters = parts.hardware.filter(({ item }) => item.duty === "roll");
  expect(casters).toHaveLength(4);
  const top = Math.max(...parts.sections.map(({ outside: { low, size } }) => low.z + size.z));
  expect(top + (casters[0]?.stock.standing ?? 0)).toBeLessThan(72 * 0.0254);
  for (const { outside } of parts.sections)
    expect(Math.min(outside.size.x, outside.size.y)).toBeLessThan(48 * 0.0254);
});

test("the ply's figures agree: weights with the density, every strip with at least four loads", () => {
  const ply = stock.sheets.find(({ name }) => name === "birch ply 3/8");
  const weighed = measurements.weights.filter(({ material }) => material === ply?.name);
  for (const { mass, length, width, thickness } of weighed) {
    expect(mass / (length * width * thickness) / (ply?.density ?? 1)).toBeCloseTo(1, 1);
  }
  const loads = new Map<string, number>();
  for (const { strip } of measurements.bends) loads.set(strip, (loads.get(strip) ?? 0) + 1);
  expect(Math.min(...loads.values())).toBeGreaterThanOrEqual(4);
  const strips = (direction: string): number =>
    new Set(
      measurements.bends
        .filter((one) => one.direction === direction && one.faced === "bare")
        .map(({ strip }) => strip),
    ).size;
  expect(strips("along")).toBeGreaterThanOrEqual(2);
  expect(strips("across")).toBeGreaterThanOrEqual(2);
});

test("the first draft leaves a rating out on purpose, the case that was built none", () => {
  const ratingIn = (rows: typeof stock): number | undefined =>
    rows.hardware.find(({ name }) => name === "draw latch")?.rated;
  expect(ratingIn(openJob("soil-lab-draft").stock)).toBeUndefined();
  expect(ratingIn(stock)).toBeGreaterThan(0);
});

test("nothing that hurts or breaks fails", { timeout: 600_000 }, () => {
  const failing = openJob("soil-lab")
    .review.findings.filter(({ tier }) => tier === "safety" || tier === "strength")
    .filter(({ verdict }) => verdict === "fails" || verdict === "broken");
  expect(failing.map(({ id }) => id)).toEqual([]);
});
