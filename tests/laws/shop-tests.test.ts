import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type BendReading,
  bendModulus,
  bendModulusWithoutShear,
  bendOverTwoSpans,
  bentStrips,
  facingModulusBothFaces,
  facingModulusOneFace,
  meanWithInterval,
  type TwistReading,
  tiltFriction,
  twistedSamples,
  twistModulus,
} from "../../lib/measure/index.js";
import { kgf, mm, Pressure, pascal, ratio, SpringRate } from "../../lib/quantity/index.js";

const strip = { slope: SpringRate.of(7, "N/mm"), span: mm(600), width: mm(50), thickness: mm(9) };

describe("shear", () => {
  test("taken out makes the modulus higher, and less so over a longer span", () => {
    fc.assert(
      fc.property(fc.double({ min: 200, max: 900, noNaN: true }), (span) => {
        const inputs = { ...strip, span: mm(span), shearModulus: Pressure.of(80, "MPa") };
        const share = bendModulusWithoutShear(inputs) / bendModulus(inputs);
        expect(share).toBeGreaterThan(1);
      }),
    );
  });

  test("that swallows the whole sag is refused", () => {
    expect(() =>
      bendModulusWithoutShear({ ...strip, slope: SpringRate.of(900, "N/mm"), shearModulus: pascal(1e6) }),
    ).toThrow("slope leaves no sag for bending");
  });

  test("from two spans needs two spans, and a short one that is softer for its length", () => {
    const two = {
      longSlope: SpringRate.of(5, "N/mm"),
      longSpan: mm(600),
      shortSlope: SpringRate.of(40, "N/mm"),
      shortSpan: mm(590),
      width: mm(50),
      thickness: mm(9),
    };
    expect(() => bendOverTwoSpans(two)).toThrow("longSpan must be at least 1.2 times shortSpan");
    expect(() =>
      bendOverTwoSpans({ ...two, shortSpan: mm(200), shortSlope: SpringRate.of(400, "N/mm") }),
    ).toThrow("the short span shows no shear");
  });
});

describe("a facing's modulus", () => {
  const bare = { bareModulus: Pressure.of(9, "GPa"), bareThickness: mm(9) };

  test("equals the bare one when the faced strip bends like one material", () => {
    const alike = { ...bare, facedModulus: bare.bareModulus, facedThickness: mm(10) };
    expect(facingModulusOneFace(alike)).toBeCloseTo(bare.bareModulus, 0);
    expect(facingModulusBothFaces(alike)).toBeCloseTo(bare.bareModulus, 0);
  });

  test("grows with the faced strip's", () => {
    fc.assert(
      fc.property(fc.double({ min: 8, max: 14, noNaN: true }), (gigapascals) => {
        const at = (one: number) =>
          facingModulusOneFace({ ...bare, facedModulus: Pressure.of(one, "GPa"), facedThickness: mm(10) });
        expect(at(gigapascals + 0.1)).toBeGreaterThan(at(gigapascals));
      }),
    );
  });

  test("is refused from a strip that is no thicker or no stiffer", () => {
    expect(() =>
      facingModulusOneFace({ ...bare, facedModulus: bare.bareModulus, facedThickness: mm(9) }),
    ).toThrow("facing.modulus.one: facedThickness must exceed the bare one (9 mm), got 9 mm");
    expect(() =>
      facingModulusBothFaces({ ...bare, facedModulus: Pressure.of(3, "GPa"), facedThickness: mm(10) }),
    ).toThrow("facing.modulus.both: the faced strip must be stiffer than the bare one: bend both anew");
  });
});

function bent(sags: readonly number[], loads = [1, 2, 3, 4, 5], rests?: readonly number[]): BendReading[] {
  return sags.map((sag, i) => ({
    strip: "A",
    span: mm(600),
    width: mm(50),
    thickness: mm(9),
    load: kgf(loads[i] ?? 0),
    sag: mm(sag),
    ...(rests ? { rests: mm(rests[i] ?? 0) } : {}),
    line: i + 2,
  }));
}

