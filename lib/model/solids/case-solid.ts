/** What fills space in a case, and how it moves. */
import type { Solid, Way } from "../../assembly/index.js";

/** What a solid is a part of. */
export type SolidKind =
  | "sheet"
  | "leaf"
  | "shelf"
  | "drawer"
  | "stiffener"
  | "strip"
  | "laminate"
  | "pane"
  | "bar"
  | "corner"
  | "hardware"
  | "caster"
  | "foot"
  | "runner"
  | "fastener"
  | "content";

/**
 * A piece of a fastener. "entering" is the room that a blind rivet takes behind what it closes before it is set, longer
 * and thinner than its tail; no two of them stand there at once.
 */
export type FastenerPiece = "head" | "body" | "tail" | "entering" | "washer" | "nut" | "tip" | "insert";

/** A prism of a case, where it stands in the stacked case. */
export interface CaseSolid extends Solid {
  /** Id of the part that it is of: "upper.front", "upper.front-left on upper.front 3" for the third of a group. */
  readonly part: string;
  /** The part in the builder's words: "rivet 3 of upper.front-left on upper.front". */
  readonly name: string;
  /** Name of its section. */
  readonly section: string;
  /** What it is a part of. */
  readonly kind: SolidKind;
  /** The group of fasteners that it is of. */
  readonly group?: string;
  /** What it is of a fastener. */
  readonly piece?: FastenerPiece;
  /** Parts that share its space as they should: what a fastener goes through, or bites. */
  readonly joins: readonly string[];
  /** Whether its place is nobody's word but spread evenly over what it holds. */
  readonly placedByHand?: true;
}

/** Parts of a case that move, and how. */
export interface CaseMovement {
  /** Id of what moves: a leaf, a drawer, a shelf. */
  readonly id: string;
  /** In the builder's words: "drawer tool drawer, out", "leaf lower.left.side door, open". */
  readonly words: string;
  /** Ids of the parts that move along. */
  readonly parts: ReadonlySet<string>;
  /** Ids of hinges and stays, half of which move along and half stand. */
  readonly hinges: ReadonlySet<string>;
  /** The way they go. */
  readonly movement: Way;
}

/** Every solid of a case, and all that moves. */
export interface CaseSolids {
  /** In the order of the parts; each key stands once. */
  readonly solids: readonly CaseSolid[];
  /** Leaves, drawers and sliding shelves. */
  readonly movements: readonly CaseMovement[];
}
