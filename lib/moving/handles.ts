/** Handles: room for the hand, and the force on each. */
import { type Formula, formula } from "../formula.js";
import {
  Angle,
  Count,
  choice,
  degree,
  Force,
  type Kind,
  Length,
  Mass,
  Ratio,
  standardGravity,
} from "../quantity/index.js";
import { cite } from "../source.js";

/** What the hand wears. */
export type Hand = "bare" | "gloved";
export const Hand: Kind<Hand> = choice("hand", ["bare", "gloved"]);

/** Room that one hand needs in a handle. */
export type HandRoom = {
  /** The length along the handle, across the knuckles. */
  readonly length: Length;
  /** The clearance between the grip and what is next to it. */
  readonly clearance: Length;
};

/**
 * Bare: NIOSH 94-110, table 6, an optimal handle. Gloved: MIL-STD-1472, least dimensions of a one-hand recess, recalled
 * and not read.
 */
const rooms: Readonly<Record<Hand, { readonly length: Length; readonly clearance: Length }>> = {
  bare: { length: Length.of(4.5, "in"), clearance: Length.of(2, "in") },
  gloved: { length: Length.of(5.25, "in"), clearance: Length.of(3.5, "in") },
};

/**
 * Length and clearance that a handle needs for one hand.
 *
 * @source NIOSH 94-110, table 6, bare; MIL-STD-1472, one-hand recess, gloved (from memory)
 * @throws nothing: each hand has its figures
 * @example handRoom({ hand: "bare" }) // length 114.3 mm, clearance 50.8 mm
 */
export const handRoom: Formula<{ readonly hand: Hand }, HandRoom> = formula<
  { readonly hand: Hand },
  HandRoom
>({
  id: "handle.room",
  title: "Room that a hand needs in a handle",
  equation: String.raw`(l,\ c)=f(\text{hand})`,
  inputs: { hand: { symbol: "h", kind: Hand, meaning: "bare or gloved" } },
  result: {
    length: { symbol: "l", kind: Length, meaning: "length of the handle for one hand" },
    clearance: { symbol: "c", kind: Length, meaning: "clearance round the grip" },
  },
  source: [
    cite("niosh-lifting", "table 6, note 1: an optimal handle"),
    cite("mil-std-1472", "least dimensions of handles, one-hand recess, from memory"),
  ],
  validity:
    "Hands of most adults; thick winter gloves and mittens need more. Try the glove that will be worn.",
  compute: ({ hand }) => rooms[hand],
});

/** A box longer in front of the lifter than this is no optimal container. NIOSH 94-110, table 6, note 3. */
export const widestGoodBox: Length = Length.of(16, "in");

/** The same of its height. */
export const highestGoodBox: Length = Length.of(12, "in");

/** A load snatched up: slack first, then the give of handle, panel and arms. */
export interface Snatch {
  /** How far the load falls, or the hand rises, before the handle takes up. */
  readonly slack: Length;
  /** How far all gives under the load at rest. */
  readonly give: Length;
}

/**
 * How many times the resting load a snatch puts on a handle: 1 + sqrt(1 + 2 slack / give). A load
 * let go all at once, without slack, counts twice.
 *
 * @source strength of materials, weight falling on a spring
 * @throws Refusal for a negative slack, or a give that is not positive
 * @example snatchFactor({ slack: mm(10), give: mm(5) }) // 3.236
 */
export const snatchFactor: Formula<Snatch, Ratio> = formula({
  id: "handle.snatch",
  title: "How much a snatch adds",
  equation: String.raw`\varphi = 1 + \sqrt{1 + \frac{2 h}{\delta}}`,
  inputs: {
    slack: { symbol: "h", kind: Length, meaning: "slack before the handle takes up", min: 0 },
    give: { symbol: String.raw`\delta`, kind: Length, meaning: "give under the load at rest", above: 0 },
  },
  result: { symbol: String.raw`\varphi`, kind: Ratio, meaning: "times the load at rest" },
  source: [cite("strength-of-materials", "impact of a falling weight on a spring")],
  validity: "A springy mounting that is not damaged; stops at hard contact give more.",
  compute: ({ slack, give }) => 1 + Math.sqrt(1 + (2 * slack) / give),
});

