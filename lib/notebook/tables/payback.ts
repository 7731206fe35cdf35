/** Chart rows and tables of how sure payback is, and of what decides it. */

import type { Job } from "../../job/index.js";
import { type TableView, tableOf } from "../../page/index.js";
import {
  doubtsInWords,
  doubtsOf,
  jobsForChance,
  type Outlay,
  outlays,
  paybackChances,
  paybackSwings,
  swingOf,
} from "../../plan/index.js";
import { Money, type Ratio, ratio, showNumber } from "../../quantity/index.js";

/** Chance of having paid the case, in plain numbers. */
export interface ChancePoint {
  readonly month: number;
  /** % */
  readonly chance: number;
  readonly way: string;
  readonly jobs: number;
}

/** How likely each way is paid, month by month, for several numbers of jobs a month. */
export function chancePoints(
  job: Job,
  jobsPerMonth: readonly number[],
  months: number,
): readonly ChancePoint[] {
  return jobsPerMonth.flatMap((jobs) =>
    outlaysOf(job).flatMap((outlay) =>
      paybackChances(job, outlay, jobs, months).map(({ month, chance }) => ({
        month,
        chance: chance * 100,
        way: outlay.way,
        jobs,
      })),
    ),
  );
}

/** Building and buying, with what each costs and how sure that is. */
export function outlaysOf(job: Job): readonly Outlay[] {
  return outlays(job, job.review.bill, job.review.business);
}

/** Jobs and months after which each way is paid with several chances, in %. */
export function chanceTable(job: Job, chances: readonly number[]): TableView {
  const { jobsPerMonth } = job.case.business;
  const rows = outlaysOf(job).flatMap(({ way, cost, doubt }) =>
    chances.map((chance) => {
      const jobs = jobsForChance(job, { way, cost, doubt }, ratio(chance / 100));
      const months = jobs === "never" ? jobs : Math.ceil(jobs / jobsPerMonth - 1e-9);
      return { way, cost, chance, jobs, months };
    }),
  );
  return tableOf(
    rows,
    [
      { heading: "Way", cell: ({ way }) => way },
      { heading: "Costs", cell: ({ cost }) => Money.show(cost) },
      { heading: "Paid with a chance of", cell: ({ chance }) => `${chance} %`, align: "right" },
      { heading: "After jobs", cell: ({ jobs }) => jobs, align: "right" },
      { heading: "After months", cell: ({ months }) => months, align: "right" },
    ],
    `After how many jobs it is paid, at ${showNumber(jobsPerMonth, 3)} a month, interest left out`,
  );
}

/** By how many jobs a figure moves payback, in plain numbers. */
export interface SwingBar {
  readonly figure: string;
  readonly jobs: number;
}

/** Which figure matters most, each moved by its own doubt; figures that may prevent payback are left to the sentence below the chart. */
export function swingBars(job: Job): readonly SwingBar[] {
  return paybackSwings(job, job.review.business).flatMap((swing) => {
    const jobs = swingOf(swing);
    const shown = Number(jobs.toPrecision(2));
    return Number.isFinite(jobs)
      ? [{ figure: `${swing.figure}, ± ${percent(swing.share)}`, jobs: shown }]
      : [];
  });
}

const percent = (share: Ratio): string => `${showNumber(share * 100, 2)}\u00a0%`;

/** The figures that may prevent payback altogether within their doubt, in words. */
export function preventing(job: Job): string {
  const names = paybackSwings(job, job.review.business)
    .filter((swing) => !Number.isFinite(swingOf(swing)))
    .map(({ figure, share }) => `${figure} (± ${percent(share)})`);
  return names.length === 0
    ? "No figure by itself, within its doubt, keeps the case from being paid."
    : `Each of these by itself, within its doubt, may keep the case from ever being paid: ${names.join(", ")}.`;
}

/** How far figures may be off, and which of that is assumed. */
export function doubtsNote({ case: { business } }: Job): string {
  return doubtsInWords(doubtsOf(business));
}
