/**
 * A drawing to scale, as data: lengths in millimetres, x to the right and y up, as a panel lies on the
 * bench with its lower left corner at the origin.
 */
import type { Point2, Shape } from "../shape/index.js";

/** What a shape stands for; it sets the fill, the line and the legend word. */
export type ShapeRole = "panel" | "opening" | "hardware" | "metal" | "waste" | "hidden" | "attention";

/** A rectangle by its lower left corner. */
export interface RectangleMark {
  readonly mark: "rectangle";
  readonly role: ShapeRole;
  readonly at: Point2;
  readonly width: number;
  readonly height: number;
  /** Corner radius. */
  readonly radius?: number;
  /** Written in the middle. */
  readonly label?: string;
}

/** A circle by its centre. */
export interface CircleMark {
  readonly mark: "circle";
  readonly role: ShapeRole;
  readonly at: Point2;
  readonly radius: number;
  readonly label?: string;
}

/** A closed shape. */
export interface PolygonMark {
  readonly mark: "polygon";
  readonly role: ShapeRole;
  readonly points: readonly Point2[];
  readonly label?: string;
}

/** A shape of any outline. */
export interface ShapeMark {
  readonly mark: "shape";
  readonly role: ShapeRole;
  /** Its outline, mm. */
  readonly shape: Shape;
}

/** A line through points. */
export interface LineMark {
  readonly mark: "line";
  readonly role: ShapeRole;
  readonly points: readonly Point2[];
}

/** A length written between two points, set off to the left of the way from one to the other. */
export interface DimensionMark {
  readonly mark: "dimension";
  readonly from: Point2;
  readonly to: Point2;
  /** Distance of the dimension line from the points; negative sets it off to the right. */
  readonly offset: number;
  readonly text: string;
}

/** Words at a place. */
export interface TextMark {
  readonly mark: "text";
  readonly at: Point2;
  readonly text: string;
  readonly anchor?: "start" | "middle" | "end";
}

/** An arrow, for a grain direction, a load, a way to push. */
export interface ArrowMark {
  readonly mark: "arrow";
  readonly from: Point2;
  readonly to: Point2;
  readonly text?: string;
}

/** One thing drawn. */
export type DrawingMark =
  | RectangleMark
  | CircleMark
  | PolygonMark
  | ShapeMark
  | LineMark
  | DimensionMark
  | TextMark
  | ArrowMark;

/** A drawing to scale. Later marks lie over earlier ones. */
export interface DrawingView {
  readonly kind: "drawing";
  readonly title: string;
  /** What it shows, for a reader who cannot see it. */
  readonly description: string;
  readonly marks: readonly DrawingMark[];
  /** Height of the letters in millimetres of the drawing; fit to its size where absent. */
  readonly letter?: number;
}

/**
 * A drawing of the given marks.
 *
 * @param letter height of the letters in millimetres of the drawing, for one with many words on it
 * @throws RangeError when there is nothing to draw or a coordinate is not a finite number
 */
export function drawing(
  title: string,
  description: string,
  marks: readonly DrawingMark[],
  letter?: number,
): DrawingView {
  if (marks.length === 0) throw new RangeError(`drawing "${title}": nothing to draw`);
  const wrong = marks.find((mark) => !numbersOf(mark).every(Number.isFinite));
  if (wrong)
    throw new RangeError(`drawing "${title}": a ${wrong.mark} has a coordinate that is no finite number`);
  return { kind: "drawing", title, description, marks, ...(letter === undefined ? {} : { letter }) };
}

function numbersOf(value: unknown): number[] {
  if (typeof value === "number") return [value];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(numbersOf) : [];
}
