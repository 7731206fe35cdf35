/** What can be bought, and what the builder measured: one row of each CSV file beside case.yaml. */
import type { VeneerSpecies } from "../material/index.js";
import type {
  Area,
  AreaDensity,
  Density,
  Force,
  Length,
  LinearDensity,
  Mass,
  Money,
  Power,
  Pressure,
  Ratio,
  Temperature,
  Time,
  Volume,
} from "../quantity/index.js";

/** sheet-stock.csv: plywood and other sheets. */
export interface SheetStock {
  readonly name: string;
  readonly length: Length;
  readonly width: Length;
  readonly thickness: Length;
  readonly density: Density;
  readonly price: Money;
  readonly supplier: string;
  /** Thicknesses of the veneers from face to back, for a lay-up estimate; grain alternates. */
  readonly veneers: readonly Length[];
  /** A wood whose elastic ratios are tabulated. */
  readonly species: VeneerSpecies;
}

/** bar-stock.csv: edge extrusions. */
export interface BarStock {
  readonly name: string;
  readonly length: Length;
  readonly massPerLength: LinearDensity;
  readonly price: Money;
  readonly supplier: string;
  /** Width of each leg and wall thickness. */
  readonly leg: Length;
  readonly wall: Length;
  /** How far short of the inside corner each panel stops when neither runs through and both sit in this bar. */
  readonly seat: Length;
}

/**
 * hardware.csv: handles, latches and the keepers they pull on, corners, casters, hinges, hooks. A corner's
 * width and height are its legs on each face; its rows and columns are the holes of one of its three faces,
 * spread evenly from the point holeWidth and holeHeight off the face's two outer edges to the point with
 * the two swapped.
 */
export interface Hardware {
  readonly name: string;
  readonly kind:
    | "handle"
    | "latch"
    | "keeper"
    | "corner"
    | "caster"
    | "hinge"
    | "slide"
    | "hook"
    | "pass-through"
    | "other";
  readonly mass: Mass;
  readonly price: Money;
  readonly supplier: string;
  /** Size of the part on the panel. */
  readonly width: Length;
  readonly height: Length;
  /** Thickness of its flange, which the fastener must span. */
  readonly flange: Length;
  /** Cut-out it needs, zero for surface-mounted. */
  readonly cutWidth: Length;
  readonly cutHeight: Length;
  /** Height of a caster under the case; zero for others. */
  readonly standing: Length;
  /** Name in fasteners.csv. */
  readonly fastener: string;
  /** Fasteners each. */
  readonly fasteners: number;
  /** The holes: a rectangle of rows and columns of this size, evenly spread. */
  readonly holeColumns: number;
  readonly holeRows: number;
  readonly holeWidth: Length;
  readonly holeHeight: Length;
  /** Load its maker allows. Missing: the finding says unknown. */
  readonly rated?: Force;
}

/**
 * fasteners.csv: rivets, screws, bolts, washers, and threaded inserts with the machine screw that goes into them: its
 * sizes, grip and strengths are the screw's.
 */
export interface Fastener {
  readonly name: string;
  readonly kind: "rivet" | "screw" | "bolt" | "insert";
  readonly diameter: Length;
  readonly headDiameter: Length;
  /** Overall length under the head. */
  readonly length: Length;
  /** Stack it can close; for screws the longest stack before the thread bites. */
  readonly gripMin: Length;
  readonly gripMax: Length;
  /** Strength its maker states for one. */
  readonly shear?: Force;
  readonly tension?: Force;
  readonly packOf: number;
  /** Price of a pack. */
  readonly price: Money;
  readonly supplier: string;
  /** Each, for the mass of the case. */
  readonly mass: Mass;
  /** Washer that fits it: diameter, thickness and price each. */
  readonly washerDiameter: Length;
  readonly washerThickness: Length;
  readonly washerPrice: Money;
  /** Of an insert: over its outer thread, its length in the sheet, the hole it is run into. Absent for all else. */
  readonly insertDiameter?: Length | undefined;
  readonly insertLength?: Length | undefined;
  readonly insertHole?: Length | undefined;
}

