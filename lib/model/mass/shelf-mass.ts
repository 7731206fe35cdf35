import type { ShelfPart } from "../../design/index.js";
import { Mass } from "../../quantity/index.js";

/** A shelf by itself. */
export function bareShelfMass({ panel: { netArea, sheet } }: ShelfPart): Mass {
  return Mass.si(netArea * sheet.thickness * sheet.density);
}

/** A shelf's own mass and that of all it carries. */
export function shelfMass(shelf: ShelfPart): Mass {
  return Mass.si(
    shelf.carries.reduce<number>((sum, { content }) => sum + content.mass, bareShelfMass(shelf)),
  );
}
