/** The printed stages keep to the found order. */
import { expect, test } from "vitest";
import { caseOrder } from "../../lib/plan/index.js";
import { writeRecipe } from "../../lib/recipe/index.js";
import { designOf, smallJob } from "../design/small-job.js";
import { sectionNamed, smallInput } from "./recipes.js";

const design = designOf(smallJob);
const order = caseOrder(design);
const printed = JSON.stringify(sectionNamed(writeRecipe({ ...smallInput, order }), "Assembly"));
const last = order.choices.get("box")?.last ?? "";

test("the panel that closes the box is the one of the order, and goes on after the shelf", () => {
  expect(printed).toContain(`box: the box without ${last}`);
  expect(printed).toContain(`box: ${last} closes it`);
  expect(printed.indexOf("Put in the shelf")).toBeGreaterThan(printed.indexOf(`the box without ${last}`));
  expect(printed.indexOf("Put in the shelf")).toBeLessThan(printed.indexOf(`box: ${last} closes it`));
});

test("what rides in the box is put in before or after it is closed, as the order has it", () => {
  const keys = order.order.kind === "found" ? order.order.steps.map(({ key }) => key) : [];
  for (const name of ["battery", "meter"]) {
    const early = keys.indexOf(`put in ${name}`) < keys.indexOf("close box");
    const closes = printed.indexOf(`box: ${last} closes it`);
    expect(printed.indexOf(`Put ${name} into box`) < closes).toBe(early);
    expect(printed.indexOf(`Put ${name} into box`)).toBeGreaterThan(0);
  }
});