/** Diameter of what sits in the sheet: an insert over its outer thread, of all else the shank. */
export function bodyDiameter({ diameter, insertDiameter }: Fastener): Length {
  return insertDiameter ?? diameter;
}

/** adhesives.csv. */
export interface Adhesive {
  readonly name: string;
  readonly kind: "contact" | "spray contact" | "wood glue" | "epoxy" | "construction";
  /** One container. */
  readonly content: Volume;
  readonly price: Money;
  readonly supplier: string;
  readonly density: Density;
  /** Wet spread the label asks for on one face. */
  readonly labelRate: AreaDensity;
  readonly faces: "one" | "both";
  /** Share that stays after drying. */
  readonly solids: number;
  /** Lost as overspray, in the roller or the pot. */
  readonly waste: number;
  readonly openTime: Time;
  readonly pressTime: Time;
  readonly cureTime: Time;
  readonly solvent: "none" | "flammable" | "non-flammable";
}

/** facings.csv: laminates in sheets or rolls. */
export interface FacingStock {
  readonly name: string;
  readonly form: "sheet" | "roll";
  readonly length: Length;
  readonly width: Length;
  readonly thickness: Length;
  readonly density: Density;
  readonly modulus: Pressure;
  readonly price: Money;
  readonly supplier: string;
}

/** bend-tests.csv: one row a load on one strip. */
export interface BendTest {
  readonly strip: string;
  readonly sheet: string;
  readonly direction: "along" | "across";
  readonly faced: "bare" | "one face" | "both faces";
  readonly span: Length;
  readonly width: Length;
  readonly thickness: Length;
  readonly load: Force;
  readonly sag: Length;
  /** How far the rests gave under this load, the mean of both; blank where nobody read it. */
  readonly rests?: Length | undefined;
  /** Two strips of one piece are that piece over a long and a short span; blank for a strip bent over one span. */
  readonly piece?: string | undefined;
}

/** twist-tests.csv: one row a load on the free corner of an offcut that rests on the other three. */
export interface TwistTest {
  readonly sample: string;
  readonly sheet: string;
  /** Between the corner rests. */
  readonly width: Length;
  readonly height: Length;
  readonly thickness: Length;
  readonly load: Force;
  readonly drop: Length;
}

/** tilt-tests.csv: a board raised until what lies on it slides. */
export interface TiltTest {
  readonly test: string;
  /** What slides: "instrument case". */
  readonly what: string;
  /** On what: "foam", "van floor". */
  readonly on: string;
  readonly rise: Length;
  readonly run: Length;
}

/** weights.csv: thickness and weight of offcuts. */
export interface WeightTest {
  readonly sample: string;
  /** Name in sheet-stock.csv or facings.csv. */
  readonly material: string;
  readonly length: Length;
  readonly width: Length;
  readonly thickness: Length;
  readonly mass: Mass;
}

/** spread-trials.csv: adhesive used on a trial panel. */
export interface SpreadTrial {
  readonly trial: string;
  readonly adhesive: string;
  readonly area: Area;
  readonly faces: number;
  /** Container weighed before and after. */
  readonly before: Mass;
  readonly after: Mass;
  /** What the trial panel gained, weighed at once; blank where nobody weighed it. */
  readonly gained?: Mass | undefined;
}

/** pull-tests.csv: a fastener pulled until it gave way. */
export interface PullTest {
  readonly test: string;
  readonly fastener: string;
  readonly sheet: string;
  readonly washer: "yes" | "no";
  readonly direction: "pull" | "shear";
  readonly load: Force;
}

/** kerfs.csv: a board cut so many times. */
export interface KerfTest {
  readonly blade: string;
  readonly before: Length;
  readonly after: Length;
  readonly offcuts: Length;
  readonly cuts: number;
  /** Saw the blade is for: sheets, bars or both. */
  readonly use: "sheets" | "bars" | "both";
}

