import { describe, expect, test } from "vitest";
import { gaussPoints } from "../../../lib/mechanics/series/legendre.js";
import { type EdgeSupport, stripFunctions } from "../../../lib/mechanics/series/strip-functions.js";
import { stripProducts } from "../../../lib/mechanics/series/strip-products.js";

const length = 0.7;
const supports = ["free", "hinged", "clamped"] as const;
const pairs = supports.flatMap((start) => supports.map((end): [EdgeSupport, EdgeSupport] => [start, end]));
const zero = (values: readonly number[]): boolean => values.every((value) => Math.abs(value) < 1e-12);

describe.each(pairs)("a strip %s at the start and %s at the end", (start, end) => {
  const strip = stripFunctions(length, start, end, 12);

  test("moves and turns at an end only as its support lets it", () => {
    for (const [support, values] of [
      [start, strip.at(0)],
      [end, strip.at(length)],
    ] as const) {
      expect(zero(values.value)).toBe(support !== "free");
      expect(zero(values.slope)).toBe(support === "clamped");
    }
  });

  test("has as many shapes as a polynomial of its degree leaves after its supports", () => {
    const held = { free: 0, hinged: 1, clamped: 2 };
    expect(strip.count).toBe(13 - held[start] - held[end]);
    expect(strip.at(0.1).value).toHaveLength(strip.count);
  });

  test("its slopes and curvatures are those of its values", () => {
    const [place, step] = [0.23, 1e-5];
    const [before, here, after] = [strip.at(place - step), strip.at(place), strip.at(place + step)];
    here.slope.forEach((slope, i) => {
      expect(((after.value[i] ?? 0) - (before.value[i] ?? 0)) / 2 / step).toBeCloseTo(slope, 4);
    });
    here.curvature.forEach((curvature, i) => {
      expect(((after.slope[i] ?? 0) - (before.slope[i] ?? 0)) / 2 / step / 1000).toBeCloseTo(
        curvature / 1000,
        4,
      );
    });
  });
});

test("only the shapes that lift an end are told to", () => {
  const strip = stripFunctions(length, "free", "free", 8);
  const lifts = strip.at(0).value.map((value, i) => value !== 0 || strip.at(length).value[i] !== 0);
  expect(strip.lifting).toEqual(lifts.flatMap((lift, i) => (lift ? [i] : [])));
  expect(stripFunctions(length, "hinged", "clamped", 8).lifting).toEqual([]);
});

test("curvatures of a clamped strip do not mix", () => {
  const strip = stripFunctions(length, "clamped", "clamped", 10);
  const { curvatures, count } = stripProducts(strip, gaussPoints(11, 0, length));
  curvatures.forEach((entry, place) => {
    const same = Math.floor(place / count) === place % count;
    expect(entry * (length / 2) ** 3).toBeCloseTo(same ? 1 : 0, 10);
  });
});
