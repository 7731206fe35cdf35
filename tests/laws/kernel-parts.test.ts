/** The parts of the kernel that can be looked at without one. */
import { readFileSync, statSync } from "node:fs";
import { dirname } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { describe, expect, test } from "vitest";
import { strayError, thrownError, typeError } from "../../lib/book/kernel/cell-error.js";
import { CellOutput } from "../../lib/book/kernel/cell-output.js";
import { CellRecord } from "../../lib/book/kernel/cell-record.js";
import { newConnection, socketAddress } from "../../lib/book/kernel/connection.js";
import { answerMessage, requestMessage } from "../../lib/book/kernel/message.js";
import { ExecuteQueue } from "../../lib/book/kernel/server.js";

describe("the output of a cell", () => {
  const gathered = (): { sent: string[]; output: CellOutput } => {
    const sent: string[] = [];
    const output = new CellOutput({
      stream: (name, text) => sent.push(`${name} ${text}`),
      display: ({ data }, update) => sent.push(`${update ? "update" : "display"} ${data}`),
    });
    return { sent, output };
  };

  test("becomes few messages, in the order of writing", () => {
    const { sent, output } = gathered();
    for (const text of ["a", "b"]) output.write("stdout", text);
    output.write("stderr", "c");
    output.display({ data: "d" }, false);
    output.display({ data: "e" }, true);
    output.write("stdout", "f");
    output.flush();
    output.flush();
    expect(sent).toEqual(["stdout ab", "stderr c", "display d", "update e", "stdout f"]);
  });

  test("goes out by itself after a moment", async () => {
    const { sent, output } = gathered();
    output.write("stdout", "a");
    expect(sent).toEqual([]);
    await pause(200);
    expect(sent).toEqual(["stdout a"]);
  });

  test("goes out at once when it is long", () => {
    const { sent, output } = gathered();
    output.write("stdout", "x".repeat(70_000));
    expect(sent).toHaveLength(1);
  });
});

describe("cells in a queue", () => {
  test("run one after another, and those sent before a failure are aborted after it", async () => {
    const queue = new ExecuteQueue();
    const seen: string[] = [];
    const add = (name: string, ok: boolean): void =>
      queue.add(
        async () => {
          seen.push(`${name} starts`);
          await pause(5);
          seen.push(`${name} ends`);
          return ok;
        },
        () => seen.push(`${name} aborted`),
      );
    add("a", true);
    add("b", false);
    add("c", true);
    await pause(100);
    add("d", true);
    await pause(100);
    expect(seen).toEqual(["a starts", "a ends", "b starts", "b ends", "c aborted", "d starts", "d ends"]);
  });
});

describe("the error of a cell", () => {
  test("has name, message and traceback of what was thrown", () => {
    expect(thrownError(new RangeError("too thin"))).toMatchObject({
      ename: "RangeError",
      evalue: "too thin",
    });
    expect(thrownError({ name: "DataError", message: "bad row" })).toEqual({
      ename: "DataError",
      evalue: "bad row",
      traceback: ["DataError: bad row"],
    });
    expect(thrownError({ code: 3 })).toMatchObject({ ename: "Error", evalue: "{ code: 3 }" });
  });

  test("gathers all complaints of the compiler", () => {
    const first = typeError(["%s%d:%d - %s", "", 1, 2, "one"]);
    expect(typeError(["%s%d:%d - %s", "", 3, 4, "two"], first)).toEqual({
      ename: "TypeScript",
      evalue: "1:2 - one\n3:4 - two",
      traceback: ["TypeScript: 1:2 - one", "3:4 - two"],
    });
  });

  test("says when it comes from beside the cell", () => {
    expect(strayError("a callback that ran later", "x").evalue).toBe("x (in a callback that ran later)");
  });
});

describe("a new connection", () => {
  test.each(["ipc", "tcp"] as const)(
    "over %s can be read by this user alone, and leaves nothing",
    async (transport) => {
      const { connection, file, remove } = await newConnection(transport);
      expect(JSON.parse(readFileSync(file, "utf8"))).toEqual(connection);
      if (process.platform !== "win32") {
        expect(statSync(file).mode & 0o777).toBe(0o600);
        expect(statSync(dirname(file)).mode & 0o777).toBe(0o700);
      }
      await remove();
      expect(() => statSync(dirname(file))).toThrow("ENOENT");
    },
  );

  test("over tcp has five ports of this machine", async () => {
    const { connection, remove } = await newConnection("tcp");
    const addresses = (["shell", "iopub", "stdin", "control", "hb"] as const).map((channel) =>
      socketAddress(connection, channel),
    );
    expect(new Set(addresses).size).toBe(5);
    for (const address of addresses) expect(address).toMatch(/^tcp:\/\/127\.0\.0\.1:\d{4,5}$/);
    await remove();
  });

  test("spells an ipc address as Jupyter does", async () => {
    const { connection, remove } = await newConnection("ipc");
    expect(socketAddress(connection, "iopub")).toBe(`ipc://${connection.ip}-${connection.iopub_port}`);
    await remove();
  });

  test("has a key of its own each time", async () => {
    const both = await Promise.all([newConnection("ipc"), newConnection("ipc")]);
    expect(both[0].connection.key).not.toBe(both[1].connection.key);
    await Promise.all(both.map(({ remove }) => remove()));
  });
});

describe("the record of a request", () => {
  const request = requestMessage("execute_request", "session", { code: "1" });
  const publish = (record: CellRecord, type: string, content: object): void =>
    record.receive(answerMessage(request, type, { ...content }));

  test.each([["reply first"], ["status first"]])(
    "is done when reply and last status are here, %s",
    async (order) => {
      const record = new CellRecord();
      const steps = [
        () => record.answer({ status: "ok" }),
        () => publish(record, "status", { execution_state: "idle" }),
      ];
      let done = false;
      void record.done.then(() => {
        done = true;
      });
      const [first, last] = order === "reply first" ? steps : steps.reverse();
      publish(record, "status", { execution_state: "busy" });
      first?.();
      await pause(1);
      expect(done).toBe(false);
      last?.();
      expect(await record.done).toEqual({ status: "ok" });
    },
  );

  test("joins text of one stream, and leaves messages alone that it does not know", () => {
    const record = new CellRecord();
    publish(record, "stream", { name: "stdout", text: "a" });
    publish(record, "comm_open", {});
    publish(record, "stream", { name: "stdout", text: "b" });
    publish(record, "stream", { name: "stderr", text: "c" });
    expect(record.outputs).toEqual([
      { output_type: "stream", name: "stdout", text: "ab" },
      { output_type: "stream", name: "stderr", text: "c" },
    ]);
  });

  test("replaces only the display of the same id", () => {
    const record = new CellRecord();
    for (const id of ["a", "b"]) publish(record, "display_data", { data: id, transient: { display_id: id } });
    record.updateDisplay({ data: "new", metadata: { width: 3 }, transient: { display_id: "b" } });
    expect(record.outputs).toEqual([
      { output_type: "display_data", data: "a", metadata: {} },
      { output_type: "display_data", data: "new", metadata: { width: 3 } },
    ]);
  });
});
