/** What tests of random cases share. */
import { textsOf } from "../../lib/command/reference/cases/case-content.js";
import { type CaseTrial, faultsOf } from "../../lib/command/reference/cases/case-faults.js";
import { randomCase } from "../../lib/command/reference/cases/random-case.js";

/** A case that fails is told by its seed, its faults and its files. */
export function told(seed: number, sections: number, trial: CaseTrial): readonly string[] {
  const given = randomCase(seed, { sections });
  const faults = faultsOf(given, trial);
  if (faults.length === 0) return [];
  return [`seed ${seed}`, ...faults.map(({ words }) => words), ...Object.values(textsOf(given))];
}

/** Seeds one after another. */
export const seeds = (first: number, count: number): readonly number[] =>
  Array.from({ length: count }, (_, i) => first + i);
