/** Answers the requests of Jupyter clients: which request is met by what. */

import { setTimeout as pause } from "node:timers/promises";
import type { CellError } from "./cell-error.js";
import { CellOutput } from "./cell-output.js";
import type { CellRunner } from "./cell-runner.js";
import type { Asker, KernelSockets } from "./kernel-sockets.js";
import type { Message } from "./message.js";
import { type Answers, requestAnswers } from "./request-answers.js";

/** What an execute request asks; the rest of it is not supported. */
interface ExecuteContent {
  /** The cell's text. */
  readonly code: string;
  /** Whether nothing is told of it. */
  readonly silent?: boolean;
  /** Whether it counts. */
  readonly store_history?: boolean;
  /** Whether its failure aborts cells sent along with it. */
  readonly stop_on_error?: boolean;
}

/** One kernel, from its first request to shutdown. */
export class KernelServer {
  readonly #sockets: KernelSockets;
  readonly #cells: CellRunner;
  readonly #beforeCell: () => void;
  readonly #answers: Answers;
  readonly #queue = new ExecuteQueue();
  #count = 0;
  #last: { readonly request: Message; readonly output: CellOutput } | undefined;

  /** @param beforeCell called before each cell, may print under it */
  constructor(sockets: KernelSockets, cells: CellRunner, beforeCell: () => void) {
    this.#sockets = sockets;
    this.#cells = cells;
    this.#beforeCell = beforeCell;
    this.#answers = requestAnswers(cells);
  }

  /** The output of the cell that runs, or ran last. */
  get output(): CellOutput | undefined {
    return this.#last?.output;
  }

  /** Shows an error that came up after its cell had ended. */
  reportLate(error: CellError): void {
    this.#last?.output.flush();
    if (this.#last) this.#sockets.publish(this.#last.request, "error", { ...error });
    else console.error(error.traceback.join("\n"));
  }

  /** Answers requests until a client asks for shutdown. */
  async serve(): Promise<void> {
    await this.#sockets.listen((request, asker) => this.#receive(request, asker));
  }

  #receive(request: Message, asker: Asker): void {
    if (request.header.msg_type === "execute_request") {
      this.#queue.add(
        () => this.#execute(request, asker),
        () => this.#busy(request, () => this.#sockets.reply(asker, request, { status: "aborted" })),
      );
    } else this.#busy(request, () => this.#answer(request, asker));
  }

  #busy(request: Message, work: () => void): void {
    this.#sockets.publish(request, "status", { execution_state: "busy" });
    work();
    this.#sockets.publish(request, "status", { execution_state: "idle" });
  }

  #answer(request: Message, asker: Asker): void {
    const { msg_type } = request.header;
    if (msg_type === "fresh_request") this.#count = 0;
    const answer = Object.hasOwn(this.#answers, msg_type) ? this.#answers[msg_type] : undefined;
    if (answer) this.#sockets.reply(asker, request, answer(request.content));
    else console.warn(`kernel: no answer to ${msg_type}`);
    if (msg_type === "shutdown_request") this.#shutDown();
  }

  /** Runs one cell and reports it; the result is whether those after it may run. */
  async #execute(request: Message, asker: Asker): Promise<boolean> {
    const { code: text, stop_on_error = true, ...asked } = request.content as unknown as ExecuteContent;
    const code = String(text ?? "");
    const uncounted = asked.silent === true || asked.store_history === false;
    const output = this.#startCell(request, code, uncounted);
    this.#beforeCell();
    const error = await this.#cells.run(code, output);
    output.flush();
    if (error) await this.#showError(request, error);
    const outcome = error
      ? { status: "error", ...error }
      : { status: "ok", payload: [], user_expressions: {} };
    this.#sockets.reply(asker, request, { ...outcome, execution_count: this.#count });
    this.#sockets.publish(request, "status", { execution_state: "idle" });
    return error === undefined || !stop_on_error;
  }

  #startCell(request: Message, code: string, uncounted: boolean): CellOutput {
    if (!uncounted) this.#count += 1;
    this.#sockets.publish(request, "status", { execution_state: "busy" });
    if (!uncounted) this.#sockets.publish(request, "execute_input", { code, execution_count: this.#count });
    const output = new CellOutput({
      stream: (name, text) => this.#sockets.publish(request, "stream", { name, text }),
      display: (display, update) =>
        this.#sockets.publish(request, update ? "update_display_data" : "display_data", display),
    });
    this.#last?.output.flush();
    this.#last = { request, output };
    return output;
  }

  async #showError(request: Message, error: CellError): Promise<void> {
    this.#sockets.publish(request, "error", { ...error });
    await readOthers();
  }

  #shutDown(): void {
    this.#cells.close();
    // The answer and the last status leave first.
    setImmediate(() => {
      this.#sockets.close();
      process.exit(0);
    });
  }
}

// "Run all" sends every cell at once, but a busy kernel reads them only after the failing cell.
const readingMilliseconds = 20;

/** Orders the cells that a front end sends. */
export class ExecuteQueue {
  #last: Promise<void> = Promise.resolve();
  #arrived = 0;
  #abortedUpTo = 0;

  /**
   * Runs a cell after those before it, or aborts it when one of those failed after it was sent.
   *
   * @param run resolves to whether later cells may run
   */
  add(run: () => Promise<boolean>, abort: () => void): void {
    this.#arrived += 1;
    const number = this.#arrived;
    this.#last = this.#last.then(async () => {
      if (number <= this.#abortedUpTo) abort();
      else if (!(await run())) this.#abortedUpTo = this.#arrived;
    });
  }
}

/** Waits until the cells sent along with a failing one have been read. */
async function readOthers(): Promise<void> {
  await pause(readingMilliseconds);
}
