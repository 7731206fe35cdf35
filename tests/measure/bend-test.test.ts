import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type BendReading, bendModulus, bentStrips } from "../../lib/measure/index.js";
import { showProblem } from "../../lib/problem.js";
import { Length, mm, newton, Pressure, SpringRate } from "../../lib/quantity/index.js";

const size = { strip: "A1", span: mm(300), width: mm(50), thickness: mm(6.5) };
/** 12 I = b h^3. */
const inertia = (50 * 6.5 ** 3) / 12;
const sagOf = (load: number, modulus = 9000): number => (load * 300 ** 3) / (48 * modulus * inertia);

const reading = (load: number, sag: number, line: number, rest: Partial<BendReading> = {}): BendReading => ({
  ...size,
  load: newton(load),
  sag: mm(sag),
  line,
  ...rest,
});
const strip = (noise: readonly number[], zero = 0): BendReading[] =>
  noise.map((extra, i) => reading(5 * (i + 1), zero + sagOf(5 * (i + 1)) + extra, i + 2));
const complaints = (readings: readonly BendReading[]): string[] =>
  bentStrips(readings, "bend-tests.csv").problems.map(showProblem);

describe("a bent strip", () => {
  test("gives back the modulus its sag was worked out from, wherever the gauge starts", () => {
    fc.assert(
      fc.property(fc.double({ min: -5, max: 5, noNaN: true }), (zero) => {
        const { strips, problems } = bentStrips(strip([0, 0, 0, 0], zero), "bend-tests.csv");
        expect(problems).toEqual([]);
        expect(Pressure.in(strips[0]!.modulus.value, "MPa")).toBeCloseTo(9000, 4);
      }),
    );
  });

  test("has an interval that holds the true modulus and narrows with more loads", () => {
    const noise = [0.01, -0.01, 0.01, -0.01];
    const width = (times: number): number => {
      const [bent] = bentStrips(strip(Array(times).fill(noise).flat()), "bend-tests.csv").strips;
      const { low, high } = bent!.modulus.interval;
      expect(Pressure.in(low, "MPa")).toBeLessThan(9000);
      expect(Pressure.in(high, "MPa")).toBeGreaterThan(9000);
      return high - low;
    };
    expect(width(2)).toBeLessThan(width(1));
  });

  test("says that thickness read to 0.1 mm is what limits a clean test", () => {
    const [bent] = bentStrips(strip([0, 0.001, 0, -0.001]), "bend-tests.csv").strips;
    expect(bent!.modulus.shares[0]?.input).toBe("thickness");
    expect(bent!.modulus.standardUncertainty / bent!.modulus.value).toBeCloseTo(
      Math.hypot((3 * 0.1) / 6.5, (3 * 1) / 300, 0.1 / 50) / Math.sqrt(12),
      3,
    );
  });

  test("points at a row that does not belong to the others", () => {
    const noise = [0.005, -0.004, 0.5, -0.006, 0.004, 0.003];
    expect(bentStrips(strip(noise), "bend-tests.csv").strips[0]?.oddLines).toEqual([4]);
  });

  test("shows its work", () => {
    const [bent] = bentStrips(strip([0, 0, 0]), "bend-tests.csv").strips;
    expect(bent!.worked.id).toBe("bend.modulus");
    expect(SpringRate.in(bent!.inputs.slope, "N/mm")).toBeCloseTo(5 / sagOf(5), 9);
  });

  test("with a span of just ten thicknesses is measured, with a warning that it reads low", () => {
    const short = strip([0, 0, 0]).map((one) => ({ ...one, span: mm(65) }));
    const { strips, problems } = bentStrips(short, "bend-tests.csv");
    expect(problems).toEqual([]);
    expect(strips[0]?.worked.warnings).toEqual([
      "span below 20 thicknesses: shear adds to the sag, the modulus reads some percent low",
    ]);
  });
});

describe("a strip that cannot be used is refused with its row and what to do", () => {
  const good = strip([0, 0, 0]);

  test.each<[string, readonly BendReading[], string]>([
    [
      "two loads",
      good.slice(0, 2),
      'bend-tests.csv, row 2, strip: found "A1", expected at least 3 different loads on a strip, got 2: hang more weights on it',
    ],
    [
      "short span",
      good.map((one) => ({ ...one, span: mm(60) })),
      'bend-tests.csv, row 2, span: found "60 mm", expected a span of at least 10 thicknesses (65 mm), better 20: move the rests apart',
    ],
    [
      "sag that falls",
      [reading(5, 3, 2), reading(10, 2, 3), reading(15, 1, 4)],
      'bend-tests.csv, row 3, sag: found "2 mm", expected sag that grows with the load (here 10 N): read this row again, or bend the strip anew',
    ],
    [
      "sag that stays",
      [reading(5, 2, 2), reading(10, 2, 3), reading(15, 2, 4)],
      'bend-tests.csv, row 3, sag: found "2 mm", expected sag that grows with the load (here 10 N): read this row again, or bend the strip anew',
    ],
    [
      "two sizes under one name",
      [...good, reading(20, 1, 5, { thickness: mm(9) })],
      'bend-tests.csv, row 5, span, width, thickness: found "300 mm x 50 mm x 9 mm", expected the size of strip A1 as in its first row, 300 mm x 50 mm x 6.5 mm',
    ],
    [
      "wild scatter",
      [reading(5, 1, 2), reading(10, 4, 3), reading(15, 3, 4)],
      'bend-tests.csv, row 2, strip: found "A1", expected readings that agree better, the scatter is as large as the modulus: more loads, heavier loads, a finer sag gauge',
    ],
  ])("%s", (_name, readings, message) => {
    expect(complaints(readings)).toEqual([message]);
  });

  test("and the other strips are still measured", () => {
    const other = good.map((one) => ({ ...one, strip: "B1" }));
    const { strips, problems } = bentStrips([...good.slice(0, 1), ...other], "bend-tests.csv");
    expect(strips.map(({ strip: name }) => name)).toEqual(["B1"]);
    expect(problems).toHaveLength(1);
  });

  test("the formula itself refuses a short span", () => {
    const inputs = { slope: SpringRate.of(20, "N/mm"), span: mm(60), width: mm(50), thickness: mm(6.5) };
    expect(() => bendModulus(inputs)).toThrow(
      "bend.modulus: span must be at least 10 thicknesses (65 mm), got 60 mm",
    );
    expect(() => bendModulus({ ...inputs, width: Length.si(0) })).toThrow(
      "bend.modulus: width must be positive, got 0 mm",
    );
  });
});
