import fc from "fast-check";
import { describe, expect, test } from "vitest";
import * as quantity from "../../lib/quantity/index.js";
import {
  addMoney,
  Length,
  Mass,
  Money,
  mm,
  money,
  Pressure,
  type QuantityKind,
  Temperature,
} from "../../lib/quantity/index.js";

const kinds = Object.entries(quantity).filter(
  (entry): entry is [string, QuantityKind<string>] => typeof entry[1] === "object" && "units" in entry[1],
);

// NIST SP 811 (2008), appendix B.8, and the 1959 yard-pound agreement; the table prints seven digits or more.
test.each([
  ["Length", "1 in", 0.0254],
  ["Length", "1 ft", 0.3048],
  ["Length", "1 mil", 2.54e-5],
  ["Area", "1 ft2", 0.09290304],
  ["Volume", "1 gal", 3.785411784e-3],
  ["Mass", "1 lb", 0.45359237],
  ["Mass", "1 oz", 28.349523125e-3],
  ["Force", "1 kgf", 9.80665],
  ["Force", "1 lbf", 4.4482216152605],
  ["Moment", "1 lbf·in", 0.1129848290276167],
  ["Pressure", "1 psi", 6894.757293168],
  ["Pressure", "1 psf", 47.88025898],
  ["Density", "1 lb/ft3", 16.01846337],
  ["SpringRate", "1 lbf/in", 175.1268369],
  ["Temperature", "32 °F", 273.15],
  ["Temperature", "212 °F", 373.15],
  ["Energy", "1 kWh", 3.6e6],
  ["Charge", "1 Ah", 3600],
  ["Angle", "180 deg", Math.PI],
])("%s %s is %d in SI (SP 811)", (kind, text, si) => {
  const read = kinds.find(([name]) => name === kind)?.[1].read(text);
  expect(read).toBeDefined();
  expect(Math.abs(Number(read) / si - 1)).toBeLessThan(2e-8);
});

test.each([
  ["3/8 in", 9.525],
  ["1 ft 2-1/2 in", 368.3],
  ["1 ft 2 1/2 in", 368.3],
  ["2' 6\"", 762],
  ["-1 ft 6 in", -457.2],
  ["40 mil", 1.016],
  ["12 mm", 12],
  ["12mm", 12],
  [" .5 in ", 12.7],
  ["1e-3 m", 1],
])("Length reads %s as %d mm", (text, millimetres) => {
  expect(Length.in(Length.read(text), "mm")).toBeCloseTo(millimetres, 9);
});

test.each([
  ["12", "units: m, mm"],
  ["3 kg", "units: m, mm"],
  ["1,5 mm", "a number without commas"],
  ["6 in 1 ft", "each further part must be positive and in a smaller unit"],
  ["3/0 in", "a number"],
  ["1..5 mm", "a number"],
  ["", "such as"],
  ["mm", "such as"],
])('Length refuses "%s"', (text, reason) => {
  expect(() => Length.read(text)).toThrow(reason);
});

test("a quantity is never NaN or infinite", () => {
  expect(() => Length.si(Number.NaN)).toThrow("length: expected a finite number, got NaN");
  expect(() => Mass.of(Number.POSITIVE_INFINITY, "kg")).toThrow(
    "mass: expected a finite number, got Infinity",
  );
  expect(() => Length.of(1, "furlong")).toThrow('length: no unit "furlong"');
});

describe.each(kinds)("%s", (_name, kind) => {
  test.each(kind.units.map((unit) => [unit]))("unit '%s' shows and reads back", (unit) => {
    fc.assert(
      fc.property(fc.double({ min: -1e5, max: 1e5, noNaN: true }), (number) => {
        const value = kind.of(number, unit);
        if (kind === (Length as QuantityKind<string>) && unit === "in") return;
        const back = kind.read(kind.show(value, { unit, digits: 17 }).replaceAll("\u202f", ""));
        expect(Math.abs(back - value)).toBeLessThanOrEqual(1e-12 * Math.max(1, Math.abs(value)) + 1e-12);
        expect(kind.in(value, unit)).toBeCloseTo(number, 6);
      }),
      { numRuns: 40 },
    );
  });
});

test("an inch fraction reads back within half of its finest division", () => {
  fc.assert(
    fc.property(
      fc.double({ min: -200, max: 200, noNaN: true }),
      fc.constantFrom(2, 4, 8, 16, 32, 64),
      (inches, denominator) => {
        const value = Length.of(inches, "in");
        const back = Length.in(Length.read(Length.show(value, { unit: "in", denominator })), "in");
        expect(Math.abs(back - inches)).toBeLessThanOrEqual(0.5 / denominator + 1e-9);
      },
    ),
  );
});

test.each([
  [mm(9.525), { system: "inch" }, "3/8 in"],
  [mm(368.3), { system: "inch" }, "14-1/2 in"],
  [mm(368.3), {}, "368.3 mm"],
  [mm(368.3), { system: "inch", denominator: 1 }, "15 in"],
] as const)("%d m shows in %j as %s", (length, style, text) => {
  expect(Length.show(length, style)).toBe(text);
});

test("a rule divides by powers of two only", () => {
  expect(() => Length.show(mm(1), { unit: "in", denominator: 10 })).toThrow(
    "inch fraction: denominator must be a power of two up to 128, got 10",
  );
});

test("large and small sizes take a unit that fits", () => {
  expect(Pressure.show(Pressure.of(9000, "MPa"))).toBe("9 GPa");
  expect(Pressure.show(Pressure.of(0.5, "kPa"))).toBe("500 Pa");
  expect(Temperature.show(Temperature.of(70, "°F"), { system: "inch" })).toBe("70 °F");
});

describe("money", () => {
  test("reads and shows an amount with its currency", () => {
    expect(Money.read("1234.5 USD")).toEqual({ amount: 1234.5, currency: "USD" });
    expect(Money.read("EUR 3")).toEqual({ amount: 3, currency: "EUR" });
    expect(Money.show(money(1234.5, "USD"))).toBe("1\u202f234.50 USD");
    expect(Money.show(money(-0.001, "USD"))).toBe("0.00 USD");
  });
  test("two currencies never mix", () => {
    expect(() => addMoney([money(1, "USD"), money(1, "EUR")])).toThrow("money: cannot add EUR to USD");
    expect(() => Money.read("12.50")).toThrow('an amount with its currency such as "12.50 USD"');
    expect(() => addMoney([])).toThrow("money: nothing to add and no currency given");
  });
});

test("a load is not a length", () => {
  // @ts-expect-error a force cannot stand where a length is asked for
  const wrong: Length = quantity.newton(3);
  // @ts-expect-error a bare number has no unit
  const bare: Length = 3;
  expect([wrong, bare]).toEqual([3, 3]);
});

test("a length beyond any rule shows as a number, not as a fraction of nothing", () => {
  expect(quantity.Length.show(quantity.Length.si(1e305), { system: "inch" })).toBe("3.937e306 in");
});
