/** Random cases tried one after another, with what failed made small and printed. */

import { type CaseContent, textsOf } from "./case-content.js";
import { type CaseFault, type CaseTrial, faultsOf } from "./case-faults.js";
import { randomCase } from "./random-case.js";
import { shrunkCase } from "./shrunk-case.js";

/** Which cases are tried. */
export interface CasesWanted {
  /** How many. */
  readonly cases: number;
  /** The seed of the first; the others follow it. */
  readonly seed: number;
  /** How many of each hundred are bent by finite elements. */
  readonly bent: number;
  /** Seconds spent on making the case of a new kind of fault small. */
  readonly shrinking: number;
}

/**
 * Tries cases and prints each that failed with its smallest files.
 *
 * @param print told of each line
 * @returns exit code: 1 when any failed
 */
export function runCases(
  { cases, seed, bent, shrinking }: CasesWanted,
  print: (line: string) => void,
): number {
  const start = process.cpuUsage();
  const kinds = new Map<string, number>();
  let failed = 0;
  for (let one = seed; one < seed + cases; one++) {
    const given = randomCase(one);
    const trial: CaseTrial = { mirrored: one % 4 === 0, bent: (one * 37) % 100 < bent };
    const [first, ...others] = faultsIn(given, trial);
    if (!first) continue;
    failed++;
    const known = [first, ...others].every(({ kind }) => kinds.has(kind));
    for (const { kind } of [first, ...others]) kinds.set(kind, (kinds.get(kind) ?? 0) + 1);
    print(`seed ${one}: ${[first, ...others].map(({ words }) => words).join("\n  ")}`);
    if (!known) printFiles(shrunkCase(given, stillFails(first, trial), shrinking), print);
  }
  const { user, system } = process.cpuUsage(start);
  print(`${cases} cases from seed ${seed}, ${failed} failed, ${((user + system) / 1e6).toFixed(1)} s of CPU`);
  for (const [kind, count] of kinds) print(`  ${count} x ${kind}`);
  return failed > 0 ? 1 : 0;
}

/** What is wrong with a case, an error outside all that is tried included. */
function faultsIn(given: CaseContent, trial: CaseTrial): readonly CaseFault[] {
  try {
    return faultsOf(given, trial);
  } catch (error) {
    const { message, stack } = error as Error;
    return [{ kind: `error: ${message}`, words: stack ?? message }];
  }
}

function stillFails({ kind }: CaseFault, trial: CaseTrial): (smaller: CaseContent) => boolean {
  return (smaller) => faultsIn(smaller, trial).some((fault) => fault.kind === kind);
}

function printFiles(given: CaseContent, print: (line: string) => void): void {
  for (const [file, text] of Object.entries(textsOf(given))) print(`--- ${file}\n${text}`);
}
