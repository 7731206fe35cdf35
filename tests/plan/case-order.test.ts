/** The order in which the small box goes together, and what keeps it from one. */
import { describe, expect, test } from "vitest";
import { brokenNeeds } from "../../lib/assembly/index.js";
import { reviewCase } from "../../lib/findings/index.js";
import { caseOrder } from "../../lib/plan/index.js";
import { designOf, smallJob } from "../design/small-job.js";

const arm = (reach: number) => ({
  ...smallJob,
  "tools.csv": `tool,use,diameter (mm),length (mm)\nmy arm,arm,121,${reach}\nmy hand,hand,97,${reach}`,
});

describe("the small box", () => {
  const { order, needs, choices } = caseOrder(designOf(smallJob));
  const keys = order.kind === "found" ? order.steps.map(({ key }) => key) : [];
  const at = (key: string): number => keys.indexOf(key);

  test("has an order that breaks no need", () => {
    expect(order.kind).toBe("found");
    expect(needs.length).toBeGreaterThan(50);
    expect(brokenNeeds(keys, needs)).toEqual([]);
    expect(new Set(keys).size).toBe(keys.length);
  });

  test.each([
    ["let the glue of the laminate cure", "stand up box"],
    ["drill the panels", "fit handle 1"],
    ["cut the openings", "drill the panels"],
    ["stand up box", "put in box.shelf.board"],
    ["stand up box", "hang box.left.door"],
    ["put in box.shelf.board", "put in meter"],
    // as wide as the inside: no opening lets it in
    ["put in box.shelf.board", "close box"],
  ])("%s before: %s", (first, then) => {
    expect(at(first)).toBeGreaterThanOrEqual(0);
    expect(at(first)).toBeLessThan(at(then));
  });

  test("is closed by one panel, whose bars go to their other panels afterwards", () => {
    const last = choices.get("box")?.last ?? "";
    expect(last).toMatch(/^box\./);
    for (const key of keys.filter((one) => one.startsWith("rivet bar") && one.includes(" to ")))
      if (key.endsWith(last)) expect(at(key)).toBeLessThan(keys.length);
      else expect(at(key)).toBeGreaterThan(at("close box"));
  });
});

describe("an arm that is too short", () => {
  const told = (reach: number, id: string) => {
    const found = reviewCase(designOf(arm(reach))).assembly.find((one) => one.id === id);
    return `${found?.verdict}: ${found?.answer}`;
  };

  test("leaves no order, and the needs are told", () => {
    // a closed box is 600 x 400 x 500: its far corners are more than 300 from every opening
    expect(told(300, "assembly.order")).toMatch(/^fails: No order meets these \d needs together\. "/);
  });

  test("does not keep from an order where it is long", () => {
    expect(told(900, "assembly.order")).toMatch(
      /^holds: An order of \d+ steps meets all \d+ needs; none is broken\./,
    );
    expect(told(900, "assembly.reach.box")).toMatch(/^holds: A hand gets to all \d+ places in /);
  });
});
