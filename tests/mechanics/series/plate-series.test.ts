import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { turnedQuarter } from "../../../lib/material/index.js";
import {
  edgeMoments,
  largestDeflection,
  navierSeries,
  type PlateSeries,
  plateAt,
  type SeriesOrder,
  type SeriesPlate,
  solvePlate,
} from "../../../lib/mechanics/series/index.js";
import { gaussPoints } from "../../../lib/mechanics/series/legendre.js";
import { openingsNotFollowed, plateKnots } from "../../../lib/mechanics/series/plate-series.js";
import { type Box2, rectangle } from "../../../lib/shape/index.js";
import { anyEdges, anySide, anyStiffness, close, edges, few, plywood, stiffnessOf } from "../plate/plates.js";

/** Coarse enough for many plates in a test; laws hold at any. */
const order: SeriesOrder = { shapes: 13, leastDegree: 3 };
const plate: SeriesPlate = {
  length: 0.62,
  width: 0.41,
  stiffness: plywood,
  ...edges("clamped", "hinged", "free", "hinged"),
  cornersHeld: false,
  openings: [rectangle({ left: 0.1, bottom: 0.1, width: 0.2, height: 0.1 }, 0.02)],
};
const whole: Box2 = { left: 0.35, bottom: 0.05, width: 0.24, height: 0.3 };
const halves: readonly Box2[] = [
  { ...whole, width: 0.09 },
  { ...whole, left: 0.44, width: 0.15 },
];

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

