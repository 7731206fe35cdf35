import { expect, test } from "vitest";
import { answersToHandOver, keptForAll, takeAnswers } from "../../lib/kept/hand-over.js";

let times = 0;
const twice = keptForAll("twice", 2, ({ x }: { readonly x: number }) => {
  times++;
  if (x < 0) throw new RangeError("x must be positive");
  return { twice: 2 * x };
});
const own = () => answersToHandOver().filter(({ work }) => work === "twice");

test("what is worked out here is handed over once", () => {
  twice({ x: 1 });
  twice({ x: 1 });
  expect(own()).toEqual([{ work: "twice", key: '{"x":1}', answer: { twice: 2 } }]);
  expect(own()).toEqual([]);
});

test("what was worked out elsewhere is taken, and not handed back", () => {
  const before = times;
  takeAnswers([
    { work: "twice", key: '{"x":5}', answer: { twice: 10 } },
    { work: "nobody does this", key: "{}", answer: 0 },
  ]);
  expect(twice({ x: 5 })).toEqual({ twice: 10 });
  expect(times).toBe(before);
  expect(own()).toEqual([]);
});

test("the answer longest not asked for goes first, unsent too", () => {
  for (const x of [7, 8, 9]) twice({ x });
  expect(own().map(({ key }) => key)).toEqual(['{"x":8}', '{"x":9}']);
  const before = times;
  twice({ x: 7 });
  expect(times).toBe(before + 1);
});

test("an error is thrown again, and nothing of it is handed over", () => {
  own();
  expect(() => twice({ x: -1 })).toThrow("x must be positive");
  expect(() => twice({ x: -1 })).toThrow("x must be positive");
  expect(own()).toEqual([]);
});
