/** The case as its builder describes it in case.yaml, read and with every quantity in SI. */

import type { SetTest } from "../inside/screen.js";
import type { Handling, RampSize, Tread } from "../moving/index.js";
import type {
  Angle,
  Area,
  Force,
  Length,
  Mass,
  Money,
  Power,
  Pressure,
  Ratio,
  Speed,
  SpringRate,
  Temperature,
  Time,
} from "../quantity/index.js";
import type { EdgeName, Face, PanelCorner, Point } from "./place.js";
import type { Services } from "./services.js";

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
  readonly hardware: readonly PlacedHardware[];
  readonly shelves: readonly Shelf[];
  readonly contents: readonly Content[];
  readonly demands: Demands;
  readonly journey: Journey;
  readonly services: Services;
  readonly business: Business;
}

/** What there is to build, whatever it earns. */
export type CaseBuild = Omit<Case, "business">;

/** One box of the case. */
export interface Section {
  readonly name: string;
  /** Clear inside width (x), depth (y), height (z). */
  readonly inside: { readonly width: Length; readonly depth: Length; readonly height: Length };
  readonly panels: Readonly<Record<Face, Panel>>;
  readonly edges: Readonly<Record<EdgeName, Edge>>;
}

/** One panel: its stock, its facing and what is cut out of it. */
export interface Panel {
  /** Name in sheet-stock.csv. */
  readonly sheet: string;
  /** Direction of the face grain on the panel, seen from outside: across = along u, up = along v. */
  readonly grain: "across" | "up";
  /** Laminate glued on, if any. */
  readonly facing?: Facing;
  readonly openings: readonly Opening[];
}

/** Laminate bonded to a panel. */
export interface Facing {
  /** Name in facings.csv. */
  readonly facing: string;
  /** Name in adhesives.csv. */
  readonly adhesive: string;
  readonly sides: "outside" | "both";
  /** Added to each dimension of the piece and trimmed off after gluing. */
  readonly oversize: Length;
}

/** Something cut out of a panel. */
export interface Opening {
  readonly name: string;
  readonly shape: OpeningShape;
  readonly from: PanelCorner;
  /** From that corner's vertical and horizontal cut edge, to the opening's near edge or its centre. */
  readonly across: Length;
  readonly up: Length;
  readonly to: "edge" | "centre";
  /** A door made to close it, if any. */
  readonly leaf?: Leaf;
}

/** Sizes are as seen from outside: width along u, height along v. */
export type OpeningShape =
  | {
      readonly kind: "rectangle";
      readonly width: Length;
      readonly height: Length;
      readonly cornerRadius: Length;
    }
  | { readonly kind: "circle"; readonly diameter: Length }
  | { readonly kind: "slot"; readonly width: Length; readonly height: Length }
  | { readonly kind: "notch"; readonly width: Length; readonly height: Length }
  | {
      readonly kind: "polygon";
      readonly points: readonly { readonly across: Length; readonly up: Length }[];
    };

/** A door that closes an opening, made of the same sheet and facing as its panel. */
export interface Leaf {
  readonly hinge: "left" | "right" | "top" | "bottom";
  /** Gap all round between the leaf and the opening. */
  readonly clearance: Length;
}

/** How two panels meet and what covers the corner. */
export interface Edge {
  /** The face whose panel runs past the other; "neither" when both stop in the extrusion's seat. */
  readonly through: Face | "neither";
  /** Extrusion over the edge, if any. */
  readonly extrusion?: EdgeExtrusion;
}

/** An extrusion riveted along an edge. */
export interface EdgeExtrusion {
  /** Name in bar-stock.csv. */
  readonly bar: string;
  /** Name in fasteners.csv. */
  readonly rivet: string;
  /** Largest spacing of the rivets along each leg. */
  readonly pitch: Length;
  /** From the bar's end to the first rivet. */
  readonly endDistance: Length;
  /** Cut off at each end, to make room for a corner. */
  readonly setBack: Length;
  readonly ends: "square" | "mitred";
}

/** A piece of hardware on a panel, at one or more places. */
export interface PlacedHardware {
  readonly name: string;
  /** Name in hardware.csv. */
  readonly item: string;
  /** Where: places on a panel, or the eight corners of a section. */
  readonly places: readonly HardwarePlace[] | { readonly cornersOf: string };
  /** What it must carry: see the review of joints. */
  readonly duty:
    | "lift"
    | "join-sections"
    | "roll"
    | "protect"
    | "hinge"
    | "close"
    | "hang"
    | "guide"
    | "other";
}

