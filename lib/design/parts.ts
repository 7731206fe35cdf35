/** Every part of the case: what it is made of, how large, where it sits and why it exists. */
import type { Area, Density, Length } from "../quantity/index.js";
import type { Box2, Point2, Shape } from "../shape/index.js";
import type { Content, Drawer, EdgeJointKind, Facing, Leaf, Pane, PlacedHardware, Shelf } from "./case.js";
import type { Box, EdgeName, Face, PanelSide, Point, UprightFace } from "./place.js";
import type {
  Adhesive,
  BarStock,
  FacingStock,
  Fastener,
  Hardware,
  PaneStock,
  SheetStock,
  StripStock,
} from "./stock.js";

/** The case taken apart. */
export interface Parts {
  /** Faces, door leaves and shelves. */
  readonly panels: readonly PanelPart[];
  /** Every piece of laminate. */
  readonly facings: readonly FacingPart[];
  /** Every extrusion. */
  readonly bars: readonly BarPart[];
  /** Every edge that is held without an extrusion, as the case names it. */
  readonly joints: readonly JointPart[];
  /** Every piece of a strip: cleats, corner blocks, battens. */
  readonly strips: readonly StripPart[];
  /** Every pane over an opening. */
  readonly panes: readonly PanePart[];
  /** Every stiffener of a panel. */
  readonly stiffeners: readonly StiffenerPart[];
  /** Every place at which wood is glued to wood. */
  readonly glues: readonly GluePart[];
  /** Every piece of hardware. */
  readonly hardware: readonly HardwarePart[];
  /** Every group of like fasteners. */
  readonly fastenings: readonly Fastening[];
  /** Every shelf with its piece. */
  readonly shelves: readonly ShelfPart[];
  /** Every drawer with its pieces. */
  readonly drawers: readonly DrawerPart[];
  /** What rides inside. */
  readonly contents: readonly ContentPart[];
  /** Outside size of each section and where it stands in the stacked case. */
  readonly sections: readonly SectionPart[];
}

/** Everything sawn from a sheet: faces, the leaves of doors, shelves, drawers, and stiffeners of sheet. */
export function sheetPieces({ panels, shelves, drawers, stiffeners }: Parts): readonly PanelPart[] {
  return [
    ...panels,
    ...shelves.map(({ panel }) => panel),
    ...drawers.flatMap((drawer) => drawer.panels),
    ...stiffeners.flatMap(({ piece }) => piece ?? []),
  ];
}

/** A section's outside. */
export interface SectionPart {
  /** What the builder calls it. */
  readonly name: string;
  /** Its outside, over facings, in the stacked case. */
  readonly outside: Box;
  /** Where the inside lower left front corner is in the stacked case. */
  readonly insideLow: Point;
  /** The faces that have no panel. */
  readonly open: readonly Face[];
}

/** One piece of sheet: a face of a section, the leaf of a door, a shelf, or a stiffener. */
export interface PanelPart {
  /** "upper.front", "lower.left.side door", "upper.shelf.instrument shelf". */
  readonly id: string;
  /** Name of its section. */
  readonly section: string;
  /** A face of a section, the leaf of a door, a shelf, a piece of a drawer, or a stiffener. */
  readonly role: "face" | "leaf" | "shelf" | "drawer" | "stiffener";
  /** The face it is, or is in or on; absent for a shelf. */
  readonly face?: Face;
  /** What it is cut from. */
  readonly sheet: SheetStock;
  /** Cut size: along u and along v (for a shelf along x and y). */
  readonly width: Length;
  /** Cut size along v (for a shelf along y). */
  readonly height: Length;
  /** Direction of the face grain, seen from outside: across = along u, up = along v. */
  readonly grain: "across" | "up";
  /** Clear span between the panels that bear it (the section's inside), along u and v. */
  readonly clearWidth: Length;
  /** Clear span along v. */
  readonly clearHeight: Length;
  /** Sides of a face that meet no other panel, since the case is open there; absent for none. */
  readonly freeSides?: readonly PanelSide[];
  /** Where that span begins, from the panel's bottom-left cut corner; negative where the panel stops short. */
  readonly clearLow: Point2<Length>;
  /** Cut out of it. */
  readonly openings: readonly PlacedOpening[];
  /** The door that it is, for a leaf. */
  readonly leaf?: HungLeaf;
  /** What is cut from the stock, before openings, from the bottom-left corner of its cut size, m. */
  readonly outline: Shape;
  /** What is cut from the stock, before openings. */
  readonly grossArea: Area;
  /** What is left after its openings. */
  readonly netArea: Area;
  /** Laminate glued on, with its stock and its glue. */
  readonly facing?: Facing & { readonly stock: FacingStock; readonly glue: Adhesive };
  /** In the stacked case; the thin dimension is the sheet's thickness. */
  readonly box: Box;
  /** Centre of the net area in the stacked case. */
  readonly centroid: Point;
}

