/** Reading lists and adding up products of them. */

/** A list of numbers, typed or plain. */
export type Numbers = ArrayLike<number>;

/**
 * An entry that must be there.
 *
 * @throws RangeError when the list is shorter, which is a mistake in the program
 */
export function at<T>(list: ArrayLike<T>, index: number): T {
  const entry = list[index];
  if (entry === undefined) throw new RangeError(`list: no entry ${index} among ${list.length}`);
  return entry;
}

/**
 * What a table holds under a key that must be there.
 *
 * @throws RangeError when there is nothing, which is a mistake in the program
 */
export function under<Key, T>(table: ReadonlyMap<Key, T>, key: Key): T {
  const entry = table.get(key);
  if (entry === undefined) throw new RangeError(`table: nothing under ${key}`);
  return entry;
}

/** Adds to one entry of a list. */
export function add(list: Float64Array, index: number, by: number): void {
  list[index] = at(list, index) + by;
}

/** Sum of the products of entries, as far as both lists reach. */
export function dot(a: Numbers, b: Numbers): number {
  const count = Math.min(a.length, b.length);
  let sum = 0;
  for (let i = 0; i < count; i++) sum += at(a, i) * at(b, i);
  return sum;
}

/** Sum of a value of each entry. */
export function sumOf<T>(list: Iterable<T>, value: (entry: T) => number): number {
  let sum = 0;
  for (const entry of list) sum += value(entry);
  return sum;
}

/**
 * A function of one number that works each value out once: a grid asks for the same places over and over.
 *
 * @param work what is to be remembered; must depend on its argument only
 */
export function memoized<Value extends object>(work: (place: number) => Value): (place: number) => Value {
  const known = new Map<number, Value>();
  return (place) => {
    const value = known.get(place) ?? work(place);
    known.set(place, value);
    return value;
  };
}
