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

test("its example runs and prints a worked line with its source", () => {
  const [, code = ""] = /```ts\n([\s\S]*?)```/.exec(readme) ?? [];
  const output = execFileSync(process.execPath, ["--input-type=module", "-e", code], {
    cwd: project,
    encoding: "utf8",
  });
  expect(output).toContain("largest sag");
  expect(output).toContain("table 8.1");
});

test("every script it names exists", () => {
  const named = [...readme.matchAll(/npm (?:run (\w+)|(start|test))/g)].map(
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
