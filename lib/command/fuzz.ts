/** npm run fuzz: odd inputs to everything that takes some, with a seed, for as long as is said. */
import { parseArgs } from "node:util";
import { fuzzers } from "./fuzz/fuzzers.js";
import { type FuzzWanted, runFuzz } from "./fuzz/run-fuzz.js";
import { usageOf } from "./help.js";

/**
 * Tries attacks, and prints each that found something with its seed and its smallest input.
 *
 * @returns exit code: 1 when anything was found, or nothing can be tried
 */
export async function fuzz(args: readonly string[]): Promise<number> {
  const wanted = wantedBy(args);
  if (!wanted) {
    console.error(usageOf("fuzz"));
    return 1;
  }
  console.log(`seed ${wanted.seed}, ${wanted.seconds / 60} min of ${wanted.kinds.join(", ")}`);
  const { tried, faults } = await runFuzz(wanted, ({ kind, seed, words, input }) =>
    console.log(
      `${kind}, seed ${seed}: ${words}\n${input}\n  again: npm run fuzz -- --only ${kind} --seed ${seed} --most 1\n`,
    ),
  );
  console.log([...tried].map(([kind, count]) => `${count} ${kind}`).join(", "));
  console.log(faults.length === 0 ? "nothing broke" : `${faults.length} broke`);
  return faults.length === 0 ? 0 : 1;
}

function wantedBy(args: readonly string[]): FuzzWanted | undefined {
  const text = { type: "string" } as const;
  try {
    const { values } = parseArgs({
      args: [...args],
      options: { minutes: text, seed: text, only: text, most: text },
    });
    const minutes = Number(values.minutes ?? 1);
    const seed = Number(values.seed ?? daySeed(new Date()));
    const most = Number(values.most ?? Number.MAX_SAFE_INTEGER);
    const kinds = values.only === undefined ? Object.keys(fuzzers) : [values.only];
    const sound =
      minutes > 0 && minutes < 10_000 && [seed, most].every((one) => Number.isSafeInteger(one) && one >= 0);
    if (!sound || !kinds.every((kind) => Object.hasOwn(fuzzers, kind))) return undefined;
    return { kinds, seed, seconds: 60 * minutes, most };
  } catch {
    return undefined;
  }
}

/** The date as a number, such as 20260301. */
export function daySeed(day: Date): number {
  return day.getFullYear() * 10_000 + (day.getMonth() + 1) * 100 + day.getDate();
}
