/** Many panels on threads: the same answers whatever their number, counted along, and a fault that names the panel. */
import { existsSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import type { PanelTask } from "../../lib/fem/index.js";
import { openJob } from "../../lib/job/index.js";
import { battenPoints, meshNote, sagPoints, sweptPanels } from "../../lib/notebook/index.js";
import { mm } from "../../lib/quantity/index.js";
import { panel, ply } from "../fem/sheets.js";

const tasks = [0.3, 0.4, 0.5, 0.6, 0.7].map(
  (length): PanelTask => ({
    problem: panel(length, 0.4, ply, { kind: "hinged" }, [{ kind: "pressure", pressure: 1000 }]),
    elementTarget: 12,
  }),
);

test("threads run the compiled worker", () => {
  const worker = join(import.meta.dirname, "../../lib/dist/notebook/sweep/panel-worker.js");
  expect(existsSync(worker), "build first: npm run build").toBe(true);
});

test("answers do not depend on the number of workers", { timeout: 600_000 }, async () => {
  const [one, two, three] = await Promise.all([1, 2, 3].map((workers) => sweptPanels(tasks, { workers })));
  expect(one!.map(({ sag }) => sag)).toEqual(one!.map(({ sag }) => sag).sort((a, b) => a - b));
  expect(two).toEqual(one);
  expect(three).toEqual(one);
});

test.each([1, 2])("every panel is counted by %i workers", { timeout: 600_000 }, async (workers) => {
  const seen: string[] = [];
  await sweptPanels(tasks, { workers, progress: (done, total) => seen.push(`${done} of ${total}`) });
  expect(seen).toEqual(["1 of 5", "2 of 5", "3 of 5", "4 of 5", "5 of 5"]);
});

test.each([1, 2])(
  "a panel that cannot be solved is named by %i workers",
  { timeout: 600_000 },
  async (workers) => {
    const loose = { ...tasks[0]!, problem: { ...tasks[0]!.problem, name: "shelf", heldLines: [] } };
    await expect(sweptPanels([...tasks, loose], { workers })).rejects.toThrow(/^shelf is loose: at /);
  },
);

test("a sweep of a panel tells its mesh error", { timeout: 600_000 }, async () => {
  const points = await sagPoints(openJob("soil-lab-draft"), "upper.front", [mm(6), mm(9)], [0, 1], {
    workers: 1,
  });
  expect(points).toHaveLength(8);
  // The draft is in inches, so its charts are, in three digits.
  const isThick = (inches: number, millimetres: number): boolean =>
    Math.abs(inches * 25.4 - millimetres) < 0.02;
  const use = (thickness: number, edges: string): number =>
    Math.max(
      ...points
        .filter((one) => isThick(one.thickness, thickness) && one.edges === edges)
        .map((one) => one.use),
    );
  expect(use(9, "alone on the bench")).toBeLessThan(use(6, "alone on the bench"));
  expect(use(9, "edges held stiffly")).toBeLessThan(use(9, "alone on the bench"));
  expect(meshNote(points)).toMatch(/^The mesh adds at most [\d.]+ % error to any of these 8 points\.$/);
});

test("a batten helps most where the panel sags most, and never harms much", {
  timeout: 600_000,
}, async () => {
  const battens = await battenPoints(openJob("soil-lab-draft"), "upper.front", { workers: 1 });
  expect(battens.length).toBeGreaterThan(1);
  const shares = battens.map(({ share }) => share);
  expect(Math.min(...shares)).toBeLessThan(90);
  expect(Math.max(...shares)).toBeLessThan(101);
});
