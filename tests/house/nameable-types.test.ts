/** A cell that keeps a value needs its type's name: every type that an exported name carries is exported too. */
import { readdirSync, readFileSync } from "node:fs";
import { join, relative, resolve } from "node:path";
import ts from "typescript";
import { expect, test } from "vitest";

const lib = resolve(import.meta.dirname, "../../lib");

function isExported(statement: ts.Statement): boolean {
  return (
    ts.canHaveModifiers(statement) &&
    (statement.modifiers ?? []).some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword)
  );
}

/** The parts of an exported statement that say types to whoever imports it. */
function saidBy(statement: ts.Statement): readonly (ts.Node | undefined)[] {
  if (ts.isFunctionDeclaration(statement)) return [...statement.parameters, statement.type];
  if (ts.isVariableStatement(statement)) {
    return statement.declarationList.declarations.map(({ type, initializer }) => type ?? initializer);
  }
  return ts.isInterfaceDeclaration(statement) || ts.isTypeAliasDeclaration(statement) ? [statement] : [];
}

function typesNamed(node: ts.Node | undefined): string[] {
  if (!node) return [];
  const own = ts.isTypeReferenceNode(node) ? [node.typeName.getText()] : [];
  const inner: string[] = [];
  ts.forEachChild(node, (child) => {
    inner.push(...typesNamed(child));
  });
  return [...own, ...inner];
}

/** Types of a source that its exported names carry and nobody outside can name. */
function unnameable(text: string): string[] {
  const { statements } = ts.createSourceFile("file.ts", text, ts.ScriptTarget.Latest, true);
  const own = statements.flatMap((statement) =>
    (ts.isInterfaceDeclaration(statement) || ts.isTypeAliasDeclaration(statement)) && !isExported(statement)
      ? [statement.name.text]
      : [],
  );
  const said = statements.filter(isExported).flatMap(saidBy).flatMap(typesNamed);
  return own.filter((name) => said.includes(name));
}

test("the types that exported names carry are exported", () => {
  const found = readdirSync(lib, { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".ts") && !/^(dist|node_modules|command|book|host)/.test(file))
    .flatMap((file) =>
      unnameable(readFileSync(join(lib, file), "utf8")).map((name) => `${relative(".", file)}: ${name}`),
    );
  expect(found).toEqual([]);
});

test("a type kept back is seen", () => {
  expect(unnameable("interface Row { a: number }\nexport function rows(): Row[] { return []; }")).toEqual([
    "Row",
  ]);
});
