/** Attacks in turns until the time is over, each kind for as long as the others, with what they found. */
import { type ChildProcess, fork } from "node:child_process";
import type { FuzzFault } from "./fuzzer.js";

/** Which attacks are tried, and for how long. */
export interface FuzzWanted {
  /** Kinds that take turns. */
  readonly kinds: readonly string[];
  /** The seed of the first of each kind; the others follow it. */
  readonly seed: number;
  /** Seconds, over all kinds. */
  readonly seconds: number;
  /** So many of each kind at most. */
  readonly most: number;
}

/** What was found. */
export interface FuzzFound {
  /** How many attacks of each kind were tried. */
  readonly tried: ReadonlyMap<string, number>;
  /** Those that found something. */
  readonly faults: readonly (FuzzFault & { readonly kind: string; readonly seed: number })[];
}

/** Seconds of one kind's turn. */
const turn = 2;
/** Seconds after which an attack counts as hanging: far more than the slowest takes on a machine with ten times too much to do. */
const patience = 240;

/**
 * Tries attacks.
 *
 * @param told called with each fault as it is found
 */
export async function runFuzz(
  { kinds, seed, seconds, most }: FuzzWanted,
  told: (fault: FuzzFound["faults"][number]) => void,
): Promise<FuzzFound> {
  const tried = new Map(kinds.map((kind) => [kind, 0]));
  const faults: FuzzFound["faults"][number][] = [];
  const attacker = new AttackProcess();
  const end = performance.now() + 1000 * seconds;
  const left = (kind: string): boolean => (tried.get(kind) ?? 0) < most;
  while (performance.now() < end && kinds.some(left)) {
    for (const kind of kinds) {
      const until = Math.min(end, performance.now() + 1000 * turn);
      while (performance.now() < until && left(kind)) {
        const one = seed + (tried.get(kind) ?? 0);
        tried.set(kind, one - seed + 1);
        const fault = await attacker.attack(kind, one);
        if (!fault) continue;
        faults.push({ kind, seed: one, ...fault });
        told({ kind, seed: one, ...fault });
      }
    }
  }
  attacker.end();
  return { tried, faults };
}

/** A process that is begun anew when an attack hangs or ends it. */
class AttackProcess {
  #child: ChildProcess | undefined;

  async attack(kind: string, seed: number): Promise<FuzzFault | undefined> {
    this.#child ??= fork(new URL("./attack-process.js", import.meta.url));
    const child = this.#child;
    const gone = (words: string): FuzzFault => ({ words, input: "its seed alone gives it" });
    const { fault, alive } = await new Promise<{ fault?: FuzzFault; alive: boolean }>((resolve) => {
      const over = (words: string): void => {
        clearTimeout(late);
        resolve({ fault: gone(words), alive: false });
      };
      const late = setTimeout(over, 1000 * patience, `it takes longer than ${patience} s`);
      const ended = (code: number | null): void => over(`the process ended with ${code}`);
      child.once("exit", ended);
      child.once("message", (answer: { fault?: FuzzFault }) => {
        clearTimeout(late);
        child.off("exit", ended);
        resolve({ ...answer, alive: true });
      });
      child.send({ kind, seed });
    });
    if (!alive) this.end();
    return fault;
  }

  end(): void {
    this.#child?.kill("SIGKILL");
    this.#child = undefined;
  }
}
