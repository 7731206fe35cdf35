/** Things of a case by their names, and how the notebook prints them. */
import { didYouMean } from "../../problem.js";
import { Refusal } from "../../refusal.js";

/**
 * The one of a name.
 *
 * @param what what it is, for the error: "panel"
 * @throws Refusal where there is none of that name, with the nearest one or all there are
 */
export function named<T>(what: string, list: readonly T[], nameOf: (one: T) => string, name: string): T {
  const found = list.find((one) => nameOf(one) === name);
  if (found !== undefined) return found;
  const names = list.map(nameOf);
  const meant = didYouMean(name, names).replace(/^; /, "");
  if (meant !== "") throw new Refusal(`no ${what} "${name}": ${meant}`);
  const all = names.map((one) => `"${one}"`).join(", ");
  throw new Refusal(
    names.length === 0
      ? `no ${what} "${name}": the case has none`
      : `no ${what} "${name}": expected one of ${all}`,
  );
}

/** How Node.js, and so a cell, prints a value. */
export const printed: unique symbol = Symbol.for("nodejs.util.inspect.custom") as never;
