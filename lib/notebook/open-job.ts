/** The first lines of a notebook of one's own: a job opened, and its answers drawn. */
import { styleOf } from "../findings/index.js";
import { type ChartSpec, type ChartView, chart as chartOf } from "../page/index.js";
import { type AskedJob, openAskedJob, type Sweep, type SweepChart, sweepChart } from "./ask/index.js";
import { showInUnitsOf } from "./show.js";

/**
 * Opens a job, and shows what follows in its units.
 *
 * @param name a folder of data/, or a path to a folder (anything with a slash in it); the job of this book unless said
 * @throws ProblemsError with every problem of its files
 * @example openJob("soil-lab").panel("upper.front").sag()
 */
export function openJob(name?: string): AskedJob {
  const job = openAskedJob(name);
  showInUnitsOf(styleOf(job.case));
  return job;
}

/**
 * A chart of what a sweep gave.
 *
 * @throws Refusal for a sweep without a number in its answers
 * @example
 * const job = openJob("soil-lab");
 * const widths = [mm(400), mm(450)];
 * chart(sweep(job, "upper.front.display window.width", widths, (one) => one.panel("upper.front").mass()))
 */
export function chart(swept: Sweep, words?: SweepChart): ChartView;
/** A chart of a specification of your own. */
export function chart(title: string, description: string, spec: ChartSpec): ChartView;
export function chart(
  what: Sweep | string,
  words: SweepChart | string = {},
  spec: ChartSpec = {},
): ChartView {
  return typeof what === "string"
    ? chartOf(what, String(words), spec)
    : sweepChart(what, words as SweepChart);
}
