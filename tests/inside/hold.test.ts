import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  cableRoom,
  compressionSet,
  heldPull,
  heldShear,
  platformPull,
  stripGrip,
} from "../../lib/inside/index.js";
import { kg, metre, mm, newton, ratio, standardGravity } from "../../lib/quantity/index.js";

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
