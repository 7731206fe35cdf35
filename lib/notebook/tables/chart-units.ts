/** The units in which charts of a case count. */
import type { Job } from "../../job/index.js";
import { inch, Length, mm } from "../../quantity/index.js";

/** The unit of lengths: in or mm. */
export function lengthUnit({ case: { units } }: Job): "in" | "mm" {
  return units === "inch" ? "in" : "mm";
}

/** A length in that unit, to five digits unless said: 6.5 stays 6.5, and a fraction of an inch keeps its sixty-fourths. */
export function chartLength(job: Job, length: Length, digits = 5): number {
  return Number(Length.in(length, lengthUnit(job)).toPrecision(digits));
}

/** The same in inches or in millimetres, whichever the case is in. */
export function inCaseUnit(job: Job, inches: number, millimetres: number): Length {
  return job.case.units === "inch" ? inch(inches) : mm(millimetres);
}
