import { describe, expect, test } from "vitest";
import { glossaryHtml } from "../../../lib/page/glossary/glossary-html.js";
import { linkTerms, termPlace } from "../../../lib/page/glossary/link-terms.js";
import { terms } from "../../../lib/page/index.js";

describe("links", () => {
  const kerf = terms.filter(({ name }) => name === "kerf");

  test("lead from the first use alone, in whatever form, to its place", () => {
    const linked = linkTerms("<p>Two Kerfs, one kerf.</p>", kerf, "words.html");
    expect(linked).toMatch(/^<p>Two <a [^>]*href="words\.html#word-kerf"[^>]*>Kerfs<\/a>, one kerf\.<\/p>$/);
    expect(String(glossaryHtml("Words", kerf))).toContain(`id="${termPlace("kerf")}"`);
  });

  test("leave headings, links, code and drawings alone, and parts of words", () => {
    const text =
      '<h2>Kerf</h2><p><a href="#">kerf</a> <code>kerf</code> kerfed saw.kerf</p><svg><text>kerf</text></svg>';
    expect(linkTerms(text, kerf, "words.html")).toBe(text);
  });

  test("prefer what is in sight to what is folded", () => {
    const linked = linkTerms("<details><p>kerf</p></details><p>kerf</p>", kerf, "w.html");
    expect(linked).toMatch(/^<details><p>kerf<\/p><\/details><p><a /);
    expect(linkTerms("<details><p>kerf</p></details>", kerf, "w.html")).toContain("<a ");
  });
});
