/** Which errors under cells are failures: an answer that cannot be given is none, nor is a cell that waits for another. */
import type { ErrorOutput, Output } from "./notebook.js";

/** Name of the error of an answer that cannot be given; its words say why, and what would give it. */
export const refused = "Refusal";

const waiting = "NotRun";

/** The first error among the outputs of a cell. */
export function errorOf(outputs: readonly Output[]): ErrorOutput | undefined {
  return outputs.find((output) => output.output_type === "error");
}

/** Whether something broke; else the words of the error are all there is to say. */
export function isFailure({ ename }: ErrorOutput): boolean {
  return ename !== refused && ename !== waiting;
}

/** Stands under a cell that was not run. */
export function notRunError(why: string): ErrorOutput {
  return { output_type: "error", ename: waiting, evalue: `This was not worked out: ${why}.`, traceback: [] };
}

/** Stands under a cell whose run came to an end from outside. */
export function endedError({ message }: Pick<Error, "message">): ErrorOutput {
  return { output_type: "error", ename: "", evalue: message, traceback: [] };
}

/** Name and message; the message alone where the name would mean nothing to a reader. */
export function errorText({ ename, evalue }: ErrorOutput): string {
  return ename === "" ? evalue : `${ename}: ${evalue}`;
}

/** Names that the compiler missed in a cell. */
export function namesMissing({ ename, evalue }: ErrorOutput): readonly string[] {
  if (ename !== "TypeScript") return [];
  const said = /Cannot find name '([^']+)'|No value exists in scope for the shorthand property '([^']+)'/g;
  return [...evalue.matchAll(said)].flatMap(([, name, shorthand]) => name ?? shorthand ?? []);
}
