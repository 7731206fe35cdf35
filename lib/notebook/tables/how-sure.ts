/** What all measurements together leave open about an answer, for the notebook about the builder's own stock. */

import { measuredReview, styleOf } from "../../findings/index.js";
import type { Job } from "../../job/index.js";
import { type Correlation, monteCarlo, propagate, type ScatterShare } from "../../measure/index.js";
import { type ReviewInput, sectionBalance } from "../../model/index.js";
import { type TableView, tableOf } from "../../page/index.js";
import { Mass, Ratio, ratio } from "../../quantity/index.js";

/** One way of carrying scatter to an answer. */
interface Way {
  readonly way: string;
  readonly value: Mass;
  readonly interval: { readonly low: Mass; readonly high: Mass };
  readonly shares: readonly ScatterShare[];
}

/** Draws for a page: its ends are then sure to about a tenth of their distance. */
const draws = 1000;

/**
 * Mass of a section with its interval three ways: first order, each weighing for itself and all on one scale; and drawn.
 *
 * @param sameScale how far weighings on one scale err together, from 0 to 1
 */
export function massIntervalTable(job: Job, section: string, sameScale: number): TableView {
  const style = { ...styleOf(job.case), digits: 4 };
  return tableOf(
    massIntervals(job, section, sameScale),
    [
      { heading: "Carried", cell: ({ way }) => way },
      { heading: `Mass of ${section}`, cell: ({ value }) => Mass.show(value, style) },
      {
        heading: "95 % interval",
        cell: ({ interval }) => `${Mass.show(interval.low, style)} to ${Mass.show(interval.high, style)}`,
      },
      { heading: "Most of it from", cell: ({ shares }) => largest(shares) },
    ],
    "What the scatter of your measurements leaves open about a mass",
  );
}

function massIntervals(job: Job, section: string, sameScale: number): readonly Way[] {
  const massOf = (input: ReviewInput): Mass => sectionBalance(input, section).value.mass;
  const { compute, at, uncertainties } = measuredReview(job, massOf);
  const together = onOneScale(Object.keys(at), sameScale);
  const first = (correlations: readonly Correlation[]) =>
    propagate(compute, at, uncertainties, ratio(0.95), correlations);
  const shared = Ratio.show(ratio(sameScale), { digits: 2 });
  return [
    { way: "first order, each weighing for itself", ...first([]) },
    { way: `first order, one scale (correlation ${shared})`, ...first(together) },
    {
      way: `drawn, one scale (correlation ${shared})`,
      ...monteCarlo(compute, at, uncertainties, { draws, correlations: together }),
    },
  ];
}

/** Whatever was put on the kitchen scale errs with it. */
function onOneScale(names: readonly string[], coefficient: number): readonly Correlation[] {
  const weighed = names.filter((name) => /^(weights|spread trials) of /.test(name));
  return weighed.flatMap((name, i) =>
    weighed.slice(i + 1).map((other): Correlation => ({ between: [name, other], coefficient })),
  );
}

function largest(shares: readonly ScatterShare[]): string {
  return shares
    .filter(({ share }) => share > 0.05)
    .map(({ input, share }) => `${input} ${Ratio.show(ratio(share), { unit: "%", digits: 2 })}`)
    .join(", ");
}
