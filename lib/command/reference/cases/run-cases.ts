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
  /** About how many of each hundred are bent by finite elements. */
  readonly bent: number;
  /** Seconds spent on making the case of a new kind of fault small. */
  readonly shrinking: number;
  /** Seconds from one line of progress to the next. */
  readonly progress: number;
}

/**
 * Tries cases and prints each that failed with its smallest files.
 *
 * @param print told of each line
 * @returns exit code: 1 when any failed
 */
export function runCases(
  { cases, seed, bent, shrinking, progress }: CasesWanted,
  print: (line: string) => void,
): number {
  const clock = stopwatch();
  const kinds = new Map<string, number>();
  let failed = 0;
  let told = 0;
  for (let one = seed; one < seed + cases; one++) {
    const given = randomCase(one);
    const trial = trialOf(one, bent);
    const [first, ...others] = faultsIn(given, trial);
    if (clock().wall > told + progress) {
      told = clock().wall;
      print(progressLine(one + 1 - seed, cases, failed, clock()));
    }
    if (!first) continue;
    failed++;
    const known = [first, ...others].every(({ kind }) => kinds.has(kind));
    for (const { kind } of [first, ...others]) kinds.set(kind, (kinds.get(kind) ?? 0) + 1);
    print(`seed ${one}: ${[first, ...others].map(({ words }) => words).join("\n  ")}`);
    if (!known) printFiles(shrunkCase(given, stillFails(first, trial), shrinking), print);
  }
  print(`${cases} cases from seed ${seed}, ${failed} failed, ${clock().processor.toFixed(1)} s of CPU`);
  for (const [kind, count] of kinds) print(`  ${count} x ${kind}`);
  return failed > 0 ? 1 : 0;
}

/** Of so many cases one is mirrored: a number that shares no factor with those by which cases take their kind from their seed. */
const mirroredOf = 11;

/** How the case of a seed is tried. A mirrored one takes half as long again, a bent one twenty times as long. */
function trialOf(seed: number, bent: number): CaseTrial {
  return { mirrored: seed % mirroredOf === 0, bent: (seed * 37) % 101 < bent };
}

/** Seconds since now: by the clock, and of the processor. */
function stopwatch(): () => { readonly wall: number; readonly processor: number } {
  const [start, used] = [performance.now(), process.cpuUsage()];
  return () => {
    const { user, system } = process.cpuUsage(used);
    return { wall: (performance.now() - start) / 1000, processor: (user + system) / 1e6 };
  };
}

function progressLine(
  done: number,
  cases: number,
  failed: number,
  { wall, processor }: { readonly wall: number; readonly processor: number },
): string {
  const left = Math.ceil((((cases - done) / done) * wall) / 60);
  const each = (processor / done).toFixed(2);
  return `${done} of ${cases} cases, ${failed} failed, ${each} s of CPU each, about ${left} min left`;
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
