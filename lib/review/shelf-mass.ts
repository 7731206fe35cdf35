import type { ShelfPart } from "../design/index.js";
import { Mass } from "../quantity/index.js";

/** A shelf's own mass and that of all it carries. */
export function shelfMass({ panel, carries }: ShelfPart): Mass {
  const own = panel.netArea * panel.sheet.thickness * panel.sheet.density;
  return Mass.si(carries.reduce((sum, { content }) => sum + content.mass, own));
}
