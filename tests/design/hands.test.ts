/** Where no hand gets once a box is closed, and its last rivets, which have no washer there. */
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { expect, test } from "vitest";
import { accessOf, type Fastening } from "../../lib/design/index.js";
import { type Job, openJob } from "../../lib/job/index.js";
import { bearingOf, gripOf, physicalInput, takesWasher, washersOf } from "../../lib/model/index.js";
import { caseOrder, purchaseList } from "../../lib/plan/index.js";
import type { Length } from "../../lib/quantity/index.js";
import { otherJob } from "../other-jobs.js";
import { designOf } from "./small-job.js";

const bare: Job = openJob(await otherJob("bare-box"));
const late = (group: Fastening): boolean => group.noHandBehind === true;

/** The bare box with a hole in the middle of its front, and rows of tools.csv. */
function withHole(diameter: number, ...tools: readonly string[]) {
  const inside = "{ inside: { width: 600, depth: 400, height: 500 } }";
  const hole = `{ circle: { diameter: ${diameter} }, from: bottom-left, across: 300, up: 250 }`;
  const holed = `{ inside: { width: 600, depth: 400, height: 500 }, panels: { front: { openings: { hole: ${hole} } } } }`;
  const text = bare.texts["case.yaml"] ?? "";
  expect(text).toContain(inside);
  const rows = ["tool,use,diameter (mm),length (mm)", ...tools].join("\n");
  return designOf({
    ...bare.texts,
    "case.yaml": text.replace(inside, holed),
    ...(tools.length > 0 ? { "tools.csv": rows } : {}),
  });
}

const lateIn = ({ parts }: Pick<Job, "parts">): readonly string[] =>
  parts.fastenings.filter(late).map(({ id }) => id.replace(/^box\.top-(\w+) on box\.\1$/, "$1"));

test("the rivets that go in once the top is on are those of its bars on the walls", () => {
  expect(accessOf("box", bare.parts)).toBeUndefined();
  expect(bare.parts.fastenings.filter(late).map(({ id }) => id)).toEqual([
    "box.top-front on box.front",
    "box.top-back on box.back",
    "box.top-left on box.left",
    "box.top-right on box.right",
  ]);
});

test("a hand reaches no further than it is long, an arm does", () => {
  // From the middle of the front to the farthest rivet is about the root of 300² + 400² + 235², 552 mm.
  const walls = ["front", "back", "left", "right"];
  expect(accessOf("box", withHole(96).parts)).toBeUndefined();
  expect(accessOf("box", withHole(98).parts)?.opening.name).toBe("hole");
  expect(lateIn(withHole(96))).toEqual(walls);
  expect(lateIn(withHole(98))).toEqual(walls);
  expect(lateIn(withHole(122))).toEqual([]);
});

test("the builder's own arm and lath say how far", () => {
  expect(lateIn(withHole(122, "my arm,arm,121,500"))).toEqual(["back", "left", "right"]);
  expect(lateIn(withHole(122, "my arm,arm,121,300"))).toHaveLength(4);
  expect(lateIn(withHole(98, "lath,stick,20,450"))).toEqual([]);
});

test("a hole so small that no arm passes has an order all the same", () => {
  expect(caseOrder(physicalInput({ ...bare, ...withHole(98) })).order.kind).toBe("found");
});

test("without its washer a rivet closes less, bears on less and is bought without", () => {
  const groups = bare.parts.fastenings.filter(late);
  for (const group of groups) {
    const { noHandBehind: _, ...handed } = group;
    expect(takesWasher(group)).toBe(false);
    expect(takesWasher(handed)).toBe(true);
    expect(gripOf(handed) - gripOf(group)).toBeCloseTo(group.fastener.washerThickness as Length, 9);
    // a bare tail is no wider than one and a half bodies, a washer is
    expect(bearingOf(group)).toBeLessThanOrEqual(1.5 * group.fastener.diameter + 1e-12);
    expect(bearingOf(handed)).toBe(group.fastener.washerDiameter);
  }
  const washers = bare.parts.fastenings.reduce((sum, group) => sum + washersOf(group), 0);
  const rivets = bare.parts.fastenings.reduce((sum, { count }) => sum + count, 0);
  expect(washers).toBe(rivets - groups.reduce((sum, { count }) => sum + count, 0));
  expect(purchaseList(bare).fasteners[0]?.washers).toBeLessThan(rivets);
});

test.each(["bare-box", "tower-of-six"] as const)("%s has an order", async (name) => {
  const job = openJob(await otherJob(name));
  expect(caseOrder(physicalInput(job)).order.kind).toBe("found");
});

test.each(["inch", "metric"])("so does the start of two sections, %s", async (units) => {
  const folder = join(import.meta.dirname, "../../starts", units);
  const names = ["adhesives", "bar-stock", "bend-tests", "facings", "fasteners", "hardware", "sheet-stock"];
  const tables = await Promise.all(
    names.map(async (name) => [`${name}.csv`, await readFile(join(folder, `${name}.csv`), "utf8")] as const),
  );
  const text = await readFile(join(folder, "two-section.yaml"), "utf8");
  const { case: build, ...rest } = designOf({ ...Object.fromEntries(tables), "case.yaml": text });
  expect(build.sections.map(({ name }) => name)).toEqual(["lower", "upper"]);
  expect(caseOrder({ case: build, ...rest }).order.kind).toBe("found");
});
