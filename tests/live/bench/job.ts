/** A small job for tests of the bench. */
import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { type Design, readDesign } from "../../../lib/design/index.js";
import { type Review, reviewCase } from "../../../lib/findings/index.js";

const jobs = resolve(import.meta.dirname, "../../jobs");
const tables = readdirSync(join(jobs, "tables"));

/** Its files, by name. */
export const boxTexts: Readonly<Record<string, string>> = Object.fromEntries([
  ["case.yaml", readFileSync(join(jobs, "bare-box.yaml"), "utf8")],
  ...tables.map((name) => [name, readFileSync(join(jobs, "tables", name), "utf8")]),
]);

/** What files say. */
export function designIn(texts: Readonly<Record<string, string>>): Design {
  const read = readDesign(texts);
  if ("problems" in read) throw new Error(JSON.stringify(read.problems));
  return read.design;
}

/** The job with its review. */
export function boxJob(): Design & { readonly review: Review } {
  const design = designIn(boxTexts);
  return { ...design, review: reviewCase(design) };
}
