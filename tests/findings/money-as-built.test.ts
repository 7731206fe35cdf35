/** What was paid and how long it took against what was planned, told from as-built.csv. */
import { expect, test } from "vitest";
import { type Finding, reviewCase } from "../../lib/findings/index.js";
import { Money } from "../../lib/quantity/index.js";
import { designOf, smallJob } from "../design/small-job.js";

const head = "number,what,of,at,length (mm),can (g),mass (kg),time (min),pieces,price (EUR)";
const trials = `work,unit,tool,pieces,time (min)
drill hole,hole,hand drill,40,18
set rivet,rivet,hand riveter,40,14`;
/** The review of the small job, filled in. */
const reviewed = (...rows: readonly string[]) =>
  reviewCase(designOf({ ...smallJob, "timings.csv": trials, "as-built.csv": [head, ...rows].join("\n") }));
const found = (findings: readonly Finding[], id: string): Finding | undefined =>
  findings.find((one) => one.id === id);

const [firstLine] = reviewed().bill.lines;
const supplier = firstLine?.supplier ?? "";
/** All that the bill has from the first line's supplier. */
const planned = reviewed()
  .bill.lines.filter((line) => line.supplier === supplier)
  .reduce((sum, { quantity, unitPrice }) => sum + quantity * unitPrice.amount, 0);

test("nothing is asked before anything was paid or timed", () => {
  expect(reviewed().findings.filter(({ id }) => id.startsWith("money.as-built"))).toEqual([]);
});

test("a supplier who cost a quarter more is told with both sums", () => {
  const paid = (1.25 * planned).toFixed(2);
  const finding = found(
    reviewed(`M9,price paid,${supplier},,,,,,,${paid}`).money,
    `money.as-built-price.${supplier}`,
  );
  expect(finding?.verdict).toBe("fails");
  expect(finding?.answer).toContain(`planned ${Money.show({ amount: planned, currency: "EUR" })}: 25 % more`);
});

test("a supplier paid as planned holds, one of whom nothing is bought is told so", () => {
  const { money } = reviewed(
    `M9,price paid,${supplier},,,,,,,${planned.toFixed(2)}`,
    "M10,price paid,corner shop,,,,,,,12",
  );
  expect(found(money, `money.as-built-price.${supplier}`)?.verdict).toBe("holds");
  expect(found(money, "money.as-built-price.corner shop")?.answer).toContain(
    "Nothing on the buy list comes from there.",
  );
});

test("a work that took as long as its trial holds, one that took half as long again does not", () => {
  // 18 min for 40 holes is 27 s a hole; 200 holes in 90 min are 27 s, in 135 min 40.5 s.
  const id = "money.as-built-time.drill hole.hand drill";
  expect(found(reviewed("M4,time,drill hole,hand drill,,,,90,200,").money, id)?.verdict).toBe("holds");
  const slow = found(reviewed("M4,time,drill hole,hand drill,,,,135,200,").money, id);
  expect(slow?.verdict).toBe("fails");
  expect(slow?.answer).toContain("50 % more");
});
