/** Runs cells in a kernel of one's own, over the Jupyter messaging protocol. */
import { CellRecord } from "./cell-record.js";
import { ClientSockets } from "./client-sockets.js";
import { defaultTransport, type NewConnection, newConnection } from "./connection.js";
import {
  type CellResult,
  CellTimeout,
  type Completions,
  type ExecuteOptions,
  KernelDied,
  type KernelOptions,
} from "./kernel-contract.js";
import { KernelProcess, TimeLimit } from "./kernel-process.js";
import type { Message } from "./message.js";

/** One kernel and the connection to it. */
export class KernelClient {
  readonly #process: KernelProcess;
  readonly #connection: NewConnection;
  readonly #sockets: ClientSockets;
  readonly #records = new Map<string, CellRecord>();
  #dead: KernelDied | undefined;

  private constructor(connection: NewConnection, { cwd = process.cwd(), env = process.env }: KernelOptions) {
    this.#connection = connection;
    this.#process = new KernelProcess(connection.file, cwd, env);
    this.#sockets = new ClientSockets(connection.connection, {
      reply: ({ parent, content }) => this.#record(parent)?.answer(content),
      published: (message) => this.#receive(message),
      failed: ({ message }) => this.#die(new KernelDied(`the connection to the kernel broke: ${message}`)),
    });
    void this.#process.ended.then(({ how, printed }) =>
      this.#die(new KernelDied(`the kernel ended (${how})${printed && `\n${printed}`}`)),
    );
  }

  /**
   * Starts a kernel and waits until it answers.
   *
   * @throws KernelDied when it ends, or does not answer in time
   */
  static async start(options: KernelOptions = {}): Promise<KernelClient> {
    const client = new KernelClient(await newConnection(options.transport ?? defaultTransport), options);
    try {
      await client.#waitForAnswer(options.startTimeout ?? 120_000);
      return client;
    } catch (error) {
      await client.kill();
      throw error;
    }
  }

  /** Number of the kernel's process. */
  get pid(): number | undefined {
    return this.#process.pid;
  }

  /**
   * Runs one cell. An error in the cell is a result, not a throw.
   *
   * @throws CellTimeout when it runs too long; the kernel lives on if the interrupt stopped the cell
   * @throws KernelDied when the kernel ends, or has ended
   */
  async execute(code: string, { timeout = 60_000, grace = 1_000 }: ExecuteOptions = {}): Promise<CellResult> {
    const record = this.#request("shell", "execute_request", {
      ...{ code, silent: false, store_history: true, user_expressions: {} },
      ...{ allow_stdin: false, stop_on_error: true },
    });
    const limit = new TimeLimit(this.#process, timeout, grace);
    try {
      const { status, execution_count = null } = await record.done;
      if (limit.passed) throw new CellTimeout(timeout, record.outputs, false);
      return { status, executionCount: execution_count, outputs: record.outputs } as CellResult;
    } catch (error) {
      if (!(error instanceof KernelDied)) throw error;
      if (limit.passed) throw new CellTimeout(timeout, record.outputs, true);
      throw new KernelDied(error.message, record.outputs);
    } finally {
      limit.clear();
    }
  }

  /** Begins a new session in the same process: nothing is declared, cells count from 1. */
  async fresh(): Promise<void> {
    await this.#request("shell", "fresh_request", {}).done;
    this.#records.clear();
  }

  /** Waits until everything is here that the kernel has sent so far, also for cells that have ended. */
  async settle(): Promise<void> {
    await this.#request("shell", "kernel_info_request", {}).done;
  }

  /** Names that fit at a position (default: the end) of code. */
  async complete(code: string, position: number = code.length): Promise<Completions> {
    const request = this.#request("shell", "complete_request", { code, cursor_pos: position });
    return (await request.done) as unknown as Completions;
  }

  /** Type and comment of the name at a position; undefined where there is none. */
  async inspect(code: string, position: number = code.length): Promise<string | undefined> {
    const content = { code, cursor_pos: position, detail_level: 0 };
    const { data } = await this.#request("shell", "inspect_request", content).done;
    return (data as Record<string, string>)["text/plain"];
  }

  /** Ends the kernel, politely first, and closes the connection. */
  async shutdown({ grace = 2_000 }: Pick<ExecuteOptions, "grace"> = {}): Promise<void> {
    if (this.#dead) return this.kill();
    const timer = setTimeout(() => this.#process.kill(), grace);
    this.#request("control", "shutdown_request", { restart: false });
    await this.#process.ended;
    clearTimeout(timer);
    await this.#close();
  }

  /** Ends the kernel at once, and closes the connection. */
  async kill(): Promise<void> {
    this.#process.kill();
    await this.#process.ended;
    await this.#close();
  }

  /** @throws KernelDied when the kernel has ended */
  #request(channel: "shell" | "control", type: string, content: Message["content"]): CellRecord {
    if (this.#dead) throw this.#dead;
    const record = new CellRecord();
    this.#records.set(this.#sockets.request(channel, type, content), record);
    return record;
  }

  #record({ msg_id }: Message["parent"]): CellRecord | undefined {
    return msg_id === undefined ? undefined : this.#records.get(msg_id);
  }

  #receive(message: Message): void {
    const { header, parent, content } = message;
    // A display to update may have been opened by an earlier cell.
    if (header.msg_type === "update_display_data") {
      for (const record of this.#records.values()) record.updateDisplay(content);
    } else this.#record(parent)?.receive(message);
  }

  /**
   * Subscriptions travel by themselves, so the first answer may be heard on one socket only: ask again.
   *
   * @throws KernelDied when no answer comes in time
   */
  async #waitForAnswer(timeout: number): Promise<void> {
    const until = performance.now() + timeout;
    while (performance.now() < until) {
      const { done } = this.#request("shell", "kernel_info_request", {});
      if (await Promise.race([done, delay(150)])) return;
    }
    throw new KernelDied(`the kernel did not answer within ${timeout / 1000} s`);
  }

  #die(error: KernelDied): void {
    this.#dead ??= error;
    for (const record of this.#records.values()) record.fail(this.#dead);
  }

  async #close(): Promise<void> {
    this.#sockets.close();
    await this.#connection.remove();
  }
}

function delay(milliseconds: number): Promise<undefined> {
  return new Promise((resolve) => setTimeout(resolve, milliseconds, undefined));
}
