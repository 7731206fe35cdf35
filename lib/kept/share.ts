/**
 * Structural sharing: what says the same as before is the same object as before, so that everything kept by identity
 * is kept by content.
 */

/**
 * A value made of as many of the old one's objects as possible.
 *
 * Lists are matched by the `id` or `name` of their items where these have one, else by place. Both values are plain
 * records, lists, maps and sets of values, and neither is changed.
 *
 * @param before the value as it was; undefined for the first
 * @param after the value as it is now
 * @returns a value equal to `after`, and `before` itself where they are equal
 */
export function share<T>(before: T | undefined, after: T): T {
  return new Sharing().visit(before, after) as T;
}

class Sharing {
  /** What took the place of each new object, so that an object met twice stays one. */
  readonly #taken = new Map<object, object>();

  visit(old: unknown, now: unknown): unknown {
    if (!isObject(now) || old === now) return now;
    const taken = this.#taken.get(now) ?? this.#take(isObject(old) ? old : undefined, now);
    this.#taken.set(now, taken);
    return taken;
  }

  #take(old: object | undefined, now: object): object {
    const alike = old && Object.getPrototypeOf(old) === Object.getPrototypeOf(now) ? old : undefined;
    if (Array.isArray(now)) return this.#list(Array.isArray(alike) ? alike : [], now);
    if (now instanceof Map) return this.#map(alike instanceof Map ? alike : new Map(), now);
    if (!isRecord(now)) return now;
    return this.#record(alike && isRecord(alike) ? alike : {}, now);
  }

  #list(old: readonly unknown[], now: readonly unknown[]): object {
    const named = new Map(old.map((item) => [nameOf(item), item]));
    const items = now.map((item, i) => {
      const name = nameOf(item);
      return this.visit(name === undefined ? old[i] : named.get(name), item);
    });
    return sameItems(old, items) ? old : sameItems(now, items) ? now : items;
  }

  #map(old: ReadonlyMap<unknown, unknown>, now: ReadonlyMap<unknown, unknown>): object {
    const entries = [...now].map(([key, value]) => [key, this.visit(old.get(key), value)] as const);
    const same = old.size === now.size && sameItems([...old.keys()], [...now.keys()]);
    return same && entries.every(([key, value]) => old.get(key) === value) ? old : new Map(entries);
  }

  #record(old: Fields, now: Fields): object {
    const keys = Object.keys(now);
    const values = keys.map((key) => this.visit(old[key], now[key]));
    if (sameItems(Object.keys(old), keys) && keys.every((key, i) => old[key] === values[i])) return old;
    if (keys.every((key, i) => now[key] === values[i])) return now;
    return Object.fromEntries(keys.map((key, i) => [key, values[i]]));
  }
}

type Fields = Readonly<Record<string, unknown>>;

function isObject(value: unknown): value is object {
  return typeof value === "object" && value !== null;
}

/** A record written as a literal; an instance of a class is taken as it is. */
function isRecord(value: object): value is Fields {
  return Object.getPrototypeOf(value) === Object.prototype;
}

function nameOf(item: unknown): string | undefined {
  if (!isObject(item) || !isRecord(item)) return undefined;
  const name = item.id ?? item.name;
  return typeof name === "string" ? name : undefined;
}

function sameItems(one: readonly unknown[], other: readonly unknown[]): boolean {
  return one.length === other.length && one.every((item, i) => Object.is(item, other[i]));
}
