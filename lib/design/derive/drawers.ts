/** Drawers taken apart: a front that fills the opening, and a box behind it as wide as its slides let it be. */
import { Length } from "../../quantity/index.js";
import { boundsOf, type Point2 } from "../../shape/index.js";
import type { Drawer } from "../case.js";
import type { DrawerPart, Fastening, PanelPart } from "../parts.js";
import { type Box, type Face, type Point, type UprightFace, uprightFaces } from "../place.js";
import type { SheetStock, Stock } from "../stock.js";
import { stockNamed } from "../stock.js";
import { casePoint } from "./case-point.js";
import { byHandThrough } from "./fastenings.js";
import { layoutNamed } from "./hardware-spots.js";
import { inCase, sheetBox } from "./in-case.js";
import { cutPiece } from "./inside.js";
import type { PanelLayout, SectionLayout } from "./layout.js";
import { placeOpening } from "./openings.js";
import { panelPoint } from "./outline.js";

/** An opening with the panel it is in, by the name that a drawer calls it. */
export interface DrawerOpening {
  /** The panel. */
  readonly layout: PanelLayout;
  /** The face that it is. */
  readonly face: UprightFace;
  /** The corners of the opening's bounds, in the panel's axes. */
  readonly low: Point2<Length>;
  /** The other corner. */
  readonly high: Point2<Length>;
}

/** Where a drawer comes out; undefined where its section has no such opening. */
export function drawerOpening(
  { section, opening }: Drawer,
  layouts: readonly SectionLayout[],
): DrawerOpening | undefined {
  const { panels } = layoutNamed(layouts, section);
  for (const face of uprightFaces) {
    const layout = panels[face];
    const found = layout?.panel.openings.find(({ name }) => `${face}.${name}` === opening);
    if (!layout || !found) continue;
    const { left, bottom, width, height } = boundsOf(placeOpening(found, layout).outline);
    return { layout, face, low: panelPoint(left, bottom), high: panelPoint(left + width, bottom + height) };
  }
  return undefined;
}

/** What a drawer's pieces are made to. */
export interface DrawerSizes {
  /** Outside of its box, across the opening. */
  readonly width: number;
  /** Outside of its box, bottom included. */
  readonly height: number;
}

/** The outside of a drawer's box: the opening less the room of its slides, and less the gap. */
export function drawerSizes(
  { gap, slides }: Drawer,
  { low, high }: DrawerOpening,
  stock: Stock,
): DrawerSizes {
  const room = stockNamed(stock, "hardware", slides).sideRoom ?? 0;
  return { width: high.x - low.x - 2 * room, height: high.y - low.y - 2 * gap };
}

/** The walls beside a drawer, which its slides are screwed to. */
export function wallsBeside(face: UprightFace): readonly [Face, Face] {
  return face === "left" || face === "right" ? ["front", "back"] : ["left", "right"];
}

/**
 * A drawer with its pieces in the stacked case, shut.
 *
 * @throws RangeError when it names what does not exist
 */
