/** Shelves and contents, placed in the stacked case. */
import { Area } from "../../quantity/index.js";
import { rectangle } from "../../shape/index.js";
import type { Content, Shelf } from "../case.js";
import type { ContentPart, PanelPart, ShelfPart, StiffenerPart } from "../parts.js";
import type { Box, Point } from "../place.js";
import type { Stock } from "../stock.js";
import { stockNamed } from "../stock.js";
import { casePoint } from "./case-point.js";
import { layoutNamed } from "./hardware-spots.js";
import { middleOf } from "./in-case.js";
import type { SectionLayout } from "./layout.js";
import { panelPoint } from "./outline.js";

/** A content in the stacked case. */
export function contentPart(content: Content, layouts: readonly SectionLayout[]): ContentPart {
  const box = boxInside(layoutNamed(layouts, content.section), content.at, content.size);
  return { content, box, centre: middleOf(box) };
}

/** A shelf, the piece it is cut from and what it carries. */
export function shelfPart(
  shelf: Shelf,
  stock: Stock,
  layouts: readonly SectionLayout[],
  contents: readonly ContentPart[],
  stiffeners: readonly StiffenerPart[],
): ShelfPart {
  const carries = contents.filter(
    ({ content: { held, section } }) =>
      "shelf" in held && held.shelf === shelf.name && section === shelf.section,
  );
  const panel = shelfPanel(shelf, stock, layouts);
  const isLedge = ({ id, section, panel: on }: StiffenerPart): boolean =>
    section === shelf.section && (shelf.restsOn ?? []).some((name) => id === `${on}.${name}`);
  return {
    ...{ shelf, panel, carries },
    stiffeners: stiffeners.filter((one) => one.panel === panel.id),
    ledges: stiffeners.filter(isLedge),
  };
}

function shelfPanel(shelf: Shelf, stock: Stock, layouts: readonly SectionLayout[]): PanelPart {
  const { name, section, width, depth, at } = shelf;
  const sheet = stockNamed(stock, "sheets", shelf.sheet);
  const box = boxInside(layoutNamed(layouts, section), at, casePoint(width, depth, sheet.thickness));
  return cutPiece({
    id: `${section}.shelf.${name}`,
    section,
    role: "shelf",
    sheet,
    width,
    height: depth,
    box,
  });
}

/** A rectangle of sheet that is no face of its section, without openings. */
export function cutPiece(
  piece: Pick<PanelPart, "id" | "section" | "role" | "sheet" | "width" | "height" | "box">,
): PanelPart {
  const { width, height, box } = piece;
  const area = Area.si(width * height);
  return {
    ...piece,
    grain: "across",
    clearWidth: width,
    clearHeight: height,
    clearLow: panelPoint(0, 0),
    openings: [],
    outline: rectangle({ left: 0, bottom: 0, width, height }),
    grossArea: area,
    netArea: area,
    centroid: middleOf(box),
  };
}

function boxInside({ insideLow }: SectionLayout, at: Point, size: Point): Box {
  return { low: casePoint(insideLow.x + at.x, insideLow.y + at.y, insideLow.z + at.z), size };
}
