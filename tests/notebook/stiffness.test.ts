import { expect, test } from "vitest";
import { openJob } from "../../lib/job/index.js";
import { loadCaseTable, rackedDrawing } from "../../lib/notebook/index.js";

const job = openJob("soil-lab-draft");

test("every load case has its row, each value with what the mesh leaves open", { timeout: 60_000 }, () => {
  const { columns, rows } = loadCaseTable(job);
  expect(columns.map(({ heading }) => heading)).toEqual([
    "Load case",
    "Moves at most",
    "Out of square",
    "Seam",
    "Latch",
    "Caster",
  ]);
  expect(rows).toHaveLength(10);
  for (const [, moves = "", square = "", seam = ""] of rows) {
    expect(moves).toMatch(/mm\) \([\d.e-]+ %\)$/);
    expect(square).toMatch(/^(display window|rack opening|side door): .* mm\) \([\d.e-]+ %\)$/);
    expect(seam).toMatch(/^(lower|upper), \w+ to \w+: .* lbf\/in \([\d.e-]+ %\)$/);
  }
});

test("the racked box is drawn with its openings and its door, its title says how much larger", {
  timeout: 60_000,
}, () => {
  const { title, marks } = rackedDrawing(job);
  expect(title).toMatch(
    /^The case pushed at its top edge from the (left|front): movements drawn [125]0* times as large$/,
  );
  const roles = marks.flatMap((mark) => (mark.mark === "polygon" ? [mark.role] : []));
  expect(roles.filter((role) => role === "panel")).toHaveLength(6);
  expect(roles.filter((role) => role === "opening").length).toBeGreaterThanOrEqual(3);
  expect(roles.filter((role) => role === "hardware")).toHaveLength(1);
});
