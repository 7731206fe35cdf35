import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  cableRoom,
  compressionSet,
  heldPull,
  heldShear,
  mountFrequency,
  panelFrequency,
  platformPull,
  sagFrequency,
  stripGrip,
  transmissibility,
} from "../../lib/inside/index.js";
import {
  AreaDensity,
  kg,
  Length,
  metre,
  mm,
  newton,
  PlateStiffness,
  ratio,
  SpringRate,
  standardGravity,
} from "../../lib/quantity/index.js";

const positive = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe("holding", () => {
  test("fasteners share alike: all of them carry what the road pushes", () => {
    fc.assert(
      fc.property(positive(0.1, 50), fc.integer({ min: 1, max: 12 }), (mass, count) => {
        const each = heldShear({ mass: kg(mass), share: ratio(0.8), count });
        expect(each * count).toBeCloseTo(0.8 * mass * standardGravity, 9);
      }),
    );
  });

  test("a wider foot or a lower thing never pulls more", () => {
    fc.assert(
      fc.property(positive(0.05, 1), positive(0.05, 0.5), (height, base) => {
        const pull = (h: number, b: number) =>
          heldPull({ mass: kg(10), share: ratio(0.8), height: metre(h), base: metre(b) });
        expect(pull(height, base * 1.2)).toBeLessThanOrEqual(pull(height, base));
        expect(pull(height / 1.2, base)).toBeLessThanOrEqual(pull(height, base));
      }),
    );
  });

  test("a longer lever spares the screws", () => {
    const pull = (lever: number) =>
      platformPull({ load: newton(100), reach: mm(200), lever: mm(lever), screws: 4 });
    fc.assert(
      fc.property(positive(5, 100), (lever) => {
        expect(pull(2 * lever)).toBeCloseTo(pull(lever) / 2, 9);
      }),
    );
  });

  test("a strip keeps less the more it sets, and nothing when all has set", () => {
    fc.assert(
      fc.property(positive(0, 0.9), positive(0, 1), (squeeze, set) => {
        const left = stripGrip({ thickness: mm(6), squeeze: ratio(squeeze), set: ratio(set) });
        expect(left).toBeLessThanOrEqual(mm(6) * squeeze + 1e-12);
      }),
    );
    expect(stripGrip({ thickness: mm(6), squeeze: ratio(0.3), set: ratio(1) })).toBe(0);
    expect(() => compressionSet({ before: mm(5), squeezed: mm(5), after: mm(5) })).toThrow(
      "screen.strip.set: the piece must be thinner squeezed than before, and not grow",
    );
  });

  test("room is plug, bend and cable", () => {
    const { room, radius } = cableRoom({ diameter: mm(8), factor: ratio(6), plug: mm(40) });
    expect(radius).toBeCloseTo(mm(48), 12);
    expect(room - radius).toBeCloseTo(mm(48), 12);
  });
});

describe("rattle", () => {
  test("spring and sag give one frequency", () => {
    fc.assert(
      fc.property(positive(0.1, 50), positive(100, 1e6), (mass, rate) => {
        const sag = Length.si((mass * standardGravity) / rate);
        expect(sagFrequency({ sag })).toBeCloseTo(
          mountFrequency({ mass: kg(mass), stiffness: SpringRate.si(rate) }),
          6,
        );
      }),
    );
  });

  test("a panel turned round hums alike, one twice as large four times as slow", () => {
    const stiffness = {
      alongX: PlateStiffness.si(500),
      alongY: PlateStiffness.si(350),
      coupling: PlateStiffness.si(18),
      twist: PlateStiffness.si(37),
    };
    const turned = { ...stiffness, alongX: stiffness.alongY, alongY: stiffness.alongX };
    fc.assert(
      fc.property(positive(0.2, 1.2), positive(0.2, 1.2), (a, b) => {
        const areaMass = AreaDensity.si(8);
        const hum = (one: number, other: number, of = stiffness) =>
          panelFrequency({ length: metre(one), width: metre(other), stiffness: of, areaMass });
        expect(hum(b, a, turned)).toBeCloseTo(hum(a, b), 9);
        expect(hum(2 * a, 2 * b)).toBeCloseTo(hum(a, b) / 4, 9);
      }),
    );
  });

  test("a mount helps above the root of two, and hurts below it", () => {
    fc.assert(
      fc.property(positive(0.01, 0.9), positive(1.42, 20), positive(0.1, 1.41), (damping, above, below) => {
        expect(transmissibility({ frequencyRatio: ratio(above), damping: ratio(damping) })).toBeLessThan(1);
        expect(transmissibility({ frequencyRatio: ratio(below), damping: ratio(damping) })).toBeGreaterThan(
          1,
        );
      }),
    );
  });
});
