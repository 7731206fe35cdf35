/** Marks that several drawings share, in millimetres. */
import type { PlacedOpening } from "../../design/index.js";
import type { DrawingMark, Point } from "../../page/index.js";
import { Length } from "../../quantity/index.js";

/** Millimetres of a length. */
export const millimetres = (value: Length): number => Length.in(value, "mm");

/** A point moved by another. */
export function moved(point: Point, by: Point): Point {
  return { x: point.x + by.x, y: point.y + by.y };
}

/** Mean width of a letter as a share of its height. */
const letterWidth = 0.6;

/** Whether words fit into a width. */
export function wordsFit(text: string, width: number, letter: number): boolean {
  return text.length * letterWidth * letter <= width;
}

/** The opening's outline on a panel whose bottom left corner is at the origin given; no label. */
export function openingMark(opening: PlacedOpening, origin: Point): DrawingMark {
  const { low, outline } = opening;
  const [width, height] = [millimetres(opening.width), millimetres(opening.height)];
  const at = moved({ x: millimetres(low.u), y: millimetres(low.v) }, origin);
  switch (outline.kind) {
    case "rectangle":
      return {
        mark: "rectangle",
        role: "opening",
        at,
        width,
        height,
        radius: millimetres(outline.cornerRadius),
      };
    case "circle":
      return {
        mark: "circle",
        role: "opening",
        at: moved(at, { x: width / 2, y: height / 2 }),
        radius: width / 2,
      };
    case "polygon":
      return {
        mark: "polygon",
        role: "opening",
        points: outline.points.map(({ u, v }) => moved({ x: millimetres(u), y: millimetres(v) }, origin)),
      };
  }
}

/** The opening's name in its middle, where it fits. */
export function openingName(opening: PlacedOpening, origin: Point, letter: number): DrawingMark[] {
  const [width, height] = [millimetres(opening.width), millimetres(opening.height)];
  if (!wordsFit(opening.name, width, letter) || height < letter) return [];
  const low = { x: millimetres(opening.low.u), y: millimetres(opening.low.v) };
  const at = moved(moved(low, { x: width / 2, y: height / 2 - 0.35 * letter }), origin);
  return [{ mark: "text", at, text: opening.name, anchor: "middle" }];
}
