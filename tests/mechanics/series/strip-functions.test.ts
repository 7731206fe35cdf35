import { describe, expect, test } from "vitest";
import { stripProducts } from "../../../lib/mechanics/series/stiffness-matrix.js";
import {
  type EdgeSupport,
  type StripFunctions,
  type StripValues,
  stripFunctions,
} from "../../../lib/mechanics/series/strip-functions.js";

const length = 0.7;
const supports = ["free", "hinged", "clamped"] as const;
const pairs = supports.flatMap((start) => supports.map((end): [EdgeSupport, EdgeSupport] => [start, end]));
const zero = (values: readonly number[]): boolean => values.every((value) => Math.abs(value) < 1e-12);
const strip = (start: EdgeSupport, end: EdgeSupport, knots: readonly number[] = []): StripFunctions =>
  stripFunctions({ length, start, end, knots }, { shapes: 13, leastDegree: 4 });

describe.each(pairs)("a strip %s at the start and %s at the end", (start, end) => {
  const [plain, divided] = [strip(start, end), strip(start, end, [0.2, 0.35])];

  test("moves and turns at an end only as its support lets it", () => {
    for (const one of [plain, divided]) {
      for (const [support, values] of [
        [start, one.at(0)],
        [end, one.at(length)],
      ] as const) {
        expect(zero(values.value)).toBe(support !== "free");
        expect(zero(values.slope)).toBe(support === "clamped");
      }
    }
  });

  test("has as many shapes as polynomials of its degree leave after supports and joints", () => {
    const held = { free: 0, hinged: 1, clamped: 2 };
    const lost = held[start] + held[end];
    expect([plain.degree, plain.count]).toEqual([12, 13 - lost]);
    expect([divided.degree, divided.count]).toEqual([4, 3 * 5 - 2 * 2 - lost]);
    expect(divided.at(0.1).value).toHaveLength(divided.count);
  });

  test("its slopes and curvatures are those of its values", () => {
    for (const one of [plain, divided]) {
      const [place, step] = [0.23, 1e-5];
      const [before, here, after] = [one.at(place - step), one.at(place), one.at(place + step)];
      here.slope.forEach((slope, i) => {
        expect(((after.value[i] ?? 0) - (before.value[i] ?? 0)) / 2 / step).toBeCloseTo(slope, 4);
      });
      here.curvature.forEach((curvature, i) => {
        expect(((after.slope[i] ?? 0) - (before.slope[i] ?? 0)) / 2 / step / 1000).toBeCloseTo(
          curvature / 1000,
          4,
        );
      });
    }
  });
});

test("a strip neither breaks nor kinks at a knot, but may bend differently on its two sides", () => {
  const divided = strip("free", "free", [0.2, 0.35]);
  const [before, after] = [divided.at(0.2 - 1e-12), divided.at(0.2)];
  const jump = (field: keyof StripValues): number =>
    Math.max(...after[field].map((value, i) => Math.abs(value - (before[field][i] ?? 0))));
  expect(jump("value")).toBeLessThan(1e-9);
  expect(jump("slope")).toBeLessThan(1e-8);
  expect(jump("curvature")).toBeGreaterThan(1);
});

test("its points integrate exactly across knots", () => {
  const sum = strip("free", "free", [0.2, 0.35])
    .points(0.1, 0.6)
    .reduce((total, { at, weight }) => total + weight * at ** 8, 0);
  expect(sum).toBeCloseTo((0.6 ** 9 - 0.1 ** 9) / 9, 14);
});

test("only the shapes that lift an end are told to", () => {
  for (const one of [strip("free", "free"), strip("free", "hinged", [0.3]), strip("hinged", "clamped")]) {
    const lifts = one.at(0).value.map((value, i) => value !== 0 || one.at(length).value[i] !== 0);
    expect(one.lifting).toEqual(lifts.flatMap((lift, i) => (lift ? [i] : [])));
  }
});

test("curvatures of a clamped strip do not mix", () => {
  const clamped = strip("clamped", "clamped");
  const { curvatures, count } = stripProducts(clamped, clamped.points(0, length));
  curvatures.forEach((entry, place) => {
    const same = Math.floor(place / count) === place % count;
    expect(entry * (length / 2) ** 3).toBeCloseTo(same ? 1 : 0, 10);
  });
});
