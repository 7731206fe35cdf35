/** An answer that may be "never": what is not paid back is said in words, not as an infinite number. */
import type { Kind } from "../quantity/index.js";

/** A value, or the word that there is none. */
export type OrNever<T> = T | "never";

/** The same kind, that may also be "never". */
export function orNever<T>(kind: Kind<T>): Kind<OrNever<T>> {
  return {
    name: `${kind.name} or never`,
    expected: `${kind.expected}, or "never"`,
    read: (text) => (text === "never" ? "never" : kind.read(text)),
    show: (value, style) => (value === "never" ? "never" : kind.show(value, style)),
  };
}
