/** Every part of the case: what it is made of, how large, where it sits and why it exists. */
import type { Area, Length } from "../quantity/index.js";
import type { Shape } from "../shape/index.js";
import type { Content, Facing, Leaf, PlacedHardware, Shelf } from "./case.js";
import type { Box, EdgeName, Face, PanelPoint, Point } from "./place.js";
import type { Adhesive, BarStock, FacingStock, Fastener, Hardware, SheetStock } from "./stock.js";

/** The case taken apart. */
export interface Parts {
  readonly panels: readonly PanelPart[];
  readonly facings: readonly FacingPart[];
  readonly bars: readonly BarPart[];
  readonly hardware: readonly HardwarePart[];
  readonly fastenings: readonly Fastening[];
  readonly shelves: readonly ShelfPart[];
  readonly contents: readonly ContentPart[];
  /** Outside size of each section and where it stands in the stacked case. */
  readonly sections: readonly SectionPart[];
}

/** Everything sawn from a sheet: faces, the leaves of doors, and shelves. */
export function sheetPieces({ panels, shelves }: Parts): readonly PanelPart[] {
  return [...panels, ...shelves.map(({ panel }) => panel)];
}

/** A section's outside. */
export interface SectionPart {
  readonly name: string;
  readonly outside: Box;
  /** Where the inside lower left front corner is in the stacked case. */
  readonly insideLow: Point;
}

/** One piece of sheet: a face of a section, the leaf of a door, or a shelf. */
export interface PanelPart {
  /** "upper.front", "lower.left.side door", "upper.shelf.instrument shelf". */
  readonly id: string;
  readonly section: string;
  readonly role: "face" | "leaf" | "shelf";
  /** The face it is, or is in; absent for a shelf. */
  readonly face?: Face;
  readonly sheet: SheetStock;
  /** Cut size: along u and along v (for a shelf along x and y). */
  readonly width: Length;
  readonly height: Length;
  readonly grain: "across" | "up";
  /** Clear span between the panels that bear it (the section's inside), along u and v. */
  readonly clearWidth: Length;
  readonly clearHeight: Length;
  /** Where that span begins, from the panel's bottom-left cut corner; negative where the panel stops short. */
  readonly clearLow: PanelPoint;
  readonly openings: readonly PlacedOpening[];
  readonly leaf?: Leaf;
  /** What is cut from the stock, before openings, from the bottom-left corner of its cut size, m. */
  readonly outline: Shape;
  /** What is cut from the stock, before openings. */
  readonly grossArea: Area;
  readonly netArea: Area;
  readonly facing?: Facing & { readonly stock: FacingStock; readonly glue: Adhesive };
  /** In the stacked case; the thin dimension is the sheet's thickness. */
  readonly box: Box;
  /** Centre of the net area in the stacked case. */
  readonly centroid: Point;
}

/** An opening in its panel's own axes. */
export interface PlacedOpening {
  readonly name: string;
  /** Bounding box from the panel's bottom-left corner. */
  readonly low: PanelPoint;
  readonly width: Length;
  readonly height: Length;
  /** What the case file calls its shape; "rectangle" for the cut-out of a piece of hardware. */
  readonly kind: string;
  /** True outline, in panel axes, m. */
  readonly outline: Shape;
  readonly area: Area;
  /** Cut length. */
  readonly perimeter: Length;
  /** Asked for by the case file, or by a piece of hardware that needs a cut-out. */
  readonly why: "case" | "hardware";
}

/** One piece of laminate. */
export interface FacingPart {
  readonly panel: string;
  readonly side: "outside" | "inside";
  readonly stock: FacingStock;
  readonly adhesive: Adhesive;
  /** As cut, with the oversize that is trimmed after gluing. */
  readonly width: Length;
  readonly height: Length;
  /** What stays on the panel, openings cut. */
  readonly netArea: Area;
  /** What gets glue on one face: the gross panel, since openings are cut after gluing. */
  readonly gluedArea: Area;
}

/** One extrusion over one edge. */
export interface BarPart {
  readonly id: string;
  readonly section: string;
  readonly edge: EdgeName;
  readonly stock: BarStock;
  readonly length: Length;
  readonly ends: "square" | "mitred";
  /** The panels under its two legs. */
  readonly covers: readonly [string, string];
  readonly centroid: Point;
}

/** One piece of hardware at one place. */
export interface HardwarePart {
  /** "carry handle 2". */
  readonly id: string;
  readonly item: PlacedHardware;
  readonly stock: Hardware;
  readonly section: string;
  /** Panels it is fastened to: one, a panel and the leaf in it, or the three at a corner. */
  readonly panels: readonly string[];
  /** Its centre on the face's panel; absent for corners. */
  readonly on?: PanelPoint;
  readonly centre: Point;
}

/** One group of like fasteners through one panel. */
export interface Fastening {
  /** "upper.front-left on upper.front", "carry handle 2". */
  readonly id: string;
  /** What it holds: a bar's or a hardware's id, a shelf or a content. */
  readonly holds: string;
  readonly why: "edge" | "hardware" | "shelf" | "content";
  /** The panel it goes through. */
  readonly panel: string;
  readonly fastener: Fastener;
  readonly count: number;
  /** Layers it closes, outermost first, with no washer: metal flange, facing, ply. */
  readonly stack: readonly Layer[];
  /** Nothing but wood under the tail or nut: a washer belongs there. */
  readonly backIsBareWood: boolean;
  /** Holes on the panel. Empty for a content or shelf joint placed by hand. */
  readonly at: readonly PanelPoint[];
  /** Spacing along a row, where there is a row. */
  readonly pitch?: Length;
  /** Least distance from a hole's centre to the panel's edge or an opening. */
  readonly edgeDistance?: Length;
}

/** One layer of what a fastener closes. */
export interface Layer {
  readonly what: "metal" | "facing" | "ply";
  readonly thickness: Length;
}

/** A shelf with the piece it is cut from. */
export interface ShelfPart {
  readonly shelf: Shelf;
  readonly panel: PanelPart;
  /** What it carries. */
  readonly carries: readonly ContentPart[];
}

/** A content with its place in the stacked case. */
export interface ContentPart {
  readonly content: Content;
  readonly box: Box;
  readonly centre: Point;
}
