import { expect, test } from "vitest";
import { type CodeCell, KernelDied } from "../../lib/book/index.js";
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

test("a kernel that ends after the last cell was ended by it", async () => {
  const dying = kernel({ settle: () => Promise.reject(new KernelDied("the kernel ended (exit code 5)")) });
  const { failure, cells } = await runCells(dying, [cell("a", "1"), cell("b", "2")], quiet);
  expect(failure).toEqual({ cell: { number: 2, id: "b" }, message: "the kernel ended (exit code 5)" });
  expect(cells.map((cell) => cell.cell_type === "code" && cell.execution_count)).toEqual([1, 1]);
});

test("a cell that the kernel would not run has failed", async () => {
  const refusing = kernel({
    execute: async () => ({ status: "aborted", executionCount: null, outputs: [] }),
  });
  const { failure } = await runCells(refusing, [cell("a", "1")], quiet);
  expect(failure).toEqual({ cell: { number: 1, id: "a" }, message: "the cell ended with status aborted" });
});

test("an error that comes up under an earlier cell fails that cell", async () => {
  const outputs: object[] = [];
  const late = kernel({
    execute: async () => ({ status: "ok", executionCount: 1, outputs: outputs as [] }),
    settle: async () => {
      outputs.push({ output_type: "error", ename: "Error", evalue: "late", traceback: [] });
    },
  });
  const { failure } = await runCells(late, [cell("a", "1")], quiet);
  expect(failure).toEqual({ cell: { number: 1, id: "a" }, message: "Error: late" });
});

test("what is no fault of a cell is thrown", async () => {
  const broken = kernel({ execute: () => Promise.reject(new TypeError("a fault of ours")) });
  await expect(runCells(broken, [cell("a", "1")], quiet)).rejects.toThrow("a fault of ours");
});

test("a notebook without code runs through", async () => {
  expect(await runCells(kernel({}), [cell("a", " \n")], quiet)).not.toHaveProperty("failure");
});