/** The centre of a piece of hardware on a panel. */
export interface HardwarePlace {
  readonly section: string;
  readonly face: Face;
  readonly from: PanelCorner;
  readonly across: Length;
  readonly up: Length;
  /** Turned a quarter, so that its pattern's width runs along v. */
  readonly turned: boolean;
}

/** A shelf or platform inside a section. */
export interface Shelf {
  readonly name: string;
  readonly section: string;
  /** Name in sheet-stock.csv. */
  readonly sheet: string;
  /** Size: width along x, depth along y. */
  readonly width: Length;
  readonly depth: Length;
  /** Lower left front corner, from the section's inside lower left front corner. */
  readonly at: Point;
  /** What bears it: rails at the two ends (left and right), ends and back, or fixed at the back only. */
  readonly support: "two ends" | "ends and back" | "back only";
  readonly sliding: boolean;
  /** Joint to the case. */
  readonly joint: { readonly fastener: string; readonly count: number };
  /** Height of a bracket or cleat under its back, for a shelf that is held at its back only. */
  readonly bracket?: Length;
  /** Load that its pair of slides is made for, pulled out. */
  readonly slidesRated?: Force;
}

/** Something that rides in the case. */
export interface Content {
  readonly name: string;
  readonly section: string;
  readonly mass: Mass;
  /** Lower left front corner, from the section's inside lower left front corner. */
  readonly at: Point;
  readonly size: Point;
  readonly held: Holding;
  /** Electric load, if any. */
  readonly power?: Power;
  /** Share of the time that load is on. */
  readonly duty?: Ratio;
  /** What it needs on the way and where it stands. */
  readonly needs: Needs;
}

/** What a content needs; whatever is left out leaves its finding unknown or unasked. */
export interface Needs {
  /** Deceleration it stands, in gravities. */
  readonly fragility?: Ratio;
  readonly foam?: FoamBed;
  /** How far a drawer or door of it comes out, and to which side; the front unless said. */
  readonly opensBy?: Length;
  readonly opensTo?: Face;
  /** First current over running current. */
  readonly coldStart?: Ratio;
  /** Air it may work in. */
  readonly hottest?: Temperature;
  readonly plug?: PlugRoom;
  /** Springy feet under it. */
  readonly mounts?: SpringMounts;
  /** Free way that something hot wants to whatever burns, from its label. */
  readonly keepClear?: Length;
  readonly pane?: PaneStrip;
  /** Level push, pulled with a scale, at which it slides where it stands. */
  readonly slidesAt?: Force;
}

/** Foam under a content. */
export interface FoamBed {
  /** Name in cushion-curves.csv. */
  readonly kind: string;
  readonly thickness: Length;
  /** Sides of the foam that bears it. */
  readonly padWidth: Length;
  readonly padDepth: Length;
  /** The same foam against its left and its right, each. */
  readonly sides?: Area;
  /** The same foam against its front and its back, each. */
  readonly ends?: Area;
}

/** A plug and its cable. */
export interface PlugRoom {
  /** Side of the content where it sits. */
  readonly face: Face;
  /** Plug and strain relief. */
  readonly length: Length;
  /** Outside diameter. */
  readonly cable: Length;
  /** Least inner radius over diameter. */
  readonly bendFactor: Ratio;
  /** Widest side of the plug, for the hole that it must go through. */
  readonly width?: Length;
}

/** Springs or rubber feet under a content. */
export interface SpringMounts {
  readonly count: number;
  /** Of one of them. */
  readonly rate: SpringRate;
}

/** A screen held by clamps through foam strip. */
export interface PaneStrip {
  /** Free thickness of the strip. */
  readonly strip: Length;
  /** Squeeze as a share of it. */
  readonly squeeze: Ratio;
  /** Compression set of the strip, from its maker. */
  readonly set?: Ratio;
  /** The builder's own test of it, in place of the maker's figure. */
  readonly setTest?: SetTest;
  /** Play the pane would have with no strip at all. */
  readonly clearance: Length;
  readonly clamp?: PaneClamp;
  /** Pressure that the edge of the pane stands, from its maker. */
  readonly stands?: Pressure;
}

/** A clamp over the edge of a pane. */
export interface PaneClamp {
  readonly force: Force;
  /** Sides of the strip under it. */
  readonly padWidth: Length;
  readonly padLength: Length;
}

