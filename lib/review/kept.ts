/** Works a thing out once for each table it rests on and each name, and keeps it as long as the table lives. */
export function keptFor<Table extends object, Name, Found>(
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
