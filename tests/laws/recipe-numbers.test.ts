import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Fastener, Fastening } from "../../lib/design/index.js";
import type { Point2 } from "../../lib/index.js";
import { gripOf, takesWasher } from "../../lib/model/index.js";
import { diagonalDifference, diagonalOf, thicknessTolerance } from "../../lib/model/tolerances.js";
import { inch, Length, mm } from "../../lib/quantity/index.js";
import { bitFor, holeMarks } from "../../lib/recipe/drilling.js";
import { ruleOf } from "../../lib/recipe/rule.js";
import { smallInput } from "../recipe/recipes.js";

const rivet = smallInput.parts.fastenings[0]?.fastener as Fastener;
const group = smallInput.parts.fastenings[0] as Fastening;

describe("bits", () => {
  // Bits that rivet makers print for these bodies: common practice.
  test.each([
    [inch(1 / 8), "no. 30"],
    [inch(5 / 32), "no. 20"],
    [inch(3 / 16), "no. 11"],
  ])("a rivet of %d m takes the bit of the trade in inches", (diameter, bit) => {
    expect(bitFor({ ...rivet, diameter }, "inch").name.replace("\u00a0", " ")).toBe(bit);
  });

  test.each([
    [mm(3.2), 3.3],
    [mm(4), 4.1],
    [mm(4.8), 4.9],
  ])("a rivet of %d m takes a bit a tenth larger in millimetres", (diameter, bit) => {
    expect(Length.in(bitFor({ ...rivet, diameter }, "metric").diameter, "mm")).toBeCloseTo(bit, 9);
  });

  test("every fastener goes through its hole, with little room", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 2.4, max: 6.4, noNaN: true }),
        fc.constantFrom("inch" as const, "metric" as const),
        (size, units) => {
          const { diameter } = bitFor({ ...rivet, diameter: mm(size) }, units);
          expect(diameter).toBeGreaterThan(mm(size));
          expect(diameter).toBeLessThan(mm(size + 0.5));
        },
      ),
    );
  });
});

describe("grip", () => {
  test("a washer counts into the stack where the back is bare wood", () => {
    const stack = [
      { what: "metal", thickness: mm(2) },
      { what: "ply", thickness: mm(9) },
    ] as const;
    const bare = { ...group, stack, backIsBareWood: true };
    expect(Length.in(gripOf(bare), "mm")).toBeCloseTo(
      11 + Length.in(rivet.washerThickness as Length, "mm"),
      9,
    );
    expect(Length.in(gripOf({ ...bare, backIsBareWood: false }), "mm")).toBeCloseTo(11, 9);
  });

  test("a screw never takes one", () => {
    expect(takesWasher({ ...group, backIsBareWood: true, fastener: { ...rivet, kind: "screw" } })).toBe(
      false,
    );
  });
});

describe("hole marks", () => {
  const point = fc
    .record({ x: fc.integer({ min: 0, max: 600 }), y: fc.integer({ min: 0, max: 600 }) })
    .map(({ x, y }): Point2<Length> => ({ x: mm(x), y: mm(y) }));
  const key = ({ x, y }: Point2<Length>): string => `${Math.round(x * 1e4)},${Math.round(y * 1e4)}`;

  test("read back, they are the holes again, whatever the pattern", () => {
    fc.assert(
      fc.property(fc.uniqueArray(point, { minLength: 1, maxLength: 12, selector: key }), (at) => {
        const marks = holeMarks({ ...group, at });
        if (!marks) throw new Error("no marks");
        const holes =
          marks.read === "crossings"
            ? marks.across.flatMap((x) => marks.up.map((y) => ({ x, y })))
            : marks.across.map((x, i) => ({ x, y: marks.up[i] as Length }));
        expect(holes.map(key).sort()).toEqual(at.map(key).sort());
      }),
    );
  });

  test("a row of a bar is one mark one way and a list the other", () => {
    const at = [40, 140, 240].map((v): Point2<Length> => ({ x: mm(12), y: mm(v) }));
    expect(holeMarks({ ...group, at })).toEqual({
      across: [mm(12)],
      up: [40, 140, 240].map(mm),
      read: "crossings",
    });
  });

  test("a group placed by hand has none", () => {
    expect(holeMarks({ ...group, at: [] })).toBeUndefined();
  });
});

describe("squareness", () => {
  test("the diagonals differ as the law of cosines has it for 1 mm in 1 m", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 400, max: 2400 }),
        fc.integer({ min: 400, max: 1200 }),
        (width, height) => {
          const cosine = Math.sin(Math.atan(0.001));
          const diagonal = (sign: number): number =>
            Math.sqrt(width ** 2 + height ** 2 + sign * 2 * width * height * cosine);
          const exact = diagonal(1) - diagonal(-1);
          const allowed = Length.in(diagonalDifference(mm(width), mm(height)), "mm");
          if (exact > 0.5) expect(Math.abs(allowed / exact - 1)).toBeLessThan(1e-5);
          else expect(allowed).toBeCloseTo(0.5, 4);
        },
      ),
    );
  });

  test("a small piece is not held to less than a tape shows", () => {
    expect(diagonalDifference(mm(100), mm(100))).toBe(mm(0.5));
  });

  test("a 300 by 400 panel has a diagonal of 500", () => {
    expect(diagonalOf(mm(300), mm(400))).toBeCloseTo(mm(500), 12);
  });

  // EN 315, sanded, 9 mm: 8.33 to 9.47 mm (from memory).
  test("9 mm plywood may be 8.33 to 9.47 mm", () => {
    const { over, under } = thicknessTolerance(mm(9));
    expect(Length.in(Length.si(mm(9) + over), "mm")).toBeCloseTo(9.47, 9);
    expect(Length.in(Length.si(mm(9) - under), "mm")).toBeCloseTo(8.33, 9);
  });
});

describe("the builder's rule", () => {
  const plain = (text: string): string => text.replaceAll("\u00a0", " ").replaceAll("\u2011", "-");

  test("inches stand alone, and with millimetres beside in the shop", () => {
    const rule = ruleOf("inch");
    expect(plain(rule.length(mm(600)))).toBe("23-5/8 in");
    expect(plain(rule.size(mm(600), mm(254)))).toBe("23-5/8 × 10 in");
    expect(plain(rule.marks([mm(9.5), mm(254)]))).toBe("3/8, 10 in");
    expect(plain(rule.fine(mm(0.8)))).toBe("0.031 in");
    expect(plain(rule.inShop(mm(600), mm(254)))).toBe("23-5/8 × 10 in (600 × 254 mm)");
  });

  test("millimetres stand alone", () => {
    const rule = ruleOf("metric");
    expect(plain(rule.length(mm(600.04)))).toBe("600 mm");
    expect(plain(rule.drawn(mm(600), mm(254)))).toBe("600 × 254 mm");
  });

  test("no line breaks inside a mixed fraction or before its unit", () => {
    expect(ruleOf("inch").length(mm(600))).not.toMatch(/\d-\d|\d in|\d mm/);
  });
});