export function drawerPart(drawer: Drawer, stock: Stock, layouts: readonly SectionLayout[]): DrawerPart {
  const opening = drawerOpening(drawer, layouts);
  if (!opening) throw new RangeError(`drawer ${drawer.name}: no opening "${drawer.opening}"`);
  const { layout, face, low, high } = opening;
  const { gap, depth, section } = drawer;
  const { width, height } = drawerSizes(drawer, opening, stock);
  const sheet = stockNamed(stock, "sheets", drawer.sheet);
  const floor = stockNamed(stock, "sheets", drawer.bottom ?? drawer.sheet);
  const [w, h, t, tb] = [width, height, sheet.thickness, floor.thickness];
  const [left, bottom] = [(low.x + high.x - w) / 2, low.y + gap];
  const cut = ({ what, of, size, across, up, deep }: BoxPiece): PanelPart => {
    const from = panelPoint(left + across[0], bottom + up[0]);
    const to = panelPoint(left + across[1], bottom + up[1]);
    const box = boxBetween(inCase(layout, from, -deep[0]), inCase(layout, to, -deep[1]));
    const [cutWidth, cutHeight] = [Length.si(size[0]), Length.si(size[1])];
    const id = pieceId(drawer, what);
    return cutPiece({ id, section, role: "drawer", sheet: of, width: cutWidth, height: cutHeight, box });
  };
  const above: Extent = [tb, h];
  const wall = { of: sheet, up: above };
  const boxPieces: readonly BoxPiece[] = [
    { what: "left side", ...wall, size: [depth, h - tb], across: [0, t], deep: [0, depth] },
    { what: "right side", ...wall, size: [depth, h - tb], across: [w - t, w], deep: [0, depth] },
    { what: "inner front", ...wall, size: [w - 2 * t, h - tb], across: [t, w - t], deep: [0, t] },
    { what: "back", ...wall, size: [w - 2 * t, h - tb], across: [t, w - t], deep: [depth - t, depth] },
    { what: "bottom", of: floor, size: [w, depth], across: [0, w], up: [0, tb], deep: [0, depth] },
  ];
  const panels = [front(drawer, opening), ...boxPieces.map(cut)];
  const shut = boxBetween(inCase(layout, low, 0), inCase(layout, high, -depth));
  return { drawer, face, panels, box: shut };
}

/** From and to along one axis, m. */
type Extent = readonly [number, number];

/** One piece of a drawer's box, from its lower left corner as seen from outside. */
interface BoxPiece {
  /** What it is of the box. */
  readonly what: string;
  /** What it is cut from. */
  readonly of: SheetStock;
  /** As cut, m. */
  readonly size: Extent;
  /** Along u, m. */
  readonly across: Extent;
  /** Along v, m. */
  readonly up: Extent;
  /** Inwards from the inside of the panel, m. */
  readonly deep: Extent;
}

function pieceId({ section, name }: Drawer, what: string): string {
  return `${section}.drawer.${name}.${what}`;
}

/** The front, of the same sheet and facing as its panel. */
function front(drawer: Drawer, { layout, face, low, high }: DrawerOpening): PanelPart {
  const { gap, section } = drawer;
  const [from, to] = [panelPoint(low.x + gap, low.y + gap), panelPoint(high.x - gap, high.y - gap)];
  const piece = cutPiece({
    id: pieceId(drawer, "front"),
    section,
    role: "drawer",
    sheet: layout.sheet,
    width: Length.si(to.x - from.x),
    height: Length.si(to.y - from.y),
    box: sheetBox(layout, from, to),
  });
  const { facing, panel } = layout;
  return { ...piece, face, grain: panel.grain, ...(facing ? { facing } : {}) };
}

function boxBetween(one: Point, other: Point): Box {
  const low = (axis: keyof Point): number => Math.min(one[axis], other[axis]);
  const size = (axis: keyof Point): number => Math.abs(one[axis] - other[axis]);
  return {
    low: casePoint(low("x"), low("y"), low("z")),
    size: casePoint(size("x"), size("y"), size("z")),
  };
}

/** Whether a piece is one of the two sides of a drawer's box. */
export function isDrawerSide({ id }: PanelPart): boolean {
  return id.endsWith(" side");
}

/** The fasteners that hold a drawer's box together, through its sides. */
export function drawerFastenings({ drawer, panels }: DrawerPart, stock: Stock): readonly Fastening[] {
  const { name, joint } = drawer;
  const fastener = stockNamed(stock, "fasteners", joint.fastener);
  return panels.filter(isDrawerSide).map((side, i) => {
    const count = i === 0 ? Math.ceil(joint.count / 2) : Math.floor(joint.count / 2);
    return byHandThrough(side.id, side.sheet.thickness, {
      holds: name,
      why: "drawer",
      fastener,
      count,
      metal: 0,
    });
  });
}
