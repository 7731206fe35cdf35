import { expect, test } from "vitest";
import { type Job, openJob } from "../../lib/job/index.js";
import {
  loadCaseTable,
  mostCutPanel,
  rackedDrawing,
  sagChart,
  scalesToTry,
  stiffnessAnswer,
  thicknessesToTry,
} from "../../lib/notebook/index.js";
import { Length } from "../../lib/quantity/index.js";
import { otherJob } from "../other-jobs.js";

const job = openJob("soil-lab-draft");

test("every load case has its row, each value with what the mesh leaves open", { timeout: 600_000 }, () => {
  const { columns, rows } = loadCaseTable(job);
  expect(columns.map(({ heading }) => heading)).toEqual([
    "Load case",
    "Moves at most",
    "Out of square",
    "Seam",
    "Latch",
    "Caster",
    "Handle",
    "Hinge",
  ]);
  // Two ways to stand (shut and with its door open), two casters in a hole, four pushes, three lifts, two drops.
  expect(rows).toHaveLength(13);
  expect(rows.filter(([name]) => name?.endsWith("side door open"))).toHaveLength(1);
  for (const [, moves = "", square = "", seam = ""] of rows) {
    expect(moves).toMatch(/^[\d.e-]+ in \([\d.e-]+ %\)$/);
    expect(square).toMatch(/^(display window|rack opening|side door): [\d.e-]+ in \([\d.e-]+ %\)$/);
    expect(seam).toMatch(/^(lower|upper), \w+ to \w+: .* lbf\/in \([\d.e-]+ %\)$/);
  }
});

test("the table of load cases has no column of what the case has not", async () => {
  const { columns, rows } = loadCaseTable(openJob(await otherJob("bare-box")));
  expect(columns.map(({ heading }) => heading)).toEqual(["Load case", "Moves at most", "Seam"]);
  for (const row of rows) expect(row).toHaveLength(3);
});

test("the racked box is drawn with its openings, its door and the push, and moves the way that it is pushed", {
  timeout: 600_000,
}, () => {
  const { title, description, marks } = rackedDrawing(job);
  expect(title).toBe("The case pushed at its top edge from the front until it begins to tip");
  expect(description).toMatch(/drawn [125]0* times as large\.$/);
  const arrows = marks.filter((mark) => mark.mark === "arrow");
  expect(arrows).toHaveLength(1);
  expect(arrows[0]?.text).toMatch(/ lbf$/);
  // Back is up and to the left on the paper: the highest place of the moved outlines lies there of the one at rest.
  const highest = (kind: "polygon" | "line"): { x: number; y: number } =>
    marks
      .flatMap((mark) => (mark.mark === kind ? mark.points : []))
      .reduce((best, point) => (point.y > best.y ? point : best));
  expect(highest("polygon").y).toBeGreaterThan(highest("line").y);
  expect(highest("polygon").x).toBeLessThan(highest("line").x);
  const roles = marks.flatMap((mark) => (mark.mark === "polygon" ? [mark.role] : []));
  expect(roles.filter((role) => role === "panel")).toHaveLength(6);
  expect(roles.filter((role) => role === "opening").length).toBeGreaterThanOrEqual(3);
  expect(roles.filter((role) => role === "hardware")).toHaveLength(1);
});

test("thicknesses to try are the panel's own and those in stock, or around its own", async () => {
  const inMm = (of: Job, panel: string): number[] =>
    thicknessesToTry(of, panel).map((thickness) => Number(Length.in(thickness, "mm").toFixed(3)));
  const box = openJob(await otherJob("bare-box"));
  expect(inMm(box, "box.front")).toEqual([10, 15]);
  const lone = { ...box, stock: { ...box.stock, sheets: box.stock.sheets.slice(0, 1) } };
  expect(inMm(lone, "box.front")).toEqual([6.667, 10, 13.333]);
});

test("a panel without openings is charted by thickness, one with openings by what is cut away", async () => {
  const box = openJob(await otherJob("bare-box"));
  const panel = mostCutPanel(box);
  expect(scalesToTry(box, panel)).toEqual([1]);
  const point = { thickness: 10, cutAway: 0, edges: "alone on the bench", use: 0.4, meshError: 1 };
  const byThickness = JSON.stringify(sagChart(box, panel, [point, { ...point, thickness: 15 }]).spec);
  expect(byThickness).toContain("Ply");
  expect(byThickness).not.toContain("Cut away");
  expect(scalesToTry(job, "upper.front")).toEqual([0, 0.7, 1]);
  const cut = { ...point, cutAway: 30 };
  const byShare = sagChart(job, "upper.front", [point, cut, { ...cut, thickness: 15 }]);
  expect(JSON.stringify(byShare.spec)).toContain("Cut away");
});

test("the answer names what fails, not what is nearest to its limit", async () => {
  const box = openJob(await otherJob("bare-box"));
  const [one, two] = box.review.stiffness;
  if (!one || !two) throw new Error("expected two findings");
  const close = { ...one, verdict: "close" as const, ratio: 1.4, question: "Will the front stay stiff?" };
  const shelf = { subject: "shelf", answer: "It sags 3 mm. Add a batten." };
  const fails = { ...two, ...shelf, verdict: "fails" as const, ratio: 1.2 };
  const judged = { ...box, review: { ...box.review, stiffness: [close, fails], strength: [] } };
  expect(stiffnessAnswer(judged)).toBe(
    "0 of 2 questions hold, 1 does not hold, 1 is close. Look first at shelf: it sags 3 mm.",
  );
  const holding = { ...one, verdict: "holds" as const, ratio: 0.41, subject: "box.front" };
  const sound = { ...box, review: { ...box.review, stiffness: [holding], strength: [holding] } };
  expect(stiffnessAnswer(sound)).toBe(
    "All 2 questions hold. Most is asked of box.front: 41 % of what it may be.",
  );
});
