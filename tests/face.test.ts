/** The names that a builder is offered: few enough to read, each with a line of words. */
import { join, resolve } from "node:path";
import ts from "typescript";
import { expect, test } from "vitest";
import * as all from "../lib/all.js";
import * as face from "../lib/face.js";
import { formulaIndex } from "../lib/formula.js";
import * as flat from "../lib/index.js";
import * as trades from "../lib/trades/index.js";

const dist = resolve(import.meta.dirname, "../lib/dist");
const most = 60;

const start = `import { openJob, ${Object.keys(trades).join(", ")}, charts, kinds } from "casewright";
const job = openJob("soil-lab");
const panel = job.panel("upper.front");
`;

/** What TypeScript's language service offers at the end of a cell, each name with its comment. */
const service = ((): ((code: string) => ReadonlyMap<string, string>) => {
  const file = join(dist, "cell.ts");
  let text = "";
  let version = 0;
  const options: ts.CompilerOptions = {
    strict: true,
    module: ts.ModuleKind.ESNext,
    moduleResolution: ts.ModuleResolutionKind.Bundler,
    target: ts.ScriptTarget.ES2022,
    skipLibCheck: true,
    types: [],
    paths: { casewright: [join(dist, "face.d.ts")] },
  };
  const host: ts.LanguageServiceHost = {
    getScriptFileNames: () => [file],
    getScriptVersion: (name) => (name === file ? String(version) : "0"),
    getScriptSnapshot: (name) => {
      const found = name === file ? text : ts.sys.readFile(name);
      return found === undefined ? undefined : ts.ScriptSnapshot.fromString(found);
    },
    getCurrentDirectory: () => dist,
    getCompilationSettings: () => options,
    getDefaultLibFileName: ts.getDefaultLibFilePath,
    fileExists: ts.sys.fileExists,
    readFile: ts.sys.readFile,
    directoryExists: ts.sys.directoryExists,
  };
  const languages = ts.createLanguageService(host);
  return (code) => {
    const at = code.indexOf("|");
    text = code.replace("|", "");
    version += 1;
    const entries = languages.getCompletionsAtPosition(file, at, {})?.entries ?? [];
    return new Map(
      entries.map(({ name, source, data }) => {
        const details = languages.getCompletionEntryDetails(file, at, name, {}, source, {}, data);
        return [name, ts.displayPartsToString(details?.documentation)];
      }),
    );
  };
})();

test("an import is offered at most 60 names, and those that the README uses are among them", () => {
  const offered = [...service('import { | } from "casewright";').keys()].filter((name) => name !== "type");
  expect(offered).toEqual(
    expect.arrayContaining(["openJob", "set", "mm", "sweep", "chart", "plate", "show"]),
  );
  expect(offered.length).toBeLessThanOrEqual(most);
});

/** What number, and so every quantity, has of the language itself. */
const ofTheLanguage = ["toString", "toFixed", "toExponential", "toPrecision", "valueOf", "toLocaleString"];

test.each([
  ["job."],
  ["panel."],
  ["panel.sag()."],
  ['job.opening("a").'],
  ['job.section("a").'],
  ['job.shelf("a").'],
  ['job.drawer("a").'],
  ['job.content("a").'],
  ['job.bar("a").'],
  ['job.hardware("a").'],
  ['job.finding("a").'],
  ["charts."],
  ...Object.keys(trades).map((name): [string] => [`${name}.`]),
])("after %s at most 60 names are offered, each with a line of words", (before) => {
  const offered = service(`${start}${before}|`);
  const own = [...offered].filter(([name]) => !ofTheLanguage.includes(name));
  expect(own.length).toBeGreaterThan(1);
  expect(own.length).toBeLessThanOrEqual(most);
  expect(own.filter(([, words]) => words.trim() === "").map(([name]) => name)).toEqual([]);
});

test("a kind of quantity is offered by its name", () => {
  const offered = [...service(`${start}kinds.|`).keys()];
  expect(offered).toEqual(expect.arrayContaining(["Length", "Pressure", "LineLoad", "Temperature"]));
  expect(offered.length).toBeLessThanOrEqual(most);
});

test("every formula stands in one trade", () => {
  const placed = Object.entries(trades).flatMap(([trade, formulas]) =>
    Object.values<{ readonly declaration: { readonly id: string } }>(formulas).map(
      ({ declaration }) => [declaration.id, trade] as const,
    ),
  );
  expect(placed.map(([id]) => id).sort()).toEqual([...formulaIndex().keys()].sort());
});

test("nothing that could be imported is gone, and what is offered is the same everywhere", () => {
  expect(Object.keys(flat).filter((name) => !(name in all))).toEqual([]);
  const differs = Object.entries(face).filter(([name, value]) => Reflect.get(all, name) !== value);
  expect(differs.map(([name]) => name)).toEqual([]);
});