describe("a strip", () => {
  test("whose rests give way is stiffer than it looks, by just what they give", () => {
    const [plain] = bentStrips(bent([1, 2, 3.1, 4, 5]), "f").strips;
    const [settled] = bentStrips(
      bent([1.1, 2.2, 3.4, 4.4, 5.5], undefined, [0.1, 0.2, 0.3, 0.4, 0.5]),
      "f",
    ).strips;
    expect(settled?.modulus.value).toBeCloseTo(plain?.modulus.value ?? 0, -3);
  });

  test("read up and down tells its hysteresis; read up only it does not", () => {
    const [both] = bentStrips(bent([1, 2, 3, 2.3, 1.2], [1, 2, 3, 2, 1]), "f").strips;
    // The wider gap, 0.3 mm, over a sag of 1 to 3 mm.
    expect(both?.hysteresis).toBeCloseTo(0.15, 9);
    expect(bentStrips(bent([1, 2, 3, 4, 5]), "f").strips[0]?.hysteresis).toBeUndefined();
  });

  test("with an outlier names its row", () => {
    expect(bentStrips(bent([1, 2.02, 3.4, 4.01, 5]), "f").strips[0]?.oddLines).toEqual([4]);
  });

  test("with one sag in another unit is told which row, and what should stand there", () => {
    // 4 mm written in inches.
    const mixed = bentStrips(bent([1, 2, 3.05, 4 / 25.4, 5]), "bend-tests.csv");
    expect(mixed.strips).toEqual([]);
    expect(mixed.problems).toEqual([
      {
        file: "bend-tests.csv",
        row: 5,
        column: "sag",
        value: "0.157 mm",
        expected: "about 4 mm as the other loads of strip A have it: read it again, and look at its unit",
      },
    ]);
  });

  test("off by less than two divisions of its gauge is not called odd", () => {
    // Read to 0.05 mm: four readings on a line to the last digit, the fifth 0.1 mm above.
    expect(bentStrips(bent([0.7, 1.4, 2.1, 2.8, 3.6]), "f").strips[0]?.oddLines).toEqual([]);
  });
});

function twisted(drops: readonly number[], changes: Partial<TwistReading> = {}): TwistReading[] {
  return drops.map((drop, i) => ({
    sample: "T",
    width: mm(300),
    height: mm(300),
    thickness: mm(9),
    load: kgf(i + 1),
    drop: mm(drop),
    line: i + 2,
    ...changes,
  }));
}

describe("a twisted offcut", () => {
  test("gives its modulus with an interval that holds the exact one", () => {
    const { samples, problems } = twistedSamples(twisted([4.8, 9.7, 14.4, 19.3]), "twist-tests.csv");
    expect(problems).toEqual([]);
    const exact = twistModulus({ ...twisted([0])[0], slope: SpringRate.si(kgf(1) / 0.00482) } as never);
    expect(samples[0]?.modulus.interval.low).toBeLessThan(exact);
    expect(samples[0]?.modulus.interval.high).toBeGreaterThan(exact);
  });

  test.each([
    [twisted([1, 2]), "at least 3 different loads on an offcut, got 2: hang more weights on it"],
    [twisted([3, 2, 1]), "a drop that grows with the load (up to 29.42 N): read it again"],
    [
      [...twisted([1, 2, 3]), ...twisted([4], { width: mm(200), load: kgf(9) })],
      "one size in all rows of an offcut: give another offcut another name",
    ],
    [
      twisted([1, 2, 3], { thickness: mm(40) }),
      "twist.modulus: thickness must be at most a tenth of the smaller side, got 40 mm: cut a larger piece",
    ],
  ])("is told what to do, case %#", (readings, expected) => {
    expect(twistedSamples(readings, "twist-tests.csv")).toEqual({
      samples: [],
      problems: [{ file: "twist-tests.csv", row: 2, column: "sample", value: "T", expected }],
    });
  });
});

test("friction does not depend on the length of the board", () => {
  fc.assert(
    fc.property(fc.double({ min: 0.1, max: 9, noNaN: true }), (by) => {
      expect(tiltFriction({ rise: mm(300 * by), run: mm(900 * by) })).toBeCloseTo(1 / 3, 9);
    }),
  );
});

test("spread shrinks with more measurements: the same readings taken twice are known better", () => {
  const readings = fc.array(fc.double({ min: 1, max: 2, noNaN: true }), { minLength: 2, maxLength: 9 });
  fc.assert(
    fc.property(readings, (values) => {
      fc.pre(new Set(values).size > 1);
      const half = (list: readonly number[]) =>
        meanWithInterval({ values: list.map(ratio), confidence: ratio(0.95) }).halfWidth;
      expect(half([...values, ...values])).toBeLessThan(half(values));
    }),
  );
});
