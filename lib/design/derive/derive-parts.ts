import type { Case } from "../case.js";
import type { HardwarePart, PanelPart, Parts } from "../parts.js";
import type { Stock } from "../stock.js";
import { barPart, edgeBars } from "./bars.js";
import { type CornerSpot, cornerCentre, cornerSpots } from "./corners.js";
import { facingParts } from "./facings.js";
import {
  contentFastenings,
  cornerFastenings,
  edgeFastenings,
  hardwareFastenings,
  shelfFastenings,
} from "./fastenings.js";
import { type HardwareSpot, hardwareSpots, surfaceIds } from "./hardware-spots.js";
import { contentPart, shelfPart } from "./inside.js";
import { inCase, layOut } from "./layout.js";
import { panelParts } from "./panels.js";

/**
 * Takes a case apart into every panel, facing, bar, piece of hardware and group of fasteners, each with its
 * true size, its place in the stacked case and the reason why it is there.
 *
 * Facings are glued on before panels are cut to size, so a panel that runs past another covers its sheet and
 * its facing. A bar is as long as the section's outside at its edge, less both set-backs.
 *
 * @throws RangeError when the case names a stock, section or fastener that does not exist; a case read from
 * files was checked before
 */
export function deriveParts(description: Case, stock: Stock): Parts {
  const layouts = layOut(description, stock);
  const spots = hardwareSpots(description, stock, layouts);
  const corners = cornerSpots(description, stock, layouts);
  const panels = layouts.flatMap((layout) => panelParts(layout, spots));
  const bars = layouts.flatMap((layout) => edgeBars(layout, stock));
  const contents = description.contents.map((content) => contentPart(content, layouts));
  const panel = panelFinder(panels);
  return {
    panels,
    facings: panels.flatMap(facingParts),
    bars: bars.map(barPart),
    hardware: [...spots.map(placedPart), ...corners.map(cornerPart)],
    fastenings: [
      ...bars.flatMap((bar) => edgeFastenings(bar, stock, panel)),
      ...spots.flatMap((spot) => hardwareFastenings(spot, stock, panel)),
      ...corners.flatMap((corner) => cornerFastenings(corner, stock, panel)),
      ...description.shelves.flatMap((shelf) => shelfFastenings(shelf, stock, layouts, panel)),
      ...description.contents.flatMap((content) => contentFastenings(content, stock, layouts, panel)),
    ],
    shelves: description.shelves.map((shelf) => shelfPart(shelf, stock, layouts, contents)),
    contents,
    sections: layouts.map(({ section, outside, insideLow }) => ({ name: section.name, outside, insideLow })),
  };
}

function panelFinder(panels: readonly PanelPart[]): (id: string) => PanelPart {
  const byId = new Map(panels.map((panel) => [panel.id, panel]));
  return (id) => {
    const found = byId.get(id);
    if (!found) throw new RangeError(`case panels: no "${id}"`);
    return found;
  };
}

function placedPart({ id, item, stock, layout, centre, holes }: HardwareSpot): HardwarePart {
  return {
    id,
    item,
    stock,
    section: layout.section.section.name,
    panels: surfaceIds(holes),
    on: centre,
    centre: inCase(layout, centre, layout.thickness),
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
