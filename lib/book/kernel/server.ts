/** Answers the requests of Jupyter clients: which request is met by what. */
import { type CellError, thrownError } from "./cell-error.js";
import { CellOutput } from "./cell-output.js";
import type { CellRunner } from "./cell-runner.js";
import { ExecuteQueue, readOthers } from "./execute-queue.js";
import { kernelInfo } from "./kernel-info.js";
import type { Asker, KernelSockets } from "./kernel-sockets.js";
import type { Message } from "./message.js";

type Content = Message["content"];

/** What an execute request asks; the rest of it is not supported. */
interface ExecuteContent {
  readonly code: string;
  readonly silent?: boolean;
  readonly store_history?: boolean;
  readonly stop_on_error?: boolean;
}

/** What completion and inspection ask. */
interface PositionContent {
  readonly code: string;
  readonly cursor_pos: number;
}

/** One kernel, from its first request to shutdown. */
export class KernelServer {
  readonly #sockets: KernelSockets;
  readonly #cells: CellRunner;
  readonly #beforeCell: () => void;
  readonly #queue = new ExecuteQueue();
  #count = 0;
  #last: { readonly request: Message; readonly output: CellOutput } | undefined;

  /** @param beforeCell called before each cell, may print under it */
  constructor(sockets: KernelSockets, cells: CellRunner, beforeCell: () => void) {
    this.#sockets = sockets;
    this.#cells = cells;
    this.#beforeCell = beforeCell;
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
    const answer = this.#answers[msg_type];
    if (!answer) return void process.stderr.write(`kernel: no answer to ${msg_type}\n`);
    this.#sockets.reply(
      asker,
      request,
      attempt(() => answer(request.content)),
    );
    if (msg_type === "shutdown_request") this.#shutDown();
  }

  readonly #answers: Readonly<Record<string, (content: Content) => Content>> = {
    kernel_info_request: () => kernelInfo,
    comm_info_request: () => ({ status: "ok", comms: {} }),
    history_request: () => ({ status: "ok", history: [] }),
    is_complete_request: ({ code }) => {
      const { completed, indent } = this.#cells.isComplete(String(code));
      return completed ? { status: "complete" } : { status: "incomplete", indent: indent ?? "" };
    },
    complete_request: (content) => {
      const { code, cursor_pos } = content as unknown as PositionContent;
      const { start, end, candidates } = this.#cells.complete(code, cursor_pos);
      return { status: "ok", matches: candidates, cursor_start: start, cursor_end: end, metadata: {} };
    },
    inspect_request: (content) => {
      const { code, cursor_pos } = content as unknown as PositionContent;
      const text = this.#cells.inspect(code, cursor_pos);
      const data = text === undefined ? {} : { "text/plain": text };
      return { status: "ok", found: text !== undefined, data, metadata: {} };
    },
    interrupt_request: () => {
      this.#cells.interrupt();
      return { status: "ok" };
    },
    shutdown_request: ({ restart }) => ({ status: "ok", restart: restart === true }),
  };

  /** Runs one cell and reports it; the result is whether those after it may run. */
  async #execute(request: Message, asker: Asker): Promise<boolean> {
    const {
      code,
      silent = false,
      store_history = true,
      stop_on_error = true,
    } = request.content as unknown as ExecuteContent;
    const output = this.#startCell(request, code, silent || !store_history);
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

function attempt(answer: () => Content): Content {
  try {
    return answer();
  } catch (error) {
    return { status: "error", ...thrownError(error) };
  }
}
