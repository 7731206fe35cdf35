/** The other program: whether it is there, and how it is run. */
import { spawn, spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { BoxPlace } from "../../reference/fe/box-file.js";
import { type Deck, deckText, printedDisplacements } from "./deck.js";

const program = "ccx";

/** Whether it is installed. */
export function hasGeneralSolver(): boolean {
  return spawnSync(program, ["-v"], { stdio: "ignore" }).error === undefined;
}

/** Its answer and what it took. */
export interface GeneralAnswer {
  /** What the process took. */
  readonly cost: ProcessCost;
  /** Of each node along x, y, z, mm. */
  readonly displacements: readonly BoxPlace[];
}

/** Writes the deck to a folder of its own and runs the solver there. */
export async function runGeneralSolver(deck: Deck): Promise<GeneralAnswer> {
  const folder = mkdtempSync(join(tmpdir(), "casewright-bench-"));
  try {
    writeFileSync(join(folder, "deck.inp"), deckText(deck));
    const cost = await runProcess(program, ["deck"], folder);
    return { cost, displacements: printedDisplacements(readFileSync(join(folder, "deck.dat"), "utf8")) };
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** The largest movement along z, mm. */
export function largestAcross(displacements: readonly BoxPlace[]): number {
  return displacements.reduce((most, [, , z]) => (Math.abs(z) > Math.abs(most) ? z : most), 0);
}

/** How far the deck's forces moved in their own direction, averaged by their work, mm. */
export function workWayOf({ forces }: Deck, displacements: readonly BoxPlace[], force: number): number {
  return forces.reduce((sum, [node, way, each]) => sum + each * displacements[node]![way - 1]!, 0) / force;
}

/** What a whole process took, from its start to its end. */
export interface ProcessCost {
  /** s */
  readonly wall: number;
  /** Of the processor, user and system, s. */
  readonly processor: number;
  /** Largest resident memory, MiB. */
  readonly memory: number;
  /** All that it printed. */
  readonly output: string;
}

/** How often a process is looked at, ms. */
const lookEvery = 2;
/** Ticks of the processor's clock in a second, as Linux counts them. */
const ticks = 100;

/**
 * Runs a program to its end and watches what it takes. Memory is the kernel's own high-water mark, read from /proc.
 *
 * @param program to run, on one thread
 * @param args its arguments
 * @param folder where it runs
 * @throws RangeError when the program fails, with the end of what it said
 */
export function runProcess(program: string, args: readonly string[], folder: string): Promise<ProcessCost> {
  return new Promise((resolve, reject) => {
    const start = performance.now();
    const child = spawn(program, args, { cwd: folder, env: { ...process.env, OMP_NUM_THREADS: "1" } });
    const seen = { memory: 0, processor: 0 };
    const look = setInterval(() => lookAt(child.pid, seen), lookEvery);
    let output = "";
    for (const stream of [child.stdout, child.stderr])
      stream.on("data", (data) => {
        output += data;
      });
    child.on("error", (error) => {
      clearInterval(look);
      reject(error);
    });
    child.on("close", (code) => {
      clearInterval(look);
      const wall = (performance.now() - start) / 1000;
      if (code === 0) resolve({ wall, ...seen, output });
      else reject(new RangeError(`${program} ended with ${code}: ${output.slice(-400)}`));
    });
  });
}

function lookAt(pid: number | undefined, seen: { memory: number; processor: number }): void {
  try {
    const peak = /VmHWM:\s+(\d+)/.exec(readFileSync(`/proc/${pid}/status`, "utf8"))?.[1];
    if (peak !== undefined) seen.memory = Math.max(seen.memory, Number(peak) / 1024);
    const [user = "0", system = "0"] = readFileSync(`/proc/${pid}/stat`, "utf8")
      .split(") ")[1]!
      .split(" ")
      .slice(11, 13);
    seen.processor = Math.max(seen.processor, (Number(user) + Number(system)) / ticks);
  } catch {
    // The process has just ended; what was seen last stands.
  }
}
