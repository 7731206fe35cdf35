/** Openings in their panel's own axes. */
import { Area, Length } from "../../quantity/index.js";
import {
  areaOf,
  boundsOf,
  lengthOnRim,
  moved,
  type Point2,
  perimeterOf,
  rectangle,
  type Shape,
} from "../../shape/index.js";
import type { Opening } from "../case.js";
import type { PlacedOpening } from "../parts.js";
import type { PanelCorner } from "../place.js";
import { panelPoint, sameness } from "./outline.js";

/** How wide and how high a panel or a cut-out is. */
export interface Size {
  /** Along u, m. */
  readonly width: number;
  /** Along v, m. */
  readonly height: number;
}

/** Turns distances from a corner into panel axes. */
export function fromCorner(
  panel: Size,
  from: PanelCorner,
  { across, up }: { readonly across: number; readonly up: number },
): Point2<Length> {
  return panelPoint(
    from.endsWith("right") ? panel.width - across : across,
    from.startsWith("top") ? panel.height - up : up,
  );
}

/** An opening of the case file, placed on its panel. */
export function placeOpening({ name, shape, from, across, up, to }: Opening, panel: Size): PlacedOpening {
  const size = boundsOf(shape.outline);
  const half = to === "edge" ? { across: size.width / 2, up: size.height / 2 } : { across: 0, up: 0 };
  const centre = fromCorner(panel, from, { across: across + half.across, up: up + half.up });
  const low = panelPoint(centre.x - size.width / 2, centre.y - size.height / 2);
  const outline = moved(shape.outline, { x: low.x - size.left, y: low.y - size.bottom });
  return placed({ name, kind: shape.kind, why: "case", outline, low, size }, panel);
}

/** The cut-out that a piece of hardware needs, square-cornered round its centre. */
export function cutOut(name: string, { x, y }: Point2<Length>, size: Size, panel: Size): PlacedOpening {
  const low = panelPoint(x - size.width / 2, y - size.height / 2);
  const { width, height } = size;
  const outline = rectangle({ left: low.x, bottom: low.y, width, height });
  return placed({ name, kind: "rectangle", why: "hardware", outline, low, size }, panel);
}

type Placing = Pick<PlacedOpening, "name" | "kind" | "why" | "outline" | "low"> & { readonly size: Size };

function placed({ size, ...opening }: Placing, panel: Size): PlacedOpening {
  const { outline } = opening;
  const onRim = lengthOnRim(outline, { left: 0, bottom: 0, ...panel }, sameness);
  return {
    ...opening,
    width: Length.si(size.width),
    height: Length.si(size.height),
    area: Area.si(areaOf(outline)),
    perimeter: Length.si(perimeterOf(outline) - onRim),
  };
}

/** An opening with another outline, on no edge of its panel. */
export function withOutline(opening: PlacedOpening, outline: Shape): PlacedOpening {
  const { left, bottom, width, height } = boundsOf(outline);
  return {
    ...opening,
    outline,
    low: panelPoint(left, bottom),
    width: Length.si(width),
    height: Length.si(height),
    area: Area.si(areaOf(outline)),
    perimeter: Length.si(perimeterOf(outline)),
  };
}
