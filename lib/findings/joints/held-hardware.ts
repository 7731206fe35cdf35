/** Pieces of hardware with what fastens them, which several questions are asked of. */
import type { Fastening, HardwarePart } from "../../design/index.js";
import {
  type FastenerStrength,
  fastenerStrength,
  fasteningsOf,
  oneOfEach,
  type ReviewInput,
} from "../../model/index.js";
import type { Need, Subjects } from "../question.js";
import { each, known } from "../subjects.js";

/** A piece of hardware with its fasteners, of which there is one group at least. */
export interface Held {
  /** The piece of hardware. */
  readonly part: HardwarePart;
  /** One group of what holds it. */
  readonly first: Fastening;
  /** All that holds it. */
  readonly groups: readonly Fastening[];
}

/** One of each item and section of a duty. */
export function eachHeld(duty: HardwarePart["item"]["duty"]): Subjects<Held> {
  return each(
    (input) => heldOf(input, duty),
    ({ part: { section, stock } }) => `${section}.${stock.name}`,
    ({ part: { section, stock } }) => `${stock.name} of ${section}`,
  );
}

/** One of each item and section of a duty that has fasteners. */
export function heldOf(input: ReviewInput, duty: HardwarePart["item"]["duty"]): readonly Held[] {
  return oneOfEach(input, duty).flatMap((part) => {
    const groups = fasteningsOf(part, input);
    const [first] = groups;
    return first ? [{ part, first, groups }] : [];
  });
}

/** What one of its fasteners holds one way. */
export function strengthIn(direction: "shear" | "pull"): Need<Held, FastenerStrength> {
  return known((input, { first }) => fastenerStrength(first, direction, input));
}
