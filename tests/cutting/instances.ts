import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { OneLengthJob } from "../../lib/cutting/index.js";
import { mm } from "../../lib/quantity/index.js";

/** A published list of pieces with the fewest bars that hold them; origin in instances.json. */
export interface Instance {
  readonly name: string;
  readonly fewest: number;
  readonly job: OneLengthJob;
}

interface Stored {
  readonly name: string;
  readonly bar: number;
  readonly fewest: number;
  readonly pieces: readonly (readonly [number, number])[];
}

const stored = JSON.parse(readFileSync(join(import.meta.dirname, "instances.json"), "utf8")) as {
  readonly cases: readonly Stored[];
};

export const instances: readonly Instance[] = stored.cases.map(({ name, bar, fewest, pieces }) => ({
  name,
  fewest,
  job: {
    pieces: pieces.map(([length, count]) => ({ length: mm(length), count })),
    stockLength: mm(bar),
    kerf: mm(0),
    endTrim: mm(0),
  },
}));
