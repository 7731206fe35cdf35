/** Kinds of fasteners, and all that follows from the kind alone. */
import { choice, type Kind, Length } from "../quantity/index.js";
import { type RivetHole, rivetHole } from "./rivet.js";

/** What a fastener is. */
export type FastenerKind = "rivet" | "screw" | "bolt" | "insert";

/** Diameters of a fastener that its hole follows from. */
export interface FastenerSizes {
  /** Diameter of its body or shank; of an insert, of its screw. */
  readonly diameter: Length;
  /** Hole that an insert is run into; absent for all else. */
  readonly insertHole?: Length | undefined;
}

/** What follows from the kind of a fastener. */
export interface FastenerTraits {
  /** Whether it ends in a tail or a nut behind the stack, where a washer belongs on bare wood. */
  readonly endsBehind: boolean;
  /** Whether its screw closes the part alone and a threaded insert sits in the sheet. */
  readonly hasInsert: boolean;
  /** Whether a wrong grip makes another of its kind the better choice, since its tail forms at the stack's end. */
  readonly chosenByGrip: boolean;
  /** The unit that setting one is timed in; absent where it is timed with its hardware. */
  readonly timedAs?: "rivet";
  /** Whether the hole in the sheet follows from its diameter; a screw's depends on its core. */
  readonly holeKnown: boolean;
  /** The hole it goes through or into; undefined for a size that the rule does not cover. */
  hole(sizes: FastenerSizes): RivetHole | undefined;
}

/** Common practice, no source: room of a screw or bolt in its hole, in metres, and twice that at most. */
const clearance = 0.0005;

function clearanceHole({ diameter }: FastenerSizes): RivetHole {
  return { drill: Length.si(diameter + clearance), largest: Length.si(diameter + 2 * clearance) };
}

/** Least and greatest body of a blind rivet, in metres, that the rule of its hole is given for. */
const rivetBodies = { min: 0.002, max: 0.007 };

/** The traits of each kind. */
export const fastenerTraits: Readonly<Record<FastenerKind, FastenerTraits>> = {
  rivet: {
    endsBehind: true,
    hasInsert: false,
    chosenByGrip: true,
    timedAs: "rivet",
    holeKnown: true,
    hole: ({ diameter }) =>
      diameter < rivetBodies.min || diameter > rivetBodies.max ? undefined : rivetHole({ body: diameter }),
  },
  screw: { endsBehind: false, hasInsert: false, chosenByGrip: false, holeKnown: false, hole: clearanceHole },
  bolt: { endsBehind: true, hasInsert: false, chosenByGrip: false, holeKnown: true, hole: clearanceHole },
  insert: {
    endsBehind: false,
    hasInsert: true,
    chosenByGrip: false,
    holeKnown: true,
    hole: ({ insertHole }) => insertHole && { drill: insertHole, largest: insertHole },
  },
};

/** Kinds of fasteners, as a kind of value. */
export const FastenerKind: Kind<FastenerKind> = choice("kind", Object.keys(fastenerTraits) as FastenerKind[]);
