/** A case laid out: every piece of sheet with its openings, every place of hardware, every bar. */

import { boundsOf, distanceTo, type Point2 } from "../../shape/index.js";
import type { CaseBody } from "../case.js";
import type { PlacedOpening } from "../parts.js";
import { faces } from "../place.js";
import type { Stock } from "../stock.js";
import { type EdgeBar, edgeBars } from "./bars.js";
import { type CornerSpot, cornerSpots } from "./corners.js";
import { type HardwareSpot, hardwareSpots } from "./hardware-spots.js";
import { type JointedEdge, jointedEdges } from "./jointed-edges.js";
import { type LaidStiffener, layStiffeners } from "./laid-stiffeners.js";
import { layOut, type SectionLayout } from "./layout.js";
import { cutOut, placeOpening } from "./openings.js";
import { onSurface, ownOutline, type Surface, surfacesOf } from "./surfaces.js";

/** A panel or a leaf with everything that is cut out of it. */
export interface Piece {
  /** The panel or leaf. */
  readonly surface: Surface;
  /** Cut out of it. */
  readonly openings: readonly PlacedOpening[];
}

/** Everything of a case that has a place on a panel. */
export interface CasePlan {
  /** Every face of every section. */
  readonly layouts: readonly SectionLayout[];
  /** Every panel and leaf with its openings. */
  readonly pieces: readonly Piece[];
  /** Every extrusion over an edge. */
  readonly bars: readonly EdgeBar[];
  /** Every edge that is joined without an extrusion. */
  readonly joints: readonly JointedEdge[];
  /** Every stiffener on its panel, leaf or shelf. */
  readonly stiffeners: readonly LaidStiffener[];
  /** Hardware on faces. */
  readonly spots: readonly HardwareSpot[];
  /** Hardware on corners. */
  readonly corners: readonly CornerSpot[];
}

/**
 * Lays out a case.
 *
 * @throws RangeError when the case names a stock, section or fastener that does not exist
 */
export function planCase(description: CaseBody, stock: Stock): CasePlan {
  const layouts = layOut(description, stock);
  const spots = hardwareSpots(description, stock, layouts);
  return {
    layouts,
    pieces: layouts.flatMap(({ panels }) =>
      faces
        .flatMap((face) => panels[face] ?? [])
        .flatMap(surfacesOf)
        .map((surface) => pieceOf(surface, spots)),
    ),
    bars: layouts.flatMap((layout) => edgeBars(layout, stock)),
    stiffeners: layStiffeners(description, stock, layouts),
    joints: layouts.flatMap((layout) => jointedEdges(layout, stock)),
    spots,
    corners: cornerSpots(description, stock, layouts),
  };
}

function pieceOf(surface: Surface, spots: readonly HardwareSpot[]): Piece {
  const { leaf, layout } = surface;
  const ofCase = leaf ? [] : layout.panel.openings.map((opening) => placeOpening(opening, layout));
  const ofHardware = spots
    .filter((spot) => spot.surface.id === surface.id && spot.cut.width > 0 && spot.cut.height > 0)
    .map(({ id, centre, cut }) => cutOut(id, onSurface(surface, centre), cut, boundsOf(surface.outline)));
  return { surface, openings: [...ofCase, ...ofHardware] };
}

/** The piece of an id. */
export function pieceNamed({ pieces }: CasePlan, id: string): Piece {
  const found = pieces.find(({ surface }) => surface.id === id);
  if (!found) throw new RangeError(`case panels: no "${id}"`);
  return found;
}

/** What a hole is nearest to: the piece's own edge or an opening in it; negative distance when it is off the sheet. */
export interface NearestEdge {
  /** From the place to it, m. */
  readonly distance: number;
  /** Whose edge it is; the panel's own when absent. */
  readonly opening?: PlacedOpening;
}

/** Least distance from a hole's centre to an edge of its piece. */
export function nearestEdge({ surface, openings }: Piece, hole: Point2): NearestEdge {
  const own: NearestEdge = { distance: -distanceTo(ownOutline(surface), hole) };
  return openings
    .map((opening): NearestEdge => ({ distance: distanceTo(opening.outline, hole), opening }))
    .reduce((nearest, one) => (one.distance < nearest.distance ? one : nearest), own);
}
