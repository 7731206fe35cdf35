import { expect, test } from "vitest";
import { type CellResult, CellTimeout, type CodeCell, KernelDied } from "../../lib/book/index.js";
import { type CellKernel, runCells } from "../../lib/book/run-cells.js";

const cell = (id: string, source: string): CodeCell => ({
  cell_type: "code",
  ...{ id, source, metadata: {}, execution_count: null, outputs: [] },
});
const kernel = (answers: Partial<CellKernel>): CellKernel => ({
  execute: async () => ({ status: "ok", executionCount: 1, outputs: [] }),
  settle: async () => {},
  ...answers,
});
const quiet = { timeout: 60_000, onCell: () => {} };

/** Runs cells in one kernel. */
const runIn = (one: CellKernel, ...cells: CodeCell[]): ReturnType<typeof runCells> =>
  runCells(async () => one, cells, quiet);
const outputsOf = ({ cells }: Awaited<ReturnType<typeof runCells>>): unknown[] =>
  cells.map((one) => one.cell_type === "code" && one.outputs);
const complaint = (evalue: string, ename = "TypeScript"): CellResult => ({
  status: "error",
  executionCount: 1,
  outputs: [{ output_type: "error", ename, evalue, traceback: [] }],
});

test("a kernel that ends after the last cell was ended by it", async () => {
  const dying = kernel({ settle: () => Promise.reject(new KernelDied("the kernel ended (exit code 5)")) });
  const { failures, cells } = await runIn(dying, cell("a", "1"), cell("b", "2"));
  expect(failures).toEqual([{ cell: { number: 2, id: "b" }, message: "the kernel ended (exit code 5)" }]);
  expect(cells.map((cell) => cell.cell_type === "code" && cell.execution_count)).toEqual([1, 1]);
});

test("a cell that the kernel would not run has failed", async () => {
  const refusing = kernel({
    execute: async () => ({ status: "aborted", executionCount: null, outputs: [] }),
  });
  const { failures } = await runIn(refusing, cell("a", "1"));
  expect(failures).toEqual([{ cell: { number: 1, id: "a" }, message: "the cell ended with status aborted" }]);
});

test("an error that comes up under an earlier cell fails that cell", async () => {
  const outputs: object[] = [];
  const late = kernel({
    execute: async () => ({ status: "ok", executionCount: 1, outputs: outputs as [] }),
    settle: async () => {
      outputs.push({ output_type: "error", ename: "Error", evalue: "late", traceback: [] });
    },
  });
  const { failures } = await runIn(late, cell("a", "1"));
  expect(failures).toEqual([{ cell: { number: 1, id: "a" }, message: "Error: late" }]);
});

test("what is no fault of a cell is thrown", async () => {
  const broken = kernel({ execute: () => Promise.reject(new TypeError("a fault of ours")) });
  await expect(runIn(broken, cell("a", "1"))).rejects.toThrow("a fault of ours");
});

test("a notebook without code runs through", async () => {
  expect(await runIn(kernel({}), cell("a", " \n"))).toMatchObject({ failures: [] });
});

test("a cell that needs a name of a failed one is not run, says so, and is no failure; others run", async () => {
  const failing = kernel({
    execute: async (code) => {
      if (code.startsWith("const")) return complaint("no ply", "Error");
      if (code.includes("plan")) return complaint("1:1 - Cannot find name 'plan'. Did you mean 'plane'?");
      if (code.includes("stray")) return complaint("1:1 - Cannot find name 'stray'.");
      return { status: "ok", executionCount: 2, outputs: [] };
    },
  });
  const run = await runIn(
    failing,
    cell("a", "const plan = 1"),
    cell("b", "plan"),
    cell("c", "stray"),
    cell("d", "4"),
  );
  expect(run.failures).toEqual([
    { cell: { number: 1, id: "a" }, message: "Error: no ply" },
    { cell: { number: 3, id: "c" }, message: "TypeScript: 1:1 - Cannot find name 'stray'." },
  ]);
  expect(outputsOf(run)).toMatchObject([
    [{ evalue: "no ply" }],
    [{ evalue: 'This was not worked out: it needs "plan" of cell 1, which did not give it.' }],
    [{ evalue: "1:1 - Cannot find name 'stray'." }],
    [],
  ]);
});

test("an answer that cannot be given is no failure", async () => {
  const refusing = kernel({ execute: async () => complaint("no straps yet", "Refusal") });
  const run = await runIn(refusing, cell("a", "1"));
  expect(run.failures).toEqual([]);
  expect(outputsOf(run)).toMatchObject([[{ evalue: "no straps yet" }]]);
});

test("after a cell that ended its kernel, the cells that ran well are run again in a new one", async () => {
  const ran: string[] = [];
  const started = { kernels: 0 };
  const ready = async (): Promise<CellKernel> => {
    const number = ++started.kernels;
    return kernel({
      execute: async (code) => {
        ran.push(`${number}: ${code}`);
        if (code === "stop") throw new KernelDied("the kernel ended (exit code 4)");
        return code === "bad" ? complaint("bad", "Error") : { status: "ok", executionCount: 1, outputs: [] };
      },
    });
  };
  const cells = ["good", "bad", "stop", "next"].map((code) => cell(code, code));
  const { failures } = await runCells(ready, cells, quiet);
  expect(ran).toEqual(["1: good", "1: bad", "1: stop", "2: good", "2: next"]);
  expect(failures.map(({ cell }) => cell.id)).toEqual(["bad", "stop"]);
});

test("where no kernel starts again, the cells that are left say so", async () => {
  let started = false;
  const ready = async (): Promise<CellKernel> => {
    if (started) throw new KernelDied("no memory");
    started = true;
    return kernel({ execute: () => Promise.reject(new KernelDied("the kernel ended (SIGKILL)")) });
  };
  const run = await runCells(ready, [cell("a", "1"), cell("b", "2")], quiet);
  expect(run.failures.map(({ cell }) => cell.id)).toEqual(["a"]);
  expect(outputsOf(run).at(-1)).toMatchObject([{ evalue: "This was not worked out: its kernel has ended." }]);
});

test("a cell that is stopped says what would give it longer", async () => {
  const slow = kernel({ execute: () => Promise.reject(new CellTimeout(60_000, [], false)) });
  const { failures } = await runIn(slow, cell("a", "1"));
  expect(failures.map(({ message }) => message)).toEqual([
    "the cell ran longer than 60 s; it was interrupted; --cell-time 120 gives every cell twice as long",
  ]);
});
