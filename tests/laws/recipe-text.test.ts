import fc from "fast-check";
import MarkdownIt from "markdown-it";
import { describe, expect, test } from "vitest";
import { type Recipe, recipeMarkdown, recipePage, writeRecipe } from "../../lib/recipe/index.js";
import { markdownText } from "../../lib/recipe/recipe-markdown.js";
import { flatBlocks, smallInput, smallRecipe } from "../recipe/recipes.js";

const evil = `<script>alert("x")</script> | *a* _b_ [c](http://x) & "d"`;
const evilRecipe: Recipe = writeRecipe({
  ...smallInput,
  case: { ...smallInput.case, name: evil, purpose: evil },
  parts: {
    ...smallInput.parts,
    panels: smallInput.parts.panels.map((panel) => ({ ...panel, id: `${panel.id} ${evil}` })),
  },
});

describe("the recipe as Markdown", () => {
  const reader = new MarkdownIt({ html: true });

  test.each([
    ["the small job", smallRecipe],
    ["a job with hostile names", evilRecipe],
  ])("every table of %s has as many cells in every row as headings", (_, recipe) => {
    const lines = recipeMarkdown(recipe).split("\n");
    const rulers = lines.flatMap((line, i) => (/^\| (:?-+:? \|? ?)+$/.test(line) ? [i] : []));
    expect(rulers.length).toBeGreaterThan(10);
    const cells = (line: string): number => line.split(/(?<!\\)\|/).length;
    for (const ruler of rulers) {
      const end = lines.findIndex((line, i) => i > ruler && !line.startsWith("|"));
      const widths = lines.slice(ruler - 1, end).map(cells);
      expect(new Set(widths).size).toBe(1);
    }
  });

  test("has as many tables for a reader as in the recipe", () => {
    const text = recipeMarkdown(smallRecipe);
    const rulers = text.split("\n").filter((line) => /^\| (:?-+:? \|? ?)+$/.test(line)).length;
    expect(reader.render(text).match(/<table>/g)).toHaveLength(rulers);
  });

  test("a hostile name is text", () => {
    const page = reader.render(recipeMarkdown(evilRecipe));
    expect(page).not.toMatch(/<script|<a |<em>a/);
    expect(page).toContain("&lt;script&gt;");
  });

  test("any text on one line reads back as itself", () => {
    fc.assert(
      fc.property(fc.string({ unit: "grapheme-ascii", minLength: 1 }), (text) => {
        const line = text.replace(/\s+/g, " ").trim();
        fc.pre(line !== "");
        const [paragraph] = new MarkdownIt()
          .parse(markdownText(line), {})
          .filter(({ type }) => type === "inline");
        const shown = (paragraph?.children ?? []).map(({ content }) => content).join("");
        expect(shown).toBe(line);
      }),
    );
  });
});

describe("the recipe as a page", () => {
  test.each([
    ["the small job", smallRecipe],
    ["a job with hostile names", evilRecipe],
  ])("of %s runs nothing and loads nothing", (_, recipe) => {
    const page = recipePage(recipe);
    expect(page).not.toMatch(/<script|<link|<img|<iframe|<object|javascript:|@import|url\(|\ssrc=|\son\w+=/i);
    const hrefs = [...page.matchAll(/href="([^"]*)"/g)].map(([, href]) => href);
    expect(hrefs.length).toBe(recipe.sections.length);
    expect(hrefs.every((href) => href?.startsWith("#"))).toBe(true);
  });

  test("shows a hostile name as text, also in a drawing", () => {
    const page = recipePage(evilRecipe);
    expect(page).toContain("&lt;script&gt;alert(&quot;x&quot;)&lt;/script&gt;");
    expect(page).toMatch(/<svg[^>]*aria-label="[^"]*&lt;script/);
  });

  test("every link leads to a section", () => {
    const page = recipePage(smallRecipe);
    for (const [, id] of page.matchAll(/href="#([^"]*)"/g)) expect(page).toContain(`id="${id}"`);
  });

  test("has a ruled cell for every blank", () => {
    const blanks = smallRecipe.sections
      .flatMap(({ blocks }) => flatBlocks(blocks))
      .flatMap((block) => (block.kind === "blanks" ? [block.rows.length * block.blanks.length] : []))
      .reduce((sum, count) => sum + count, 0);
    expect(blanks).toBeGreaterThan(50);
    expect(recipePage(smallRecipe).match(/<td class="rc-blank">/g)).toHaveLength(blanks);
  });

  test("says that an invented case is invented", () => {
    const invented = { ...smallInput, case: { ...smallInput.case, invented: true } };
    expect(recipePage(writeRecipe(invented))).toContain("An invented example.");
    expect(recipePage(smallRecipe)).not.toContain("invented");
  });
});
