/** The extrusions over the edges of a section. */

import { rivetRow } from "../../fastening/index.js";
import { Length } from "../../quantity/index.js";
import type { Point2 } from "../../shape/index.js";
import type { EdgeExtrusion } from "../case.js";
import type { BarPart } from "../parts.js";
import {
  type EdgeName,
  edgeNames,
  type Face,
  facesAt,
  type PanelSide,
  type Point,
  panelSides,
} from "../place.js";
import type { BarStock, Stock } from "../stock.js";
import { stockNamed } from "../stock.js";
import { type Axis, edgeAxis, faceAxes, neighbour } from "./axes.js";
import { casePoint } from "./case-point.js";
import { type PanelLayout, panelAt, type SectionLayout } from "./layout.js";
import { panelPoint } from "./outline.js";

/** An extrusion over one edge of one section. */
export interface EdgeBar {
  /** "upper.front-left". */
  readonly id: string;
  /** The section whose edge it covers. */
  readonly section: SectionLayout;
  /** The edge it covers. */
  readonly edge: EdgeName;
  /** What the case says of it. */
  readonly extrusion: EdgeExtrusion;
  /** The bar it is cut from. */
  readonly stock: BarStock;
  /** Outside length of the edge. */
  readonly edgeLength: number;
  /** Its length, set-backs taken off. */
  readonly length: Length;
}

/** Every extrusion of a section. A bar is as long as the section's outside there, less both set-backs. */
export function edgeBars(section: SectionLayout, stock: Stock): EdgeBar[] {
  return edgeNames.flatMap((edge) => {
    const extrusion = section.section.edges[edge]?.extrusion;
    if (!extrusion) return [];
    const edgeLength = section.outside.size[edgeAxis(edge)];
    return [
      {
        id: `${section.section.name}.${edge}`,
        section,
        edge,
        extrusion,
        stock: stockNamed(stock, "bars", extrusion.bar),
        edgeLength,
        length: Length.si(edgeLength - 2 * extrusion.setBack),
      },
    ];
  });
}

/** The part that a bar is. */
export function barPart({ id, section, edge, extrusion, stock, length }: EdgeBar): BarPart {
  const [one, other] = facesAt(edge);
  return {
    id,
    section: section.section.name,
    edge,
    stock,
    length,
    ends: extrusion.ends,
    covers: [panelAt(section, one).id, panelAt(section, other).id],
    centroid: barCentroid(section, edge, stock),
  };
}

/** Centre of an equal-legged angle (two thin legs), its corner on the section's outside edge. */
function barCentroid({ outside: { low, size } }: SectionLayout, edge: EdgeName, { leg }: BarStock): Point {
  const ends = Object.fromEntries(facesAt(edge).map((face) => [faceAxes[face].normal, faceAxes[face].end]));
  const at = (axis: Axis): number => {
    if (ends[axis] === "low") return low[axis] + leg / 4;
    if (ends[axis] === "high") return low[axis] + size[axis] - leg / 4;
    return low[axis] + size[axis] / 2;
  };
  return casePoint(at("x"), at("y"), at("z"));
}

/** From the section's outside edge to the row of rivets: the middle of the flat of a leg. */
function rivetLine({ leg, wall }: BarStock): number {
  return (leg - wall) / 2;
}

/** Do the end distances leave a length between them? */
export function hasRoomForRivets({ extrusion, length }: EdgeBar): boolean {
  return length > 2 * extrusion.endDistance;
}

/** Rivets of one leg: places along the edge from the section's outside, and their pitch. */
export function rivetsOf(
  { edge, extrusion, length }: Pick<EdgeBar, "edge" | "extrusion" | "length">,
  face: Face,
): {
  /** Places of the rivets, in metres from the outside of the section. */
  readonly at: readonly number[];
  /** Distance from one rivet to the next. */
  readonly pitch: Length;
} {
  const { endDistance, pitch: largestPitch, setBack, stagger } = extrusion;
  const { count, pitch } = rivetRow({ length, endDistance, largestPitch });
  const first = setBack + endDistance;
  const between = stagger && face === staggeredFace(edge);
  return {
    at: between
      ? Array.from({ length: count - 1 }, (_, i) => first + (i + 0.5) * pitch)
      : Array.from({ length: count }, (_, i) => first + i * pitch),
    pitch,
  };
}

/** The leg whose rivets stand between those of the other: on a bottom, so that heads of stacked sections pass too. */
function staggeredFace(edge: EdgeName): Face {
  const [one, other] = facesAt(edge);
  return one === "bottom" ? one : other;
}

/** Holes of a bar's rivets on one of its two panels. */
export function barHoles(bar: EdgeBar, layout: PanelLayout): readonly Point2<Length>[] {
  const [one, other] = facesAt(bar.edge);
  const side = sideTowards(layout, layout.face === one ? other : one);
  const off = rivetLine(bar.stock) - layout.inset[side];
  return rivetsOf(bar, layout.face).at.map((along) => pointBeside(layout, side, along, off));
}

/** The point of a panel so far along one of its sides (counted from the section's outside) and so far off it. */
function pointBeside(
  { inset, width, height }: PanelLayout,
  side: PanelSide,
  along: number,
  off: number,
): Point2<Length> {
  switch (side) {
    case "left":
      return panelPoint(off, along - inset.bottom);
    case "right":
      return panelPoint(width - off, along - inset.bottom);
    case "bottom":
      return panelPoint(along - inset.left, off);
    case "top":
      return panelPoint(along - inset.left, height - off);
  }
}

/** The side of a panel that meets another face. */
export function sideTowards({ face }: PanelLayout, other: Face): PanelSide {
  return panelSides.find((side) => neighbour(face, side) === other) as PanelSide;
}
