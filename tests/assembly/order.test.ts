/** Orders of steps: what an order must keep, and the fewest needs that no order meets. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { brokenNeeds, findOrder, type OrderNeed } from "../../lib/assembly/index.js";

const steps = (...keys: readonly string[]) => keys.map((key, rank) => ({ key, rank }));
const need = (step: string, ...before: readonly (readonly string[])[]): OrderNeed => ({
  step,
  before,
  why: "told by the test",
});

test("a step that is named twice, or not at all, is refused", () => {
  expect(() => findOrder(steps("saw", "saw"), [])).toThrow('order of steps: "saw" must stand once');
  expect(() => findOrder(steps("saw"), [need("saw", ["glue"])])).toThrow(
    'order of steps: a need names "glue", which is no step',
  );
});

test("a broken need is found in an order that does not keep it", () => {
  const needs = [need("battery", ["shelf"]), need("shelf", ["top"], ["door"])];
  expect(brokenNeeds(["battery", "top", "shelf", "door"], needs)).toEqual([]);
  expect(brokenNeeds(["top", "shelf", "battery", "door"], needs)).toEqual([needs[0]]);
  expect(brokenNeeds(["battery", "top", "door", "shelf"], needs)).toEqual([needs[1]]);
});

describe("laws", () => {
  const count = 6;
  const keys = Array.from({ length: count }, (_, i) => `step ${i}`);
  const key = fc.constantFrom(...keys);
  const lists = fc.array(fc.uniqueArray(key, { minLength: 1, maxLength: 2 }), { minLength: 1, maxLength: 2 });
  const needsOf = fc.array(
    fc.tuple(key, lists).map(([step, before]) => need(step, ...before)),
    { maxLength: 9 },
  );

  /** Every order of a few steps. */
  function orders(of: readonly string[]): readonly (readonly string[])[] {
    if (of.length === 0) return [[]];
    return of.flatMap((first) => orders(of.filter((one) => one !== first)).map((rest) => [first, ...rest]));
  }
  const all = orders(keys);
  const isMet = (needs: readonly OrderNeed[]): boolean =>
    all.some((order) => brokenNeeds(order, needs).length === 0);

  test("an order is found where one of all 720 keeps every need, and it keeps them", () => {
    fc.assert(
      fc.property(needsOf, (needs) => {
        const order = findOrder(steps(...keys), needs);
        expect(order.kind === "found").toBe(isMet(needs));
        if (order.kind !== "found") return;
        const found = order.steps.map((step) => step.key);
        expect([...found].sort()).toEqual(keys);
        expect(brokenNeeds(found, needs)).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });

  test("a conflict is met by no order, without any one of its needs by one, and no fewer needs are", () => {
    fc.assert(
      fc.property(needsOf, (needs) => {
        const order = findOrder(steps(...keys), needs);
        if (order.kind === "found") return;
        const { conflict, fewest } = order;
        expect(fewest).toBe(true);
        expect(isMet(conflict)).toBe(false);
        for (const one of conflict) expect(isMet(conflict.filter((other) => other !== one))).toBe(true);
        for (const one of needs)
          for (const other of needs) if (conflict.length > 2) expect(isMet([one, other])).toBe(true);
      }),
      { numRuns: 40 },
    );
  });

  test("a further need never gives an order where there was none", () => {
    fc.assert(
      fc.property(needsOf, needsOf, (needs, more) => {
        if (findOrder(steps(...keys), needs).kind === "found") return;
        expect(findOrder(steps(...keys), [...needs, ...more]).kind).toBe("none");
      }),
    );
  });
});
