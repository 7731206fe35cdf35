/** Where things stand in the found order of the work. */
import type { HardwarePart } from "../../design/index.js";
import type { Workshop } from "../workshop.js";

/** The place of the step that puts a part in, from 0; undefined where no order was found. */
export function placeOf(part: string, section: string, { order }: Workshop): number | undefined {
  if (order?.order.kind !== "found") return undefined;
  const key = order.stepSeenFrom(section)(part);
  const at = order.order.steps.findIndex((step) => step.key === key);
  return at < 0 ? undefined : at;
}

/** The panel that closes a section by the found order; undefined where no order was found or a side is open. */
export function closedBy(section: string, { order }: Workshop): string | undefined {
  return order?.order.kind === "found" ? order.choices.get(section)?.last : undefined;
}

/** Whether a part goes in before its section is closed; undefined where no order was found. */
export function goesInOpen(part: string, section: string, workshop: Workshop): boolean | undefined {
  const last = closedBy(section, workshop);
  const [at, closes] = [part, last ?? ""].map((one) => placeOf(one, section, workshop));
  return at === undefined || closes === undefined ? undefined : at < closes;
}

/** Hardware of flat panels that goes on only when something is inside, which it would stand in the way of. */
export function isHeldBack({ id, section, panels }: HardwarePart, workshop: Workshop): boolean {
  const at = placeOf(id, section, workshop);
  const last = closedBy(section, workshop);
  const stands = panels.filter((panel) => panel !== last).map((panel) => placeOf(panel, section, workshop));
  return at !== undefined && stands.some((place) => place !== undefined && place < at);
}
