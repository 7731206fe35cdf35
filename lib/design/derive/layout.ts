/**
 * A section laid out: the true size of each panel and where it sits. Facings are glued on before a panel is
 * cut to size, so a panel that runs past another covers the other's sheet and facing, as glued.
 */
import { Length } from "../../quantity/index.js";
import type { CaseBody, Facing, Panel, Section } from "../case.js";
import type { Box, Face, PanelSide, Point } from "../place.js";
import { faces, panelSides } from "../place.js";
import type { Adhesive, FacingStock, SheetStock, Stock } from "../stock.js";
import { stockNamed } from "../stock.js";
import { type Axis, edgeBetween, faceAxes, neighbour } from "./axes.js";
import { casePoint } from "./case-point.js";

/** A facing with what it is made of and glued with. */
export type StockedFacing = Facing & { readonly stock: FacingStock; readonly glue: Adhesive };

/** A panel with its stock, its size and its place. */
export interface PanelLayout {
  /** "upper.front". */
  readonly id: string;
  /** The section it is a panel of. */
  readonly section: SectionLayout;
  /** The face it is. */
  readonly face: Face;
  /** What the case says of it. */
  readonly panel: Panel;
  /** The sheet it is cut from. */
  readonly sheet: SheetStock;
  /** The laminate glued on, if any. */
  readonly facing?: StockedFacing;
  /** Sheet and facing. */
  readonly thickness: Length;
  /** Cut size along u and v. */
  readonly width: Length;
  /** Cut size along v. */
  readonly height: Length;
  /** How far it reaches beyond the section's inside at each side; negative when it stops short. */
  readonly reach: Readonly<Record<PanelSide, number>>;
  /** From its cut edge to the section's outside at each side. */
  readonly inset: Readonly<Record<PanelSide, number>>;
}

/** A section with its panels laid out. */
export interface SectionLayout {
  /** What the case says of it. */
  readonly section: Section;
  /** Its panels by face; an open face has none. */
  readonly panels: Readonly<Partial<Record<Face, PanelLayout>>>;
  /** Clear inside along each axis. */
  readonly inside: Readonly<Record<Axis, Length>>;
  /** Lower left front corner of the inside, in the stacked case. */
  readonly insideLow: Point;
  /** Its outside in the stacked case. */
  readonly outside: Box;
}

/** Lays out every section and stacks them, each centred on the one below. */
export function layOut({ sections }: CaseBody, stock: Stock): readonly SectionLayout[] {
  const laid: SectionLayout[] = [];
  for (const section of sections) laid.push(layOutSection(section, stock, laid.at(0), laid.at(-1)));
  return laid;
}

function layOutSection(
  section: Section,
  stock: Stock,
  lowest: SectionLayout | undefined,
  below: SectionLayout | undefined,
): SectionLayout {
  const thickness = Object.fromEntries(
    faces.map((face) => [face, panelThickness(section.panels[face], stock)]),
  ) as Record<Face, number>;
  const { width, depth, height } = section.inside;
  const size = casePoint(
    thickness.left + width + thickness.right,
    thickness.front + depth + thickness.back,
    thickness.bottom + height + thickness.top,
  );
  const low = casePoint(
    lowest ? (lowest.outside.size.x - size.x) / 2 : 0,
    lowest ? (lowest.outside.size.y - size.y) / 2 : 0,
    below ? below.outside.low.z + below.outside.size.z + (section.standsOff ?? 0) : 0,
  );
  const insideLow = casePoint(low.x + thickness.left, low.y + thickness.front, low.z + thickness.bottom);
  const panels: Partial<Record<Face, PanelLayout>> = {};
  const layout: SectionLayout = {
    section,
    panels,
    inside: { x: width, y: depth, z: height },
    insideLow,
    outside: { low, size },
  };
  for (const face of faces) {
    const panel = section.panels[face];
    if (panel) panels[face] = layOutPanel(layout, face, panel, thickness, stock);
  }
  return layout;
}

/**
 * The panel of a face.
 *
 * @throws RangeError where the face is open; a case read from files was checked before
 */
export function panelAt({ section, panels }: SectionLayout, face: Face): PanelLayout {
  const panel = panels[face];
  if (!panel) throw new RangeError(`case panels: ${section.name} has no ${face}`);
  return panel;
}

/** Sheet and facings; an open face takes no room. */
function panelThickness(panel: Panel | undefined, stock: Stock): number {
  if (!panel) return 0;
  const { sheet, facing } = panel;
  const layers = facing === undefined ? 0 : facing.sides === "both" ? 2 : 1;
  const facingThickness = facing ? stockNamed(stock, "facings", facing.facing).thickness : 0;
  return stockNamed(stock, "sheets", sheet).thickness + layers * facingThickness;
}

function layOutPanel(
  layout: SectionLayout,
  face: Face,
  panel: Panel,
  thickness: Readonly<Record<Face, number>>,
  stock: Stock,
): PanelLayout {
  const { section, inside } = layout;
  const bySide = (measure: (other: Face) => number): Record<PanelSide, number> =>
    Object.fromEntries(panelSides.map((side) => [side, measure(neighbour(face, side))])) as Record<
      PanelSide,
      number
    >;
  const reach = bySide((other) => reachPast(section, face, other, thickness[other], stock));
  const { u, v } = faceAxes[face];
  return {
    id: `${section.name}.${face}`,
    section: layout,
    face,
    panel,
    sheet: stockNamed(stock, "sheets", panel.sheet),
    ...(panel.facing ? { facing: stockedFacing(panel.facing, stock) } : {}),
    thickness: Length.si(thickness[face]),
    width: Length.si(reach.left + inside[u.axis] + reach.right),
    height: Length.si(reach.bottom + inside[v.axis] + reach.top),
    reach,
    inset: bySide((other) => thickness[other] - reachPast(section, face, other, thickness[other], stock)),
  };
}

/** How far a panel reaches beyond the inside where it meets another. */
function reachPast(
  { edges }: Section,
  face: Face,
  other: Face,
  otherThickness: number,
  stock: Stock,
): number {
  const { through, extrusion } = edges[edgeBetween(face, other)] ?? {};
  if (through === face) return otherThickness;
  if (through !== "neither" || !extrusion) return 0;
  return -stockNamed(stock, "bars", extrusion.bar).seat;
}

function stockedFacing(facing: Facing, stock: Stock): StockedFacing {
  return {
    ...facing,
    stock: stockNamed(stock, "facings", facing.facing),
    glue: stockNamed(stock, "adhesives", facing.adhesive),
  };
}
