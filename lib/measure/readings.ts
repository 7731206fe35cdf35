/** What all tables of readings have in common: rows that share a name, rows that point at themselves, plain gauges. */
import type { Problem } from "../problem.js";

/** A row of a builder's table. */
export interface Reading {
  /** Line of the file. */ readonly line?: number;
}

/** A problem at one reading's row. */
export function problemAt(
  { line }: Reading,
  file: string,
  column: string,
  value: string,
  expected: string,
): Problem {
  return { file, ...(line === undefined ? {} : { row: line }), column, value, expected };
}

/** What each name's readings gave, in the order of the names, and the problems of those that gave nothing. */
export function eachNamed<One extends Reading, Result extends object>(
  readings: readonly One[],
  nameOf: (reading: One) => string | undefined,
  measure: (own: readonly One[], name: string) => Result | Problem,
): { readonly results: readonly Result[]; readonly problems: readonly Problem[] } {
  const names = [...new Set(readings.flatMap((reading) => nameOf(reading) ?? []))];
  const results: Result[] = [];
  const problems: Problem[] = [];
  for (const name of names) {
    const own = readings.filter((reading) => nameOf(reading) === name);
    const given = measure(own, name);
    if (isProblem(given)) problems.push(given);
    else results.push(given);
  }
  return { results, problems };
}

/** Whether something is a problem: nothing else says what was expected. */
export function isProblem(given: object): given is Problem {
  return "expected" in given;
}

/** Standard uncertainty of a division evenly likely anywhere within itself: GUM 4.3.7. */
function withinDivision(division: number): number {
  return division / Math.sqrt(12);
}

/** Standard uncertainty of a rule read to 1 mm, in metres. */
export const ruleUncertainty: number = withinDivision(0.001);

/** Standard uncertainty of calipers read to 0.1 mm, in metres. */
export const calipersUncertainty: number = withinDivision(0.0001);
