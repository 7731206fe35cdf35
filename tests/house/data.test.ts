/** Every file under data/ is explained in data/README.md, column by column, and says that it is invented. */
import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { describe, expect, test } from "vitest";

const data = resolve(import.meta.dirname, "../../data");
const readme = readFileSync(join(data, "README.md"), "utf8");
const demo = readdirSync(join(data, "soil-lab"));

function entryOf(file: string): string {
  return readme.split("\n").find((line) => line.startsWith(`| \`${file}\` |`)) ?? "";
}

function headerOf(text: string): string[] {
  const header = text.split("\n").find((line) => !line.startsWith("#")) ?? "";
  return header.split(",");
}

describe.each(demo)("data/soil-lab/%s", (file) => {
  const text = readFileSync(join(data, "soil-lab", file), "utf8");

  test("has an entry in data/README.md", () => {
    expect(entryOf(file)).not.toBe("");
  });

  test("says in its first lines that it is invented", () => {
    const first = file.endsWith(".ipynb") ? text : text.split("\n").slice(0, 2).join("\n");
    expect(first).toMatch(/invented/i);
  });
});

test.each(demo.filter((file) => file.endsWith(".csv")))("each column of %s is explained", (file) => {
  const header = headerOf(readFileSync(join(data, "soil-lab", file), "utf8"));
  expect(header.filter((column) => !entryOf(file).includes(column))).toEqual([]);
});

test("data/README.md names origin, date and licence", () => {
  expect(readme).toMatch(/Origin: invented/);
  expect(readme).toMatch(/Date: 2026-11-25/);
  expect(readme).toMatch(/Licence: MIT/);
});
