/** Choosing a rivet: the stack it closes, its hole, its washer, how long and how many. */
import { at } from "../algebra/lists.js";
import { type Formula, formula } from "../formula.js";
import { Count, choice, Length, listOf, Name, recordOf } from "../quantity/index.js";
import { cite } from "../source.js";

/** What one fastener closes. */
export interface StackInputs {
  /** Thickness of each layer: metal, facing, ply. */
  readonly layers: readonly Length[];
  /** Thickness of the washer at the back, zero for none. */
  readonly washer: Length;
}

/**
 * Grip a rivet needs: the layers and the washer added up.
 *
 * @throws Refusal for an empty stack or a layer that is not positive
 * @example gripNeeded(gripNeeded.read({ layers: ["1/16 in", "1/4 in"], washer: "0 in" })) // 7.938 mm
 */
export const gripNeeded: Formula<StackInputs, Length> = formula({
  id: "stack.grip",
  title: "Grip needed for a stack",
  equation: String.raw`g = \sum t_i + t_w`,
  inputs: {
    layers: { symbol: "t_i", kind: listOf(Length), meaning: "thickness of each layer" },
    washer: { symbol: "t_w", kind: Length, meaning: "thickness of the washer", min: 0 },
  },
  result: { symbol: "g", kind: Length, meaning: "grip needed" },
  source: [cite("geometry", "thicknesses added up")],
  validity: "Measured thicknesses: nominal ply is often half a millimetre off.",
  refuse: ({ layers }) => [
    ...(layers.length > 0 ? [] : ["at least one layer, got none"]),
    ...(layers.every((layer) => layer > 0) ? [] : ["every layer must be positive"]),
  ],
  compute: ({ layers, washer }) => layers.reduce((sum: number, layer) => sum + layer, washer),
});

/** A rivet that can be had, with the stacks it closes. */
export interface RivetRange {
  /** The name of the rivet. */
  readonly name: string;
  /** The thinnest stack it closes. */
  readonly gripMin: Length;
  /** The thickest stack it closes. */
  readonly gripMax: Length;
}

/** A stack and the rivets to choose from. */
export interface RivetChoiceInputs {
  /** The grip needed. */
  readonly grip: Length;
  /** The rivets to be had, with their grip ranges. */
  readonly rivets: readonly RivetRange[];
}

/** The rivet to take. */
export type ChosenRivet = {
  /** The rivet to take. */
  readonly name: string;
  /** The margin from the stack to the nearer end of the rivet's range. */
  readonly margin: Length;
};

/** What ply of one nominal thickness varies by, so that a stack this near the end of a range may miss it. */
const narrowMargin = 0.0003;

/**
 * The rivet whose grip range covers the stack; of several, the one whose range has the stack nearest its
 * middle, since sheet thickness varies.
 *
 * @throws Refusal when none covers it, naming the stack and every range
 * @example rivetChoice(rivetChoice.read({ grip: "6 mm", rivets: [{ name: "short", gripMin: "3 mm",
 *   gripMax: "6.5 mm" }, { name: "long", gripMin: "4 mm", gripMax: "8 mm" }] })) // name long, margin 2 mm
 */
export const rivetChoice: Formula<RivetChoiceInputs, ChosenRivet> = formula<RivetChoiceInputs, ChosenRivet>({
  id: "rivet.choice",
  title: "Rivet for a stack",
  equation: String.raw`g_{min} \le g \le g_{max}`,
  inputs: {
    grip: { symbol: "g", kind: Length, meaning: "grip needed", above: 0 },
    rivets: {
      symbol: "g_{min}, g_{max}",
      kind: listOf(recordOf<RivetRange>("rivet", { name: Name, gripMin: Length, gripMax: Length })),
      meaning: "rivets to be had, with their grip ranges",
    },
  },
  result: {
    name: { symbol: String.raw`\text{rivet}`, kind: Name, meaning: "rivet to take" },
    margin: { symbol: String.raw`\Delta g`, kind: Length, meaning: "room to the end of its range" },
  },
  source: [
    cite("iso-15981", "recommended grip ranges"),
    cite("common-practice", "the stack near the middle of the range"),
  ],
  validity: "Grip ranges as the maker states them, with the washer counted in the stack.",
  refuse: ({ grip, rivets }) =>
    rivets.some((rivet) => coversGrip(rivet, grip))
      ? []
      : [
          `no rivet covers a stack of ${Length.show(grip)}; ranges: ${rivets.map(showRange).join(", ") || "none"}`,
        ],
  warn: (_inputs, { margin }) =>
    margin < narrowMargin
      ? ["the stack is within 0.3 mm of the end of the range: measure the sheet before buying"]
      : [],
  compute: ({ grip, rivets }) => {
    const covering = rivets.filter((rivet) => coversGrip(rivet, grip));
    const best = at(
      covering.sort((a, b) => Math.abs(middle(a) - grip) - Math.abs(middle(b) - grip)),
      0,
    );
    return { name: best.name, margin: Math.max(0, Math.min(grip - best.gripMin, best.gripMax - grip)) };
  },
});

