/** How far a panel would sag with one of its openings held elsewhere: at once, and on a coarse mesh. */
import type { Design, PanelPart } from "../design/index.js";
import { bent, factoredPanel, largestDeflection } from "../fem/index.js";
import { showFine } from "../findings/index.js";
import { allowedSag, facePressure, physicalInput, sagCaseOf, sagSpan, sagTask } from "../model/index.js";
import { Length } from "../quantity/index.js";
import { Refusal } from "../refusal.js";
import { moved } from "../shape/index.js";
import type { HeldOpening } from "./messages.js";

/** A sentence about the sag, which says how rough it is; empty where there is none to tell. */
export function heldSag({ panel: id, name, right, up }: HeldOpening, design: Design): string {
  const panel = design.parts.panels.find((one) => one.id === id);
  if (!panel) return "";
  const openings = panel.openings.map((one) =>
    one.name === name ? { ...one, outline: moved(one.outline, { x: right, y: up }) } : one,
  );
  try {
    return roughSag({ ...panel, openings }, design);
  } catch (error) {
    if (error instanceof Refusal) return "";
    throw error;
  }
}

function roughSag(panel: PanelPart, design: Design): string {
  const input = physicalInput(design);
  const pressure = facePressure(panel, input);
  if (!(pressure > 0)) return "";
  const { problem, elementTarget } = sagTask(sagCaseOf(panel, pressure, "hinged", input));
  const { value } = largestDeflection(bent(factoredPanel(problem, elementTarget, 0)));
  const style = { system: design.case.units } as const;
  const [sag, allowed] = [Length.si(Math.abs(value)), allowedSag(input, sagSpan(panel))];
  return `There it would sag about ${showFine(sag, style)}, worked out roughly; ${showFine(allowed, style)} is allowed.`;
}
