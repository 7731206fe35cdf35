import { spawn } from "node:child_process";
import { once } from "node:events";
import { readdirSync } from "node:fs";
import { mkdir, mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, test, vi } from "vitest";
import { KernelClient, libraryFolder } from "../../../lib/book/index.js";
import { newConnection } from "../../../lib/book/kernel/connection.js";
import { isRunning, notebookFolder } from "./kernel.js";

/** A program that starts a kernel, prints its process number, runs a cell, and is then killed. */
async function kernelOfKilledClient(code: string): Promise<number> {
  const client = JSON.stringify(new URL(`file://${join(libraryFolder(), "book/index.js")}`).href);
  const program = spawn(process.execPath, [
    "--input-type=module",
    "--eval",
    `import { KernelClient } from ${client};
     const kernel = await KernelClient.start({ cwd: ${JSON.stringify(notebookFolder)} });
     kernel.execute(${JSON.stringify(code)});
     setTimeout(() => console.log(kernel.pid), 500);`,
  ]);
  const [pid] = await once(program.stdout, "data");
  program.kill("SIGKILL");
  return Number(String(pid));
}

describe("a kernel's process ends", () => {
  test("with shutdown, and nothing of it is left", async () => {
    const before = process.env.TMPDIR;
    const folder = await mkdtemp(join(tmpdir(), "casewright-test-"));
    process.env.TMPDIR = folder;
    try {
      const kernel = await KernelClient.start({ cwd: notebookFolder });
      expect(readdirSync(folder)).toHaveLength(1);
      await kernel.shutdown();
      expect(readdirSync(folder)).toEqual([]);
      expect(isRunning(kernel.pid)).toBe(false);
    } finally {
      if (before === undefined) delete process.env.TMPDIR;
      else process.env.TMPDIR = before;
      await rm(folder, { recursive: true });
    }
  });

  test("what a killed one left is cleared by the next, and what another uses stays", async () => {
    const before = process.env.TMPDIR;
    const folder = await mkdtemp(join(tmpdir(), "casewright-test-"));
    process.env.TMPDIR = folder;
    try {
      const ended = spawn(process.execPath, ["--version"]);
      await once(ended, "exit");
      const [left, used, other] = [
        `casewright-kernel-${ended.pid}-abc123`,
        `casewright-kernel-${process.pid}-abc123`,
        "note",
      ];
      for (const name of [left, used, other]) await mkdir(join(folder, name));
      const { remove } = await newConnection("ipc");
      expect(readdirSync(folder)).not.toContain(left);
      expect(readdirSync(folder)).toEqual(expect.arrayContaining([used, other]));
      await remove();
    } finally {
      if (before === undefined) delete process.env.TMPDIR;
      else process.env.TMPDIR = before;
      await rm(folder, { recursive: true });
    }
  });

  test("with shutdown while a cell loops", async () => {
    const kernel = await KernelClient.start({ cwd: notebookFolder });
    const cell = kernel.execute("await null; while (true) {}");
    const failed = expect(cell).rejects.toThrow("the kernel ended (signal SIGKILL)");
    await kernel.shutdown({ grace: 300 });
    await failed;
    expect(isRunning(kernel.pid)).toBe(false);
  });

  test.each([
    ["waits", "await new Promise(() => {})"],
    ["loops", "while (true) {}"],
  ])("when its client was killed and its cell %s", async (_state, code) => {
    const pid = await kernelOfKilledClient(code);
    await vi.waitFor(() => expect(isRunning(pid)).toBe(false), { timeout: 10_000 });
  });
});
