import { describe, expect, test, vi } from "vitest";
import { CellTimeout, KernelClient, KernelDied } from "../../../lib/book/index.js";
import { errorOf, isRunning, notebookFolder, oneKernel, printed, type Run } from "./kernel.js";

const thrownBy = (run: Run, ...cell: Parameters<Run>): Promise<unknown> =>
  run(...cell).then(
    () => undefined,
    (error: unknown) => error,
  );

describe("in a session that goes on", () => {
  const { run } = oneKernel();

  test.each([
    ["an error", 'throw new RangeError("span must be positive")', "RangeError: span must be positive"],
    ["a text", 'throw "no plywood"', "Error: no plywood"],
    ["nothing", "throw undefined", "Error: undefined"],
    ["an error after an await", 'await null; throw new TypeError("late")', "TypeError: late"],
    [
      "a refusal of the library, which says what would give the answer,",
      'import { Refusal } from "casewright"; throw new Refusal("no load", { measure: "the load", how: "Weigh it." })',
      "Refusal: no load\nWhat would give it: the load. Weigh it.",
    ],
    [
      "an error of the library",
      'import { Length } from "casewright"; Length.read("3 apples")',
      /^RangeError: /,
    ],
  ])("a cell that throws %s fails with its name and message", async (_what, code, message) => {
    const { status, outputs } = await run(code);
    expect(status).toBe("error");
    expect(errorOf(outputs)).toMatch(message);
    expect(await run("1 + 1")).toMatchObject({ status: "ok", outputs: [{ text: "2\n" }] });
  });

  test("a name that the library does not have is said without its inner types", async () => {
    const { outputs } = await run('import { screw } from "casewright"; screw.withdrawel()');
    expect(errorOf(outputs)).toMatch(
      /Property 'withdrawel' does not exist here; press Tab after the dot to see what does\.$/,
    );
    expect(JSON.stringify(outputs)).not.toContain("TradeOf");
  });

  test("what the library throws begins with its words, not with a line of its code", async () => {
    const { outputs } = await run('import { Length } from "casewright"; Length.read("3 apples")');
    const [traceback = []] = outputs.map((output) =>
      output.output_type === "error" ? output.traceback : [],
    );
    expect(traceback[0]).toMatch(/^RangeError: /);
  });

  test("the traceback ends where the cell does", async () => {
    const { outputs } = await run('function saw() { throw new Error("blunt"); }\nsaw()');
    const traceback = outputs
      .flatMap((output) => (output.output_type === "error" ? output.traceback : []))
      .join("\n");
    expect(traceback).toMatch(/Error: blunt\n +at saw/);
    expect(traceback).not.toMatch(/node:vm|tslab|casewright/);
  });

  test("a cell that never ends is interrupted, and the next one runs", async () => {
    const error = await thrownBy(run, 'console.log("on"); while (true) {}', { timeout: 300, grace: 30_000 });
    expect(error).toBeInstanceOf(CellTimeout);
    expect(error).toMatchObject({
      message: "the cell ran longer than 0.3 s; it was interrupted",
      killed: false,
    });
    expect(printed((error as CellTimeout).outputs)).toBe("on\n");
    expect(await run("1 + 1")).toMatchObject({ status: "ok", outputs: [{ text: "2\n" }] });
  });

  test("a cell that waits for ever is interrupted, and the next one runs", async () => {
    expect(await thrownBy(run, "await new Promise(() => {})", { timeout: 300, grace: 30_000 })).toMatchObject(
      {
        message: "the cell ran longer than 0.3 s; it was interrupted",
      },
    );
    expect(await run("1 + 1")).toMatchObject({ status: "ok" });
  });

  test.each([
    ["rejected at once", 'Promise.reject(new Error("glue")); 1', "Error: glue (in a promise nobody awaited)"],
    [
      "rejected in an async function",
      '(async () => { await null; throw new RangeError("dry"); })(); 1',
      /^RangeError: dry \(in a promise/,
    ],
    ["rejected with a text", 'void Promise.reject("wet"); 1', "Error: wet (in a promise nobody awaited)"],
    [
      "of a timer that is due",
      'setTimeout(() => { throw new Error("tick"); }, 0); await new Promise((d) => setTimeout(d, 5)); 1',
      "Error: tick (in a callback that ran later)",
    ],
  ])("a promise nobody awaited, %s, fails its own cell", async (_when, code, message) => {
    const { status, outputs } = await run(code);
    expect(status).toBe("error");
    expect(errorOf(outputs)).toMatch(message);
    expect(await run("1 + 1")).toMatchObject({ status: "ok", outputs: [{ text: "2\n" }] });
  });

  test("a rejection that is caught is none", async () => {
    expect(await run('Promise.reject(new Error("x")).catch(() => {}); 1')).toMatchObject({ status: "ok" });
  });

  test("a promise rejected while no cell runs is reported under the last cell", async () => {
    const result = await run('setTimeout(() => Promise.reject(new Error("much later")), 400); 1');
    expect(result.status).toBe("ok");
    await vi.waitFor(
      () => expect(errorOf(result.outputs)).toBe("Error: much later (in a promise nobody awaited)"),
      { timeout: 10_000 },
    );
    expect(await run("1 + 1")).toMatchObject({ status: "ok", outputs: [{ text: "2\n" }] });
  });

  test("a promise rejected while a later cell runs fails that cell", async () => {
    await run("let spoil: (why: Error) => void = () => {}; new Promise((_, no) => { spoil = no; }); 1");
    const { status, outputs } = await run('spoil(new Error("later")); 2');
    expect([status, errorOf(outputs)]).toEqual(["error", "Error: later (in a promise nobody awaited)"]);
  });

  test("cells sent along with a failing one are not run, those sent after its reply are", async () => {
    const sent = [
      run("while (Date.now() % 100 < 50);\nthrow new Error('first')"),
      run("console.log('ran')"),
      run("3"),
    ];
    const statuses = (await Promise.all(sent)).map(({ status }) => status);
    expect(statuses).toEqual(["error", "aborted", "aborted"]);
    expect(await run("4")).toMatchObject({ status: "ok" });
  });
});

describe("a kernel that cannot go on", () => {
  test("is killed when a loop after an await ignores the interrupt", async () => {
    const kernel = await KernelClient.start({ cwd: notebookFolder });
    const error = await thrownBy(
      (code, limits) => kernel.execute(code, limits),
      'console.log("on"); await null; while (true) {}',
      { timeout: 500, grace: 300 },
    );
    expect(error).toMatchObject({
      name: "CellTimeout",
      killed: true,
      message: "the cell ran longer than 0.5 s; it ignored the interrupt, so its kernel was killed",
    });
    await expect(kernel.execute("1")).rejects.toThrow("the kernel ended (signal SIGKILL)");
    await kernel.shutdown();
    expect(isRunning(kernel.pid)).toBe(false);
  });

  test("is reported when a cell exits, with what the cell had printed", async () => {
    const kernel = await KernelClient.start({ cwd: notebookFolder });
    const error = await thrownBy((code) => kernel.execute(code), 'console.log("bye"); process.exit(3)');
    expect(error).toBeInstanceOf(KernelDied);
    expect(error).toMatchObject({ message: "the kernel ended (exit code 3)" });
    expect(printed((error as KernelDied).outputs)).toBe("bye\n");
    await kernel.shutdown();
  });

  test("is reported when it does not start", async () => {
    await expect(KernelClient.start({ cwd: "/no/such/folder" })).rejects.toThrow(
      /^the kernel ended \(.*ENOENT/,
    );
  });

  test("is reported when it does not answer in time", async () => {
    await expect(KernelClient.start({ cwd: notebookFolder, startTimeout: 1 })).rejects.toThrow(
      "the kernel did not answer within 0.001 s",
    );
  });
});
