/** What hardware can sit on: the panel of a face, and the leaves of doors in it. */
import type { Length } from "../../quantity/index.js";
import {
  boundsOf,
  distanceTo,
  moved,
  offset,
  type Point2,
  rectangle,
  type Shape,
} from "../../shape/index.js";
import type { Leaf } from "../case.js";
import type { PanelLayout } from "./layout.js";
import { placeOpening } from "./openings.js";
import { panelPoint, sameness } from "./outline.js";

/** One flat piece in the plane of a face. */
export interface Surface {
  /** Id of the panel part it becomes. */
  readonly id: string;
  /** The panel of the face it is, or is in. */
  readonly layout: PanelLayout;
  /** Its outline in the axes of the face's panel, m. */
  readonly outline: Shape;
  /** How it hangs in its opening, if it is a door. */
  readonly leaf?: Leaf;
}

/** The panel of a face first, then its leaves. */
export function surfacesOf(layout: PanelLayout): readonly [Surface, ...Surface[]] {
  const { id, width, height, panel } = layout;
  const whole: Surface = { id, layout, outline: rectangle({ left: 0, bottom: 0, width, height }) };
  const leaves = panel.openings.flatMap((opening): Surface[] => {
    const { name, leaf } = opening;
    const { outline: hole, width, height } = placeOpening(opening, layout);
    // Of a gap that leaves nothing the check of openings tells.
    if (!leaf || leaf.clearance >= Math.min(width, height) / 2 - sameness) return [];
    const outline = offset(hole, -leaf.clearance);
    return [{ id: `${layout.id}.${name}`, layout, leaf, outline }];
  });
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
