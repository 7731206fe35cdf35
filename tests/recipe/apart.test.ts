import { expect, test } from "vitest";
import { writeRecipe } from "../../lib/recipe/index.js";
import { flatBlocks, sectionNamed, smallInput } from "./recipes.js";

test("the section is drawn taken apart before its stages, with the code of every panel and bar", () => {
  const blocks = sectionNamed(writeRecipe(smallInput), "Assembly").blocks;
  const apart = blocks.find((block) => block.kind === "group" && block.title === "box, taken apart");
  expect(apart).toBeDefined();
  const inside = flatBlocks(apart ? [apart] : []);
  expect(inside.map(({ kind }) => kind)).toEqual(["group", "picture", "list"]);
  const told = JSON.stringify(inside.filter(({ kind }) => kind === "list"));
  const { panels, bars } = smallInput.parts;
  expect(told.match(/\bP\d+ /g)).toHaveLength(panels.filter(({ role }) => role !== "shelf").length);
  expect(told.match(/\bB\d+ /g)).toHaveLength(bars.length);
});
