import type { Kind } from "./kind.js";

/** How large a value of a builder's file may be where nothing narrower is said, in SI, by kind: far beyond any shop. */
const reaches: Readonly<Record<string, number>> = {
  length: 1000,
  area: 1e5,
  volume: 100,
  mass: 1e5,
  force: 1e7,
  pressure: 1e13,
  density: 3e4,
  "mass per area": 100,
  "mass per length": 1000,
  "spring rate": 1e10,
  count: 100_000,
  money: 1e8,
  time: 1e9,
  temperature: 2000,
  power: 1e6,
  voltage: 1000,
  current: 10_000,
  charge: 1e8,
  speed: 200,
  ratio: 1e6,
};

/** The largest value of a kind that a shop could mean, in SI; none for a kind that is not known here. */
export function reachOfKind({ name }: Pick<Kind<unknown>, "name">): number {
  return reaches[name] ?? Number.POSITIVE_INFINITY;
}

/**
 * What a value should have been that is beyond all that a shop could mean.
 *
 * @param measured the number of a value, in SI
 * @param how the unit to say it in, and a narrower reach than that of the kind
 * @returns words such as "at most 1000 m"; undefined for a value within reach
 */
export function beyondReach<T>(
  kind: Kind<T>,
  measured: number | undefined,
  how: { readonly unit?: string | undefined; readonly reach?: number | undefined } = {},
): string | undefined {
  const { unit, reach } = how;
  const most = reach ?? reaches[kind.name];
  if (measured === undefined || most === undefined || Math.abs(measured) <= most) return undefined;
  return `at most ${kind.showMeasure?.(most, unit === undefined ? {} : { unit }) ?? most}`;
}
