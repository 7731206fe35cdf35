/** Works a thing out once for each table it rests on and each name, and keeps it as long as the table lives. */
export function memoize<Table extends object, Name, Found>(
  work: (table: Table, name: Name) => Found,
): (table: Table, name: Name) => Found {
  const tables = new WeakMap<Table, Map<Name, Found>>();
  return (table, name) => {
    const known = tables.get(table) ?? new Map<Name, Found>();
    tables.set(table, known);
    if (!known.has(name)) known.set(name, work(table, name));
    return known.get(name) as Found;
  };
}

/**
 * Keeps what was last worked out for a key, as long as all else that it looks at is the same too.
 *
 * @param key what it mainly rests on
 * @param seen all else that it looks at
 * @param work works it out
 */
export function memoizeLast<Input, Found>(
  key: (input: Input) => object,
  seen: (input: Input) => readonly unknown[],
  work: (input: Input) => Found,
): (input: Input) => Found {
  const last = new WeakMap<object, { readonly looked: readonly unknown[]; readonly found: Found }>();
  return (input) => {
    const looked = seen(input);
    const before = last.get(key(input));
    if (before && looked.every((value, i) => value === before.looked[i])) return before.found;
    const found = work(input);
    last.set(key(input), { looked, found });
    return found;
  };
}
