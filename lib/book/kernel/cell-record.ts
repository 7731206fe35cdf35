/** What one request brought: its reply, and the outputs published for it. */
import type { DisplayOutput, Output } from "../notebook.js";
import type { CellError } from "./cell-error.js";
import type { Message } from "./message.js";

/** One display that a later message may replace. */
interface OpenDisplay {
  /** The id under which it may be replaced. */
  readonly id: string;
  /** Its place among the outputs, from 0. */
  readonly position: number;
}

/** Gathers the messages that belong to one request. */
export class CellRecord {
  readonly #outputs: Output[] = [];
  readonly #displays: OpenDisplay[] = [];
  #settle: (reply: Message["content"]) => void = () => {};
  #fail: (error: Error) => void = () => {};
  #reply: Message["content"] | undefined;
  #idle = false;
  /** Resolves to the reply once all outputs are here too. */
  readonly done: Promise<Message["content"]>;

  constructor() {
    this.done = new Promise((resolve, reject) => {
      this.#settle = resolve;
      this.#fail = reject;
    });
    // Whoever asked may have given up waiting.
    this.done.catch(() => {});
  }

  /** What the cell printed and showed so far; what comes later is added. */
  get outputs(): readonly Output[] {
    return this.#outputs;
  }

  /** The kernel's reply came. */
  answer(reply: Message["content"]): void {
    this.#reply = reply;
    this.#settleIfComplete();
  }

  /** No reply will come. */
  fail(error: Error): void {
    this.#fail(error);
  }

  /** A message was published for this request. */
  receive({ header, content }: Message): void {
    const take = this.#published[header.msg_type];
    take?.(content);
  }

  /** Replaces what is shown under an id. */
  updateDisplay(content: Message["content"]): void {
    for (const { position } of this.#displays.filter(({ id }) => id === displayId(content))) {
      this.#outputs[position] = displayOutput(content);
    }
  }

  readonly #published: Readonly<Record<string, (content: Message["content"]) => void>> = {
    status: ({ execution_state }) => {
      this.#idle ||= execution_state === "idle";
      this.#settleIfComplete();
    },
    stream: ({ name, text }) => this.#print(name as "stdout" | "stderr", String(text)),
    display_data: (content) => {
      const id = displayId(content);
      if (id !== undefined) this.#displays.push({ id, position: this.#outputs.length });
      this.#outputs.push(displayOutput(content));
    },
    error: (content) => {
      this.#outputs.push({ output_type: "error", ...(content as unknown as CellError) });
    },
  };

  #print(name: "stdout" | "stderr", text: string): void {
    const last = this.#outputs.at(-1);
    if (last?.output_type !== "stream" || last.name !== name) {
      this.#outputs.push({ output_type: "stream", name, text });
    } else {
      this.#outputs[this.#outputs.length - 1] = { ...last, text: last.text + text };
    }
  }

  #settleIfComplete(): void {
    if (this.#reply && this.#idle) this.#settle(this.#reply);
  }
}

function displayId({ transient }: Message["content"]): string | undefined {
  return (transient as { display_id?: string } | undefined)?.display_id;
}

function displayOutput({ data, metadata }: Message["content"]): DisplayOutput {
  return {
    output_type: "display_data",
    data: data as DisplayOutput["data"],
    metadata: (metadata ?? {}) as DisplayOutput["metadata"],
  };
}
