/** Names that a later cell uses, in every place where a name may stand; expected is what one program would print. */
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, test } from "vitest";
import { modulesFolder } from "../../../lib/book/index.js";
import { errorOf, oneKernel, printed } from "./kernel.js";

/** A cell that declares, the cells after it, and what the last one prints. */
type Program = readonly [first: string, ...rest: readonly string[], printed: string];

const rows = "const rows = [1]";

const programs: readonly Program[] = [
  // Shorthand.
  [rows, "({ rows })", "{ rows: [ 1 ] }"],
  [rows, "JSON.stringify({ rows })", '{"rows":[1]}'],
  [rows, "({ ...{ rows } })", "{ rows: [ 1 ] }"],
  [rows, "({ rows } satisfies { rows: number[] })", "{ rows: [ 1 ] }"],
  [rows, "const both = { rows } as const; both", "{ rows: [ 1 ] }"],
  [rows, "const g = () => ({ rows }); g()", "{ rows: [ 1 ] }"],
  [rows, "const g = function* () { yield { rows } }; [...g()]", "[ { rows: [ 1 ] } ]"],
  [rows, "await null; ({ rows })", "{ rows: [ 1 ] }"],
  [rows, "const g = async () => ({ rows }); await g()", "{ rows: [ 1 ] }"],
  ["const { x, y } = { x: 1, y: 2 }", "({ x, y })", "{ x: 1, y: 2 }"],
  ["class Box { }", "({ Box }).Box.name", "Box"],
  ["function area() { return 2 }", "({ area }).area()", "2"],
  ["enum Face { front, back }", "({ Face }).Face.back", "1"],
  ['import { Length } from "casewright"', "Object.keys({ Length })", "[ 'Length' ]"],
  ['import * as all from "casewright"', "typeof ({ all }).all.Length", "object"],
  ["const performance = 3", "({ performance })", "{ performance: 3 }"],
  [
    rows,
    "namespace N { export const own = 2; export const r = { own, rows } }; N.r",
    "{ own: 2, rows: [ 1 ] }",
  ],
  // Destructuring, its defaults, and assignment.
  [rows, "const f = ({ a = rows }: { a?: number[] }) => a; f({})", "[ 1 ]"],
  [rows, "const { a = { rows } } = {} as { a?: { rows: number[] } }; a", "{ rows: [ 1 ] }"],
  [rows, "const f = (a = rows) => a; f()", "[ 1 ]"],
  ["let rows = [1]", "({ rows } = { rows: [2] });", "({ rows })", "{ rows: [ 2 ] }"],
  ["let rows = [1]", "({ rows = [5] } = {} as { rows?: number[] });", "rows", "[ 5 ]"],
  ["let rows = [1]", "[rows] = [[7]];", "({ rows })", "{ rows: [ 7 ] }"],
  ["const a = { rows: 3 }; const rows = 9", "const { rows: r } = a; r + rows", "12"],
  ["const a = { rows: 3 }", "const { rows: r = 4 } = a; r", "3"],
  ["const a = { rows: 3 }; let q = 9", "({ rows: q } = a);", "q", "3"],
  ["const a = { rows: 3 }", "let rows = 0; ({ rows } = a); rows", "3"],
  ["let n = 1", "n += 2; n++; n", "({ n })", "{ n: 4 }"],
  // What an earlier cell's function sees.
  ["let n = 1; const f = () => n", "n = 5; f()", "5"],
  ["let { n } = { n: 1 }; const f = () => ({ n })", "n = 5; f()", "{ n: 5 }"],
  ["let n = 1; function bump() { n += 1; return n }", "bump(); n", "bump(); ({ n })", "{ n: 3 }"],
  // Templates, nested functions, classes, operators.
  // biome-ignore lint/suspicious/noTemplateCurlyInString: it is the text of a cell
  [rows, "`${rows}`", "1"],
  [
    "const tag = (_: TemplateStringsArray, ...v: unknown[]) => v; const rows = [1]",
    // biome-ignore lint/suspicious/noTemplateCurlyInString: it is the text of a cell
    "tag`${{ rows }}`",
    "[ { rows: [ 1 ] } ]",
  ],
  [rows, "function f() { function g() { return rows } return g() }; f()", "[ 1 ]"],
  [
    rows,
    "class C { rows = rows; m() { return { rows } } static s = rows }; [new C().m(), C.s]",
    "[ { rows: [ 1 ] }, [ 1 ] ]",
  ],
  [rows, "typeof rows", "object"],
  ["const a = { rows: 3 }; const rows = 'rows' as const", "a[rows] + a?.rows", "6"],
  // Other things of the same name.
  [rows, "const g = (rows: number) => ({ rows }); g(3)", "{ rows: 3 }"],
  [rows, "{ const rows = 4; console.log({ rows }) }; rows", "{ rows: 4 }\n[ 1 ]"],
  [rows, "for (const rows of [2]) console.log({ rows })", "{ rows: 2 }"],
  [rows, "try { throw 1 } catch (rows) { console.log({ rows }) }", "{ rows: 1 }"],
  [rows, "const rows = 5;", "({ rows })", "{ rows: 5 }"],
  [rows, "var rows = [6];", "({ rows })", "{ rows: [ 6 ] }"],
  [rows, "rows: for (const i of rows) { if (i) break rows }; ({ rows })", "{ rows: [ 1 ] }"],
  // Exports, which a cell needs no more than it minds them.
  ["export const rows = [1]", "({ rows })", "{ rows: [ 1 ] }"],
  ["export function area() { return 2 }", "({ area }).area()", "2"],
  ["export default function area() { return 2 }", "area()", "2"],
  [rows, "export { rows };", "({ rows })", "{ rows: [ 1 ] }"],
  [rows, "export { rows as table };", "({ table })", "{ table: [ 1 ] }"],
  ['export { Length as Span } from "casewright";', "typeof Span.show", "function"],
  ['export * as all from "casewright";', "typeof all.Length.show", "function"],
  // Exports of everything that another file exports.
  ['export * from "./shelf";', "[wide, area(2), new Shelf().deep]", "[ 300, 4, 5 ]"],
  ['export * from "./shelf.ts"', "({ wide })", "{ wide: 300 }"],
  ['export * from "./shelf"', "const one: Edge = { long: 3 }; one.long", "3"],
  ['export type * from "./shelf"', "const one: Edge = { long: 4 }; one.long", "4"],
  ['export * from "./shelf"; wide + 1', "301"],
  ['export * from "./rack";', "[wide, high, Shelf.name]", "[ 300, 900, 'Shelf' ]"],
  ['export * from "./shelf"; export const wide = 7;', "[wide, area(3)]", "[ 7, 9 ]"],
  ['export * from "./shelf"; export * from "./rack";', "[wide, high]", "[ 300, 900 ]"],
  ["const wide = 1", 'export * from "./shelf";', "wide", "300"],
  ['export * from "casewright";', "[typeof openJob, typeof Length.show]", "[ 'function', 'function' ]"],
  ['export * from "casewright"; const b = 2', "typeof sagPoints + b", "function2"],
];

