import { randomUUID } from "node:crypto";
import { displayOfKernel, inBook } from "../kernel-display.js";
import type { Progress } from "./panel-sweep.js";

/**
 * A line of a notebook's output that counts along while work is done, such as "panels: 7 of 18"; nothing in the book
 * and outside a notebook.
 *
 * @param what is counted
 */
export function progressLine(what: string): Progress {
  const id = randomUUID();
  let begun = false;
  return (done, total) => {
    const write = inBook() ? null : displayOfKernel();
    write?.(
      { data: { "text/plain": `${what}: ${done} of ${total}` }, metadata: {}, transient: { display_id: id } },
      begun,
    );
    begun = true;
  };
}
