/** What verdicts of safety rest on: no formula behind one is checked from memory alone, and few figures are recalled. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { openJob } from "../../lib/job/index.js";

const root = join(import.meta.dirname, "../..");
const tables = join(root, "tests/reference");

interface Row {
  readonly formula: string;
  readonly known: string;
}

/** How each formula's checks are known. */
function knownByFormula(): ReadonlyMap<string, readonly string[]> {
  const rows = readdirSync(tables)
    .filter((file) => file.endsWith(".json"))
    .flatMap((file): readonly Row[] => {
      const table: { readonly kind: string; readonly rows?: readonly Row[] } = JSON.parse(
        readFileSync(join(tables, file), "utf8"),
      );
      return table.kind === "formula" ? (table.rows ?? []) : [];
    });
  const known = new Map<string, string[]>();
  for (const { formula, known: how } of rows) known.set(formula, [...(known.get(formula) ?? []), how]);
  return known;
}

test("every formula behind a verdict of safety has a check that is read or derived", () => {
  const known = knownByFormula();
  const safety = ["soil-lab", "soil-lab-draft"].flatMap((name) =>
    openJob(name).review.findings.filter(({ tier }) => tier === "safety"),
  );
  const behind = [...new Set(safety.flatMap(({ because }) => because.map(({ id }) => id)))];
  expect(behind.length).toBeGreaterThan(40);
  const alone = behind.filter((id) => !known.get(id)?.some((how) => how === "seen" || how === "derived"));
  expect(alone).toEqual([]);
}, 600_000);

test("the page for contributors lists the figures that decide a verdict of safety from memory, at most five", () => {
  const page = readFileSync(join(root, "DEVELOPERS.md"), "utf8");
  const [, list = ""] = page.split("## Figures from memory that decide a verdict of safety\n");
  const [section = ""] = list.split("\n## ");
  const figures = [...section.matchAll(/^- .*`(lib\/[^`]+)`/gm)].map(([, file = ""]) => file);
  expect(figures.length).toBeGreaterThan(0);
  expect(figures.length).toBeLessThanOrEqual(5);
  const unsaid = figures.filter((file) => !/recall|memory/i.test(readFileSync(join(root, file), "utf8")));
  expect(unsaid).toEqual([]);
});