/** A leaf in its opening. */
export interface HungLeaf extends Leaf {
  /** Name of the opening that it closes, alone or with others. */
  readonly opening: string;
  /** Its bottom-left corner on the panel of its face. */
  readonly low: Point2<Length>;
  /** The leaves that it meets in its opening, their ids by the side. */
  readonly meets: Readonly<Partial<Record<PanelSide, string>>>;
  /** Gap to the leaves that it meets; absent where it meets none. */
  readonly between?: Length;
}

/** An opening in its panel's own axes. */
export interface PlacedOpening {
  /** What the builder or the hardware calls it. */
  readonly name: string;
  /** Bounding box from the panel's bottom-left corner. */
  readonly low: Point2<Length>;
  /** Of the bounding box, along u. */
  readonly width: Length;
  /** Of the bounding box, along v. */
  readonly height: Length;
  /** What the case file calls its shape; "rectangle" for the cut-out of a piece of hardware. */
  readonly kind: string;
  /** True outline, in panel axes, m. */
  readonly outline: Shape;
  /** Inside its outline. */
  readonly area: Area;
  /** Cut length. */
  readonly perimeter: Length;
  /** Asked for by the case file, or by a piece of hardware that needs a cut-out. */
  readonly why: "case" | "hardware";
}

/** One piece of laminate. */
export interface FacingPart {
  /** Id of the panel. */
  readonly panel: string;
  /** Of the panel. */
  readonly side: "outside" | "inside";
  /** What it is cut from. */
  readonly stock: FacingStock;
  /** What it is glued with. */
  readonly adhesive: Adhesive;
  /** As cut, with the oversize that is trimmed after gluing. */
  readonly width: Length;
  /** As cut, along v. */
  readonly height: Length;
  /** What stays on the panel, openings cut. */
  readonly netArea: Area;
  /** What gets glue on one face: the gross panel, since openings are cut after gluing. */
  readonly gluedArea: Area;
}

/** One extrusion over one edge. */
export interface BarPart {
  /** "upper.front-left". */
  readonly id: string;
  /** Name of its section. */
  readonly section: string;
  /** The edge that it covers. */
  readonly edge: EdgeName;
  /** What it is cut from. */
  readonly stock: BarStock;
  /** As cut, over its longer side where mitred. */
  readonly length: Length;
  /** How its ends are cut. */
  readonly ends: "square" | "mitred";
  /** The panels under its two legs. */
  readonly covers: readonly [string, string];
  /** In the stacked case. */
  readonly centroid: Point;
}

/** One edge that is glued, screwed, or held by a cleat or by corner blocks. */
export interface JointPart {
  /** "upper.front-left"; what its screws hold. */
  readonly id: string;
  /** Name of its section. */
  readonly section: string;
  /** The edge that it holds. */
  readonly edge: EdgeName;
  /** What holds it. */
  readonly kind: EdgeJointKind;
  /** The two panels that it joins. */
  readonly panels: readonly [string, string];
  /** Clear inside along the edge. */
  readonly clear: Length;
  /** Along the edge, of all its pieces; of panels that meet, how long they do. */
  readonly length: Length;
  /** Widths of the faces that are glued in a row from panel to panel: one, or two with wood between them. */
  readonly widths: readonly Length[];
  /** What glues it. */
  readonly adhesive?: Adhesive;
  /** What a cleat or a block is cut from. */
  readonly strip?: StripStock;
}

/** One piece cut from a strip of wood. */
export interface StripPart {
  /** "upper.front-left cleat". */
  readonly id: string;
  /** Name of its section. */
  readonly section: string;
  /** What it is there for: to hold an edge, or to stiffen a panel. */
  readonly why: "edge" | "stiffener";
  /** What the builder calls such a piece: "cleat", "corner block", "batten". */
  readonly kind: string;
  /** What it is cut from. */
  readonly stock: StripStock;
  /** As cut. */
  readonly length: Length;
  /** The panels that it lies on. */
  readonly panels: readonly string[];
  /** In the stacked case. */
  readonly box: Box;
  /** In the stacked case. */
  readonly centroid: Point;
}

/** A pane over an opening, cut as a rectangle. */
export interface PanePart {
  /** "upper.front.window pane"; what its fasteners hold. */
  readonly id: string;
  /** Name of its section. */
  readonly section: string;
  /** Id of its panel. */
  readonly panel: string;
  /** As the case file says it. */
  readonly pane: Pane;
  /** What it is cut from. */
  readonly stock: PaneStock;
  /** As cut, along u. */
  readonly width: Length;
  /** As cut, along v. */
  readonly height: Length;
  /** Of the opening that it spans, along u. */
  readonly clearWidth: Length;
  /** Of the opening that it spans, along v. */
  readonly clearHeight: Length;
  /** In the stacked case. */
  readonly box: Box;
  /** In the stacked case. */
  readonly centroid: Point;
}

