import type { Grain } from "./sheet-plan.js";

/** Whether a piece may lie straight (false), turned (true), or both. */
export function turnsAllowed(grain: Grain): readonly boolean[] {
  return { along: [false], across: [true], free: [false, true] }[grain];
}
