import { monteCarlo, type Uncertainty } from "../../measure/index.js";
import { type Force, type Ratio, ratio } from "../../quantity/index.js";
import type { RatioInterval } from "../finding.js";
import type { KnownStrength } from "./known-strength.js";

/**
 * What the scatter of the builder's own tests leaves open about the use of a joint.
 *
 * @param load on the joint
 * @param share what one fastener's strength is multiplied by to get what the joint allows
 * @returns undefined for a strength from a formula, or from tests that scatter too much to tell
 */
export function useInterval(load: Force, known: KnownStrength, share: number): RatioInterval | undefined {
  return strengthInterval({ each: known }, ({ each }) => load / (each * share));
}

/**
 * What the scatter of several strengths leaves open about the use of a joint, drawn, with the share of each.
 *
 * @param known strengths by name; those from a formula or a maker stay as they are
 * @param use of the joint for given strengths: load over what is allowed
 * @returns undefined where no tests count, or where they scatter too much to tell
 */
export function strengthInterval<Name extends string>(
  known: Readonly<Record<Name, KnownStrength>>,
  use: (strengths: Readonly<Record<Name, Force>>) => number,
): RatioInterval | undefined {
  const parts = Object.entries<KnownStrength>(known);
  const tested = parts.flatMap(([name, { uncertainty }]) =>
    uncertainty ? [[name, uncertainty] as const] : [],
  );
  const middle = Object.fromEntries(parts.map(([name, { strength }]) => [name, strength])) as Record<
    Name,
    Force
  >;
  const drawn = drawnUse(middle, Object.fromEntries(tested), use);
  if (!drawn || drawn.interval.low === drawn.interval.high) return undefined;
  const words = ({ input }: { readonly input: string }): string => known[input as Name].tests ?? input;
  return {
    ...drawn.interval,
    shares: drawn.shares.map((one) => ({ input: `your ${words(one)}`, share: one.share })),
  };
}

function drawnUse<Name extends string>(
  middle: Readonly<Record<Name, Force>>,
  uncertainties: Readonly<Record<string, Uncertainty>>,
  use: (strengths: Readonly<Record<Name, Force>>) => number,
): (Pick<RatioInterval, "shares"> & { readonly interval: { low: number; high: number } }) | undefined {
  const guarded = (strengths: Readonly<Record<string, Force>>): Ratio => {
    if (Object.values(strengths).some((one) => one <= 0)) throw new RangeError("a strength must be positive");
    return ratio(use(strengths as Readonly<Record<Name, Force>>));
  };
  if (Object.keys(uncertainties).length === 0) return undefined;
  try {
    return monteCarlo(guarded, middle as Readonly<Record<string, Force>>, uncertainties);
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}