/** How a content is held. */
export type Holding =
  | { readonly by: "shelf"; readonly shelf: string }
  | { readonly by: "floor" }
  | {
      readonly by: "strap";
      readonly straps: number;
      /** Load that one strap and its anchors are made for. */
      readonly rated?: Force;
    }
  | {
      readonly by: "cradle";
      /** The shelf that the cradle stands on; the floor where none is named. */
      readonly shelf?: string;
      /** Height of its walls above what the thing stands on. */
      readonly rim: Length;
      /** Foam against its walls: a foam of cushion-curves.csv. */
      readonly lining: { readonly kind: string; readonly thickness: Length };
      /** Push at which the empty cradle gives way, pulled with a scale. */
      readonly rated?: Force;
      /** Whether a strap or a lid keeps the thing from jumping out. */
      readonly lid: boolean;
    }
  | {
      readonly by: "screws" | "rivets";
      /** The panel they go through, from outside. */
      readonly to: Face;
      readonly fastener: string;
      readonly count: number;
      /** What a screw goes through before its insert in the panel; of inserts alone. */
      readonly foot?: Length;
    }
  | {
      readonly by: "hung";
      readonly fastener: string;
      readonly count: number;
      /** False for none, true for one that nobody described. */
      readonly secondHold: boolean | SecondHold;
    };

/** What catches a hung thing when its fasteners let go: a cord, a chain or a bracket, with fasteners of its own. */
export interface SecondHold {
  readonly fastener: string;
  readonly count: number;
  /** Load that its maker allows on it. */
  readonly rated: Force;
  /** How far the thing falls before the hold is taut. */
  readonly slack: Length;
  /** How far the hold gives under its rated load. */
  readonly give: Length;
}

/** What the builder asks of the case. */
export interface Demands {
  /** Uniform pressure on an upright face: leaning, cartons pressed against it. */
  readonly sidePressure: Pressure;
  /** Uniform pressure on a top, beside what is stacked on it. */
  readonly topPressure: Pressure;
  /** Allowed sag as a share of the shorter span. */
  readonly allowedSag: Ratio;
  /** Handles and latches: how much a jerk multiplies the load. */
  readonly dynamicFactor: Ratio;
  /** Wanted strength over load of anything riveted, screwed or glued. */
  readonly safetyFactor: Ratio;
  /** Years a shelf stays loaded are answered by the creep factor of its class. */
  readonly climate: "dry" | "damp";
  /** Sideways push at the top edge. */
  readonly push: Force;
}

/** Who moves it, and how. */
export interface Journey {
  readonly people: number;
  /** Hands above the floor at the start and the end of the lift. */
  readonly liftFrom: Length;
  readonly liftTo: Length;
  /** From the ankles to the hands. */
  readonly reach: Length;
  readonly liftsPerMinute: number;
  /** Whole time spent lifting. */
  readonly liftingTime: Time;
  readonly grip: "good" | "fair" | "poor";
  readonly vehicle: string;
  readonly floor: "even" | "uneven";
  /** How roughly it is handled. */
  readonly handling?: Handling;
  /** Slope of the stairs and of the ramp it goes up. */
  readonly stairs?: Angle;
  readonly ramp?: Angle;
  /** The ramp as a tape says it, where nobody measured its slope. */
  readonly rampSize?: RampSize;
  /** Highest step and widest gap that the casters meet. */
  readonly threshold?: Length;
  readonly gap?: Length;
  /** Diameter of the caster wheels, and how much tread touches the floor. */
  readonly wheel?: Length;
  /** What the caster wheels run on: nylon and polyurethane are plastic. */
  readonly tread?: Tread;
  readonly wheelPrint?: Area;
  /** Casters with a brake. */
  readonly brakes?: number;
  /** Strongest gust outdoors. */
  readonly gust?: Speed;
  /** Slope of the ground where it stands. */
  readonly slope?: Angle;
  readonly lashing?: Lashing;
}

/** Straps over the case in its vehicle. */
export interface Lashing {
  /** Standard tension (STF) on the label of one. */
  readonly tension: Force;
  /** Straps at hand. */
  readonly straps: number;
  /** Strap against the floor. */
  readonly angle: Angle;
  /** Case on the vehicle's floor, casters braked or off it. */
  readonly friction: Ratio;
}

/** What the case must earn. */
export interface Business {
  /** Price of a ready-made case for the same job. */
  readonly readyMade: Money;
  /** Worth of one hour of the builder's own time. */
  readonly ownHour: Money;
  /** Hours to build, when timings.csv does not say. */
  readonly buildingTime: Time;
  readonly tools: readonly { readonly name: string; readonly price: Money }[];
  readonly incomePerJob: Money;
  readonly runningCostPerJob: Money;
  readonly jobsPerMonth: number;
  /** Yearly rate on money tied up, 0 for none. */
  readonly interest: Ratio;
  /** How far prices may be off until it is bought, as a share, either way. */
  readonly priceDoubt?: Ratio;
  /** How far the hours may be off, as a share, either way. */
  readonly hoursDoubt?: Ratio;
  /** Standard deviation of one job's income, as a share of it. */
  readonly incomeSpread?: Ratio;
}
