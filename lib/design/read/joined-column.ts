import { type Column, type ColumnRules, column } from "../../measure/index.js";
import type { Kind } from "../../quantity/index.js";

/** A column whose cells hold several values joined by "+": the veneers of a sheet from face to back. */
export function joinedColumn<T>(header: string, kind: Kind<T>, rules: ColumnRules): Column<readonly T[]> {
  const single = column(header, kind, rules);
  return {
    ...single,
    readUnit: (unit) => {
      const one = single.readUnit(unit);
      return {
        expected: `values joined by "+", each ${one.expected}`,
        read: (cell) => cell.split("+").map((part) => one.read(part.trim())),
      };
    },
  };
}