/** A rectangle of a panel that a stiffener lies on. */
export interface StiffenedZone extends Box2 {
  /** Axis of the panel that the stiffener runs along there. */
  readonly along: "x" | "y";
}

/** Wood on a panel, a leaf or a shelf that makes it stiffer. */
export interface StiffenerPart {
  /** "upper.front.window frame"; what its fasteners hold. */
  readonly id: string;
  /** Name of its section. */
  readonly section: string;
  /** What the builder calls such a piece: "batten", "doubler", "frame". */
  readonly kind: string;
  /** Id of the panel, leaf or shelf that it is on. */
  readonly panel: string;
  /** The side that it is on; of a shelf the inside is below. */
  readonly side: "inside" | "outside";
  /** Where it lies, in the axes of what it is on, m. */
  readonly zones: readonly StiffenedZone[];
  /** How far it stands off the panel. */
  readonly height: Length;
  /** The strip it is cut from. */
  readonly strip?: StripStock;
  /** The piece of sheet it is. */
  readonly piece?: PanelPart;
  /** What glues it. */
  readonly adhesive?: Adhesive;
}

/** Wood glued to wood. */
export interface GluePart {
  /** What is glued: "upper.front-left cleat on upper.front". */
  readonly id: string;
  /** Name of its section. */
  readonly section: string;
  /** What glues it. */
  readonly adhesive: Adhesive;
  /** Of the bond, counted once. */
  readonly area: Area;
  /** In the stacked case. */
  readonly centre: Point;
}

/** One piece of hardware at one place. */
export interface HardwarePart {
  /** "carry handle 2". */
  readonly id: string;
  /** As the case file places it. */
  readonly item: PlacedHardware;
  /** What is bought. */
  readonly stock: Hardware;
  /** Name of its section. */
  readonly section: string;
  /** Panels it is fastened to: one, a panel and the leaf in it, or the three at a corner. */
  readonly panels: readonly string[];
  /** Its centre on the face's panel; absent for corners. */
  readonly on?: Point2<Length>;
  /** In the stacked case. */
  readonly centre: Point;
  /** How far it reaches along the panel, turned as it is; absent where it is on no one panel. */
  readonly size?: { readonly width: Length; readonly height: Length };
}

/** One group of like fasteners through one panel. */
export interface Fastening {
  /** "upper.front-left on upper.front", "carry handle 2". */
  readonly id: string;
  /** What it holds: a bar's or a hardware's id, a shelf or a content. */
  readonly holds: string;
  /** What it is there for. */
  readonly why: "edge" | "hardware" | "shelf" | "drawer" | "content" | "stiffener" | "pane";
  /** The panel it goes through. */
  readonly panel: string;
  /** What is bought. */
  readonly fastener: Fastener;
  /** How many. */
  readonly count: number;
  /** Layers it closes, outermost first, with no washer: metal flange, facing, ply. */
  readonly stack: readonly Layer[];
  /** Nothing but wood under the tail or nut: a washer belongs there. */
  readonly backIsBareWood: boolean;
  /** Set when no hand gets behind it any more: a rivet whose washer is left out. */
  readonly noHandBehind?: true;
  /** Holes on the panel. Empty for a content or shelf joint placed by hand. */
  readonly at: readonly Point2<Length>[];
  /** Spacing along a row, where there is a row. */
  readonly pitch?: Length;
  /** Least distance from a hole's centre to the panel's edge or an opening. */
  readonly edgeDistance?: Length;
  /** The wood that a screw bites behind the panel, and how deep it goes there; absent where nothing is known of it. */
  readonly into?: { readonly density: Density; readonly depth: Length };
}

/** One layer of what a fastener closes. */
export interface Layer {
  /** What it is of. */
  readonly what: "metal" | "facing" | "ply";
  /** How thick. */
  readonly thickness: Length;
}

/** A shelf with the piece it is cut from. */
export interface ShelfPart {
  /** As the case file describes it. */
  readonly shelf: Shelf;
  /** The piece that it is cut from. */
  readonly panel: PanelPart;
  /** What it carries. */
  readonly carries: readonly ContentPart[];
  /** What makes it stiffer. */
  readonly stiffeners: readonly StiffenerPart[];
  /** The ledges that bear it; none where its own joint does. */
  readonly ledges: readonly StiffenerPart[];
}

/** A drawer with the pieces it is made of, shut. */
export interface DrawerPart {
  /** As the case file describes it. */
  readonly drawer: Drawer;
  /** The face of its section that it comes out of. */
  readonly face: UprightFace;
  /** Its front, then its box: two sides, inner front, back and bottom. */
  readonly panels: readonly PanelPart[];
  /** The room that it takes behind the panel, in the stacked case. */
  readonly box: Box;
}

/** A content with its place in the stacked case. */
export interface ContentPart {
  /** As the case file describes it. */
  readonly content: Content;
  /** The room it takes in the stacked case. */
  readonly box: Box;
  /** Its centre of gravity in the stacked case. */
  readonly centre: Point;
}
