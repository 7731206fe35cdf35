import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { rivetRow, rivetSpacing } from "../../lib/fastening/index.js";
import { Length, mm } from "../../lib/quantity/index.js";

describe("a row of rivets", () => {
  const size = fc.integer({ min: 1, max: 3000 });

  test("keeps the pitch, takes no rivet too many and reaches both ends", () => {
    fc.assert(
      fc.property(size, fc.integer({ min: 0, max: 50 }), size, (between, end, largest) => {
        const row = { length: mm(between + 2 * end), endDistance: mm(end), largestPitch: mm(largest) };
        const { count, pitch } = rivetRow(row);
        expect(pitch).toBeLessThanOrEqual(row.largestPitch * (1 + 1e-8));
        expect(Length.in(pitch, "mm") * (count - 1)).toBeCloseTo(between, 6);
        // One space fewer would break the pitch.
        if (count > 2) expect(between / (count - 2)).toBeGreaterThan(largest);
      }),
    );
  });

  test("needs length between the end distances", () => {
    expect(() => rivetRow({ length: mm(40), endDistance: mm(20), largestPitch: mm(50) })).toThrow(
      "rivet.row: length must exceed twice the end distance, got 40 mm and 20 mm",
    );
  });
});

test("spacing at just the limit counts as kept", () => {
  const { edge, spacing } = rivetSpacing({ diameter: mm(4.8), edgeDistance: mm(9.6), pitch: mm(19.2) });
  expect([edge, spacing]).toEqual(["good", "usual"]);
});

test.each([
  [5, 20, ["edge distance is too near: the sheet may tear out to the edge"]],
  [8, 20, ["edge distance is tight: the sheet may tear out to the edge"]],
  [10, 100, ["open pitch: the lap may gape unless a stiff bar clamps it"]],
  [10, 12, ["close pitch: the holes weaken the sheet"]],
  [10, 20, []],
])("spacing of a 4.8 mm rivet at edge %d mm, pitch %d mm warns %j", (edge, pitch, warnings) => {
  const inputs = { diameter: mm(4.8), edgeDistance: mm(edge), pitch: mm(pitch) };
  expect(rivetSpacing.worked(inputs).warnings).toEqual(warnings);
});
