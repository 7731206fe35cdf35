import { host } from "#host";
import type { Progress } from "./panel-sweep.js";

/**
 * A line of a notebook's output that counts along while work is done, such as "panels: 7 of 18"; nothing in the book
 * and outside a notebook.
 *
 * @param what is counted
 */
export function progressLine(what: string): Progress {
  const id = crypto.randomUUID();
  let begun = false;
  return (done, total) => {
    const write = host.display.inBook() ? null : host.display.writer();
    write?.(
      { data: { "text/plain": `${what}: ${done} of ${total}` }, metadata: {}, transient: { display_id: id } },
      begun,
    );
    begun = true;
  };
}
