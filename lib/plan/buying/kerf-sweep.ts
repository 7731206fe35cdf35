import { planSheets } from "../../cutting/index.js";
import { keptFor, type ReviewInput } from "../../model/index.js";
import type { Length } from "../../quantity/index.js";
import { sheetJobs } from "./cut-plans.js";
import { boughtOf } from "./purchase-list.js";

/** Sheets bought of one stock at one kerf. */
export interface KerfRow {
  readonly stock: string;
  readonly kerf: Length;
  readonly sheets: number;
}

/** Whether a thinner blade saves a sheet; each kerf is planned once a case. */
export function kerfSweep(input: ReviewInput, kerfs: readonly Length[]): readonly KerfRow[] {
  return kerfs.flatMap((kerf) => rowsAt(input, kerf));
}

const rowsAt = keptFor((input: ReviewInput, kerf: Length): readonly KerfRow[] =>
  sheetJobs(input).map(({ stock, job }) => {
    const plan = planSheets({ ...job, kerf });
    return { stock: stock.name, kerf, sheets: boughtOf({ stock, plan }) };
  }),
);
