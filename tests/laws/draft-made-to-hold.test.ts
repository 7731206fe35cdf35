/** The demo's first draft, of which 23 questions failed, ends in a design in which nothing of safety or strength fails. */
import { mkdtemp, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { failingOf, graveTiers, improve, textsWith } from "../../lib/improve/index.js";
import { openJob } from "../../lib/job/index.js";

test("the draft gets a design that holds when its written files are reviewed, tops and all", async () => {
  const draft = openJob("soil-lab-draft");
  const stop = new AbortController();
  const { designs, failing } = await improve(draft, {
    seconds: 600,
    signal: stop.signal,
    onProgress: (progress) => {
      if (progress.designs > 0) stop.abort();
    },
  });
  const tops = failing.map(({ id }) => id).filter((id) => id.startsWith("strength.person."));
  expect(tops).toEqual(["strength.person.lower.top", "strength.person.upper.top"]);
  const [design] = designs;
  const folder = await mkdtemp(join(tmpdir(), "casewright-test-"));
  const texts = Object.entries(textsWith(draft, design?.options ?? []));
  for (const [file, text] of texts) await writeFile(join(folder, file), text);
  expect(failingOf(openJob(folder).review, graveTiers).map(({ id }) => id)).toEqual([]);
}, 900_000);
