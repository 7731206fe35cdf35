/** The schedule of fasteners: drawn on each panel under the numbers of its table. */
import { expect, test } from "vitest";
import { openJob } from "../../lib/job/index.js";
import { fastenedPanels, scheduleDrawing, scheduleTable } from "../../lib/notebook/index.js";

const job = openJob("soil-lab-draft");

test.each(fastenedPanels(job))(
  "%s is drawn, each group that has holes under its number in the table",
  (panel) => {
    const [drawn] = scheduleDrawing(job, panel);
    const { rows } = scheduleTable(job, panel);
    const placed = job.parts.fastenings.filter((one) => one.panel === panel && one.at.length > 0);
    const numbers = rows
      .filter((row) => placed.some(({ holds }) => holds === row[1]))
      .map((row) => String(row[0]));
    const texts = (drawn?.marks ?? []).flatMap((mark) => (mark.mark === "text" ? [mark.text] : []));
    expect(numbers).toHaveLength(placed.length);
    for (const number of numbers) expect(texts).toContain(number);
  },
);

test("without a panel the whole case is one table, every group once", () => {
  expect(scheduleTable(job).rows).toHaveLength(job.parts.fastenings.length);
});
