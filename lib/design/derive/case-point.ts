import { Length } from "../../quantity/index.js";
import type { Point } from "../place.js";

/** A point of the case. */
export function casePoint(x: number, y: number, z: number): Point {
  return { x: Length.si(x), y: Length.si(y), z: Length.si(z) };
}