/** A hair of room at both ends for the binary rounding of added thicknesses. */
/** Whether a fastener closes a stack: within the range its maker states, but for the rounding of added thicknesses. */
export function coversGrip(
  { gripMin, gripMax }: Pick<RivetRange, "gripMin" | "gripMax">,
  grip: number,
): boolean {
  return grip >= gripMin - 1e-9 && grip <= gripMax + 1e-9;
}

function middle({ gripMin, gripMax }: RivetRange): number {
  return (gripMin + gripMax) / 2;
}

function showRange({ name, gripMin, gripMax }: RivetRange): string {
  return `${name} ${Length.show(gripMin)} to ${Length.show(gripMax)}`;
}

/** Like parts that take like rivets. */
export interface RivetedPart {
  /** The name of the part. */
  readonly part: string;
  /** Rivets in one. */
  readonly each: number;
  /** How many such parts there are. */
  readonly parts: number;
}

/** All riveted parts of one rivet. */
export interface RivetCountInputs {
  /** The parts, with the rivets of each. */
  readonly riveted: readonly RivetedPart[];
}

/**
 * Rivets for a set of parts: sum of rivets each times parts. Spares are not in it.
 *
 * @throws Refusal for an empty list
 * @example rivetCount(rivetCount.read({ riveted: [{ part: "latch", each: 8, parts: 6 }] })) // 48
 */
export const rivetCount: Formula<RivetCountInputs, number> = formula({
  id: "rivet.count",
  title: "Rivets for a set of parts",
  equation: String.raw`N = \sum n_i\,k_i`,
  inputs: {
    riveted: {
      symbol: "n_i, k_i",
      kind: listOf(recordOf<RivetedPart>("riveted part", { part: Name, each: Count, parts: Count })),
      meaning: "rivets each and number of each part",
    },
  },
  result: { symbol: "N", kind: Count, meaning: "rivets in all" },
  source: [cite("common-practice", "count by part: rivets each times parts")],
  validity: "One size of rivet; buy a few more than the count, some are spoilt.",
  refuse: ({ riveted }) => (riveted.length === 0 ? ["at least one part, got none"] : []),
  compute: ({ riveted }) => riveted.reduce((sum, { each, parts }) => sum + each * parts, 0),
});

/** Hole for one rivet. */
export type RivetHole = {
  /** Drill to take. */
  readonly drill: Length;
  /** A hole larger than this is spoilt. */
  readonly largest: Length;
};

/**
 * Hole for a blind rivet: body + 0.1 mm, at most body + 0.2 mm. A larger hole lets the body bulge
 * before it clamps.
 *
 * @throws Refusal for a body outside 2 mm to 7 mm, for which the rule is not given
 * @example rivetHole(rivetHole.read({ body: "3.2 mm" })) // drill 3.3 mm, largest 3.4 mm
 */
export const rivetHole: Formula<{ readonly body: Length }, RivetHole> = formula<
  { readonly body: Length },
  RivetHole
>({
  id: "rivet.hole",
  title: "Hole for a blind rivet",
  equation: String.raw`d_h = d + 0.1\,\mathrm{mm} \ldots d + 0.2\,\mathrm{mm}`,
  inputs: { body: { symbol: "d", kind: Length, meaning: "diameter of the body", min: 0.002, max: 0.007 } },
  result: {
    drill: { symbol: "d_h", kind: Length, meaning: "drill" },
    largest: { symbol: "d_{h,max}", kind: Length, meaning: "largest hole" },
  },
  source: [cite("iso-15977", "hole diameters"), cite("common-practice", "body + 0.1 mm")],
  validity: "Through metal and ply alike, drilled square, burrs taken off.",
  compute: ({ body }) => ({ drill: body + 0.0001, largest: body + 0.0002 }),
});

/** What the tail of a rivet sits on. */
export interface WasherInputs {
  /** What the tail sits on. */
  readonly back: "bare wood" | "facing" | "metal";
}

/** Whether a washer goes under the tail. */
export type WasherNeed = {
  /** Whether a washer goes under the tail. */ readonly washer: "yes" | "no";
};

/**
 * Whether a washer goes under the tail of a rivet: on bare wood yes, since the tail crushes into the wood
 * or pulls through; on metal no. A glued facing spreads the tail's load a little, and takes none by custom.
 *
 * @example washerAtBack(washerAtBack.read({ back: "metal" })) // washer no
 */
export const washerAtBack: Formula<WasherInputs, WasherNeed> = formula<WasherInputs, WasherNeed>({
  id: "rivet.washer",
  title: "Washer at the back of a rivet",
  equation: String.raw`\text{bare wood} \Rightarrow \text{washer}`,
  inputs: {
    back: {
      symbol: String.raw`\text{back}`,
      kind: choice("back of the joint", ["bare wood", "facing", "metal"]),
      meaning: "what the tail sits on",
    },
  },
  result: {
    washer: {
      symbol: String.raw`\text{washer}`,
      kind: choice("washer", ["yes", "no"]),
      meaning: "washer under the tail",
    },
  },
  source: [cite("common-practice", "back-up washers under rivet tails in wood")],
  validity: "Blind rivets with the tail inside the case.",
  warn: ({ back }) =>
    back === "facing" ? ["a thin facing may dimple under the tail: try one rivet on an offcut"] : [],
  compute: ({ back }) => ({ washer: back === "bare wood" ? "yes" : "no" }),
});
