/** The process of one kernel: started, interrupted, ended, and how long a cell may run in it. */
import { type ChildProcess, spawn } from "node:child_process";
import { kernelEntry } from "../project-folders.js";
import { endWithInput } from "./lifetime.js";

/** How a kernel's process ended. */
interface KernelEnd {
  /** "exit code 3", "signal SIGKILL". */
  readonly how: string;
  /** The last it printed outside a cell, such as the reason of a crash. */
  readonly printed: string;
}

/** Compiler and finite elements make much that is soon thrown away; with room for it there is less to clean up. */
const roomForYoung = "--max-semi-space-size=64";

/** One kernel process. */
export class KernelProcess {
  readonly #child: ChildProcess;
  #printed = "";
  /** Resolves when the process has ended. */
  readonly ended: Promise<KernelEnd>;

  /** Starts a kernel in a folder; it ends with this process at the latest. */
  constructor(connectionFile: string, folder: string, environment: NodeJS.ProcessEnv) {
    this.#child = spawn(process.execPath, [roomForYoung, kernelEntry(), connectionFile], {
      cwd: folder,
      env: { ...environment, [endWithInput]: "1" },
      stdio: ["pipe", "pipe", "pipe"],
    });
    for (const stream of [this.#child.stdout, this.#child.stderr]) {
      stream?.setEncoding("utf8").on("data", (text: string) => {
        this.#printed = (this.#printed + text).slice(-4000);
      });
    }
    // The input's end is written to when the kernel is gone already.
    this.#child.stdin?.on("error", () => {});
    this.ended = new Promise((resolve) => {
      this.#child.once("error", ({ message }) => resolve({ how: message, printed: this.#printed }));
      this.#child.once("close", (code, signal) =>
        resolve({ how: signal ? `signal ${signal}` : `exit code ${code}`, printed: this.#printed }),
      );
    });
  }

  /** Number of the process; undefined when it did not start. */
  get pid(): number | undefined {
    return this.#child.pid;
  }

  /** Asks the running cell to stop. On Windows, where there is no such signal, this ends the kernel. */
  interrupt(): void {
    this.#child.kill("SIGINT");
  }

  /** Ends the process, whatever it does. */
  kill(): void {
    this.#child.kill("SIGKILL");
  }
}

// A signal that comes while a cell is being compiled is lost on the code that runs after.
const repeatMilliseconds = 200;

/** Interrupts a kernel after a time, and kills it if that does not help. */
export class TimeLimit {
  readonly #timers: NodeJS.Timeout[] = [];
  #passed = false;

  constructor(kernel: KernelProcess, timeout: number, grace: number) {
    const stop = (): void => {
      this.#passed = true;
      kernel.interrupt();
      this.#timers.push(setInterval(() => kernel.interrupt(), repeatMilliseconds));
      this.#timers.push(setTimeout(() => kernel.kill(), grace));
    };
    this.#timers.push(setTimeout(stop, timeout));
  }

  /** Whether the time was over. */
  get passed(): boolean {
    return this.#passed;
  }

  /** The cell has ended. */
  clear(): void {
    for (const timer of this.#timers) clearTimeout(timer);
  }
}
