/** One piece over a long and a short span, as a builder writes it into the table of bend tests. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type BendReading, bentStrips, spannedPieces, withoutShear } from "../../lib/measure/index.js";
import { showProblem } from "../../lib/problem.js";
import { Force, Length, mm, Pressure } from "../../lib/quantity/index.js";

const [width, thickness] = [50, 9];

/** What a piece of these moduli (MPa) sags, mm. */
function sagOf(load: number, span: number, modulus: number, shear: number): number {
  return (
    (load * span ** 3) / (4 * modulus * width * thickness ** 3) +
    (1.2 * load * span) / (4 * shear * width * thickness)
  );
}

/** A strip of a piece read under three loads. */
function strip(name: string, span: number, modulus: number, shear: number, piece?: string): BendReading[] {
  return [20, 40, 60].map((load, i) => ({
    strip: name,
    span: mm(span),
    width: mm(width),
    thickness: mm(thickness),
    load: Force.of(load, "N"),
    sag: mm(sagOf(load, span, modulus, shear)),
    line: i + 2,
    piece,
  }));
}

const piece = (modulus: number, shear: number, short = 100): BendReading[] => [
  ...strip("long", 600, modulus, shear, "P"),
  ...strip("short", short, modulus, shear, "P"),
];
const told = (readings: readonly BendReading[]): string[] =>
  spannedPieces(readings, "bend-tests.csv").problems.map(showProblem);

describe("a piece bent over two spans", () => {
  test("gives back the modulus and the shear it was made with", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 4000, max: 15_000, noNaN: true }),
        fc.double({ min: 60, max: 400, noNaN: true }),
        (modulus, shear) => {
          const [found] = spannedPieces(piece(modulus, shear), "bend-tests.csv").pieces;
          expect(Pressure.in(found?.modulus.value as Pressure, "MPa") / modulus).toBeCloseTo(1, 9);
          expect(Pressure.in(found?.shearModulus.value as Pressure, "MPa") / shear).toBeCloseTo(1, 9);
        },
      ),
    );
  });

  test("takes the shear out of other strips, whose own modulus reads low", () => {
    const readings = strip("S", 300, 9000, 120);
    const [bent] = bentStrips(readings, "bend-tests.csv").strips;
    if (!bent) throw new Error("the strip can be measured");
    expect(bent.modulus.value).toBeLessThan(Pressure.of(8600, "MPa"));
    const free = withoutShear(bent, { value: Pressure.of(120, "MPa"), uncertainty: { standard: 5e6 } });
    expect(Pressure.in(free.value, "MPa")).toBeCloseTo(9000, 6);
    expect(free.shares.some(({ input }) => input === "shearModulus")).toBe(true);
    expect(free.standardUncertainty).toBeGreaterThan(bent.modulus.standardUncertainty);
  });

  test("is refused with its row and what to do", () => {
    expect(told(strip("long", 600, 9000, 120, "P"))).toEqual([
      'bend-tests.csv, row 2, piece: found "P", expected two strips that can be measured, one piece over a long and a short span, got 1',
    ]);
    expect(told(piece(9000, 120, 550))).toEqual([
      'bend-tests.csv, row 2, span: found "600 mm and 550 mm", expected longSpan must be at least 1.2 times shortSpan: heavier loads on the short span, a finer gauge',
    ]);
    const noShear = [...strip("long", 600, 9000, 120, "P"), ...strip("short", 100, 9000, 1e9, "P")];
    expect(told(noShear)).toEqual([
      'bend-tests.csv, row 2, span: found "600 mm and 100 mm", expected the short span shows no shear: let both rests be the same, and measure it anew: heavier loads on the short span, a finer gauge',
    ]);
    const shaken = [
      ...strip("long", 600, 9000, 600, "P"),
      ...[0.005, -0.005, 0.005, -0.005].flatMap((extra) =>
        strip("short", 100, 9000, 600, "P").map((row) => ({
          ...row,
          sag: Length.si(row.sag + extra / 1000),
        })),
      ),
    ];
    expect(told(shaken)[0]).toContain("a shear that stands clear of the scatter: heavier loads");
  });

  test("leaves strips without a piece alone", () => {
    expect(spannedPieces(strip("S", 600, 9000, 120), "bend-tests.csv")).toEqual({ pieces: [], problems: [] });
  });
});
