/** Openings in their panel's own axes. */
import { Length } from "../../quantity/index.js";
import type { Opening, OpeningShape } from "../case.js";
import type { OpeningOutline, PlacedOpening } from "../parts.js";
import type { PanelCorner, PanelPoint } from "../place.js";
import { type Form, formArea, formPerimeter, panelPoint, sameness } from "./outline.js";

interface Size {
  readonly width: number;
  readonly height: number;
}

/** Turns distances from a corner into panel axes. */
export function fromCorner(
  panel: Size,
  from: PanelCorner,
  { across, up }: { readonly across: number; readonly up: number },
): PanelPoint {
  return panelPoint(
    from.endsWith("right") ? panel.width - across : across,
    from.startsWith("top") ? panel.height - up : up,
  );
}

/** An opening of the case file, placed on its panel. */
export function placeOpening({ name, shape, from, across, up, to }: Opening, panel: Size): PlacedOpening {
  const size = shapeSize(shape);
  const half = to === "edge" ? { across: size.width / 2, up: size.height / 2 } : { across: 0, up: 0 };
  const centre = fromCorner(panel, from, { across: across + half.across, up: up + half.up });
  return placed(name, "case", centre, size, (low) => outlineOf(shape, low), panel);
}

/** The cut-out that a piece of hardware needs, square-cornered round its centre. */
export function cutOut(name: string, centre: PanelPoint, size: Size, panel: Size): PlacedOpening {
  const outline: OpeningOutline = { kind: "rectangle", cornerRadius: Length.si(0) };
  return placed(name, "hardware", centre, size, () => outline, panel);
}

function placed(
  name: string,
  why: PlacedOpening["why"],
  centre: PanelPoint,
  { width, height }: Size,
  outline: (low: PanelPoint) => OpeningOutline,
  panel: Size,
): PlacedOpening {
  const low = panelPoint(centre.u - width / 2, centre.v - height / 2);
  const form: Form = { low, width: Length.si(width), height: Length.si(height), outline: outline(low) };
  const perimeter = Length.si(formPerimeter(form) - lengthOnEdge(form, panel));
  return { name, why, ...form, area: formArea(form), perimeter };
}

/** Outside width and height of a shape. */
export function shapeSize(shape: OpeningShape): Size {
  if (shape.kind === "circle") return { width: shape.diameter, height: shape.diameter };
  if (shape.kind !== "polygon") return shape;
  const range = (values: readonly number[]): number => Math.max(...values) - Math.min(...values);
  return {
    width: range(shape.points.map(({ across }) => across)),
    height: range(shape.points.map(({ up }) => up)),
  };
}

function outlineOf(shape: OpeningShape, low: PanelPoint): OpeningOutline {
  switch (shape.kind) {
    case "rectangle":
      return { kind: "rectangle", cornerRadius: shape.cornerRadius };
    case "slot":
      return { kind: "rectangle", cornerRadius: Length.si(Math.min(shape.width, shape.height) / 2) };
    case "notch":
      return { kind: "rectangle", cornerRadius: Length.si(0) };
    case "circle":
      return { kind: "circle" };
    case "polygon": {
      const left = Math.min(...shape.points.map(({ across }) => across));
      const bottom = Math.min(...shape.points.map(({ up }) => up));
      return {
        kind: "polygon",
        points: shape.points.map(({ across, up }) => panelPoint(low.u + across - left, low.v + up - bottom)),
      };
    }
  }
}

/** Length of a notch's sides that lie on the panel's edge and need no cut. */
function lengthOnEdge({ low, width, height, outline }: Form, panel: Size): number {
  if (outline.kind !== "rectangle" || outline.cornerRadius > 0) return 0;
  const lying = (distance: number): number => (Math.abs(distance) < sameness ? 1 : 0);
  const upright = lying(low.u) + lying(panel.width - low.u - width);
  const level = lying(low.v) + lying(panel.height - low.v - height);
  return upright * height + level * width;
}