/** A case hung on its handles. */
export interface HandleLoad {
  /** Case and all that is in it. */
  readonly mass: Mass;
  /** Handles that carry; 1 when one hand lets go. */
  readonly handles: number;
  /** Times the load at rest; 2 for a sudden start. */
  readonly dynamicFactor: Ratio;
}

/**
 * The force on each handle: weight x dynamic factor / handles. A handle and its rivets should stand the
 * whole case alone, since one hand may let go.
 *
 * @source statics; common practice for one handle alone
 * @throws Refusal unless mass and handles are positive and the factor is at least 1
 * @example handleForce({ mass: kg(30), handles: 1, dynamicFactor: ratio(2) }) // 588.4 N
 */
export const handleForce: Formula<HandleLoad, Force> = formula({
  id: "handle.force",
  title: "Force on a handle",
  equation: String.raw`F = \frac{\varphi\, m g}{n}`,
  inputs: {
    mass: { symbol: "m", kind: Mass, meaning: "mass", above: 0 },
    handles: { symbol: "n", kind: Count, meaning: "handles that carry", min: 1 },
    dynamicFactor: { symbol: String.raw`\varphi`, kind: Ratio, meaning: "times the load at rest", min: 1 },
  },
  result: { symbol: "F", kind: Force, meaning: "force on each handle" },
  source: [cite("statics", "weight shared equally"), cite("common-practice", "one handle carries all")],
  validity:
    "Handles that share equally; where the weight is off the middle, take the share of the nearer one.",
  compute: ({ mass, handles, dynamicFactor }) => (dynamicFactor * mass * standardGravity) / handles,
});

/** A handle that is pulled up by a hand that stands off the case. */
export interface SlantingPull {
  /** Along the panel, upwards. */
  readonly along: Force;
  /** Of the arm against the panel. */
  readonly slant: Angle;
}

const slantOfArm = { symbol: String.raw`\alpha`, kind: Angle, min: 0, below: degree(90) } as const;

/**
 * What a slanting arm pulls a handle off its panel with: V tan(alpha).
 *
 * @source statics, components of a force
 * @throws Refusal for a negative force, or a slant that is not from 0 to below 90 degrees
 * @example outwardPull({ along: newton(100), slant: degree(45) }) // 100 N
 */
export const outwardPull: Formula<SlantingPull, Force> = formula({
  id: "handle.outward",
  title: "Outward pull on a handle",
  equation: String.raw`H=V\,\tan\alpha`,
  inputs: {
    along: { symbol: "V", kind: Force, meaning: "along the panel", min: 0 },
    slant: { ...slantOfArm, meaning: "arm against the panel" },
  },
  result: { symbol: "H", kind: Force, meaning: "off the panel" },
  source: [cite("statics", "components of a force")],
  validity: "A steady pull; a tug at one end of the handle pries its fasteners besides.",
  compute: ({ along, slant }) => along * Math.tan(slant),
});

/**
 * What a slanting arm pulls a handle with along its panel, up and sideways together: V / cos(alpha).
 *
 * @source statics, components of a force
 * @throws Refusal for a negative force, or a slant that is not from 0 to below 90 degrees
 * @example sidewaysPull({ along: newton(100), slant: degree(60) }) // 200 N
 */
export const sidewaysPull: Formula<SlantingPull, Force> = formula({
  id: "handle.sideways",
  title: "Pull on a handle along its panel, up and sideways",
  equation: String.raw`R=\frac{V}{\cos\alpha}`,
  inputs: {
    along: { symbol: "V", kind: Force, meaning: "upwards along the panel", min: 0 },
    slant: { ...slantOfArm, meaning: "arm against upright, seen square to the panel" },
  },
  result: { symbol: "R", kind: Force, meaning: "along the panel" },
  source: [cite("statics", "components of a force")],
  validity: "A pull through the middle of the handle; at one end of it its fasteners are twisted besides.",
  compute: ({ along, slant }) => along / Math.cos(slant),
});
