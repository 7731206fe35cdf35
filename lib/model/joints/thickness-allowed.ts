/** How far off the thickness of a sheet may be before a rivet through it no longer closes its stack. */
import type { Parts, SheetStock } from "../../design/index.js";
import { fastenerTraits } from "../../fastening/index.js";
import { Length } from "../../quantity/index.js";
import { thicknessTolerance } from "../tolerances.js";
import { closesStack, gripOf } from "./joint-stack.js";

/**
 * How much thicker and thinner than planned a sheet may be: as sanded plywood may, and no more than every rivet through it
 * that closes its planned stack still closes.
 */
export function thicknessAllowed(
  { name, thickness }: SheetStock,
  { panels, fastenings }: Pick<Parts, "panels" | "fastenings">,
): { readonly over: Length; readonly under: Length } {
  const own = new Set(panels.filter(({ sheet }) => sheet.name === name).map(({ id }) => id));
  const { over, under } = thicknessTolerance(thickness);
  const closed = fastenings.filter(
    (group) => own.has(group.panel) && fastenerTraits[group.fastener.kind].chosenByGrip && closesStack(group),
  );
  return {
    over: Length.si(Math.min(over, ...closed.map((group) => group.fastener.gripMax - gripOf(group)))),
    under: Length.si(Math.min(under, ...closed.map((group) => gripOf(group) - group.fastener.gripMin))),
  };
}
