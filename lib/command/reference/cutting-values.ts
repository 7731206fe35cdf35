/** What the runners of cutting files share: reading fields, and lengths whose unit does not matter. */
import { type Length, mm } from "../../index.js";

/** A case as it stands in a file. */
export type FileCase = Readonly<Record<string, unknown>>;

/** The cases of a file. Throws TypeError for anything else. */
export function casesOf(content: unknown): readonly FileCase[] {
  const { cases } = (content ?? {}) as { readonly cases?: unknown };
  if (!Array.isArray(cases)) throw new TypeError('expected { "cases": [...] }');
  return cases as readonly FileCase[];
}

/** A number of a case, or what to take where it is missing. */
export function numberOf(one: FileCase, field: string, otherwise?: number): number {
  const value = one[field] ?? otherwise;
  if (typeof value !== "number" || !Number.isFinite(value)) {
    throw new TypeError(`${nameOf(one)}: expected a number in "${field}", got ${JSON.stringify(value)}`);
  }
  return value;
}

/** A list of records of a case. */
export function listIn(one: FileCase, field: string): readonly FileCase[] {
  const value = one[field];
  if (!Array.isArray(value)) {
    throw new TypeError(`${nameOf(one)}: expected a list in "${field}", got ${JSON.stringify(value)}`);
  }
  return value as readonly FileCase[];
}

/** A record of a case. */
export function recordIn(one: FileCase, field: string): FileCase {
  const value = one[field];
  if (typeof value !== "object" || value === null) {
    throw new TypeError(`${nameOf(one)}: expected a record in "${field}", got ${JSON.stringify(value)}`);
  }
  return value as FileCase;
}

/** Two sizes of a case, taken as millimetres. */
export function sizeIn(one: FileCase, field: string): { readonly length: Length; readonly width: Length } {
  const [length, width] = listIn(one, field) as unknown as readonly unknown[];
  if (typeof length !== "number" || typeof width !== "number") {
    throw new TypeError(
      `${nameOf(one)}: expected two numbers in "${field}", got ${JSON.stringify(one[field])}`,
    );
  }
  return { length: mm(length), width: mm(width) };
}

/** The name of a case, for messages and tables. */
export function nameOf(one: FileCase): string {
  return typeof one.name === "string" ? one.name : "case";
}

/** How the expected value of a case is known. */
export function knownOf(one: FileCase): string {
  return typeof one.known === "string" ? one.known : "";
}

/** A piece of work with the time it took. */
export function withSeconds<T>(work: () => T): { readonly done: T; readonly seconds: string } {
  const start = performance.now();
  const done = work();
  return { done, seconds: `${((performance.now() - start) / 1000).toFixed(2)} s` };
}
