import { expect, test } from "vitest";
import { add, at, dot, sumOf, under } from "../../lib/algebra/lists.js";

test("an entry that is not there is named", () => {
  expect(at([7, 8], 1)).toBe(8);
  expect(() => at([7, 8], 2)).toThrow(new RangeError("list: no entry 2 among 2"));
  expect(under(new Map([["a", 1]]), "a")).toBe(1);
  expect(() => under(new Map([["a", 1]]), "b")).toThrow(new RangeError("table: nothing under b"));
});

test("lists add up", () => {
  const list = Float64Array.of(1, 2);
  add(list, 1, 0.5);
  expect([...list]).toEqual([1, 2.5]);
  expect(dot(list, [4, 2])).toBe(9);
  expect(sumOf(["a", "bc"], ({ length }) => length)).toBe(3);
});
