import { planSheets } from "../../cutting/index.js";
import type { Length } from "../../quantity/index.js";
import type { ReviewInput } from "../review-input.js";
import { sheetJobs } from "./cut-plans.js";
import { boughtOf } from "./purchase-list.js";

/** Sheets bought of one stock at one kerf. */
export interface KerfRow {
  readonly stock: string;
  readonly kerf: Length;
  readonly sheets: number;
  /** No plan of straight cuts needs fewer. */
  readonly atLeast: number;
}

/** Whether a thinner blade saves a sheet. */
export function kerfSweep(input: ReviewInput, kerfs: readonly Length[]): readonly KerfRow[] {
  return sheetJobs(input).flatMap(({ stock, job }) =>
    kerfs.map((kerf) => {
      const plan = planSheets({ ...job, kerf });
      return { stock: stock.name, kerf, sheets: boughtOf({ stock, plan }), atLeast: plan.bound.count };
    }),
  );
}
