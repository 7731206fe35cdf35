import type { ReviewInput } from "../../model/index.js";
import type { MissingMeasurement } from "../../refusal.js";
import type { Finding } from "../finding.js";
import { guarded, type Question, type Reply, unknown } from "../guarded.js";

/** The measurement to make where a value is missing. */
export function need(value: unknown, measure: string, example: string): MissingMeasurement | undefined {
  return value === undefined
    ? { measure, how: `measure it and write it into the journey as ${example}` }
    : undefined;
}

/** A question about the stacked case: unknown where a measurement is missing, answered otherwise. */
export function asked(
  input: ReviewInput,
  name: string,
  question: string,
  cautions: readonly string[],
  missing: readonly (MissingMeasurement | undefined)[],
  reply: (input: ReviewInput) => Reply,
): Finding {
  const about: Question = { id: `travel.${name}`, topic: "travel", subject: "stacked case", question };
  const first = missing.find((one) => one !== undefined);
  return first ? unknown(about, first, cautions) : guarded(about, () => reply(input), cautions);
}
