import { expect, test } from "vitest";
import { errorWords, shortened } from "../../../lib/command/fuzz/fuzzer.js";

test("a list is shortened to what its fault needs", () => {
  const needs = (items: readonly number[]): boolean => items.includes(3) && items.includes(7);
  expect(shortened([1, 3, 5, 7, 9], needs)).toEqual([3, 7]);
});

test("an error is told with where it arose, anything else as it is", () => {
  expect(errorWords(new RangeError("too far"))).toMatch(/^RangeError: too far \(at .*fuzzer\.test/);
  expect(errorWords("odd")).toBe("thrown: odd");
});
