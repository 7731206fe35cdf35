/**
 * A drawing to scale, as data: lengths in millimetres, x to the right and y up, as a panel lies on the
 * bench with its lower left corner at the origin.
 */
import type { Point2, Shape } from "../shape/index.js";

/** What a shape stands for; it sets the fill, the line and the legend word. */
export type ShapeRole =
  | "panel"
  | "opening"
  | "hole"
  | "hardware"
  | "metal"
  | "waste"
  | "hidden"
  | "attention"
  | "datum"
  | "thin"
  | "laminate"
  | "foam"
  | "strap"
  | "support";

/** A rectangle by its lower left corner. */
export interface RectangleMark {
  /** A rectangle. */
  readonly mark: "rectangle";
  /** What it stands for, which gives it its look. */
  readonly role: ShapeRole;
  /** Its lower left corner. */
  readonly at: Point2;
  /** To the right. */
  readonly width: number;
  /** Up. */
  readonly height: number;
  /** Corner radius. */
  readonly radius?: number;
  /** Written in the middle. */
  readonly label?: string;
}

/** A circle by its centre. */
export interface CircleMark {
  /** A circle. */
  readonly mark: "circle";
  /** What it stands for, which gives it its look. */
  readonly role: ShapeRole;
  /** Its centre. */
  readonly at: Point2;
  /** From its centre to its rim. */
  readonly radius: number;
  /** Written in it. */
  readonly label?: string;
}

/** A closed shape. */
export interface PolygonMark {
  /** A polygon. */
  readonly mark: "polygon";
  /** What it stands for, which gives it its look. */
  readonly role: ShapeRole;
  /** Its corners in order. */
  readonly points: readonly Point2[];
  /** Written in it. */
  readonly label?: string;
}

/** A shape of any outline. */
export interface ShapeMark {
  /** A closed path of lines and arcs. */
  readonly mark: "shape";
  /** What it stands for, which gives it its look. */
  readonly role: ShapeRole;
  /** Its outline, mm. */
  readonly shape: Shape;
}

/** A line through points. */
export interface LineMark {
  /** A line through points. */
  readonly mark: "line";
  /** What it stands for, which gives it its look. */
  readonly role: ShapeRole;
  /** In order. */
  readonly points: readonly Point2[];
}

/** A length written between two points, set off to the left of the way from one to the other. */
export interface DimensionMark {
  /** A dimension with its extension lines. */
  readonly mark: "dimension";
  /** Where it begins. */
  readonly from: Point2;
  /** Where it ends. */
  readonly to: Point2;
  /** Distance of the dimension line from the points; negative sets it off to the right. */
  readonly offset: number;
  /** What is written on it. */
  readonly text: string;
}

/** Words at a place. */
export interface TextMark {
  /** Words. */
  readonly mark: "text";
  /** Where the words stand. */
  readonly at: Point2;
  /** The words. */
  readonly text: string;
  /** Which part of the words stands there. */
  readonly anchor?: "start" | "middle" | "end";
  /** 90 where they read from below upwards; level where absent. */
  readonly turn?: 90;
}

/** An arrow, for a grain direction, a load, a way to push. */
export interface ArrowMark {
  /** An arrow. */
  readonly mark: "arrow";
  /** Its tail. */
  readonly from: Point2;
  /** Its head. */
  readonly to: Point2;
  /** Written at its tail. */
  readonly text?: string;
  /** Whether it stands for a force, which is drawn bold. */
  readonly isForce?: true;
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
  /** A drawing. */
  readonly kind: "drawing";
  /** Stands over the drawing. */
  readonly title: string;
  /** What it shows, for a reader who cannot see it. */
  readonly description: string;
  /** In the order in which they are drawn. */
  readonly marks: readonly DrawingMark[];
  /** Height of the letters in millimetres of the drawing; fit to its size where absent. */
  readonly letter?: number;
  /** How wide it is printed on paper, mm; as wide as there is room where absent. */
  readonly printedWidth?: number;
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
