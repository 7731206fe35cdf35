/** What cells print, gathered into few messages and kept in order with what they show. */
import { StringDecoder } from "node:string_decoder";

/** The two text streams of a process. */
type StreamName = "stdout" | "stderr";

/** A mime bundle to show, as Jupyter's display message has it. */
export type Display = Readonly<Record<string, unknown>>;

/** Takes what a cell prints and shows. */
interface OutputTarget {
  stream(name: StreamName, text: string): void;
  display(display: Display, update: boolean): void;
}

// Small enough to feel immediate, large enough that 2 000 short lines become a few messages.
const holdMilliseconds = 20;
const holdCharacters = 65_536;

/** The output of one cell. It stays open after the cell, for what timers print later. */
export class CellOutput {
  readonly #target: OutputTarget;
  #name: StreamName = "stdout";
  #held = "";
  #heldSince = 0;
  #timer: NodeJS.Timeout | undefined;

  constructor(target: OutputTarget) {
    this.#target = target;
  }

  /** Prints text; it is sent within moments, or with the next flush. */
  write(name: StreamName, text: string): void {
    if (name !== this.#name) this.flush();
    if (this.#held === "") this.#startHolding(name);
    this.#held += text;
    // A cell that never pauses starves the timer, so the age is looked at here too.
    const old = performance.now() - this.#heldSince > holdMilliseconds;
    if (old || this.#held.length > holdCharacters) this.flush();
  }

  /** Shows a bundle after all text so far. */
  display(display: Display, update: boolean): void {
    this.flush();
    this.#target.display(display, update);
  }

  /** Sends what is held. */
  flush(): void {
    clearTimeout(this.#timer);
    const text = this.#held;
    this.#held = "";
    if (text !== "") this.#target.stream(this.#name, text);
  }

  #startHolding(name: StreamName): void {
    this.#name = name;
    this.#heldSince = performance.now();
    this.#timer = setTimeout(() => this.flush(), holdMilliseconds);
  }
}

/** Sends all that this process writes to the output that is current at the time, if there is one. */
export function captureProcessOutput(current: () => CellOutput | undefined): void {
  for (const name of ["stdout", "stderr"] as const) captureStream(name, current);
}

function captureStream(name: StreamName, current: () => CellOutput | undefined): void {
  const stream = process[name];
  const original = stream.write.bind(stream) as (...args: unknown[]) => boolean;
  const decoder = new StringDecoder("utf8");
  const write = (chunk: string | Uint8Array, ...rest: unknown[]): boolean => {
    const output = current();
    if (!output) return original(chunk, ...rest);
    output.write(name, typeof chunk === "string" ? chunk : decoder.write(Buffer.from(chunk)));
    const done = rest.at(-1);
    if (typeof done === "function") process.nextTick(done);
    return true;
  };
  stream.write = write as typeof stream.write;
}
