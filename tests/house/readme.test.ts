/** The README is true: its example runs, and every script it names exists. */
import { execFileSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { expect, test } from "vitest";

const project = resolve(import.meta.dirname, "../..");
const readme = readFileSync(join(project, "README.md"), "utf8");
const scripts: Record<string, string> = JSON.parse(
  readFileSync(join(project, "package.json"), "utf8"),
).scripts;

const examples = [...readme.matchAll(/```ts\n([\s\S]*?)```/g)].map(([, code = ""]) => code);

/** What an example prints, run as a notebook's cell is but for the compiler. */
function printedBy(code: string): string {
  return execFileSync(process.execPath, ["--input-type=module", "-e", code], {
    cwd: project,
    encoding: "utf8",
  });
}

test("its ten lines ask a question of one's own, and answer with units", () => {
  const [asking = ""] = examples;
  expect(
    asking
      .trim()
      .split("\n")
      .filter((line) => line !== "").length,
  ).toBeLessThanOrEqual(10);
  const output = printedBy(asking);
  const [, promised] = /\.sag\(\)\); \/\/ (.*)/.exec(asking) ?? [];
  expect(output.split("\n")[0]).toBe(promised);
  expect(output).toMatch(/lb\n/);
  expect(output).toMatch(/400 mm +0\.\d+ in/);
  expect(output).toContain("How far does the");
});

test("its formula runs and prints a worked line with its source", () => {
  const output = printedBy(examples[1] ?? "");
  expect(output).toContain("largest sag");
  expect(output).toContain("table 8.1");
});

test("every script it names exists", () => {
  const named = [...readme.matchAll(/npm (?:run ([\w-]+)|(start|test))/g)].map(
    ([, run, plain]) => run ?? plain ?? "",
  );
  expect(named.length).toBeGreaterThan(4);
  expect(named.filter((name) => !(name in scripts))).toEqual([]);
});

test("every file it links to exists", () => {
  const links = [...readme.matchAll(/\]\((?!#|http)([^)]+)\)/g)].map(([, link = ""]) => link);
  expect(links.filter((link) => !existsSync(join(project, link)))).toEqual([]);
});

test("it names every notebook by its title, in order", () => {
  const titles = [...readme.matchAll(/^\| ([^|]+?) \| [^|]+\|$/gm)]
    .map(([, title = ""]) => title.trim())
    .slice(2);
  expect(titles).toEqual(notebookTitles());
});

function notebookTitles(): string[] {
  const output = execFileSync("git", ["ls-files", "-co", "--exclude-standard", "notebooks/*.ipynb"], {
    cwd: project,
    encoding: "utf8",
  });
  return output
    .trim()
    .split("\n")
    .filter((file) => existsSync(join(project, file)))
    .sort()
    .map((file) => {
      const { cells } = JSON.parse(readFileSync(join(project, file), "utf8"));
      return String([cells[0].source].flat().join("")).split("\n")[0]?.replace(/^# /, "") ?? "";
    });
}
