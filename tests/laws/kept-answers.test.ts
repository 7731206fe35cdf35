/**
 * A kept answer equals a fresh one: along random edits, whole findings of a reader that keeps what it knows against
 * those of a library that was read anew and knows nothing.
 */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, test, vi } from "vitest";
import { designReader } from "../../lib/design/index.js";
import { type Finding, reviewCase } from "../../lib/findings/index.js";
import { dataFolder, demoJob } from "../../lib/job/index.js";
import { smallJob } from "../design/small-job.js";

type Texts = Readonly<Record<string, string>>;

function folderTexts(folder: string): Texts {
  return Object.fromEntries(
    readdirSync(folder).map((file) => [file, readFileSync(join(folder, file), "utf8")]),
  );
}

/** Everything a finding says, its working with the numbers in it. */
function told(findings: readonly Finding[]): readonly string[] {
  return findings.map(({ because, demand, capacity, ...finding }) =>
    JSON.stringify({
      ...finding,
      demand: demand?.show(),
      capacity: capacity?.show(),
      because: because.map(({ id, inputs, results, warnings }) => [
        id,
        [...inputs, ...results].map((value) => value.show()),
        warnings,
      ]),
    }),
  );
}

/** One number of a file, and what it is multiplied by. */
interface Edit {
  readonly file: number;
  readonly number: number;
  readonly times: number;
}

const edits = fc.record({
  file: fc.nat(),
  number: fc.nat(),
  times: fc.constantFrom(0.97, 0.99, 1.01, 1.02, 1.05, 1.5),
});

/** The texts with one number that stands by itself changed; comments stay as they are. */
function edited(texts: Texts, { file, number, times }: Edit): Texts {
  const names = Object.keys(texts);
  const name = names[file % names.length] ?? "";
  const text = texts[name] ?? "";
  const found = [...text.matchAll(/(?<=[ ,[])\d+(?:\.\d+)?(?=[ ,\]}\n])/g)].filter(
    ({ index }) => !text.slice(text.lastIndexOf("\n", index) + 1, index).includes("#"),
  );
  const one = found[number % Math.max(found.length, 1)];
  if (!one) return texts;
  const value = String(Number((Number(one[0]) * times).toPrecision(5)));
  return { ...texts, [name]: text.slice(0, one.index) + value + text.slice(one.index + one[0].length) };
}

/** Findings by a library that was read anew; undefined where the files have problems. */
async function fresh(texts: Texts): Promise<readonly string[] | undefined> {
  vi.resetModules();
  const { readDesign } = await import("../../lib/design/index.js");
  const { reviewCase: review } = await import("../../lib/findings/index.js");
  const read = readDesign(texts);
  return "design" in read ? told(review(read.design).findings) : undefined;
}

async function holds(start: Texts, sequence: readonly Edit[]): Promise<void> {
  const reader = designReader();
  let texts = start;
  for (const edit of sequence) {
    const next = edited(texts, edit);
    const read = reader(next);
    const kept = "design" in read ? told(reviewCase(read.design).findings) : undefined;
    expect(kept).toEqual(await fresh(next));
    if (kept) texts = next;
  }
}

describe("kept answers", () => {
  test("of the small job, along random edits of all its files", { timeout: 240_000 }, async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(edits, { minLength: 3, maxLength: 5 }), (sequence) =>
        holds(smallJob, sequence),
      ),
      { numRuns: 4 },
    );
  });

  test("of the demo, along random edits of all its files", { timeout: 240_000 }, async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(edits, { minLength: 3, maxLength: 4 }), (sequence) =>
        holds(folderTexts(join(dataFolder(), demoJob)), sequence),
      ),
      { numRuns: 1 },
    );
  });
});
