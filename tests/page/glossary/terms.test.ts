/** The words of the glossary: each used, each a plain sentence, nothing named in two ways. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { sentencesOf, terms } from "../../../lib/page/index.js";

const project = join(import.meta.dirname, "../../..");

/** Text of all files of some folders whose names end so. */
function textOf(folders: readonly string[], ending: string): string {
  return folders
    .flatMap((folder) =>
      readdirSync(join(project, folder), { recursive: true, encoding: "utf8" })
        .filter((file) => file.endsWith(ending))
        .map((file) => readFileSync(join(project, folder, file), "utf8")),
    )
    .join("\n");
}

/** What pages are made of: templates of findings, papers and tables, and the prose of the chapters. */
const pages = [
  textOf(["lib/findings", "lib/recipe", "lib/notebook", "lib/model", "lib/plan", "lib/inside"], ".ts"),
  textOf(["notebooks"], ".ipynb"),
].join("\n");

const wordFor = (name: string): RegExp => new RegExp(`(?<![\\w.-])${name}(?![\\w-])`, "i");

describe("each word", () => {
  test.each(terms)("$name is used on a page", ({ name, forms = [] }) => {
    expect([name, ...forms].some((form) => wordFor(form).test(pages))).toBe(true);
  });

  test.each(terms)("$name is explained in one plain sentence of at most 25 words that names it", (term) => {
    const { name, forms = [], meaning } = term;
    expect(sentencesOf(meaning)).toHaveLength(1);
    expect(meaning).toMatch(/^[A-Z].*\.$/);
    expect(meaning.split(/\s+/).length).toBeLessThanOrEqual(25);
    expect([name, ...forms].some((form) => wordFor(form).test(meaning))).toBe(true);
  });

  test.each(terms.filter(({ not }) => not))("$name has no second name", ({ not = [] }) => {
    expect(not.filter((other) => wordFor(other).test(pages))).toEqual([]);
  });

  test("stands once, in the order of the alphabet", () => {
    const all = terms.flatMap(({ name, forms = [] }) => [name, ...forms]);
    expect(new Set(all).size).toBe(all.length);
    const names = terms.map(({ name }) => name);
    expect(names).toEqual([...names].sort());
  });
});
