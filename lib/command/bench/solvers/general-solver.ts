/** The general-purpose solver that ours is measured against: Debian's calculix-ccx. */
import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { BoxPlace } from "../../reference/fe/box-file.js";
import { type Deck, deckText, printedDisplacements } from "./deck.js";
import { type ProcessCost, runProcess } from "./run-process.js";

const program = "ccx";

/** Whether it is installed. */
export function hasGeneralSolver(): boolean {
  return spawnSync(program, ["-v"], { stdio: "ignore" }).error === undefined;
}

/** Its answer and what it took. */
export interface GeneralAnswer {
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
