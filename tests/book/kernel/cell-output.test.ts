import { describe, expect, test } from "vitest";
import type { Transport } from "../../../lib/book/kernel/connection.js";
import { oneKernel, printed } from "./kernel.js";

// "tcp" is what Windows uses.
describe.each<Transport>(["ipc", "tcp"])("over %s, a kernel", (transport) => {
  const { run, client } = oneKernel({ transport });

  test("loses none of 2 000 printed lines", async () => {
    const { outputs } = await run('for (let i = 0; i < 2000; i++) console.log("line " + i)');
    expect(printed(outputs)).toBe(Array.from({ length: 2000 }, (_, i) => `line ${i}\n`).join(""));
  });

  test("loses none of 2 000 displays", async () => {
    const { outputs } = await run(
      'import { display } from "tslab"; for (let i = 0; i < 2000; i++) display.text(String(i))',
    );
    expect(
      outputs.map((output) => output.output_type === "display_data" && output.data["text/plain"]),
    ).toEqual(Array.from({ length: 2000 }, (_, i) => String(i)));
  });

  test("runs the library in a cell", async () => {
    const { status, outputs } = await run(
      'import { Length, mm } from "casewright"; const side: Length = mm(12); console.log(Length.show(side))',
    );
    expect([status, printed(outputs)]).toEqual(["ok", "12 mm\n"]);
  });

  test("completes names of the library", async () => {
    const { matches } = await client().complete('import { m } from "casewright"', 10);
    expect(matches).toContain("mm");
    expect((await client().complete("mm(3); inc; metr", 16)).cursor_start).toBe(12);
  });
});

describe("output of a cell", () => {
  const { run, client } = oneKernel();

  test("is the value of its last expression, if there is one", async () => {
    expect(printed((await run("const a = 3; a + 4")).outputs)).toBe("7\n");
    expect((await run("const b = 3;")).outputs).toEqual([]);
  });

  test("keeps text and displays in order", async () => {
    const { outputs } = await run(`
      import { display } from "tslab";
      console.log("before"); display.html("<b>bold</b>"); console.error("beside"); console.log("after");`);
    expect(outputs).toEqual([
      { output_type: "stream", name: "stdout", text: "before\n" },
      { output_type: "display_data", data: { "text/html": "<b>bold</b>" }, metadata: {} },
      { output_type: "stream", name: "stderr", text: "beside\n" },
      { output_type: "stream", name: "stdout", text: "after\n" },
    ]);
  });

  test("may be a bundle of several kinds, from the library or from a last expression", async () => {
    const bundle = { "text/html": "<i>3</i>", "text/plain": "3" };
    const { outputs } = await run(`({ [Symbol.for("Jupyter.display")]: () => (${JSON.stringify(bundle)}) })`);
    expect(outputs).toEqual([{ output_type: "display_data", data: bundle, metadata: {} }]);
  });

  test("can be replaced, also from a later cell", async () => {
    const first = await run(
      'import { newDisplay } from "tslab"; const shown = newDisplay(); shown.text("draft")',
    );
    await run('shown.text("final")');
    expect(first.outputs).toEqual([
      { output_type: "display_data", data: { "text/plain": "final" }, metadata: {} },
    ]);
  });

  test("is whole where a letter is written in two pieces", async () => {
    const { outputs } = await run(
      "const ohm = Buffer.from('Ω\\n'); process.stdout.write(ohm.subarray(0, 1)); process.stdout.write(ohm.subarray(1)); 'done'",
    );
    expect(printed(outputs)).toBe("Ω\ndone\n");
  });

  test("tells the writer when it is written", async () => {
    const { outputs } = await run(
      'await new Promise<void>((done) => process.stdout.write("x\\n", () => done())); console.log("written")',
    );
    expect(printed(outputs)).toBe("x\nwritten\n");
  });

  test("from a timer after its end is not lost", async () => {
    const first = await run('void setTimeout(() => console.log("late"), 20);');
    const second = await run("await new Promise((done) => setTimeout(done, 200));");
    expect(printed(first.outputs) + printed(second.outputs)).toBe("late\n");
  });

  test("is numbered, and cells count up", async () => {
    const first = await run("1");
    const second = await run("2");
    expect(second.executionCount).toBe((first.executionCount ?? Number.NaN) + 1);
  });

  test("comes with names and comments on request", async () => {
    await run('import { mm } from "casewright";');
    expect(await client().inspect("mm(3)", 1)).toMatch(
      /mm\(value: number\): UnitNumber<"length">[\s\S]*Millimetres, as a length/,
    );
    expect(await client().inspect("    ", 2)).toBeUndefined();
  });

  test("is there for each of 200 cells", async () => {
    const texts: string[] = [];
    for (let i = 0; i < 200; i++) texts.push(printed((await run(`console.log(${i})`)).outputs));
    expect(texts).toEqual(Array.from({ length: 200 }, (_, i) => `${i}\n`));
  });
});
