/** A process that tries attacks, one at a time; whoever started it ends it when one takes too long. */
import { fuzzers } from "./fuzzers.js";

/** One attack to try. */
export interface AttackWanted {
  /** The kind. */
  readonly kind: string;
  /** Its seed. */
  readonly seed: number;
}

process.on("message", async ({ kind, seed }: AttackWanted) => {
  const fuzzer = fuzzers[kind];
  if (!fuzzer) throw new RangeError(`no kind "${kind}"`);
  process.send?.({ fault: await fuzzer.attack(seed) });
});
