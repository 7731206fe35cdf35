/** What is asked of the case: loads, the journey, the business. */
import { Handling, type RampSize, Tread } from "../../moving/index.js";
import {
  Angle,
  Area,
  Count,
  choice,
  degree,
  Force,
  type Kind,
  Length,
  Mass,
  Money,
  money,
  Name,
  Pressure,
  Ratio,
  Speed,
  Time,
} from "../../quantity/index.js";
import { type BlockOf, block, byName, checked, type Form, needed, optional, value } from "./form.js";

/** A number without a unit, read as ratios are. */
const plainNumber: Kind<number> = Ratio;

const positive = { above: 0 };
const zeroOrMore = { min: 0 };
const panelPressure = { above: 0, example: "1 kPa or 20 psf" };
const slope = { min: 0, max: degree(45) };

const demandFields = {
  sidePressure: needed(
    "side pressure",
    Pressure,
    "Uniform pressure on an upright face: leaning, cartons pressed against it.",
    panelPressure,
  ),
  topPressure: needed(
    "top pressure",
    Pressure,
    "Uniform pressure on a top, beside what is stacked on it.",
    panelPressure,
  ),
  allowedSag: needed("allowed sag", Ratio, "Allowed sag as a share of the shorter span.", {
    above: 0,
    max: 0.1,
  }),
  dynamicFactor: needed("jerk", Ratio, "How much a jerk multiplies the load on handles and latches.", {
    min: 1,
  }),
  safetyFactor: needed(
    "safety factor",
    Ratio,
    "Wanted strength over load of what is riveted, screwed or glued.",
    {
      min: 1,
    },
  ),
  climate: needed("climate", choice("climate", ["dry", "damp"]), "Air that a loaded shelf creeps in."),
  push: needed("push", Force, "Sideways push at the top edge.", positive),
  storedUnder: optional(
    "stored under",
    Mass,
    "What stands on each top in storage, for months and spread over it.",
    zeroOrMore,
  ),
  topBears: optional(
    "top bears",
    choice("what somebody may do on a top", ["stands", "kneels", "sits"]),
    "What somebody may do on a top; whoever is told nothing stands on it.",
  ),
};

/** What the builder asks of the case. */
export interface Demands extends BlockOf<typeof demandFields> {}

/** The block "demands". */
export const demandsForm: Form<Demands> = block(demandFields);

const lashingFields = {
  tension: needed("tension", Force, "Standard tension (STF) on the label of one strap.", positive),
  straps: needed("straps", Count, "How many straps are at hand.", positive),
  angle: needed("angle", Angle, "Angle of the strap against the floor.", { above: 0, max: degree(90) }),
  friction: needed(
    "friction",
    Ratio,
    "Friction of the case on the vehicle's floor, casters braked or off it.",
    { above: 0, max: 1 },
  ),
  frictionFrom: optional(
    "friction from",
    choice("origin of the friction", ["tilt test", "pull", "table"]),
    "How that friction was found; of the tangent of a tilt test 0.925 counts.",
  ),
  strapWidth: optional("strap width", Length, "Width of a strap; 25 mm where nobody says.", positive),
  standsOn: optional(
    "stands on",
    choice("what it stands on", ["wheels", "blocks"]),
    "Blocks under its lower edges, as high as its casters, take it off its wheels; friction is then theirs.",
  ),
};

const sprayFields = {
  time: needed("time", Time, "How long it was sprayed.", { above: 0, example: "6 min" }),
  water: needed(
    "water",
    Mass,
    "Water that was wiped up inside afterwards, weighed in the cloth.",
    zeroOrMore,
  ),
};

/** The shut case under a shower head. */
export interface SprayTest extends BlockOf<typeof sprayFields> {}

/** Straps over the case in its vehicle. */
export interface Lashing extends BlockOf<typeof lashingFields> {}

const rampSizeForm: Form<RampSize> = checked(
  block({
    rise: needed("rise", Length, "How high the ramp rises.", positive),
    length: needed("length", Length, "How long the ramp is along its slope.", positive),
  }),
  ({ rise, length }) => rise < length,
  "a rise shorter than the ramp",
);

