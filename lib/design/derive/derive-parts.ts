import { Length } from "../../quantity/index.js";
import type { CaseBody } from "../case.js";
import type { ToolRoom } from "../measured.js";
import type { FacingPart, HardwarePart, PanelPart, Parts } from "../parts.js";
import { faces } from "../place.js";
import type { Stock } from "../stock.js";
import { barPart } from "./bars.js";
import { type CornerSpot, cornerCentre } from "./corners.js";
import { drawerFastenings, drawerPart } from "./drawers.js";
import {
  contentFastenings,
  cornerFastenings,
  edgeFastenings,
  hardwareFastenings,
  shelfFastenings,
} from "./fastenings.js";
import { withHandsShutOut } from "./hands.js";
import { type HardwareSpot, surfaceIds } from "./hardware-spots.js";
import { inCase } from "./in-case.js";
import { contentPart, shelfPart } from "./inside.js";
import { jointFastenings, jointGlues, jointPart, jointStrips } from "./joints.js";
import { panelPart } from "./panels.js";
import { paneFastenings, paneParts } from "./panes.js";
import { planCase } from "./plan.js";
import { drawerSlides, shelfSlides, slideFastenings, slidesPart } from "./slides.js";
import { stayFastenings, stayParts } from "./stays.js";
import { stiffenerFastenings, stiffenerGlues, stiffenerPart, stiffenerStrips } from "./stiffeners.js";

/**
 * Takes a case apart into every panel, facing, bar, piece of hardware and group of fasteners, each with its
 * true size, its place in the stacked case and the reason why it is there.
 *
 * Facings are glued on before panels are cut to size, so a panel that runs past another covers its sheet and
 * its facing. A bar is as long as the section's outside at its edge, less both set-backs.
 *
 * @param tools rows of tools.csv: how far hands and arms reach
 * @throws RangeError when the case names a stock, section or fastener that does not exist; a case read from
 * files was checked before
 */
export function deriveParts(description: CaseBody, stock: Stock, tools: readonly ToolRoom[]): Parts {
  const plan = planCase(description, stock);
  const { layouts, bars, joints, stiffeners, spots, corners } = plan;
  const stiffenerParts = stiffeners.map((one) => stiffenerPart(one, stock));
  const panels = plan.pieces.map(panelPart);
  const panes = layouts.flatMap((layout) => paneParts(layout, stock));
  const contents = description.contents.map((content) => contentPart(content, layouts));
  const drawers = description.drawers.map((drawer) => drawerPart(drawer, stock, layouts));
  const boards = stiffeners.flatMap(stiffenerStrips);
  const slides = [
    ...description.shelves.flatMap((shelf) => shelfSlides(shelf, layouts, boards)),
    ...drawers.map((drawer) => drawerSlides(drawer, boards)),
  ];
  const parts: Parts = {
    panels,
    facings: [...panels, ...drawers.flatMap((drawer) => drawer.panels)].flatMap(facingParts),
    bars: bars.map(barPart),
    joints: joints.map((joint) => jointPart(joint, stock)),
    strips: [...joints.flatMap(jointStrips), ...boards],
    glues: [
      ...joints.flatMap((joint) => jointGlues(joint, stock)),
      ...stiffeners.flatMap((one) => stiffenerGlues(one, stock)),
    ],
    stiffeners: stiffenerParts,
    panes,
    hardware: [
      ...spots.map(placedPart),
      ...corners.map(cornerPart),
      ...slides.map((pair) => slidesPart(pair, stock, layouts)),
      ...stayParts(plan, stock),
    ],
    fastenings: [
      ...bars.flatMap((bar) => edgeFastenings(bar, stock, plan)),
      ...joints.flatMap((joint) => jointFastenings(joint, stock, plan)),
      ...stiffeners.flatMap((one) => stiffenerFastenings(one, stock, plan)),
      ...panes.flatMap((pane) => paneFastenings(pane, stock, plan)),
      ...spots.flatMap((spot) => hardwareFastenings(spot, stock, plan)),
      ...corners.flatMap((corner) => cornerFastenings(corner, stock, plan)),
      ...description.shelves.flatMap((shelf) => shelfFastenings(shelf, stock, plan)),
      ...slides.flatMap((pair) => slideFastenings(pair, stock, plan)),
      ...stayFastenings(plan, stock),
      ...drawers.flatMap((drawer) => drawerFastenings(drawer, stock)),
      ...description.contents.flatMap((content) => contentFastenings(content, stock, plan)),
    ],
    shelves: description.shelves.map((shelf) => shelfPart(shelf, stock, layouts, contents, stiffenerParts)),
    drawers,
    contents,
    sections: layouts.map(({ section, outside, insideLow, panels: closed }) => ({
      name: section.name,
      outside,
      insideLow,
      open: faces.filter((face) => !closed[face]),
    })),
  };
  return withHandsShutOut(parts, tools);
}

function placedPart({ id, item, stock, layout, centre, holes, size }: HardwareSpot): HardwarePart {
  return {
    id,
    item,
    stock,
    section: layout.section.section.name,
    panels: surfaceIds(holes),
    on: centre,
    centre: inCase(layout, centre, layout.thickness),
    size: { width: Length.si(size.width), height: Length.si(size.height) },
  };
}

function cornerPart(spot: CornerSpot): HardwarePart {
  const { id, item, stock, section, legs } = spot;
  return {
    id,
    item,
    stock,
    section: section.section.name,
    panels: legs.map(({ layout }) => layout.id),
    centre: cornerCentre(spot),
  };
}

/** One piece a faced side: cut oversize, glued on whole, trimmed and cut open with the sheet. */
function facingParts(panel: PanelPart): FacingPart[] {
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
