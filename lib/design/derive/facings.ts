/** The laminate on each panel. */
import { Length } from "../../quantity/index.js";
import type { FacingPart, PanelPart } from "../parts.js";

/** One piece a faced side: cut oversize, glued on whole, trimmed and cut open with the sheet. */
export function facingParts(panel: PanelPart): FacingPart[] {
  const { facing, id, width, height, grossArea, netArea } = panel;
  if (!facing) return [];
  const piece = {
    panel: id,
    stock: facing.stock,
    adhesive: facing.glue,
    width: Length.si(width + facing.oversize),
    height: Length.si(height + facing.oversize),
    netArea,
    gluedArea: grossArea,
  };
  const outside: FacingPart = { ...piece, side: "outside" };
  return facing.sides === "both" ? [outside, { ...piece, side: "inside" }] : [outside];
}
