import fc from "fast-check";
import { expect, test } from "vitest";
import { jobsToPayBack, monthsToPayBack, presentWorthFactor, recoveryFactor } from "../../lib/money/index.js";
import { money, ratio } from "../../lib/quantity/index.js";

const usd = (amount: number) => money(amount, "USD");
const job = { outlay: usd(1500), income: usd(220), running: usd(90) };
const pace = { ...job, jobsPerMonth: ratio(1), monthlyInterest: ratio(0) };
const amount = fc.integer({ min: 1, max: 500_000 }).map((cents) => usd(cents / 100));

test("that many jobs earn the outlay, and one fewer does not", () => {
  fc.assert(
    fc.property(amount, amount, amount, (outlay, income, running) => {
      const { jobs, margin } = jobsToPayBack({ outlay, income, running });
      if (jobs === "never") expect(margin.amount).toBeLessThanOrEqual(0);
      else {
        expect(jobs * margin.amount).toBeGreaterThanOrEqual(outlay.amount - 1e-6 * outlay.amount);
        expect((jobs - 1) * margin.amount).toBeLessThan(outlay.amount);
      }
    }),
  );
});

test("without interest and at one job a month, months are jobs", () => {
  fc.assert(
    fc.property(amount, amount, amount, (outlay, income, running) => {
      const money = { outlay, income, running };
      expect(monthsToPayBack({ ...pace, ...money }).months).toBe(jobsToPayBack(money).jobs);
    }),
  );
});

test("a bank book paid down month by month is empty after that many months, and not one earlier", () => {
  const rate = fc.integer({ min: 0, max: 30 }).map((tenths) => ratio(tenths / 1000));
  fc.assert(
    fc.property(amount, fc.integer({ min: 1, max: 90 }), rate, (outlay, jobs, monthlyInterest) => {
      const { months, monthly } = monthsToPayBack({
        ...pace,
        outlay,
        jobsPerMonth: ratio(jobs / 10),
        monthlyInterest,
      });
      if (months === "never") {
        expect(monthly.amount).toBeLessThanOrEqual(outlay.amount * monthlyInterest + 1e-9);
        return;
      }
      fc.pre(months < 500);
      const debts: number[] = [outlay.amount];
      for (let month = 1; month <= months; month++)
        debts.push((debts.at(-1) ?? 0) * (1 + monthlyInterest) - monthly.amount);
      expect(debts.at(-1)).toBeLessThanOrEqual(1e-4);
      expect(debts.slice(0, -1).every((debt) => debt > -1e-4)).toBe(true);
    }),
  );
});

test("nothing laid out is paid back at once, and no jobs never pay", () => {
  expect(jobsToPayBack({ ...job, outlay: usd(0), running: usd(300) }).jobs).toBe(0);
  expect(monthsToPayBack({ ...pace, jobsPerMonth: ratio(0) }).months).toBe("never");
});

test("the present worth of equal payments is each brought back on its own", () => {
  const rate = fc.integer({ min: 0, max: 400 }).map((thousandths) => ratio(thousandths / 1000));
  fc.assert(
    fc.property(rate, fc.integer({ min: 1, max: 60 }), (interest, periods) => {
      const each = Array.from({ length: periods }, (_, i) => (1 + interest) ** -(i + 1));
      const worth = presentWorthFactor({ interest, periods });
      expect(worth).toBeCloseTo(
        each.reduce((sum, one) => sum + one, 0),
        9,
      );
      expect(worth * recoveryFactor({ interest, periods })).toBeCloseTo(1, 9);
    }),
  );
});

test("refuses what is no cost", () => {
  expect(() => jobsToPayBack({ ...job, outlay: usd(-1) })).toThrow(
    new RangeError("payback.jobs: outlay must be at least 0.00, got -1.00 USD"),
  );
  expect(() => monthsToPayBack({ ...pace, monthlyInterest: ratio(-0.01) })).toThrow(
    new RangeError("payback.months: monthlyInterest must be at least 0, got -0.01"),
  );
});
