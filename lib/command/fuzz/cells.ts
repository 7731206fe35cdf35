/** Cells whose names live on from one to the next: the kernel prints what one program of them all gives. */
import { join } from "node:path";
import { runInNewContext } from "node:vm";
import { KernelClient, type Output, projectFolder } from "../../book/index.js";
import { type Draws, drawsOf } from "../reference/cases/draws.js";
import { errorWords, type Fuzzer } from "./fuzzer.js";

/** Two to six cells that declare, assign and use a few names. */
export const cells: Fuzzer = {
  attack: async (seed) => {
    const given = cellsOf(drawsOf(seed, "mm"));
    const program = given.join("\n").replaceAll(/(:| as) any(\[\])?/g, "");
    const expected = runInNewContext(`${program}\nJSON.stringify(${all})`, {}, { timeout: 1000 });
    const words = await faultOfCells(given, String(expected));
    return words === undefined ? undefined : { words, input: given.join("\n// next cell\n") };
  },
};

const names = ["a", "b", "rows", "n"] as const;
const all = `{ ${names.join(", ")} }`;

/** The first cell declares every name, so that all later ones may use them. */
function cellsOf(draws: Draws): readonly string[] {
  const first = "let a: any = [1, 2]; let b: any = { n: 1 }; let rows: any = [3]; var n: any = 4;";
  return [first, ...Array.from({ length: draws.whole(1, 5) }, () => statementOf(draws))];
}

function statementOf(draws: Draws): string {
  const [x, y, z] = draws.shuffled(names);
  return draws.pick([
    `${x} = { ${y}, ${z} };`,
    `({ ${x} = 5 } = {} as any);`,
    `({ ${x}: ${y} } = { ${x}: ${z} } as any);`,
    `[${x}, ...${y}] = [1, ${z}, 3];`,
    `{ const ${x} = 7; ${y} = { ${x} }; }`,
    `${x} = (({ ${y} = ${z} }: any) => ({ ${y} }))({});`,
    `${x} = [...[${y}], ...[${z}]];`,
    `for (const ${x} of [1, 2]) ${y} = { ${x}, ${z} };`,
    `${x} = ((${y}: any) => { { let ${z} = 1; ${y} = { ${z} }; } return { ${y}, ${z} }; })(2);`,
    `try { throw { ${x} } } catch ({ ${x}: ${y} }: any) { ${z} = { ${y} }; }`,
    `${x} = { get ${y}(): any { return 1 }, ${z} }; ${x} = { ...${x} };`,
    `${x} = \`\${JSON.stringify({ ${y} })}\`;`,
    `${x} = class ${y} { static ${z} = 3 }.${z};`,
    `${x} ??= ${y}; ${z} = typeof ${x};`,
    `label: for (;;) { ${x} = { ${y} }; break label; }`,
    `${x} = (function (..._: any[]) { return arguments.length })(${y}, ${z});`,
  ]);
}

let kernel: Promise<KernelClient> | undefined;

async function faultOfCells(given: readonly string[], expected: string): Promise<string | undefined> {
  try {
    kernel ??= KernelClient.start({ cwd: join(projectFolder(), "notebooks") });
    const client = await kernel;
    await client.fresh();
    for (const code of given.slice(0, -1)) await client.execute(code);
    const last = await client.execute(`${given.at(-1)}\nconsole.log(JSON.stringify(${all}))`);
    const printed = printedIn(last.outputs).trim();
    return printed === expected
      ? undefined
      : `it printed ${printed || JSON.stringify(last.outputs)}, not ${expected}`;
  } catch (error) {
    kernel = undefined;
    return errorWords(error);
  }
}

function printedIn(outputs: readonly Output[]): string {
  return outputs
    .map((output) => (output.output_type === "stream" && output.name === "stdout" ? output.text : ""))
    .join("");
}