/** timings.csv: minutes a piece of work took. */
export interface Timing {
  readonly work: string;
  readonly unit: "panel" | "cut" | "hole" | "rivet" | "bar" | "hardware" | "square metre" | "case";
  readonly tool: string;
  readonly pieces: number;
  readonly time: Time;
}

/** cushion-curves.csv: one point of one cushion curve, measured or published. */
export interface CushionPoint {
  /** Kind of foam. */
  readonly foam: string;
  readonly thickness: Length;
  readonly drop: Length;
  /** Pressure at rest. */
  readonly stress: Pressure;
  /** Greatest deceleration, in gravities. */
  readonly deceleration: Ratio;
}

/** temperature-log.csv: thermometers inside and outside, some time after switching on. */
export interface TemperatureReading {
  readonly section: string;
  readonly time: Time;
  readonly inside: Temperature;
  readonly outside: Temperature;
  /** Turned to heat inside all that time. */
  readonly power: Power;
}

/** bar-profiles.csv: one straight wall of an edge bar's cross section, measured along its middle line. */
export interface BarWall {
  /** Name in bar-stock.csv. */
  readonly bar: string;
  readonly fromX: Length;
  readonly fromY: Length;
  readonly toX: Length;
  readonly toY: Length;
  readonly wall: Length;
}

/** Every table of a job. */
export interface Stock {
  readonly sheets: readonly SheetStock[];
  readonly bars: readonly BarStock[];
  readonly hardware: readonly Hardware[];
  readonly fasteners: readonly Fastener[];
  readonly adhesives: readonly Adhesive[];
  readonly facings: readonly FacingStock[];
}

/** price-breaks.csv: a lower price from some quantity on. */
export interface PriceBreakOffer {
  /** A name of one of the tables of stock. */
  readonly item: string;
  /** From this many on, in the unit the stock is sold by, for all of them. */
  readonly from: number;
  readonly price: Money;
}

/** suppliers.csv: what a supplier adds to an order. */
export interface Supplier {
  /** As in the tables of stock. */
  readonly name: string;
  /** Of an order of any size. */
  readonly shipping: Money;
  /** On top of it for each kilogram; nothing where blank. */
  readonly perKilogram?: Money | undefined;
  /** Goods from this amount on are shipped free; never where blank. */
  readonly freeFrom?: Money | undefined;
  /** Of goods and shipping. */
  readonly tax: Ratio;
}

/** leftovers.csv: what lies on the rack from other jobs, to be used before anything is bought. */
export interface Leftover {
  /** Written on the piece: "rack 3". */
  readonly name: string;
  /** A name of sheet-stock.csv, facings.csv or bar-stock.csv. */
  readonly stock: string;
  /** Along the grain of a sheet. */
  readonly length: Length;
  /** Of a sheet or a laminate; a bar has none. */
  readonly width?: Length | undefined;
  readonly count: number;
}

/** How things are sold, and what need not be bought; without these tables prices stay and nothing is added. */
export interface Offers {
  readonly priceBreaks: readonly PriceBreakOffer[];
  readonly suppliers: readonly Supplier[];
  readonly leftovers: readonly Leftover[];
}

/** Every measurement of a job; a table without rows is allowed and makes findings unknown. */
export interface Measurements {
  readonly bends: readonly BendTest[];
  readonly weights: readonly WeightTest[];
  readonly spreads: readonly SpreadTrial[];
  readonly pulls: readonly PullTest[];
  readonly kerfs: readonly KerfTest[];
  readonly timings: readonly Timing[];
  readonly twists: readonly TwistTest[];
  readonly tilts: readonly TiltTest[];
  readonly cushions: readonly CushionPoint[];
  readonly temperatures: readonly TemperatureReading[];
  readonly profiles: readonly BarWall[];
}
