/** The house rules of DEVELOPERS.md: data flows one way, and only the edges touch the machine. */
import { readdirSync, readFileSync } from "node:fs";
import { builtinModules } from "node:module";
import { dirname, join, relative, resolve, sep } from "node:path";
import ts from "typescript";
import { describe, expect, test } from "vitest";

const lib = resolve(import.meta.dirname, "../../lib");

const floors: readonly (readonly string[])[] = [
  ["quantity", "algebra", "source", "problem", "refusal", "host", "kept"],
  ["formula", "shape"],
  ["published-check", "measure", "material"],
  ["mechanics", "fem", "fastening", "bonding", "cutting", "moving", "inside", "money", "assembly"],
  ["design"],
  ["model"],
  ["plan"],
  ["findings"],
  ["page"],
  ["recipe"],
  ["job", "true-scale"],
  ["improve"],
  ["live"],
  ["notebook", "book", "trades"],
  ["index", "face"],
  ["all"],
  ["command"],
];
const files = readdirSync(lib, { recursive: true, encoding: "utf8" })
  .filter((file) => file.endsWith(".ts") && !/^(dist|node_modules)/.test(file))
  .map((file) => join(lib, file));

/** `#host` stands for the host room, `#mathml` for a file of pages: `imports` of lib/package.json says which. */
const named: Readonly<Record<string, string>> = {
  "#host": join(lib, "host"),
  "#mathml": join(lib, "page/mathml.ts"),
};

/** Rooms and files that may touch the machine. */
const edges: readonly string[] = ["host", "book", "command"];

/** Globals that a browser does not have. */
const nodeGlobals: readonly string[] = ["process", "Buffer", "require", "__dirname", "__filename", "global"];

function roomOf(file: string): string {
  return (relative(lib, file).split(sep)[0] ?? "").replace(/\.(ts|js)$/, "");
}

function floorOf(room: string): number {
  return floors.findIndex((rooms) => rooms.includes(room));
}

interface Source {
  /** Module names as they are written, of imports, re-exports and import(). */
  readonly specifiers: readonly string[];
  /** Names that stand for values: no field, no property of something else, no type. */
  readonly identifiers: readonly string[];
}

/** What a source imports and which free names it uses; what stands in a text or a comment is neither. */
function readSource(text: string): Source {
  const specifiers: string[] = [];
  const identifiers: string[] = [];
  const visit = (node: ts.Node): void => {
    if ((ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) && node.moduleSpecifier) {
      if (ts.isStringLiteral(node.moduleSpecifier)) specifiers.push(node.moduleSpecifier.text);
    }
    if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) {
      const [from] = node.arguments;
      specifiers.push(from && ts.isStringLiteralLike(from) ? from.text : "(computed)");
    }
    const isName =
      ts.isIdentifier(node) &&
      !(ts.isPropertyAccessExpression(node.parent) && node.parent.name === node) &&
      !(
        (ts.isPropertyAssignment(node.parent) || ts.isPropertySignature(node.parent)) &&
        node.parent.name === node
      );
    if (isName) identifiers.push(node.text);
    if (
      ts.isPropertyAccessExpression(node) &&
      ts.isIdentifier(node.expression) &&
      node.expression.text === "globalThis"
    ) {
      identifiers.push(node.name.text);
    }
    ts.forEachChild(node, visit);
  };
  visit(ts.createSourceFile("file.ts", text, ts.ScriptTarget.Latest, true));
  return { specifiers, identifiers };
}

const sources: ReadonlyMap<string, Source> = new Map(
  files.map((file) => [file, readSource(readFileSync(file, "utf8"))]),
);

function importsOf(file: string): string[] {
  return (sources.get(file)?.specifiers ?? []).flatMap((specifier) => {
    const room = named[specifier];
    if (room) return [room];
    return specifier.startsWith(".") ? [resolve(dirname(file), specifier)] : [];
  });
}

function touchesMachine({ specifiers, identifiers }: Source): string[] {
  return [
    ...specifiers.filter((name) => name.startsWith("node:") || builtinModules.includes(name)),
    ...identifiers.filter((name) => nodeGlobals.includes(name)),
  ];
}

test("every room has a floor", () => {
  expect([...new Set(files.map(roomOf))].filter((room) => floorOf(room) < 0)).toEqual([]);
});

test("every # name leads to a room", () => {
  const hashes = files.flatMap(
    (file) => sources.get(file)?.specifiers.filter((one) => one.startsWith("#")) ?? [],
  );
  expect(new Set(hashes)).toEqual(new Set(Object.keys(named)));
});

