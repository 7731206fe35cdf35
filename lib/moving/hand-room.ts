import { type Formula, formula } from "../formula.js";
import { choice, type Kind, Length } from "../quantity/index.js";
import { cite } from "../source.js";

/** What the hand wears. */
export type Hand = "bare" | "gloved";
export const Hand: Kind<Hand> = choice("hand", ["bare", "gloved"]);

/** Room that one hand needs in a handle. */
export type HandRoom = {
  /** Across the knuckles, along the handle. */
  readonly length: Length;
  /** Between the grip and what is next to it. */
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
