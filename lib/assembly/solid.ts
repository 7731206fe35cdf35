/**
 * A solid is a prism: an outline pushed straight along its normal. Panels, legs of bars, bodies and tails of fasteners,
 * contents: everything that fills space is one of these or several. Metres throughout.
 */

import type { Vector3 } from "../algebra/matrix3.js";
import type { Shape } from "../shape/index.js";

/** Where a plane outline lies in space. */
export interface Placement {
  /** The place of the outline's own origin. */
  readonly origin: Vector3;
  /** The unit direction of the outline's x. */
  readonly x: Vector3;
  /** The unit direction of the outline's y, square to x; the normal is x cross y. */
  readonly y: Vector3;
}

/** A prism in space. */
export interface Solid {
  /** Its name among the solids of an assembly, each once: "upper.front", "lower bar 3.leg a". */
  readonly key: string;
  /** Its outline, in metres. */
  readonly outline: Shape;
  /** What is cut right through it along its normal, in the same plane. */
  readonly holes: readonly Shape[];
  /** Where the outline lies. */
  readonly place: Placement;
  /** How far it reaches from the outline along the normal, in metres, above 0. */
  readonly depth: number;
}
