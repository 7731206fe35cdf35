/** The picture of a stage is taken from where what is added can be seen. */
import { expect, test } from "vitest";
import { writeRecipe } from "../../lib/recipe/index.js";
import { flatBlocks, sectionNamed, smallInput } from "./recipes.js";

test("a door in the left side is drawn from the left", () => {
  const stages = sectionNamed(writeRecipe(smallInput), "Assembly").blocks;
  const hung = stages.filter((one) => one.kind === "group" && /the door$/.test(one.title));
  const [picture] = flatBlocks(hung).flatMap((one) => (one.kind === "picture" ? [one] : []));
  expect(picture?.description).toContain("From the front left.");
  expect(picture?.faces.some(({ part, look }) => part === "box.left.door" && look === "added")).toBe(true);
});
