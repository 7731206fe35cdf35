/** A lid and drawers in one case: everything asked, nothing broken, and the recipe whole. */
import { describe, expect, test } from "vitest";
import { reviewCase } from "../../lib/findings/index.js";
import { writeRecipe } from "../../lib/recipe/index.js";
import { lidAndDrawers } from "../design/lid-and-drawers-job.js";
import { designOf } from "../design/small-job.js";
import { recipeInput } from "../recipe/recipes.js";

describe("a chest with a lid and two drawers", () => {
  const design = designOf(lidAndDrawers);
  const { findings, purchases } = reviewCase(design);

  test("is asked of its lid and of each drawer, and breaks nothing", () => {
    expect(findings.filter(({ verdict }) => verdict === "broken")).toEqual([]);
    const ids = findings.map(({ id }) => id);
    for (const id of [
      "joints.stay.chest.top.lid",
      "travel.lid.chest.top.lid",
      "stiffness.door.chest.top.lid",
      "fit-out.slide.left drawer",
      "fit-out.slide.right drawer",
      "travel.child.left drawer",
      "travel.child.right drawer",
    ])
      expect(ids).toContain(id);
    const tip = findings.find(({ id }) => id === "travel.tip");
    expect(tip?.cautions.join()).toContain("doors and drawers shut");
  });

  test("has its stays, slides and hinges bought, each as often as it is there", () => {
    const bought = Object.fromEntries(purchases.hardware.map(({ stock, count }) => [stock.name, count]));
    expect(bought).toEqual({ hinge: 2, "slide 350": 2, "lid stay": 2 });
  });

  test("answers alike for drawers that are each other's mirror image", () => {
    const ratio = (id: string) => findings.find((one) => one.id === id)?.ratio ?? Number.NaN;
    for (const id of ["fit-out.slide", "travel.child"])
      expect(ratio(`${id}.left drawer`)).toBeCloseTo(ratio(`${id}.right drawer`), 9);
  });

  test("has a recipe that builds them all", () => {
    const text = JSON.stringify(writeRecipe(recipeInput(design)));
    for (const words of ["Build the left drawer", "Build the right drawer", "chest.top.lid", "lid stay"])
      expect(text).toContain(words);
  });
});
