/**
 * Every `@example` in lib is compiled against all that the library offers and run. Where its last line ends in
 * `// text`, the text is what the value shows: a formula's results by their kinds (named where there are
 * several), a text as it is, a number with four digits, anything else as JSON.
 */
import { readdirSync, readFileSync } from "node:fs";
import { join, relative } from "node:path";
import ts from "typescript";
import { describe, expect, test } from "vitest";
import * as offered from "../../lib/all.js";
import { type AnyFormula, formulaIndex, resultSymbols, showNumber } from "../../lib/index.js";

const root = join(import.meta.dirname, "../..");
const values: Readonly<Record<string, unknown>> = offered;

/** One example, as it stands in a comment. */
interface Example {
  /** The file and the name that it is an example of. */
  readonly of: string;
  /** The name of what it is an example of. */
  readonly name: string;
  /** Statements before the last expression. */
  readonly before: string;
  /** The last expression. */
  readonly last: string;
  /** The name of what the last expression calls, empty where it is no call. */
  readonly called: string;
  /** What the value shows, where the example says it. */
  readonly shows?: string;
}

const files = readdirSync(join(root, "lib"), { recursive: true, encoding: "utf8" })
  .filter((path) => path.endsWith(".ts") && !/(^dist|node_modules)\//.test(path))
  .map((path) => join(root, "lib", path));
const examples = files.flatMap(examplesOf);

function examplesOf(path: string): Example[] {
  const source = ts.createSourceFile(path, readFileSync(path, "utf8"), ts.ScriptTarget.ES2022, true);
  return source.statements.filter(isExported).flatMap((statement) => {
    const name = nameOf(statement);
    return ts
      .getJSDocTags(
        ts.isVariableStatement(statement)
          ? (statement.declarationList.declarations[0] ?? statement)
          : statement,
      )
      .filter((tag) => tag.tagName.text === "example")
      .map((tag) =>
        exampleFrom(`${relative(root, path)} ${name}`, name, ts.getTextOfJSDocComment(tag.comment) ?? ""),
      );
  });
}

function isExported(statement: ts.Statement): boolean {
  return (
    ts.canHaveModifiers(statement) &&
    (ts.getModifiers(statement) ?? []).some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword)
  );
}

function nameOf(statement: ts.Statement): string {
  const named = ts.isVariableStatement(statement) ? statement.declarationList.declarations[0] : statement;
  return named ? (ts.getNameOfDeclaration(named as ts.Declaration)?.getText() ?? "") : "";
}

function exampleFrom(of: string, name: string, text: string): Example {
  const [, code = text, shows] = /^(.*?)\s*\/\/ ([^\n]*)$/s.exec(text.trim()) ?? [];
  const source = ts.createSourceFile("example.ts", code, ts.ScriptTarget.ES2022, true);
  const statement = source.statements.at(-1);
  const expression = statement && ts.isExpressionStatement(statement) ? statement.expression : undefined;
  return {
    of,
    name,
    before: expression ? code.slice(0, expression.getStart()) : code,
    last: expression?.getText() ?? "undefined",
    called: expression && ts.isCallExpression(expression) ? expression.expression.getText() : "",
    ...(shows === undefined ? {} : { shows }),
  };
}

/** One module: a function for each example, and an import of every name that they use. */
function moduleOf(list: readonly Example[]): string {
  const written = list.map(({ before, last }) => `${before}\n${last}`).join("\n");
  const names = Object.keys(values).filter((name) => new RegExp(`\\b${name}\\b`).test(written));
  const bodies = list.map(
    ({ before, last }) => `async (): Promise<unknown> => { ${before}\n return ${last}; },`,
  );
  return [`import { ${names.join(", ")} } from "casewright";`, "export const runs = [", ...bodies, "];"].join(
    "\n",
  );
}

const text = moduleOf(examples);

/** What the compiler says against the examples, each with the name of what it is an example of. */
function complaints(): string[] {
  const path = join(root, "tests/laws/examples-of-lib.ts");
  const { config } = ts.readConfigFile(join(root, "tsconfig.json"), ts.sys.readFile);
  const { options } = ts.parseJsonConfigFileContent({ ...config, include: [], files: [path] }, ts.sys, root);
  const host = ts.createCompilerHost(options);
  const { getSourceFile, fileExists } = host;
  host.fileExists = (name) => name === path || fileExists(name);
  host.getSourceFile = (name, version) =>
    name === path ? ts.createSourceFile(name, text, version) : getSourceFile(name, version);
  const paths = { casewright: [join(root, "lib/all.ts")] };
  const program = ts.createProgram([path], { ...options, paths, noUnusedLocals: false }, host);
  const source = program.getSourceFile(path);
  return ts.getPreEmitDiagnostics(program, source).map(({ start = 0, messageText }) => {
    const place = text.slice(0, start).split("async ()").length - 2;
    return `${examples[place]?.of}: ${ts.flattenDiagnosticMessageText(messageText, "\n")}`;
  });
}

function isFormula(value: unknown): value is AnyFormula {
  return typeof value === "function" && "declaration" in value;
}

/** A value as an example writes it. */
function shown({ called }: Example, value: unknown): string {
  const formula = values[called];
  if (!isFormula(formula)) {
    if (typeof value === "number") return showNumber(value);
    return typeof value === "string" ? value : JSON.stringify(value);
  }
  return resultSymbols(formula.declaration)
    .map(([name, { kind }]) =>
      name === "value" ? kind.show(value) : `${name} ${kind.show((value as Record<string, unknown>)[name])}`,
    )
    .join(", ");
}

/** What an example shows, or how it failed, where that is not what it says. */
async function disagreement(example: Example, run: () => Promise<unknown>): Promise<string[]> {
  try {
    const value = await run();
    const { shows } = example;
    return shows === undefined || shown(example, value) === shows
      ? []
      : [`${example.of}: says ${shows}, shows ${shown(example, value)}`];
  } catch (error) {
    return [`${example.of}: ${error}`];
  }
}

function runsOf(module: string): (() => Promise<unknown>)[] {
  const { outputText } = ts.transpileModule(module, {
    compilerOptions: { module: ts.ModuleKind.CommonJS, target: ts.ScriptTarget.ES2022 },
  });
  const exported: { runs?: (() => Promise<unknown>)[] } = {};
  new Function("require", "exports", outputText)(() => offered, exported);
  return exported.runs ?? [];
}

describe("the examples in lib", () => {
  test("stand at every formula", () => {
    const shownNames = new Set(examples.map(({ name }) => name));
    const documented = Object.entries(values)
      .filter(([name, value]) => isFormula(value) && shownNames.has(name))
      .map(([, value]) => (value as AnyFormula).declaration.id);
    expect([...formulaIndex().keys()].filter((id) => !documented.includes(id))).toEqual([]);
  });

  test("compile against all that the library offers", () => {
    expect(complaints()).toEqual([]);
  }, 600_000);

  test("run and show what they say", async () => {
    const runs = runsOf(text);
    expect(runs.length).toBe(examples.length);
    const wrong: string[] = [];
    for (const [i, example] of examples.entries())
      wrong.push(...(await disagreement(example, runs[i] ?? (async () => undefined))));
    expect(wrong).toEqual([]);
  }, 600_000);
});
