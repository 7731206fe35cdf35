/** What is so of a case whatever its parts cost and whoever sells them. */
import { share } from "../kept/index.js";
import type { BusinessInput, ReviewInput } from "./review-input.js";

/** Fields that say what a thing costs, who sells it, or in which line of a file it stands. */
const noPhysics: ReadonlySet<string> = new Set(["price", "washerPrice", "supplier", "line"]);

let last: ReviewInput | undefined;

/**
 * A review's input without money: the same object as the last time where nothing else changed, so that every answer
 * but those about money stands. What needs a price must not ask this one.
 */
export function physicalInput({
  case: { business: _, ...build },
  stock,
  measurements,
  parts,
}: BusinessInput): ReviewInput {
  last = share(last, {
    case: build,
    stock: withoutMoney(stock),
    measurements: withoutMoney(measurements),
    parts: withoutMoney(parts),
  });
  return last;
}

const bare = new WeakMap<object, object>();

/** A copy without those fields, made once for each object. */
function withoutMoney<T>(value: T): T {
  if (typeof value !== "object" || value === null) return value;
  const known = bare.get(value) ?? bareCopy(value);
  bare.set(value, known);
  return known as T;
}

function bareCopy(value: object): object {
  if (Array.isArray(value)) return value.map(withoutMoney);
  if (Object.getPrototypeOf(value) !== Object.prototype) return value;
  return Object.fromEntries(
    Object.entries(value).flatMap(([key, field]) => (noPhysics.has(key) ? [] : [[key, withoutMoney(field)]])),
  );
}