describe("the plate series", () => {
  test("adds loads up: two parts of a load deflect and bend together what the whole does", () => {
    const at = (over: Box2) => plateAt(solvePlate(plate, { pressure: 900, over }, order), 0.4, 0.3);
    const [one, parts] = [at(whole), halves.map(at)];
    expect(sum(parts.map(({ deflection }) => deflection))).toBeCloseTo(one.deflection, 12);
    expect(sum(parts.map(({ momentX }) => momentX))).toBeCloseTo(one.momentX, 8);
  });

  test("works both ways: a load here deflects there what the same load there deflects here", () => {
    const [a, b] = [
      { left: 0.38, bottom: 0.25, width: 0.04, height: 0.04 },
      { left: 0.05, bottom: 0.3, width: 0.04, height: 0.04 },
    ];
    const mean = (loaded: Box2, read: Box2): number => {
      const series = solvePlate(plate, { pressure: 1000, over: loaded }, order);
      const gauss = [-1, 1].map((side) => side / Math.sqrt(3));
      const samples = gauss.flatMap((u) =>
        gauss.map((v) => {
          const x = read.left + (read.width * (1 + u)) / 2;
          return plateAt(series, x, read.bottom + (read.height * (1 + v)) / 2).deflection;
        }),
      );
      return sum(samples) / 4;
    };
    expect(mean(a, b) / mean(b, a)).toBeCloseTo(1, 4);
  });

  test("a finer series never deflects less under its load: it approaches from the stiff side", () => {
    fc.assert(
      fc.property(anyEdges, anyStiffness, (held, stiffness) => {
        const over = { left: 0.45, bottom: 0.2, width: 0.02, height: 0.02 };
        const sag = (n: number): number => {
          const series = solvePlate(
            { ...plate, ...held, stiffness },
            { pressure: 1e4, over },
            { shapes: n, leastDegree: 3 },
          );
          return plateAt(series, 0.46, 0.21).deflection;
        };
        return sag(14) >= sag(11) * 0.9999 && sag(17) >= sag(14) * 0.9999;
      }),
      few,
    );
  });

  test("swapping x and y swaps the answer", () => {
    fc.assert(
      fc.property(anySide, anySide, anyStiffness, anyEdges, (length, width, stiffness, held) => {
        const { left, right, bottom, top } = held;
        const upright = { ...plate, length, width, stiffness, ...held, openings: [] };
        const turned = { length: width, width: length, stiffness: turnedQuarter(stiffness) };
        const lying = { ...upright, ...turned, ...edges(bottom, top, left, right) };
        const [one, other] = [upright, lying].map((panel) => solvePlate(panel, { pressure: 500 }, order));
        const a = plateAt(one as PlateSeries, length / 3, width / 5);
        const b = plateAt(other as PlateSeries, width / 5, length / 3);
        return (
          close(a.deflection, b.deflection, 1e-7) &&
          Math.abs(a.momentX - b.momentY) < 1e-6 * 500 * length * width
        );
      }),
      few,
    );
  });

  test("twice the size under the same pressure deflects sixteen times as far, with four times the moment", () => {
    fc.assert(
      fc.property(anyStiffness, anyEdges, (stiffness, held) => {
        const small = { ...plate, stiffness, ...held, openings: [] };
        const large = { ...small, length: 1.24, width: 0.82 };
        const a = plateAt(solvePlate(small, { pressure: 500 }, order), 0.2, 0.1);
        const b = plateAt(solvePlate(large, { pressure: 500 }, order), 0.4, 0.2);
        return (
          close(16 * a.deflection, b.deflection, 1e-8) && Math.abs(4 * a.momentX - b.momentX) < 1e-6 * 500
        );
      }),
      few,
    );
  });

  /** Mean deflection under a load over a rectangle, which energy theorems speak of. */
  const workOf = (panel: SeriesPlate): number => {
    const over = { left: 0.45, bottom: 0.22, width: 1e-3, height: 1e-3 };
    const series = solvePlate(panel, { pressure: 1e6, over }, order);
    return plateAt(series, 0.4505, 0.2205).deflection;
  };

  test("held better or made stiffer, a plate never gives more under a load", () => {
    const better = { free: "hinged", hinged: "clamped", clamped: "clamped" } as const;
    const edge = fc.constantFrom("left", "right", "bottom", "top");
    fc.assert(
      fc.property(anyEdges, anyStiffness, edge, (held, stiffness, which) => {
        const given = { ...plate, stiffness, ...held };
        const { alongX, alongY, coupling, twist } = stiffness;
        const stiffer = stiffnessOf(alongX * 1.3, alongY, coupling, twist * 1.1);
        const limit = workOf(given) * (1 + 1e-6);
        return (
          workOf({ ...given, [which]: better[held[which]] }) <= limit &&
          workOf({ ...given, stiffness: stiffer }) <= limit
        );
      }),
      few,
    );
  });

  test("a larger opening around a smaller one softens a plate more", () => {
    const over = { left: 0.42, bottom: 0.2, width: 0.06, height: 0.06 };
    const sag = (openings: SeriesPlate["openings"]): number =>
      plateAt(
        solvePlate({ ...plate, openings }, { pressure: 1e4, over }, { shapes: 19, leastDegree: 4 }),
        0.45,
        0.23,
      ).deflection;
    const small = rectangle({ left: 0.3, bottom: 0.1, width: 0.08, height: 0.08 }, 0.04);
    const large = rectangle({ left: 0.25, bottom: 0.06, width: 0.15, height: 0.25 }, 0.01);
    expect(sag([small])).toBeGreaterThan(1.01 * sag([]));
    expect(sag([large])).toBeGreaterThan(1.05 * sag([small]));
  });

  test("moments balance the load: between two hinged edges with free sides a strip carries q a2/8 on average", () => {
    const strip = { ...plate, ...edges("hinged", "hinged", "free", "free"), openings: [] };
    const series = solvePlate(strip, { pressure: 1000 }, { shapes: 17, leastDegree: 4 });
    const mean = sum(
      gaussPoints(20, 0, 0.41).map(({ at, weight }) => (weight / 0.41) * plateAt(series, 0.31, at).momentX),
    );
    expect(mean / ((1000 * 0.62 ** 2) / 8)).toBeCloseTo(1, 4);
  });

  test("keeps held edges in place and reads nothing along edges that are not there", () => {
    const series = solvePlate({ ...plate, openings: [] }, { pressure: 1000 }, order);
    for (const y of [0, 0.1, 0.33, 0.41]) {
      expect(plateAt(series, 0, y).deflection).toBeCloseTo(0, 12);
      expect(plateAt(series, 0.62, y).deflection).toBeCloseTo(0, 12);
    }
    const hinged = { ...plate, openings: [], ...edges("hinged", "hinged", "hinged", "hinged") };
    expect(edgeMoments(solvePlate(hinged, { pressure: 1000 }, order))).toEqual({ clamped: 0, free: 0 });
  });

  test("held corners stay down and the rest moves", () => {
    const free = edges("free", "free", "free", "free");
    const floor = { ...plate, ...free, cornersHeld: true, openings: [] };
    const series = solvePlate(floor, { pressure: 1000 }, order);
    for (const [x, y] of [
      [0, 0],
      [0.62, 0],
      [0, 0.41],
      [0.62, 0.41],
    ] as const) {
      expect(plateAt(series, x, y).deflection).toBeCloseTo(0, 12);
    }
    expect(plateAt(series, 0.31, 0).deflection).toBeGreaterThan(0.0001);
  });

  test("pressure on what is left of a panel leaves out what is cut away", () => {
    const window = { left: 0.1, bottom: 0.1, width: 0.2, height: 0.1 };
    const cut = { ...plate, openings: [rectangle(window)] };
    const load = (over?: Box2): number =>
      plateAt(solvePlate(cut, over ? { pressure: 500, over } : { pressure: 500 }, order), 0.5, 0.2)
        .deflection;
    const everywhere = load({ left: 0, bottom: 0, width: cut.length, height: cut.width });
    expect(load()).toBeCloseTo(everywhere - load(window), 12);
    expect(load(window)).toBeGreaterThan(0.01 * everywhere);
  });

  test("a plate that nothing holds is refused", () => {
    const loose = { ...plate, ...edges("free", "free", "free", "free") };
    expect(() => solvePlate(loose, { pressure: 1 }, order)).toThrow(/^plate series: the plate can move/);
  });
});