const journeyFields = {
  people: needed("people", Count, "How many people lift.", { above: 0, reach: 100 }),
  liftFrom: needed("lift from", Length, "Hands above the floor at the start of the lift.", zeroOrMore),
  liftTo: needed("lift to", Length, "Hands above the floor at the end of the lift.", zeroOrMore),
  reach: needed("reach", Length, "Distance from the ankles to the hands.", zeroOrMore),
  liftsPerMinute: needed(
    "lifts per minute",
    plainNumber,
    "How often it is lifted, in lifts per minute.",
    positive,
  ),
  liftingTime: needed("lifting time", Time, "Whole time spent lifting.", positive),
  grip: needed("grip", choice("grip", ["good", "fair", "poor"]), "How well hands hold it."),
  vehicle: needed("vehicle", Name, "What it rides in."),
  floor: needed("floor", choice("floor", ["even", "uneven"]), "The floor it rolls on."),
  handling: optional("handling", Handling, "How roughly it is handled."),
  tripsPerLook: optional(
    "trips per look",
    Count,
    "After how many trips somebody looks at rivets, screws and bolts.",
    positive,
  ),
  stairs: optional("stairs", Angle, "Slope of the stairs it goes up.", slope),
  ramp: optional("ramp", Angle, "Slope of the ramp it goes up.", slope),
  rampSize: optional(
    "ramp size",
    rampSizeForm,
    "The ramp as a tape says it, where nobody measured its slope.",
  ),
  winch: optional(
    "winch",
    Force,
    "Rated pull of the winch at the top of the ramp; left out where there is none.",
    positive,
  ),
  threshold: optional("threshold", Length, "Highest step that the casters meet.", zeroOrMore),
  gap: optional("gap", Length, "Widest gap that the casters meet.", zeroOrMore),
  wheel: optional("wheel", Length, "Diameter of the caster wheels.", positive),
  tread: optional("tread", Tread, "What the caster wheels run on: nylon and polyurethane are plastic."),
  wheelPrint: optional("wheel print", Area, "How much tread of one wheel touches the floor.", {
    above: 0,
    example: "200 mm2 or 0.35 in2",
  }),
  brakes: optional("brakes", Count, "How many casters have a brake.", { max: 4 }),
  gust: optional("gust", Speed, "Strongest gust outdoors.", {
    min: 0,
    example: "10 m/s or 25 mph",
  }),
  sprayTest: optional("spray test", block(sprayFields), "The shut case under a shower head."),
  slope: optional("slope", Angle, "Slope of the ground where it stands.", slope),
  lashing: optional("lashing", block(lashingFields), "Straps over the case in its vehicle."),
};

/** Who moves it, and how. */
export interface Journey extends BlockOf<typeof journeyFields> {}

/** The block "journey": a ramp is told by its slope or by its size. */
export const journeyForm: Form<Journey> = checked(
  block(journeyFields),
  ({ ramp, rampSize }) => ramp === undefined || rampSize === undefined,
  '"ramp" as an angle or "ramp size" with rise and length, not both',
  ["ramp size"],
);

/** Stands for the journey of a case that nobody moves. */
export const noJourney: Journey = {
  people: 1,
  liftFrom: Length.si(0),
  liftTo: Length.si(0),
  reach: Length.si(0),
  liftsPerMinute: 1,
  liftingTime: Time.si(0),
  grip: "poor",
  vehicle: "vehicle",
  floor: "uneven",
};

/** A tool to buy. */
interface ToolPrice {
  /** The tool, in the builder's words. */
  readonly name: string;
  /** Its price. */
  readonly price: Money;
}

const toolPrices: Form<readonly ToolPrice[]> = byName(
  value(Money, zeroOrMore),
  '"rivet gun"',
  (name, price) => ({
    name,
    price,
  }),
);

const businessFields = {
  readyMade: needed("ready made", Money, "Price of a ready-made case for the same job.", zeroOrMore),
  labourRate: needed("own hour", Money, "Worth of one hour of the builder's own time.", zeroOrMore),
  buildingTime: needed("building time", Time, "Time to build, when timings.csv does not say.", {
    above: 0,
    example: "30 h",
  }),
  tools: needed("tools", toolPrices, "Tools to buy for it."),
  incomePerJob: needed("income per job", Money, "What one job brings in.", zeroOrMore),
  runningCostPerJob: needed("running cost per job", Money, "What one job costs to do.", zeroOrMore),
  jobsPerMonth: needed("jobs per month", plainNumber, "How many jobs there are in a month.", positive),
  interest: needed("interest", Ratio, "Yearly rate on money tied up, 0 for none.", { min: 0, max: 1 }),
  priceDoubt: optional(
    "price doubt",
    Ratio,
    "How far prices may be off until it is bought, as a share, either way.",
    {
      min: 0,
      max: 0.9,
    },
  ),
  hoursDoubt: optional("hours doubt", Ratio, "How far the hours may be off, as a share, either way.", {
    min: 0,
    max: 0.9,
  }),
  incomeSpread: optional(
    "income spread",
    Ratio,
    "Standard deviation of one job's income, as a share of it.",
    {
      min: 0,
      max: 10,
    },
  ),
};

/** What the case must earn. */
export interface Business extends BlockOf<typeof businessFields> {}

/** The block "business". */
export const businessForm: Form<Business> = block(businessFields);

/** Stands for the business of a case that need not earn anything. */
export function noBusiness(currency: string): Business {
  const nothing = money(0, currency);
  return {
    readyMade: nothing,
    labourRate: nothing,
    buildingTime: Time.si(0),
    tools: [],
    incomePerJob: nothing,
    runningCostPerJob: nothing,
    jobsPerMonth: 0,
    interest: Ratio.si(0),
  };
}
