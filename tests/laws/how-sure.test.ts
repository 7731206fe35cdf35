/** Every verdict of safety or strength says how sure it is: by an interval, or by what it rests on most. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { type Finding, reviewCase } from "../../lib/findings/index.js";
import { openJob } from "../../lib/job/index.js";
import type { CheckTable } from "../../lib/published-check.js";
import { crateJob } from "../design/crate-job.js";
import { lidAndDrawers } from "../design/lid-and-drawers-job.js";
import { designOf, rolling, smallJob } from "../design/small-job.js";
import { trayJob } from "../design/tray-job.js";

const jobs: readonly (readonly [string, () => readonly Finding[]])[] = [
  ["the demo", () => openJob("soil-lab").review.findings],
  ["its first draft", () => openJob("soil-lab-draft").review.findings],
  ["a small box", () => reviewCase(designOf(smallJob)).findings],
  ["the same on casters", () => reviewCase(designOf(rolling(smallJob))).findings],
  ["a crate", () => reviewCase(designOf(crateJob)).findings],
  ["a tray", () => reviewCase(designOf(trayJob)).findings],
  ["a chest with a lid and drawers", () => reviewCase(designOf(lidAndDrawers)).findings],
];

const tables = join(import.meta.dirname, "../reference");

/** Formulas that no check has that was read or derived. */
function recalledAlone(): ReadonlySet<string> {
  const known = new Map<string, boolean>();
  for (const file of readdirSync(tables).filter((one) => one.endsWith(".json"))) {
    const table = JSON.parse(readFileSync(join(tables, file), "utf8")) as CheckTable;
    if (table.kind !== "formula") continue;
    for (const { formula, known: how } of table.rows)
      known.set(formula, known.get(formula) === true || how === "seen" || how === "derived");
  }
  return new Set([...known].flatMap(([id, read]) => (read ? [] : [id])));
}

describe.each(jobs)("%s", (_, review) => {
  const grave = review().filter(
    ({ tier, verdict }) => (tier === "safety" || tier === "strength") && verdict !== "unknown",
  );
  const ids = (some: readonly Finding[]): string[] => some.map(({ id }) => id);

  test("gives an interval, or the input that decides and that nobody measured", () => {
    expect(grave.length).toBeGreaterThan(2);
    const open = grave.filter(({ interval }) => !interval);
    const unsaid = open.filter(
      ({ assumes }) => !/It depends most on (?!the figures of the case file)/.test(assumes.join(" ")),
    );
    expect(ids(unsaid)).toEqual([]);
  });

  test("says that it holds only where the upper end of its interval is below 1", () => {
    const sure = grave.filter(({ verdict, interval }) => verdict === "holds" && interval);
    expect(ids(sure.filter(({ interval }) => (interval?.high ?? 2) > 1))).toEqual([]);
  });

  test("says beside the verdict where a figure behind it is recalled, or its criterion no more than a rule of the trade", () => {
    const recalled = recalledAlone();
    const silent = grave.filter(
      ({ because, answer, source }) =>
        (because.some(({ id }) => recalled.has(id)) ||
          source.some(({ where }) => /from memory/.test(where))) &&
        !/recalled/.test(answer),
    );
    expect(ids(silent)).toEqual([]);
    const trade = grave.filter(
      ({ source: [limit] }) => limit?.source === "common-practice" && !/case file/.test(limit.where),
    );
    expect(ids(trade.filter(({ answer }) => !/rule of the trade/.test(answer)))).toEqual([]);
  });
});
