/** Shelves and contents: where they are, how they are held, what they need on the way. */
import type { SetTest } from "../../inside/screen.js";
import {
  Area,
  Count,
  choice,
  Force,
  Length,
  Mass,
  Name,
  Power,
  Pressure,
  Ratio,
  SpringRate,
  Temperature,
} from "../../quantity/index.js";
import { faces, type Point } from "../place.js";
import type { FieldRules } from "./fields.js";
import {
  type BlockOf,
  block,
  blockByWord,
  byName,
  type Form,
  listOfForm,
  mapped,
  needed,
  optional,
  preset,
  type ReadOf,
  threeLengths,
  twoLengths,
  value,
  yesNoOr,
  yesOrNo,
} from "./form.js";

const positive = { above: 0 };
const zeroOrMore = { min: 0 };
const face = choice("face", faces);

function pointForm(rules: FieldRules, what: string): Form<Point> {
  return mapped(threeLengths(rules, what), ([x, y, z]): Point => ({ x, y, z }));
}

const lowCorner = pointForm(
  zeroOrMore,
  "right, back and up from the section's inside lower left front corner",
);

const jointFields = {
  fastener: needed("fastener", Name, "A name of fasteners.csv."),
  count: needed("count", Count, "How many there are.", positive),
};

/** Fasteners that hold something together, and how many. */
export const jointForm: Form<BlockOf<typeof jointFields>> = block(jointFields);

const shelfFields = {
  section: needed("in", Name, "The section it is in."),
  sheet: needed("sheet", Name, "A name of sheet-stock.csv."),
  size: needed("size", twoLengths(positive, "width, depth"), "Width along x and depth along y."),
  at: needed("at", lowCorner, "Its lower left front corner, from that of the section's inside."),
  support: needed(
    "support",
    choice("support", ["two ends", "ends and back", "back only"]),
    "What bears it: rails at its left and right ends, ends and back, or its back alone.",
  ),
  sliding: needed("sliding", yesOrNo, "Whether it slides out."),
  joint: needed("joint", block(jointFields), "The fasteners that hold it to the case."),
  restsOn: optional(
    "rests on",
    listOfForm(value(Name), "names of ledges or cleats among the stiffeners"),
    "The ledges that bear it, of the same section; its joint then only keeps it from moving.",
  ),
  bracket: optional(
    "bracket",
    Length,
    "Height of a bracket or cleat under its back, for a shelf that is held at its back only.",
    positive,
  ),
  slides: optional("slides", Name, "The pair of slides it runs on, a name of hardware.csv."),
  slidesRated: optional(
    "slides rated",
    Force,
    "Load that its pair of slides is made for, pulled out.",
    positive,
  ),
};

/** A shelf or platform inside a section. */
export interface Shelf extends Omit<BlockOf<typeof shelfFields>, "size"> {
  /** What the shelf is called. */
  readonly name: string;
  /** Size along x. */
  readonly width: Length;
  /** Size along y. */
  readonly depth: Length;
}

/** Every shelf by name. */
export const shelvesForm: Form<readonly Shelf[]> = byName(
  block(shelfFields),
  '"instrument shelf"',
  (name, { size: [width, depth], ...rest }): Shelf => ({ name, width, depth, ...rest }),
);

const secondHoldFields = {
  ...jointFields,
  rated: needed("rated", Force, "Load that its maker allows on it.", positive),
  slack: needed("slack", Length, "How far the thing falls before the hold is taut.", zeroOrMore),
  give: needed("give", Length, "How far the hold gives under its rated load.", positive),
};

/** What catches a hung thing when its fasteners let go: a cord, a chain or a bracket, with fasteners of its own. */
export interface SecondHold extends BlockOf<typeof secondHoldFields> {}

const secondHold: Form<boolean | SecondHold> = yesNoOr(
  block(secondHoldFields),
  "false, true, or a block with fastener, count, rated, slack, give",
);

const liningFields = {
  kind: needed("kind", Name, "A foam of cushion-curves.csv."),
  thickness: needed("thickness", Length, "Its thickness.", positive),
};

const fastened = {
  to: needed("to", face, "The panel they go through, from outside."),
  ...jointFields,
};

/** The ways a content is held, each with its words. */
const ways = {
  shelf: { shelf: needed("shelf", Name, "The shelf it stands on.") },
  floor: {},
  strap: {
    straps: needed("straps", Count, "How many straps hold it.", positive),
    rated: optional("rated", Force, "Load that one strap and its anchors are made for.", positive),
  },
  cradle: {
    rim: needed("rim", Length, "Height of its walls above what the thing stands on.", positive),
    lining: needed("lining", block(liningFields), "Foam against its walls."),
    lid: needed("lid", yesOrNo, "Whether a strap or a lid keeps the thing from jumping out."),
    lidRated: optional("lid rated", Force, "Load that this strap or lid is made for, upwards.", positive),
    shelf: optional("shelf", Name, "The shelf that the cradle stands on; the floor where none is named."),
    rated: optional(
      "rated",
      Force,
      "Push at which the empty cradle gives way, pulled with a scale.",
      positive,
    ),
  },
  screws: {
    ...fastened,
    foot: optional(
      "foot",
      Length,
      "What a screw goes through before its insert in the panel; of inserts alone.",
      positive,
    ),
  },
  rivets: fastened,
  hung: {
    ...jointFields,
    secondHold: needed("second hold", secondHold, "False for none, true for one that nobody described."),
  },
};

const holdingForm = blockByWord("by", choice("by", Object.keys(ways) as (keyof typeof ways)[]), ways);

/** How a content is held. */
export type Holding = ReadOf<typeof holdingForm>;

