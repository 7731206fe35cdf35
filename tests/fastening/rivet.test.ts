import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { gripNeeded, rivetChoice, rivetCount, rivetHole, washerAtBack } from "../../lib/fastening/index.js";
import { mm } from "../../lib/quantity/index.js";

describe("the rivet for a stack", () => {
  const rivets = [
    { name: "4.8 x 10", gripMin: mm(4), gripMax: mm(6) },
    { name: "4.8 x 12", gripMin: mm(6), gripMax: mm(8) },
  ];

  test("always covers it", () => {
    fc.assert(
      fc.property(fc.integer({ min: 400, max: 800 }), (hundredths) => {
        const grip = mm(hundredths / 100);
        const { name } = rivetChoice({ grip, rivets });
        const chosen = rivets.find((rivet) => rivet.name === name);
        expect(chosen?.gripMin).toBeLessThanOrEqual(grip + 1e-9);
        expect(chosen?.gripMax).toBeGreaterThanOrEqual(grip - 1e-9);
      }),
    );
  });

  test("is refused with the stack and every range when none covers it", () => {
    expect(() => rivetChoice({ grip: mm(9), rivets })).toThrow(
      "rivet.choice: no rivet covers a stack of 9 mm; ranges: 4.8 x 10 4 mm to 6 mm, 4.8 x 12 6 mm to 8 mm",
    );
    expect(() => rivetChoice({ grip: mm(9), rivets: [] })).toThrow("ranges: none");
  });

  test("comes with a warning near the end of its range", () => {
    expect(rivetChoice.worked({ grip: mm(7.8), rivets }).warnings).toEqual([
      "the stack is within 0.3 mm of the end of the range: measure the sheet before buying",
    ]);
    expect(rivetChoice.worked({ grip: mm(7), rivets }).warnings).toEqual([]);
  });

  test("covers a stack added up to just the end of a range", () => {
    const grip = gripNeeded({ layers: [mm(1.5), mm(0.7), mm(4.6)], washer: mm(1.2) });
    expect(rivetChoice({ grip, rivets }).name).toBe("4.8 x 12");
  });
});

test("a stack refuses nothing and negative layers", () => {
  expect(() => gripNeeded({ layers: [], washer: mm(0) })).toThrow("stack.grip: at least one layer, got none");
  expect(() => gripNeeded({ layers: [mm(6), mm(-1)], washer: mm(0) })).toThrow(
    "stack.grip: every layer must be positive",
  );
});

test("a count of rivets does not depend on how parts are grouped", () => {
  const part = fc.record({
    part: fc.constant("part"),
    each: fc.integer({ min: 0, max: 20 }),
    parts: fc.integer({ min: 0, max: 20 }),
  });
  fc.assert(
    fc.property(fc.array(part, { minLength: 2, maxLength: 6 }), (riveted) => {
      const apart = riveted.reduce((sum, one) => sum + rivetCount({ riveted: [one] }), 0);
      expect(rivetCount({ riveted })).toBe(apart);
    }),
  );
  expect(() => rivetCount({ riveted: [] })).toThrow("rivet.count: at least one part, got none");
});

test("a hole rule is not stretched to bolts", () => {
  expect(() => rivetHole({ body: mm(10) })).toThrow("rivet.hole: body must be at most 7 mm, got 10 mm");
});

test("a tail on a thin facing takes no washer but a warning", () => {
  const { value, warnings } = washerAtBack.worked({ back: "facing" });
  expect(value.washer).toBe("no");
  expect(warnings).toEqual(["a thin facing may dimple under the tail: try one rivet on an offcut"]);
});
