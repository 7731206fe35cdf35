import { expect, test } from "vitest";
import { keptByContent } from "../../lib/kept/by-content.js";

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