test("Navier's plate sags most under the middle of a uniform load", () => {
  const over = { left: 0, bottom: 0, width: 0.62, height: 0.41 };
  const series = navierSeries({ length: 0.62, width: 0.41, stiffness: plywood, pressure: 1000, over });
  const largest = series.largest();
  expect(largest.x).toBeCloseTo(0.31, 6);
  expect(largest.y).toBeCloseTo(0.205, 6);
  expect(series.at(0, 0.2).deflection).toBeCloseTo(0, 15);
});

test("the largest deflection is found upwards too", () => {
  const over = { left: 0.5, bottom: 0.1, width: 0.1, height: 0.1 };
  const sag = largestDeflection(solvePlate({ ...plate, openings: [] }, { pressure: -1000, over }, order));
  expect(sag.deflection).toBeLessThan(0);
});

const sides = { length: 1, width: 0.5 };
const window = { left: 0.1, bottom: 0.1, width: 0.3, height: 0.3 };

test("knots lie along the sides of openings, rising, none on an edge", () => {
  const notch = { left: 0.8, bottom: 0, width: 0.2, height: 0.2 };
  const { x, y } = plateKnots(sides, [window, notch]);
  expect(x).toEqual([0.1, 0.4, 0.8]);
  expect(y).toEqual([0.1, 0.2, 0.4]);
});

test("knots that nearly meet become one, that of the larger opening", () => {
  const port = { left: 0.401, bottom: 0.2, width: 0.1, height: 0.1 };
  expect(plateKnots(sides, [port, window]).x).toEqual([0.1, 0.4, 0.501]);
});

test("a row of slots gets no more knots than can be solved for", () => {
  const slots = Array.from({ length: 9 }, (_, n) => ({
    left: 0.05 + n * 0.1,
    bottom: 0.1,
    width: 0.04,
    height: 0.3,
  }));
  expect(plateKnots(sides, slots).x).toHaveLength(8);
  expect(openingsNotFollowed(sides, slots)).toBe(5);
  expect(openingsNotFollowed(sides, slots.slice(0, 4))).toBe(0);
});

test("a load on a solid plate gets knots, on one with openings it leaves them to those", () => {
  const load = { left: 0.6, bottom: 0.2, width: 0.1, height: 0.1 };
  expect(plateKnots(sides, [], load).x).toEqual([0.6, 0.7]);
  expect(plateKnots(sides, [window], load).x).toEqual([0.1, 0.4]);
});
