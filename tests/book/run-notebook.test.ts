import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import {
  modulesFolder,
  NotebookRunner,
  type Progress,
  printNotebook,
  runNotebook,
  runNotebooks,
} from "../../lib/book/index.js";
import { notebookFolder, printed } from "./kernel/kernel.js";

let folder = "";
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "casewright-test-"));
});
afterAll(() => rm(folder, { recursive: true }));

/** Writes a notebook of one text cell and these code cells, named "a", "b" and so on. */
async function notebookOf(name: string, ...sources: string[]): Promise<string> {
  const cells = sources.map((source, i) => ({
    cell_type: "code" as const,
    id: String.fromCharCode(97 + i),
    metadata: {},
    source,
    execution_count: null,
    outputs: [],
  }));
  const title = { cell_type: "markdown" as const, id: "title", metadata: {}, source: "# A test" };
  const file = join(folder, name);
  await writeFile(
    file,
    printNotebook({ nbformat: 4, nbformat_minor: 5, metadata: {}, cells: [title, ...cells] }),
  );
  return file;
}

describe("running a notebook", () => {
  test("fills in outputs and counts, tells of every code cell, and leaves the file alone", async () => {
    const file = await notebookOf(
      "good.ipynb",
      "const a = 3;",
      " \n",
      'console.log(a, process.env["CASEWRIGHT_JOB"])',
    );
    const told: Progress[] = [];
    const { notebook, failures } = await runNotebook(file, {
      cwd: notebookFolder,
      env: { ...process.env, CASEWRIGHT_JOB: "my-case" },
      onProgress: (progress) => told.push(progress),
    });
    expect(failures).toEqual([]);
    expect(
      notebook.cells.map(
        (cell) => cell.cell_type === "code" && [cell.execution_count, printed(cell.outputs)],
      ),
    ).toEqual([false, [1, ""], [null, ""], [2, "3 my-case\n"]]);
    expect(told).toEqual([
      { notebook: file, cell: 1, of: 2, ms: expect.any(Number) },
      { notebook: file, cell: 2, of: 2, ms: expect.any(Number) },
    ]);
  });

  test("that names a file beside it finds it, wherever other notebooks run", async () => {
    await writeFile(
      join(folder, "mine.ts"),
      'import { mm } from "casewright";\nimport { half } from "./half";\nexport const wide = mm(600).times(half);\n',
    );
    await writeFile(join(folder, "half.ts"), "export const half = 0.5;\n");
    const beside = await notebookOf("beside.ipynb", 'import { wide } from "./mine.ts";\nwide');
    const alone = await notebookOf("alone.ipynb", "process.cwd()");
    const runs = await runNotebooks([alone, beside, alone], {
      cwd: notebookFolder,
      keepKernels: true,
      concurrency: 1,
      env: { ...process.env, NODE_PATH: modulesFolder() },
    });
    const texts = runs.map(
      ({ notebook: { cells } }) => cells[1]?.cell_type === "code" && printed(cells[1].outputs),
    );
    expect(runs.flatMap(({ failures }) => failures)).toEqual([]);
    expect(texts).toEqual([`${notebookFolder}\n`, "300 mm\n", `${notebookFolder}\n`]);
  });

  test("runs in the notebook's own folder unless told otherwise", async () => {
    const file = await notebookOf("where.ipynb", "process.cwd()");
    const { notebook } = await runNotebook(file);
    expect(notebook.cells[1]).toMatchObject({ outputs: [{ text: `${folder}\n` }] });
  });

  test.each([
    { what: "a thrown error", cells: ['throw new RangeError("too thin")'], message: "RangeError: too thin" },
    {
      what: "a cell that cannot be interrupted",
      timeout: 2_000,
      cells: ["await null; while (true) {}"],
      message:
        "the cell ran longer than 2 s; it ignored the interrupt, so its kernel was killed; --cell-time 4 gives every cell twice as long",
    },
    { what: "a kernel that ends", cells: ["process.exit(4)"], message: "the kernel ended (exit code 4)" },
    {
      what: "a promise nobody awaited",
      cells: ['Promise.reject(new Error("glue")); 1'],
      message: "Error: glue (in a promise nobody awaited)",
    },
    {
      what: "a promise of an earlier cell, rejected in this one",
      cells: [
        "let spoil: (why: Error) => void = () => {}; new Promise((_, no) => { spoil = no; });",
        'spoil(new Error("dry")); 2',
      ],
      message: "Error: dry (in a promise nobody awaited)",
    },
  ])(
    "says of $what what failed, and runs the cells after it",
    async ({ cells, message, timeout = 60_000 }) => {
      const file = await notebookOf(
        "failing.ipynb",
        "const before = 'before'; before",
        ...cells,
        "before + 'after'",
      );
      const { notebook, failures } = await runNotebook(file, { cwd: notebookFolder, timeout });
      const number = cells.length + 1;
      const id = number === 2 ? "b" : "c";
      expect(failures).toEqual([{ notebook: file, cell: { number, id }, message }]);
      expect(notebook.cells[1]).toMatchObject({ outputs: [{ text: "before\n" }] });
      expect(notebook.cells.at(-1)).toMatchObject({ outputs: [{ text: "beforeafter\n" }] });
    },
  );

  test("reports a kernel that does not start, without a cell", async () => {
    const file = await notebookOf("nowhere.ipynb", "1");
    const { failures, notebook } = await runNotebook(file, { cwd: join(folder, "missing") });
    const message = expect.stringMatching(/^the kernel ended \(.*ENOENT/);
    expect(failures).toEqual([{ notebook: file, message }]);
    expect(notebook.cells.at(-1)).toMatchObject({ outputs: [{ output_type: "error", evalue: message }] });
  });

  test("says of a file that is no notebook what is wrong with it", async () => {
    const file = join(folder, "broken.ipynb");
    await writeFile(file, "{}");
    const { failures } = await runNotebook(file);
    const message = expect.stringMatching(/problems found\n.*broken\.ipynb, nbformat/);
    expect(failures).toEqual([{ notebook: file, message }]);
  });
});

test("several notebooks run at once, at most two, and the results keep their order", async () => {
  const wait = "await new Promise((d) => setTimeout(d, 300));";
  const files = [
    await notebookOf("1.ipynb", `${wait} "one"`),
    await notebookOf("2.ipynb", "throw new Error('two')"),
    await notebookOf("3.ipynb", '"three"'),
  ];
  const finished: string[] = [];
  const runs = await runNotebooks(files, {
    cwd: notebookFolder,
    onProgress: ({ notebook }) => finished.push(notebook),
  });
  expect(runs.map(({ failures }) => failures.map(({ message }) => message))).toEqual([
    [],
    ["Error: two"],
    [],
  ]);
  expect(runs.map(({ notebook }) => notebook.cells[1])).toMatchObject([
    { outputs: [{ text: "one\n" }] },
    { outputs: [{ ename: "Error" }] },
    { outputs: [{ text: "three\n" }] },
  ]);
  // The third waits until one of the first two has ended.
  expect(finished.at(-1)).toBe(files[2]);
});

describe("kernels that are kept", () => {
  const runner = new NotebookRunner({ cwd: notebookFolder, concurrency: 2, keepKernels: true });
  afterAll(() => runner.close());
  const shown = async (files: readonly string[]): Promise<unknown[]> =>
    (await runner.run(files)).map(({ notebook, failures: [failure] }) => {
      const cell = notebook.cells.at(-1);
      if (failure || cell?.cell_type !== "code") return failure?.message;
      const [output] = cell.outputs;
      return [cell.execution_count, output && "text" in output ? output.text : output];
    });

  test("run each notebook where it was run before, with nothing declared and cells counted from 1", async () => {
    const slow =
      "const all = globalThis as unknown as { kept?: number }; await new Promise((done) => setTimeout(done, 200));";
    const count = 'const mine = (all.kept ?? 0) + 1; all.kept = mine; process.pid + " " + mine';
    const files = [await notebookOf("k1.ipynb", slow, count), await notebookOf("k2.ipynb", slow, count)];
    const first = await shown(files);
    expect(first).toEqual([
      [2, expect.stringMatching(/^\d+ 1\n$/)],
      [2, expect.stringMatching(/^\d+ 1\n$/)],
    ]);
    const again = JSON.parse(JSON.stringify(first).replaceAll(" 1\\n", " 2\\n"));
    expect(await shown(files.toReversed())).toEqual(again.toReversed());
    const stranger = await notebookOf("k3.ipynb", "typeof mine");
    expect(await shown([stranger])).toEqual(["TypeScript: 1:8 - Cannot find name 'mine'."]);
  });

  test("are replaced after a cell failed in one, and after one ended between two runs", async () => {
    const pid = await notebookOf("pid.ipynb", "process.pid");
    const [before] = await shown([pid]);
    expect(await shown([await notebookOf("bad.ipynb", "setTimeout(() => process.exit(0), 50); 1")])).toEqual([
      [1, "1\n"],
    ]);
    await new Promise((done) => setTimeout(done, 500));
    const [after] = await shown([pid]);
    expect(after).toEqual([1, expect.stringMatching(/^\d+\n$/)]);
    expect(before).toEqual([1, expect.stringMatching(/^\d+\n$/)]);
  });
});

test("notebooks that rest on the same long work are begun first, one after another in one kernel", async () => {
  const pid = "process.pid";
  const files = [
    await notebookOf("t1.ipynb", "await new Promise((done) => setTimeout(done, 300)); process.pid"),
    await notebookOf("t2.ipynb", pid),
    await notebookOf("t3.ipynb", pid),
    await notebookOf("t4.ipynb", pid),
  ];
  const [, second = "", , fourth = ""] = files;
  const begun: string[] = [];
  const onProgress = ({ notebook }: Progress): void => void begun.push(notebook);
  const runner = new NotebookRunner({ cwd: notebookFolder, concurrency: 2, keepKernels: true, onProgress });
  try {
    const runs = await runner.run(files, [second, fourth]);
    const pids = runs
      .map(({ notebook }) => notebook.cells.at(-1))
      .map((cell) => JSON.stringify(cell?.source && "outputs" in cell ? cell.outputs : ""));
    expect(pids[1]).toBe(pids[3]);
    expect(pids[0]).not.toBe(pids[1]);
    expect(begun[0]).toBe(second);
  } finally {
    await runner.close();
  }
});
