import { expect, test } from "vitest";
import { codePieces, labelsPage, labelsText } from "../../lib/recipe/index.js";
import { smallInput, smallRecipe } from "./recipes.js";

const { labels, title } = smallRecipe;
const pieces = codePieces(smallInput.parts);
const codes = [pieces.panels, pieces.facings, pieces.bars, pieces.strips, pieces.panes].flatMap(
  (some: readonly { readonly code: string }[]) => some.map(({ code }) => code),
);

test("every piece has one label, and every label says all that is asked of it", () => {
  expect(labels.map(({ code }) => code)).toEqual(codes);
  for (const { name, size, up, outside, mates } of labels)
    expect([name, size, up, outside, mates].every((words) => words.length > 2)).toBe(true);
});

test("what a panel meets names it in turn", () => {
  const panels = labels.filter(({ code, mates }) => code.startsWith("P") && mates.includes("under B"));
  expect(panels.length).toBeGreaterThan(3);
  for (const { code, mates } of panels) {
    for (const [other] of (mates.split(", under")[0] ?? "").matchAll(/\bP\d+\b/g)) {
      const back = labels.find((label) => label.code === other)?.mates ?? "";
      expect(back.match(/\b[PB]\d+\b/g)).toContain(code);
    }
  }
});

test("a bar along the bottom has a leg under the bottom panel and one on a wall", () => {
  const [bar] = labels.filter(({ name }) => name === "box.bottom-front");
  expect(bar?.up).toBe("one leg down, under the bottom");
  expect(bar?.mates).toMatch(/box\.bottom/);
  expect(bar?.mates).toMatch(/box\.front/);
});

test("the sheet and the text have the same labels, and the sheet runs and loads nothing", () => {
  const page = labelsPage(title, labels);
  expect(page.match(/<article>/g)).toHaveLength(labels.length);
  expect(page).not.toMatch(/<script|<link|<img|src=|url\(/);
  expect(labelsText(title, labels).match(/^Meets: /gm)).toHaveLength(labels.length);
});
