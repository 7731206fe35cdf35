/** What hardware can sit on: the panel of a face, and the leaves of doors in it. */
import type { Length } from "../../quantity/index.js";
import { boundsOf, distanceTo, moved, type Point2, rectangle, type Shape } from "../../shape/index.js";
import type { HungLeaf } from "../parts.js";
import type { PanelLayout } from "./layout.js";
import { placeLeaves } from "./leaves.js";
import { placeOpening } from "./openings.js";
import { panelPoint } from "./outline.js";

/** One flat piece in the plane of a face. */
export interface Surface {
  /** Id of the panel part it becomes. */
  readonly id: string;
  /** The panel of the face it is, or is in. */
  readonly layout: PanelLayout;
  /** Its outline in the axes of the face's panel, m. */
  readonly outline: Shape;
  /** How it hangs in its opening, if it is a door. */
  readonly leaf?: HungLeaf;
}

/** The panel of a face first, then its leaves. */
export function surfacesOf(layout: PanelLayout): readonly [Surface, ...Surface[]] {
  const { id, width, height, panel } = layout;
  const whole: Surface = { id, layout, outline: rectangle({ left: 0, bottom: 0, width, height }) };
  const leaves = panel.openings.flatMap((opening) =>
    placeLeaves(id, opening, placeOpening(opening, layout)).map((leaf): Surface => ({ ...leaf, layout })),
  );
  return [whole, ...leaves];
}

/** The leaf that a point of a face lies on, or else the face's panel. */
export function surfaceAt(layout: PanelLayout, point: Point2<Length>): Surface {
  const [whole, ...leaves] = surfacesOf(layout);
  return leaves.find(({ outline }) => distanceTo(outline, point) <= 0) ?? whole;
}

/** A point of a face in the axes of one of its surfaces. */
export function onSurface({ outline }: Surface, { x, y }: Point2<Length>): Point2<Length> {
  const { left, bottom } = boundsOf(outline);
  return panelPoint(x - left, y - bottom);
}

/** The outline of a surface in its own axes, from the corner of its bounds. */
export function ownOutline({ outline }: Surface): Shape {
  const { left, bottom } = boundsOf(outline);
  return left === 0 && bottom === 0 ? outline : moved(outline, { x: -left, y: -bottom });
}
