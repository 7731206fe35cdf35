/** The small job with some blocks of its case file said otherwise. */
import { parse, stringify } from "yaml";
import { smallJob } from "./small-job.js";

/** A block of case.yaml as plain data; null takes out what stands there. */
export interface Block {
  readonly [key: string]: unknown;
}

/** The texts of the small job with blocks laid over those of its case file, and further files. */
export function caseWith(over: Block, files: Readonly<Record<string, string>> = {}): Record<string, string> {
  const under = parse(smallJob["case.yaml"] ?? "", { intAsBigInt: false });
  return { ...smallJob, ...files, "case.yaml": stringify(laidOver(under, over)) };
}

function laidOver(under: unknown, over: unknown): unknown {
  if (!isBlock(over)) return over;
  const below: Block = isBlock(under) ? under : {};
  const said = Object.entries(over).map(([key, one]) => [key, laidOver(below[key], one)] as const);
  const all = { ...below, ...Object.fromEntries(said) };
  return Object.fromEntries(Object.entries(all).filter(([, one]) => one !== null));
}

function isBlock(one: unknown): one is Block {
  return typeof one === "object" && one !== null && !Array.isArray(one);
}
