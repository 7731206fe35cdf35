import { expect, test } from "vitest";
import { keptByContent, keptByLists } from "../../lib/kept/by-content.js";

function counted(most: number): {
  readonly ask: (inputs: { x: number }) => { twice: number };
  readonly times: () => number;
} {
  let times = 0;
  const ask = keptByContent(most, ({ x }: { x: number }) => {
    times++;
    if (x < 0) throw new RangeError("x must be positive");
    return { twice: 2 * x };
  });
  return { ask, times: () => times };
}

test("the same content is answered by the same answer, whichever object says it", () => {
  const { ask, times } = counted(2);
  expect(ask({ x: 1 })).toBe(ask({ x: 1 }));
  expect(times()).toBe(1);
});

test("the answer longest not asked for goes first", () => {
  const { ask, times } = counted(2);
  for (const x of [1, 2, 1, 3, 1]) ask({ x });
  expect(times()).toBe(3);
  ask({ x: 2 });
  expect(times()).toBe(4);
});

test("an error is thrown again, not kept", () => {
  const { ask, times } = counted(2);
  expect(() => ask({ x: -1 })).toThrow("x must be positive");
  expect(() => ask({ x: -1 })).toThrow("x must be positive");
  expect(times()).toBe(2);
});

test("answers to the last lists are kept, however long the lists are", () => {
  let times = 0;
  const ask = keptByLists(2, (x: number) => {
    times++;
    return { twice: 2 * x };
  });
  const [first] = ask([1, 2, 3, 4]);
  expect(ask([1, 5])[0]).toBe(first);
  expect(times).toBe(5);
  // 2 to 4 were in the list before the last: the next list finds them, the one after that does not
  ask([1, 6]);
  expect(times).toBe(6);
  ask([2]);
  expect(times).toBe(7);
});

test("what is wrong in a list is thrown again, and the others are kept", () => {
  let times = 0;
  const ask = keptByLists(2, (x: number) => {
    times++;
    if (x < 0) throw new RangeError("x must be positive");
    return x;
  });
  expect(() => ask([1, -1])).toThrow("x must be positive");
  expect(() => ask([1, -1])).toThrow("x must be positive");
  expect(times).toBe(3);
});
