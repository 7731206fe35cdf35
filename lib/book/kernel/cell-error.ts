/** What went wrong in a cell, in the three fields of a Jupyter error. */
import { format, inspect } from "node:util";
import { Refusal } from "../../refusal.js";
import { refused } from "../failed-cells.js";

/** An error as a notebook stores it. */
export interface CellError {
  /** Name of the error's class. */
  readonly ename: string;
  /** Its message. */
  readonly evalue: string;
  /** Where it was thrown, line by line. */
  readonly traceback: readonly string[];
}

/** Cells run inside these frames, which mean nothing to the reader. */
const kernelFrame = /^\s+at (sigintHandlersWrap|Script\.runIn|Object\.runIn|runInThisContext)/;

/** A thrown value. */
export function thrownError(thrown: unknown): CellError {
  if (!(thrown instanceof Error) && !looksLikeError(thrown)) {
    const text = typeof thrown === "string" ? thrown : inspect(thrown);
    return { ename: "Error", evalue: text, traceback: [`Error: ${text}`] };
  }
  if (thrown instanceof Refusal) return refusal(thrown);
  const { name, message, stack = `${name}: ${message}` } = thrown;
  const lines = stack.split("\n");
  // Node puts the line of our own code that threw over the stack.
  const start = Math.max(
    0,
    lines.findIndex((line) => line.startsWith(name)),
  );
  const end = lines.findIndex((line) => kernelFrame.test(line));
  return { ename: name, evalue: message, traceback: lines.slice(start, end < 0 ? undefined : end) };
}

/** Why an answer cannot be given, and what to measure for it; nobody asks where in the program that was found. */
function refusal({ message, would: { measure, how, isChange } }: Refusal): CellError {
  const evalue = isChange ? message : `${message}\nWhat would give it: ${measure}. ${how}`;
  return { ename: refused, evalue, traceback: evalue.split("\n") };
}

/** A complaint of the compiler, given as a format and its values; several add up to one error. */
export function typeError(report: readonly unknown[], before?: CellError): CellError {
  const evalue = [before?.evalue ?? "", withoutInnerTypes(format(...report))].filter(Boolean).join("\n");
  return { ename: "TypeScript", evalue, traceback: `TypeScript: ${evalue}`.split("\n") };
}

/** Long names of the library's own types tell a reader nothing; what a thing offers stands behind Tab. */
function withoutInnerTypes(complaint: string): string {
  return complaint.replace(
    / does not exist on type '[^\n]*\bimport\([^\n]*'/g,
    " does not exist here; press Tab after the dot to see what does",
  );
}

/** A rejected promise that nobody awaited, or an error thrown outside a cell's own run. */
export function strayError(
  origin: "a promise nobody awaited" | "a callback that ran later",
  thrown: unknown,
): CellError {
  const { ename, evalue, traceback } = thrownError(thrown);
  return { ename, evalue: `${evalue} (in ${origin})`, traceback };
}

/** Errors of another realm, such as a worker's, fail `instanceof`. */
function looksLikeError(thrown: unknown): thrown is Error {
  return typeof thrown === "object" && thrown !== null && "name" in thrown && "message" in thrown;
}