/** Files beside the cells. */
const beside: readonly (readonly [name: string, text: string])[] = [
  [
    "shelf.ts",
    `export const wide = 300; export function area(side: number) { return side * side }
     export class Shelf { deep = 5 } export interface Edge { long: number } export default 3;`,
  ],
  ["rack.ts", 'export * from "./shelf"; export const high = 900;'],
];

describe("a name of an earlier cell", () => {
  const folder = mkdtempSync(join(tmpdir(), "casewright-test-"));
  for (const [name, text] of beside) writeFileSync(join(folder, name), text);
  afterAll(() => rmSync(folder, { recursive: true }));
  const { client, run } = oneKernel({ cwd: folder, env: { ...process.env, NODE_PATH: modulesFolder() } });

  test.each(programs.map((program) => [program.slice(0, -1).join("  ⏎  "), program] as const))(
    "%s",
    async (_, program) => {
      await client().fresh();
      let outputs = (await run("")).outputs;
      for (const cell of program.slice(0, -1)) {
        ({ outputs } = await run(cell));
        expect(errorOf(outputs)).toBeUndefined();
      }
      expect(printed(outputs).trimEnd()).toBe(program.at(-1));
    },
  );

  test("leaves nothing behind on the globals", async () => {
    await client().fresh();
    await run("let rows = [1]");
    await run("({ rows } = { rows: [2] });");
    expect(printed((await run('"rows" in globalThis')).outputs)).toBe("false\n");
  });

  test("of a file that is not there is complained of", async () => {
    await client().fresh();
    const { outputs } = await run('export * from "./nowhere";');
    expect(errorOf(outputs)).toMatch(/^TypeScript: 1:15 - Cannot find module '.\/nowhere'/);
  });

  test("is complained of where it stands, also behind the word export", async () => {
    await client().fresh();
    const { outputs } = await run("export const wide: number = 'x'");
    expect(errorOf(outputs)).toBe("TypeScript: 1:14 - Type 'string' is not assignable to type 'number'.");
  });
});
