/** The case as its builder describes it in case.yaml, read and with every quantity in SI. */
import type { Angle, Length } from "../quantity/index.js";
import type { Shape } from "../shape/index.js";
import type { EdgeName, Face, PanelCorner } from "./place.js";
import type { EdgeExtrusion, EdgeJoint, Facing } from "./read/build.js";
import type { Content, Shelf } from "./read/contents.js";
import type { Business, Demands, Journey } from "./read/demands.js";
import type { Drawer } from "./read/drawers.js";
import type { PlacedHardware } from "./read/hardware.js";
import type { Services } from "./read/services.js";
import type { Stiffener } from "./read/stiffeners.js";

export type { EdgeExtrusion, EdgeJoint, EdgeJointKind, Facing } from "./read/build.js";
export type {
  Content,
  FoamBed,
  Holding,
  Needs,
  PaneClamp,
  PaneStrip,
  PlugRoom,
  SecondHold,
  Shelf,
  SpringMounts,
} from "./read/contents.js";
export type { Business, Demands, Journey, Lashing, SprayTest } from "./read/demands.js";
export type { Drawer } from "./read/drawers.js";
export type { HardwarePlace, PlacedHardware } from "./read/hardware.js";
export type { Battery, Cooling, Mains, PlugStrip, Services, Sun } from "./read/services.js";
export type { Stiffener } from "./read/stiffeners.js";

/** One case, whole. */
export interface Case {
  /** Shown on every page. */
  readonly name: string;
  /** True for a made-up scenario; pages say so. */
  readonly invented: boolean;
  /** What the case is for, in the builder's words. */
  readonly purpose: string;
  /** The units that pages show. */
  readonly units: "inch" | "metric";
  /** ISO 4217 code of every price. */
  readonly currency: string;
  /** From the ground up. */
  readonly sections: readonly Section[];
  /** Hardware, in the order of the file. */
  readonly hardware: readonly PlacedHardware[];
  /** Shelves, in the order of the file. */
  readonly shelves: readonly Shelf[];
  /** Drawers, in the order of the file. */
  readonly drawers: readonly Drawer[];
  /** Stiffeners of its panels, in the order of the file. */
  readonly stiffeners: readonly Stiffener[];
  /** What rides in the case, in the order of the file. */
  readonly contents: readonly Content[];
  /** What is asked of it. */
  readonly demands: Demands;
  /** Who moves it, and how. */
  readonly journey: Journey;
  /** Heat and power. */
  readonly services: Services;
  /** What it must earn. */
  readonly business: Business;
  /** What must not move while changes are looked for: places of its file, and names of tables. */
  readonly keep: readonly string[];
  /** Blocks that the file left out: nothing is asked about them, and what stands for them here means nothing. */
  readonly leftOut: readonly LeftOut[];
}

/** A block of the case file that a case can do without. */
export type LeftOut = "journey" | "services" | "business";

/** What there is to build, whatever it earns. */
export type CaseBuild = Omit<Case, "business" | "keep">;

/** The thing itself, whatever is asked of it: all that its parts are derived from. */
export type CaseBody = Pick<
  Case,
  "units" | "sections" | "hardware" | "shelves" | "drawers" | "stiffeners" | "contents" | "services"
>;

/** One box of the case. */
export interface Section {
  /** What the builder calls it. */
  readonly name: string;
  /** Clear inside width (x), depth (y), height (z). */
  readonly inside: { readonly width: Length; readonly depth: Length; readonly height: Length };
  /** How far it stands above the section below, on the metal of both; absent where panels meet. */
  readonly standsOff?: Length;
  /** Its panels by face; a face that is left out is open. */
  readonly panels: Readonly<Partial<Record<Face, Panel>>>;
  /** Its edges; there is none beside an open face. */
  readonly edges: Readonly<Partial<Record<EdgeName, Edge>>>;
}

/** One panel: its stock, its facing and what is cut out of it. */
export interface Panel {
  /** Name in sheet-stock.csv. */
  readonly sheet: string;
  /** Direction of the face grain on the panel, seen from outside: across = along u, up = along v. */
  readonly grain: "across" | "up";
  /** Laminate glued on, if any. */
  readonly facing?: Facing;
  /** Cut out of it. */
  readonly openings: readonly Opening[];
}

/** Something cut out of a panel. */
export interface Opening {
  /** What the builder calls it. */
  readonly name: string;
  /** Its outline. */
  readonly shape: OpeningShape;
  /** The corner of the panel that it is placed from. */
  readonly from: PanelCorner;
  /** From that corner's vertical and horizontal cut edge, to the opening's near edge or its centre. */
  readonly across: Length;
  /** Upwards from that corner. */
  readonly up: Length;
  /** Whether the distances go to its near edge or to its centre. */
  readonly to: "edge" | "centre";
  /** A door made to close it, if any. */
  readonly leaf?: Leaf;
  /** Doors that share it and meet in it, if any. */
  readonly leaves?: SharedLeaves;
  /** A pane that closes it, if any. */
  readonly pane?: Pane;
}

/** A clear sheet over an opening. */
export interface Pane {
  /** Name in pane-stock.csv. */
  readonly sheet: string;
  /** How far it reaches past the opening on every side. */
  readonly overlap: Length;
  /** The side of the panel that it lies on. */
  readonly side: "inside" | "outside";
  /** What holds it. */
  readonly held: "clips" | "gasket" | "clamps" | "bead";
  /** Name in fasteners.csv of what fastens its clips, clamps or bead. */
  readonly fastener?: string;
  /** How many of them. */
  readonly count?: number;
}

/** The form of an opening, as seen from outside. */
export interface OpeningShape {
  /** What the case file calls it: "rectangle", "circle". */
  readonly kind: string;
  /** Its outline, anywhere on the panel, m. */
  readonly outline: Shape;
}

/** A door that closes an opening, made of the same sheet and facing as its panel. */
export interface Leaf {
  /** The side that it turns about. */
  readonly hinge: "left" | "right" | "top" | "bottom";
  /** Gap between the leaf and the opening, wherever it meets no other leaf. */
  readonly clearance: Length;
  /** What holds it open. */
  readonly stay?: Stay;
}

/** Leaves that meet in one opening: a pair of doors, or a door in two halves. */
export interface SharedLeaves {
  /** How they follow each other: across from the left, up from the bottom. */
  readonly runs: "across" | "up";
  /** Gap between two that meet. */
  readonly gap: Length;
  /** In that order, two or more. */
  readonly each: readonly SharedLeaf[];
}

/** One of the leaves of an opening. */
export interface SharedLeaf extends Leaf {
  /** What the builder calls it. */
  readonly name: string;
  /** Its part of the opening, beside the shares of the others. */
  readonly share: number;
}

/** What holds a leaf open: a lid up, a flap level. */
export interface Stay {
  /** A name of hardware.csv. */
  readonly item: string;
  /** How many there are. */
  readonly count: number;
  /** From the hinges to where they are fixed on the leaf. */
  readonly arm: Length;
  /** How far the leaf opens, from shut. */
  readonly opensTo: Angle;
  /** Between a stay and the open leaf. */
  readonly pull: Angle;
}

/** How two panels meet and what covers the corner. */
export interface Edge {
  /** The face whose panel runs past the other; "neither" when both stop in the extrusion's seat. */
  readonly through: Face | "neither";
  /** Extrusion over the edge, if any. */
  readonly extrusion?: EdgeExtrusion;
  /** What joins its panels where there is no extrusion and the case names it. */
  readonly joint?: EdgeJoint;
}
