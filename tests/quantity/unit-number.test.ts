import { inspect } from "node:util";
import { describe, expect, test } from "vitest";
import { rectangleSection } from "../../lib/mechanics/index.js";
import { inch, kg, mm } from "../../lib/quantity/given-units.js";
import { Length, missingNumber, withoutUnits } from "../../lib/quantity/index.js";

test("a number with its unit prints with it, in a list and in a sentence too", () => {
  expect(inspect([mm(600), inch(3 / 8), kg(5)])).toBe("[ 600 mm, 3/8 in, 5 kg ]");
  expect(`${mm(1234.5)} wide`).toBe("1234.5 mm wide");
});

test("it reckons and compares as the number in SI that it is", () => {
  expect(mm(600) / 2).toBe(0.3);
  expect(mm(600) < mm(601)).toBe(true);
  expect(Math.max(mm(5), mm(7))).toBe(0.007);
  expect(Length.si(mm(5))).toBe(0.005);
});

test("sums and shares keep the unit of the first", () => {
  expect(mm(600).plus(inch(1)).show()).toBe("625.4 mm");
  expect(mm(600).minus(mm(50)).times(0.5).show()).toBe("275 mm");
  expect(mm(600).over(inch(1))).toBeCloseTo(600 / 25.4, 12);
  expect(inch(1).in("mm")).toBeCloseTo(25.4, 12);
});

test("a sum of two kinds is refused when it is written, and when it is run", () => {
  // @ts-expect-error a mass is no length
  expect(() => mm(600).plus(kg(5))).toThrow(
    new TypeError("600 mm: plus takes a length too, got 5 kg, which is a mass"),
  );
});

test("a formula takes it as the plain number", () => {
  const plain = rectangleSection({ width: Length.of(50, "mm"), depth: Length.of(9, "mm") });
  expect(rectangleSection({ width: mm(50), depth: mm(9) })).toEqual(plain);
});

test("units are taken off at any depth, and what has none stays the very same", () => {
  expect(withoutUnits({ a: [mm(5), { b: kg(2) }], c: "text" })).toEqual({ a: [0.005, { b: 2 }], c: "text" });
  const plain = { a: [1, { b: 2 }] };
  expect(withoutUnits(plain)).toBe(plain);
});

test("a number that is none has no unit", () => {
  expect(() => mm(Number.NaN)).toThrow("length: expected a finite number, got NaN");
});

describe("what stands for a number that cannot be given", () => {
  const why = new RangeError("nothing presses on lid");
  const missing = missingNumber(Length, why);

  test("prints why, and is told from a number", () => {
    expect(inspect([mm(5), missing])).toBe("[ 5 mm, no answer: nothing presses on lid ]");
    expect(`${missing}`).toBe("no answer: nothing presses on lid");
    expect(missing.whyNone).toBe("nothing presses on lid");
    expect(mm(5).whyNone).toBeUndefined();
  });

  test.each<[string, () => unknown]>([
    ["a share", () => missing.over(mm(5))],
    ["the share of another", () => mm(5).over(missing)],
    ["a sum", () => mm(5).plus(missing)],
    ["so many times it", () => missing.times(2)],
    ["a comparison", () => missing < mm(5)],
    ["the greatest of a list", () => Math.max(mm(5), missing)],
    ["its number", () => missing.in("mm")],
    ["its digits", () => missing.toFixed(2)],
    ["its number in SI", () => missing.si],
    ["a file", () => missing.written()],
    ["a formula", () => withoutUnits({ width: missing })],
    ["plain data", () => JSON.stringify({ width: missing })],
  ])("refuses %s, in its own words", (_, reckon) => {
    expect(reckon).toThrow(why);
  });
});