test("no import climbs, and none goes sideways", () => {
  const climbing = files.flatMap((file) =>
    importsOf(file)
      .map((imported) => ({ from: roomOf(file), to: roomOf(imported), file: relative(lib, file) }))
      .filter(({ from, to }) => from !== to && floorOf(to) >= floorOf(from)),
  );
  expect(climbing).toEqual([]);
});

/** Every place that can be reached from itself, by names and what each imports. */
function inCircles(imports: ReadonlyMap<string, ReadonlySet<string>>): string[] {
  const reachable = (from: string): ReadonlySet<string> => {
    const seen = new Set<string>();
    const open = [...(imports.get(from) ?? [])];
    for (let next = open.pop(); next !== undefined; next = open.pop()) {
      if (seen.has(next)) continue;
      seen.add(next);
      open.push(...(imports.get(next) ?? []));
    }
    return seen;
  };
  return [...imports.keys()].filter((name) => reachable(name).has(name));
}

/** What each place imports, a place being a file or the folder it stands in. */
function importsBetween(placeOf: (file: string) => string | undefined): Map<string, Set<string>> {
  const imports = new Map<string, Set<string>>();
  for (const file of files) {
    const from = placeOf(file);
    if (from === undefined) continue;
    const own = imports.get(from) ?? new Set<string>();
    imports.set(from, own);
    for (const imported of importsOf(file)) {
      const to = placeOf(imported.replace(/\.js$/, ".ts"));
      if (to !== undefined && to !== from) own.add(to);
    }
  }
  return imports;
}

/** The folder of a room that a file stands in; none for a file of the room itself. */
function folderOf(file: string): string | undefined {
  const [room, folder, ...rest] = relative(lib, file).split(sep);
  return rest.length > 0 ? `${room}/${folder}` : undefined;
}

describe("no imports go in a circle", () => {
  test("from file to file", () => {
    expect(inCircles(importsBetween((file) => relative(lib, file)))).toEqual([]);
  });

  test("from folder to folder inside a room", () => {
    expect(inCircles(importsBetween(folderOf))).toEqual([]);
  });

  test("a circle over three is seen, a diamond is none", () => {
    const of = (...pairs: readonly (readonly [string, string])[]) =>
      new Map(
        pairs.map(([from]) => [from, new Set(pairs.flatMap(([one, to]) => (one === from ? [to] : [])))]),
      );
    expect(inCircles(of(["a", "b"], ["b", "c"], ["c", "a"], ["d", "a"]))).toEqual(["a", "b", "c"]);
    expect(inCircles(of(["a", "b"], ["a", "c"], ["b", "d"], ["c", "d"]))).toEqual([]);
  });
});

describe("only the edges touch the machine", () => {
  test("no module or global of Node.js stands in any other room", () => {
    const touching = files.flatMap((file) => {
      const found = edges.includes(roomOf(file)) ? [] : touchesMachine(sources.get(file)!);
      return found.map((name) => `${relative(lib, file)}: ${name}`);
    });
    expect(touching).toEqual([]);
  });

  test.each([
    ['import { readFileSync } from "node:fs";', "node:fs"],
    ['import { readFileSync } from "fs";', "fs"],
    ['const { join } = await import("node:path");', "node:path"],
    ['export { sep } from "node:path";', "node:path"],
    ["const home = process.env.HOME;", "process"],
    ["const home = globalThis.process.env.HOME;", "process"],
    ["const bytes = Buffer.from(text);", "Buffer"],
  ])("%s is seen", (text, name) => {
    expect(touchesMachine(readSource(text))).toContain(name);
  });

  test.each([
    "/** Uses node:fs, process and Buffer. */",
    'const text = "node:fs process Buffer";',
    "const rate = { process: 1 }; show(rate.process);",
  ])("%s is not", (text) => {
    expect(touchesMachine(readSource(text))).toEqual([]);
  });

  test("outside the edges only a notebook's show writes to a console, and only the served page asks its server", () => {
    const asking = files.filter(
      (file) =>
        !edges.includes(roomOf(file)) &&
        sources.get(file)?.identifiers.some((name) => ["fetch", "console", "XMLHttpRequest"].includes(name)),
    );
    expect(asking.map((file) => relative(lib, file)).sort()).toEqual([
      join("live", "page", "saving.ts"),
      join("notebook", "show.ts"),
    ]);
  });
});
