/** A tray in inches, faced on both sides, glued, stiffened and glazed: its sums by hand. */
import { describe, expect, test } from "vitest";
import { reviewCase } from "../../lib/findings/index.js";
import { massItems, panelStiffness, sheetModuli } from "../../lib/model/index.js";
import { designOf } from "../design/small-job.js";
import { trayJob } from "../design/tray-job.js";

const tray = designOf(trayJob);
const review = reviewCase(tray);
const inch = 0.0254;

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

/** Of one side of the four walls, in square inches: left and right run past 0.58 of front and back, 16 + 2 x 0.58 by 10. */
const gross = 2 * (16 + 1.16) * 10.5 + 2 * 24 * 10.5;

describe("a tray that is faced on both sides", () => {
  test("is as large as its sheets with laminate on both sides", () => {
    const { x, y, z } = tray.parts.sections[0]?.outside.size ?? { x: 0, y: 0, z: 0 };
    // 24 + 2 x (0.5 + 2 x 0.04), 16 + the same, 10 + 0.5 of the bare bottom.
    expect([x, y, z].map((size) => size / inch)).toEqual(
      [25.16, 17.16, 10.5].map((size) => expect.closeTo(size, 9)),
    );
  });

  test("has two pieces of laminate a wall, and glue under both", () => {
    expect(tray.parts.facings).toHaveLength(8);
    expect(sum(tray.parts.facings.map(({ gluedArea }) => gluedArea))).toBeCloseTo(2 * gross * inch ** 2, 9);
    const need = review.purchases.adhesives.find(({ stock }) => stock.name === "contact");
    // 150 g/m2 on both faces of every bond, 0.85 g/mL.
    expect(need?.volume).toBeCloseTo((2 * gross * inch ** 2 * 0.3) / 850, 9);
  });

  test("weighs two laminates and their dry glue, less the window", () => {
    const left = 2 * (gross - 12 * 5) * inch ** 2;
    const massIn = (group: string, word: string): number =>
      sum(
        massItems(tray).flatMap((item) =>
          item.group === group && item.name.includes(word) ? [item.mass] : [],
        ),
      );
    expect(massIn("facings", "facing")).toBeCloseTo(left * 0.04 * inch * 1400, 9);
    expect(massIn("glue", "facing")).toBeCloseTo(left * 0.3 * 0.2, 9);
  });

  test("bends as three layers: two skins and a core", () => {
    const wall = tray.parts.panels.find(({ id }) => id === "tray.left");
    if (!wall?.facing) throw new Error("no wall with laminate");
    const moduli = sheetModuli(wall.sheet, tray.measurements);
    const { stiffness } = panelStiffness(wall, moduli);
    const { facing: _, ...bare } = wall;
    const own = panelStiffness(bare, moduli).stiffness;
    // E / (1 - 0.3^2) x 2 x (t^3 / 12 + t d^2), the skins 0.27 from the middle.
    const skin = (1.3e6 * 6894.757) / (1 - 0.09);
    const skins = 2 * skin * ((0.04 * inch) ** 3 / 12 + 0.04 * inch * (0.27 * inch) ** 2);
    expect((stiffness.alongX - own.alongX) / skins).toBeCloseTo(1, 4);
  });

  test("counts cleats, batten, doubler and pane", () => {
    // Edges at the bottom: two of 24, two of 16; upright: four of 10.
    const cleats = tray.parts.strips.filter(({ why }) => why === "edge").map(({ length }) => length / inch);
    expect(sum(cleats)).toBeCloseTo(2 * 24 + 2 * 16 + 4 * 10, 9);
    // Batten of 18 by 0.75, on screws alone: 16 in four spaces.
    expect(tray.parts.fastenings.map(({ count }) => count)).toEqual([5]);
    // Cleats 0.75 wide on both of their panels, doubler 8 by 4.
    const glued = tray.parts.glues.map(({ area }) => area / inch ** 2);
    expect(sum(glued)).toBeCloseTo(2 * 0.75 * 120 + 32, 9);
    const massOf = (name: string): number => massItems(tray).find((item) => item.name === name)?.mass ?? 0;
    expect(massOf("tray.bottom.floor batten")).toBeCloseTo(18 * 0.75 ** 2 * inch ** 3 * 450, 9);
    expect(massOf("tray.back.back doubler")).toBeCloseTo(8 * 4 * 0.5 * inch ** 3 * 680, 9);
    expect(massOf("tray.front.window pane")).toBeCloseTo((13 * 6 * inch ** 3 * 1200) / 8, 9);
  });

  test("has a review in which nothing is broken", () => {
    expect(review.findings.filter(({ verdict }) => verdict === "broken").map(({ id }) => id)).toEqual([]);
  });
});