const foamFields = {
  ...liningFields,
  pad: needed(
    "pad",
    twoLengths(positive, "the sides of the foam that bears it"),
    "Sides of the foam that bears it.",
  ),
  sides: optional(
    "sides",
    areaForm("the foam against its left and its right"),
    "The same foam against its left and its right, each.",
  ),
  ends: optional(
    "ends",
    areaForm("the foam against its front and its back"),
    "The same foam against its front and its back, each.",
  ),
};

function areaForm(what: string): Form<Area> {
  return mapped(twoLengths(positive, what), ([one, other]) => Area.si(one * other));
}

/** Foam under a content. */
export interface FoamBed extends Omit<BlockOf<typeof foamFields>, "pad"> {
  /** Side of the foam that bears it, along x. */
  readonly padWidth: Length;
  /** Side of the foam that bears it, along y. */
  readonly padDepth: Length;
}

const foamForm = mapped(
  block(foamFields),
  ({ pad: [padWidth, padDepth], ...rest }): FoamBed => ({ ...rest, padWidth, padDepth }),
);

const plugFields = {
  face: needed("at", face, "Side of the content where it sits."),
  length: needed("length", Length, "Length of plug and strain relief.", positive),
  cable: needed("cable", Length, "Outside diameter of the cable.", positive),
  bendFactor: needed("bend factor", Ratio, "Least inner radius of a bend over the cable's diameter.", {
    min: 1,
  }),
  width: optional(
    "width",
    Length,
    "Widest side of the plug, for the hole that it must go through.",
    positive,
  ),
};

/** A plug and its cable. */
export interface PlugRoom extends BlockOf<typeof plugFields> {}

const mountFields = {
  count: needed("count", Count, "How many there are.", positive),
  rate: needed("rate", SpringRate, "Rate of one of them.", positive),
};

/** Springs or rubber feet under a content. */
export interface SpringMounts extends BlockOf<typeof mountFields> {}

const clampFields = {
  force: needed("force", Force, "Force of one clamp.", positive),
  pad: needed("pad", twoLengths(positive, "the sides of the strip under it"), "Sides of the strip under it."),
};

/** A clamp over the edge of a pane. */
export interface PaneClamp extends Omit<BlockOf<typeof clampFields>, "pad"> {
  /** Width of the strip under it. */
  readonly padWidth: Length;
  /** Length of the strip under it. */
  readonly padLength: Length;
}

const clampForm = mapped(
  block(clampFields),
  ({ force, pad: [padWidth, padLength] }): PaneClamp => ({ force, padWidth, padLength }),
);

const setTestForm = mapped(
  threeLengths(positive, "thickness before, while squeezed, half an hour after"),
  ([before, squeezed, after]): SetTest => ({ before, squeezed, after }),
);

const paneFields = {
  strip: needed("strip", Length, "Free thickness of the strip.", positive),
  squeeze: needed("squeeze", Ratio, "Squeeze as a share of the free thickness.", { above: 0, max: 0.9 }),
  set: optional("set", Ratio, "Compression set of the strip, from its maker.", { min: 0, max: 1 }),
  setTest: optional("set test", setTestForm, "The builder's own test of it, in place of the maker's figure."),
  clearance: needed("clearance", Length, "Play the pane would have with no strip at all.", zeroOrMore),
  clamp: optional("clamp", clampForm, "One clamp, and the strip under it."),
  stands: optional("stands", Pressure, "Pressure that the edge of the pane stands, from its maker.", {
    above: 0,
    example: "100 kPa or 15 psi",
  }),
};

/** A screen held by clamps through foam strip. */
export interface PaneStrip extends BlockOf<typeof paneFields> {}

const needFields = {
  fragility: optional("stands g", Ratio, "Deceleration it stands, in gravities.", { above: 1 }),
  foam: optional("foam", foamForm, "Foam under it."),
  opensBy: optional("opens by", Length, "How far a drawer or door of it comes out.", positive),
  opensTo: optional("opens to", face, "The side to which it comes out; the front unless said."),
  coldStart: optional("cold start", Ratio, "First current over running current.", { min: 1 }),
  hottest: optional("hottest", Temperature, "Hottest air it may work in."),
  plug: optional("plug", block(plugFields), "Its plug and cable."),
  mounts: optional("mounts", block(mountFields), "Springy feet under it."),
  keepClear: optional(
    "keep clear",
    Length,
    "Free way that something hot wants to whatever burns, from its label.",
    positive,
  ),
  pane: optional("pane", block(paneFields), "Its screen, held through foam strip."),
  slidesAt: optional(
    "slides at",
    Force,
    "Level push, pulled with a scale, at which it slides where it stands.",
    zeroOrMore,
  ),
};

/** What a content needs; whatever is left out leaves its finding unknown or unasked. */
export interface Needs extends BlockOf<typeof needFields> {}

const contentFields = {
  section: needed("in", Name, "The section it is in."),
  mass: needed("mass", Mass, "Its mass.", positive),
  at: needed("at", lowCorner, "Its lower left front corner, from that of the section's inside."),
  size: needed(
    "size",
    pointForm(positive, "width, depth, height"),
    "Width along x, depth along y, height along z.",
  ),
  held: needed("held", holdingForm, "How it is held."),
  power: optional("power", Power, "Electric load.", zeroOrMore),
  duty: optional("power on", Ratio, "Share of the time that load is on.", { min: 0, max: 1 }),
  needs: preset("needs", block(needFields), {}, "What it needs on the way and where it stands."),
};

/** Something that rides in the case. */
export interface Content extends BlockOf<typeof contentFields> {
  /** What the content is called. */
  readonly name: string;
}

/** Everything that rides in the case, by name. */
export const contentsForm: Form<readonly Content[]> = byName(block(contentFields), '"microscope"');
