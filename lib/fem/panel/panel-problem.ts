/** A flat panel to be solved: outline, make-up, how it is held, what lies on it. SI throughout. */
import type { Point2 } from "../../shape/index.js";
import type { Sheet } from "../element/index.js";
import type { MeshBox, Outline } from "../mesh/index.js";

/** A rectangle of another make-up: a strip of other thickness, a batten glued on. */
export interface SheetRegion extends MeshBox {
  /** Its make-up, without the rest of the panel. */
  readonly sheet: Sheet;
}

/** How a line of the rim is held. Hinged and elastic edges are free to turn about the line across it. */
export type Hold =
  | { readonly kind: "hinged" }
  | { readonly kind: "clamped" }
  /** Held down, and turning against so many N m a radian on each metre: a riveted extrusion. */
  | { readonly kind: "elastic"; readonly rotational: number };

/** A straight line of the rim that is held. */
export interface HeldLine {
  /** One end of the line. */
  readonly from: Point2;
  /** The other end of the line. */
  readonly to: Point2;
  /** How it is held there. */
  readonly hold: Hold;
}

/** A place held down: a rivet, a foot, a caster. */
export interface HeldPoint {
  /** The place that is held. */
  readonly at: Point2;
  /** Spring, N/m; rigid when left out. */
  readonly spring?: number;
}

/** What presses on the panel, towards +z. */
export type PanelLoad =
  /** On all material, Pa. */
  | { readonly kind: "pressure"; readonly pressure: number }
  /** A force spread over a rectangle, N. */
  | { readonly kind: "patch"; readonly over: MeshBox; readonly force: number }
  /** The same without sides that the mesh must follow: for a mesh that curved openings shape. */
  | { readonly kind: "spread"; readonly over: MeshBox; readonly force: number }
  /** A force spread along a straight line of the rim, N. */
  | { readonly kind: "line"; readonly from: Point2; readonly to: Point2; readonly force: number }
  | { readonly kind: "point"; readonly at: Point2; readonly force: number }
  /** The panel's own weight: acceleration along +z, m/s2. */
  | { readonly kind: "weight"; readonly acceleration: number };

/** Equipment mounted on the panel, which swings with it. */
export interface MountedMass {
  /** Where it is mounted. */
  readonly at: Point2;
  /** kg */
  readonly mass: number;
}

/** A panel and all that acts on it. */
export interface PanelProblem {
  /** What messages call it. */
  readonly name: string;
  /** The panel's outline with its openings. */
  readonly outline: Outline;
  /** Its make-up where no region says otherwise. */
  readonly sheet: Sheet;
  /** The last that covers a place counts. */
  readonly regions: readonly SheetRegion[];
  /** Lines of the rim that are held. */
  readonly heldLines: readonly HeldLine[];
  /** Places that are held down. */
  readonly heldPoints: readonly HeldPoint[];
  /** What presses on it. */
  readonly loads: readonly PanelLoad[];
  /** What is mounted on it. */
  readonly masses: readonly MountedMass[];
  /** Places to look at, which become nodes where there is room. */
  readonly places: readonly Point2[];
}
