/** From how high a thing of some mass falls, by who handles it. */
import { dropHeight, type Handling, heaviestParcel, rotationalDrop } from "../../moving/index.js";
import { type Mass, pound } from "../../quantity/index.js";

/** By hand up to 200 lb; heavier, one edge is let fall. */
export const heaviestByHand: Mass = pound(200);

/** A drop with its worked line. */
export type DropLine = ReturnType<typeof dropHeight.worked> | ReturnType<typeof rotationalDrop.worked>;

/**
 * The drop that a mass is likely to have.
 *
 * @throws RangeError for a parcel heavier than carriers take
 */
export function dropOf(mass: Mass, handling: Handling): DropLine {
  return handling === "parcel" || mass <= heaviestByHand
    ? dropHeight.worked({ mass, handling })
    : rotationalDrop.worked({ mass, handling });
}

/** The ways a mass can be handled at all. */
export function handlingsOf(mass: Mass): readonly Handling[] {
  const own: readonly Handling[] = ["careful", "usual", "rough"];
  return mass <= heaviestParcel ? [...own, "parcel"] : own;
}
