import { expect, test } from "vitest";
import { keptLast } from "../../lib/kept/last.js";

test("worked out once while it is asked with the same, and again for anything else", () => {
  let times = 0;
  const ask = keptLast((text: string, thing: object) => ({ text, thing, times: ++times }));
  const thing = {};
  expect(ask("a", thing)).toBe(ask("a", thing));
  expect(ask("a", {}).times).toBe(2);
  expect(ask("b", thing).times).toBe(3);
  expect(ask("a", thing).times).toBe(4);
});
