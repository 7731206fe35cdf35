/** A minute of odd inputs, other ones each day; the seed is printed, so that what breaks can be tried again. */
import { expect, test } from "vitest";
import { fuzzers } from "../../../lib/command/fuzz/fuzzers.js";
import { runFuzz } from "../../../lib/command/fuzz/run-fuzz.js";
import { daySeed } from "../../../lib/command/fuzz.js";

const kinds = Object.keys(fuzzers);

test("nothing breaks under the odd inputs of today", { timeout: 900_000 }, async () => {
  const seed = daySeed(new Date());
  console.log(`npm run fuzz -- --seed ${seed}`);
  const { tried, faults } = await runFuzz({ kinds, seed, seconds: 60, most: 10_000 }, console.error);
  expect(faults).toEqual([]);
  expect([...tried.values()].every((count) => count > 0)).toBe(true);
});

test("an attack of a kind that is not there ends its process and is told with its seed", async () => {
  const { faults } = await runFuzz({ kinds: ["none"], seed: 7, seconds: 30, most: 1 }, () => {});
  expect(faults).toMatchObject([{ kind: "none", seed: 7 }]);
});
