/** Marks that several drawings share, in millimetres. */
import type { PlacedOpening } from "../../design/index.js";
import type { DrawingMark } from "../../page/index.js";
import { Length } from "../../quantity/index.js";
import { type Point2, type Shape, scaled, moved as shifted } from "../../shape/index.js";

/** Millimetres of a length. */
export const millimetres = (value: Length): number => Length.in(value, "mm");

/** A point moved by another. */
export function moved(point: Point2, by: Point2): Point2 {
  return { x: point.x + by.x, y: point.y + by.y };
}

/** Mean width of a letter as a share of its height. */
const letterWidth = 0.6;

/** Whether words fit into a width. */
export function wordsFit(text: string, width: number, letter: number): boolean {
  return text.length * letterWidth * letter <= width;
}

/** An outline of a panel's own axes as drawn with the panel's bottom left corner at the origin given. */
export function drawnOutline(outline: Shape, origin: Point2): Shape {
  return shifted(scaled(outline, 1000, { x: 0, y: 0 }), origin);
}

/** The opening's outline on a panel whose bottom left corner is at the origin given; no label. */
export function openingMark({ outline }: PlacedOpening, origin: Point2): DrawingMark {
  return { mark: "shape", role: "opening", shape: drawnOutline(outline, origin) };
}

/** The opening's name in its middle, where it fits. */
export function openingName(opening: PlacedOpening, origin: Point2, letter: number): DrawingMark[] {
  const [width, height] = [millimetres(opening.width), millimetres(opening.height)];
  if (!wordsFit(opening.name, width, letter) || height < letter) return [];
  const low = { x: millimetres(opening.low.x), y: millimetres(opening.low.y) };
  const at = moved(moved(low, { x: width / 2, y: height / 2 - 0.35 * letter }), origin);
  return [{ mark: "text", at, text: opening.name, anchor: "middle" }];
}
