import fc from "fast-check";
import { expect, test } from "vitest";
import { share } from "../../lib/kept/share.js";

const before = {
  name: "lab",
  sizes: [1, 2, 3],
  panels: [
    { id: "front", sheet: { name: "ply", price: 40 }, holes: [{ name: "window", width: 2 }] },
    { id: "back", sheet: { name: "ply", price: 40 }, holes: [] },
  ],
  places: new Map([["front", { u: 1 }]]),
};

test("a value that says the same is the value before", () => {
  expect(share(before, structuredClone(before))).toBe(before);
});

test("what changed is new, what did not is as before", () => {
  const after = structuredClone(before);
  after.panels[0]!.holes[0]!.width = 3;
  const shared = share(before, after);
  expect(shared).toEqual(after);
  expect(shared.panels[0]).not.toBe(before.panels[0]);
  expect(shared.panels[0]!.sheet).toBe(before.panels[0]!.sheet);
  expect(shared.panels[1]).toBe(before.panels[1]);
  expect(shared.places).toBe(before.places);
});

test("items are known again by their names, wherever they stand now", () => {
  const after = { ...structuredClone(before), panels: structuredClone(before.panels).reverse() };
  const shared = share(before, after);
  expect(shared).toEqual(after);
  expect(shared.panels[0]).toBe(before.panels[1]);
  expect(shared.panels[1]).toBe(before.panels[0]);
});

test("an object that stands in two places stays one", () => {
  const sheet = { name: "ply", price: 41 };
  const shared = share(
    { one: { name: "ply", price: 40 }, other: { name: "ply", price: 40 } },
    { one: sheet, other: sheet },
  );
  expect(shared.one).toBe(shared.other);
});

test("the order of fields counts, since tables are shown in it", () => {
  const shared = share({ a: 1, b: 2 }, { b: 2, a: 1 });
  expect(Object.keys(shared)).toEqual(["b", "a"]);
});

test("an instance of a class is taken as it is", () => {
  const day = new Date(0);
  expect(share({ day: new Date(0) }, { day }).day).toBe(day);
});

test("whatever stood before, the result says what stands now, and neither is changed", () => {
  fc.assert(
    fc.property(fc.jsonValue({ maxDepth: 4 }), fc.jsonValue({ maxDepth: 4 }), (old, now) => {
      const [oldText, nowText] = [JSON.stringify(old), JSON.stringify(now)];
      expect(JSON.stringify(share(old, now))).toBe(nowText);
      expect([JSON.stringify(old), JSON.stringify(now)]).toEqual([oldText, nowText]);
    }),
  );
});
