/**
 * The picture of a question as plain data: what is there and what acts on it, in metres on a plane with x to the right and
 * y up. Words are in the units of the case. The page draws it and finds room for the words.
 */
import type { Point2 } from "../../shape/index.js";

/** What a shape of a picture stands for. */
export type FigureStuff =
  | "sheet"
  | "opening"
  | "inside"
  | "laminate"
  | "metal"
  | "wheel"
  | "thing"
  | "hidden"
  | "pressed"
  | "ground"
  | "foam";

/** A shape of a picture. */
export interface FigureShape {
  /** What it stands for. */
  readonly what: FigureStuff;
  /** Its corners in order, m. */
  readonly points: readonly Point2[];
  /** Written in it or beside it. */
  readonly words?: string;
  /** A place on its rim, m, beyond which the words stand; its middle where left out. */
  readonly wordsAt?: Point2;
}

/** What a line of a picture stands for. */
export type FigureLineKind = "ground" | "strap" | "level" | "reach" | "air" | "held";

/** A line of a picture. */
export interface FigureLine {
  /** What it stands for. */
  readonly what: FigureLineKind;
  /** In order, m. */
  readonly points: readonly Point2[];
  /** Written beside it. */
  readonly words?: string;
}

/** A force, a load or a movement. */
export interface FigureArrow {
  /** Where it acts, m. */
  readonly at: Point2;
  /** The way it points, from the x axis counterclockwise, rad. */
  readonly way: number;
  /** Whether it begins where it acts, as a weight and a pull do, or ends there, as a push does. */
  readonly acts: "pulling" | "pushing";
  /** Length over that of the longest arrow; 1 where left out. */
  readonly share?: number;
  /** Written at its free end. */
  readonly words?: string;
}

/** A place that is marked. */
export interface FigurePlace {
  /** The centre of gravity, an edge that it turns about, or a point that is held. */
  readonly what: "centre of gravity" | "edge" | "point";
  /** Where, m. */
  readonly at: Point2;
  /** Written beside it. */
  readonly words?: string;
}

/** A size with its line. */
export interface FigureSize {
  /** Where it begins, m. */
  readonly from: Point2;
  /** Where it ends, m. */
  readonly to: Point2;
  /** Letters from the points to the line, to the left of the way from one to the other; negative to the right. */
  readonly off: number;
  /** What is written on it. */
  readonly words: string;
}

/** The picture of a question. */
export interface Figure {
  /** Stands over it. */
  readonly title: string;
  /** What it shows, for a reader who cannot see it. */
  readonly description: string;
  /** Later ones lie over earlier ones. */
  readonly shapes: readonly FigureShape[];
  /** Over the shapes. */
  readonly lines?: readonly FigureLine[];
  /** What acts on it. */
  readonly arrows?: readonly FigureArrow[];
  /** Marked places. */
  readonly places?: readonly FigurePlace[];
  /** Sizes. */
  readonly sizes?: readonly FigureSize[];
}
