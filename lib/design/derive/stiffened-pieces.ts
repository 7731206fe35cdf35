/** What a stiffener can lie on: the panel of a face, a leaf in it, or a shelf. */
import type { Length } from "../../quantity/index.js";
import { type Box2, boundsOf, rectangle, type Shape } from "../../shape/index.js";
import type { CaseBody, Stiffener } from "../case.js";
import type { PlacedOpening } from "../parts.js";
import type { Box, Face, Point } from "../place.js";
import type { SheetStock, Stock } from "../stock.js";
import { stockNamed } from "../stock.js";
import { casePoint } from "./case-point.js";
import { layoutNamed } from "./hardware-spots.js";
import { boxBetween, inCase } from "./in-case.js";
import { type PanelLayout, panelAt, type SectionLayout } from "./layout.js";
import { placeOpening } from "./openings.js";
import { panelPoint } from "./outline.js";
import { ownOutline, type Surface, surfacesOf } from "./surfaces.js";

/** A flat piece with axes of its own, of which a shelf's outside is its top. */
export interface StiffenedPiece {
  /** "upper.front", "upper.front.door", "upper.shelf.board". */
  readonly id: string;
  /** The face that it is, or is in; absent for a shelf. */
  readonly face?: Face;
  /** What it is cut from. */
  readonly sheet: SheetStock;
  /** Sheet and facings. */
  readonly thickness: Length;
  /** Its own outline. */
  readonly outline: Shape;
  /** Where there is room on its inside. */
  readonly clear: Box2;
  /** What the case file cuts out of it. */
  readonly openings: readonly PlacedOpening[];
  /** Where a point of it is in the stacked case, so far outwards from its inside. */
  readonly toCase: (at: { readonly x: number; readonly y: number }, off: number) => Point;
}

/**
 * The piece that a stiffener is on.
 *
 * @throws RangeError when there is none; a case read from files was checked before
 */
export function stiffenedPiece(
  { section, face, leaf, shelf }: Stiffener,
  { shelves }: CaseBody,
  stock: Stock,
  layouts: readonly SectionLayout[],
): StiffenedPiece {
  const layout = layoutNamed(layouts, section);
  if (face === undefined) return shelfPiece(layout, shelf ?? "", shelves, stock);
  const [whole, ...leaves] = surfacesOf(panelAt(layout, face));
  if (leaf === undefined) return facePiece(whole.layout);
  const surface = leaves.find(({ id }) => id === `${section}.${face}.${leaf}`);
  if (!surface) throw new RangeError(`case leaves: no "${leaf}" in ${section}.${face}`);
  return leafPiece(surface);
}

function facePiece(layout: PanelLayout): StiffenedPiece {
  const { id, face, sheet, thickness, width, height, reach, panel } = layout;
  const { left, bottom } = reach;
  return {
    ...{ id, face, sheet, thickness },
    outline: rectangle({ left: 0, bottom: 0, width, height }),
    clear: { left, bottom, width: width - left - reach.right, height: height - bottom - reach.top },
    openings: panel.openings.map((opening) => placeOpening(opening, layout)),
    toCase: ({ x, y }, off) => inCase(layout, panelPoint(x, y), off),
  };
}

function leafPiece(surface: Surface): StiffenedPiece {
  const { id, layout } = surface;
  const { face, sheet, thickness } = layout;
  const { left, bottom } = boundsOf(surface.outline);
  const outline = ownOutline(surface);
  return {
    ...{ id, face, sheet, thickness, outline },
    clear: boundsOf(outline),
    openings: [],
    toCase: ({ x, y }, off) => inCase(layout, panelPoint(left + x, bottom + y), off),
  };
}

function shelfPiece(
  { section, insideLow }: SectionLayout,
  name: string,
  shelves: CaseBody["shelves"],
  stock: Stock,
): StiffenedPiece {
  const shelf = shelves.find((one) => one.name === name && one.section === section.name);
  if (!shelf) throw new RangeError(`case shelves: no "${name}" in ${section.name}`);
  const { width, depth, at } = shelf;
  const sheet = stockNamed(stock, "sheets", shelf.sheet);
  const whole = { left: 0, bottom: 0, width, height: depth };
  const low = { x: insideLow.x + at.x, y: insideLow.y + at.y, z: insideLow.z + at.z };
  return {
    ...{ id: `${section.name}.shelf.${name}`, sheet, thickness: sheet.thickness },
    outline: rectangle(whole),
    clear: whole,
    openings: [],
    toCase: ({ x, y }, off) => casePoint(low.x + x, low.y + y, low.z + off),
  };
}

/** The box of what lies on a rectangle of a piece, between two distances outwards from its inside. */
export function boxOf(
  { toCase }: StiffenedPiece,
  { left, bottom, width, height }: Box2,
  [from, to]: readonly [number, number],
): Box {
  return boxBetween(
    toCase({ x: left, y: bottom }, from),
    toCase({ x: left + width, y: bottom + height }, to),
  );
}
