/** Every exported function, formula, type and constant says what it is. */
import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import ts from "typescript";
import { expect, test } from "vitest";

const lib = resolve(import.meta.dirname, "../../lib");
const files = readdirSync(lib, { recursive: true, encoding: "utf8" }).filter(
  (file) => file.endsWith(".ts") && !/^(dist|node_modules)/.test(file) && !file.endsWith("index.ts"),
);

function isExported(node: ts.Statement): boolean {
  return (
    ts.canHaveModifiers(node) &&
    (ts.getModifiers(node) ?? []).some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword)
  );
}

function nameOf(node: ts.Statement): string {
  if (ts.isVariableStatement(node))
    return node.declarationList.declarations.map(({ name }) => name.getText()).join(", ");
  return (node as ts.DeclarationStatement).name?.getText() ?? "?";
}

/** A type and a constant of one name share one comment; so do overloads. */
function undocumented(file: string): string[] {
  const text = readFileSync(join(lib, file), "utf8");
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.ES2022, true);
  const exported = source.statements.filter(isExported);
  const documented = new Set(
    exported.filter((node) => ts.getJSDocCommentsAndTags(node).length > 0).map(nameOf),
  );
  return exported
    .map(nameOf)
    .filter((name) => !documented.has(name))
    .map((name) => `${file}: ${name}`);
}

test("every export has a doc comment", () => {
  expect(files.flatMap(undocumented)).toEqual([]);
});
