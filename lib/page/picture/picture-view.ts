/** A picture of solids as plain data, so that it travels as JSON and is drawn anew. */
import type { Verdict } from "../../findings/index.js";
import type { Point2 } from "../../shape/index.js";
import type { SizeLine } from "./size-lines.js";

/** How a part of a picture looks: as it is, as already there, as just added, as failing, as an outline in broken line. */
export type PartLook = "plain" | "there" | "added" | "fails" | "broken line";

/** What a surface is made of. */
export type Stuff = "wood" | "metal" | "glass" | "content" | "fastener";

/** One surface to paint. */
export interface PictureFace {
  /** Id of the part that it is of. */
  readonly part: string;
  /** Its look. */
  readonly look: Exclude<PartLook, "broken line">;
  /** What it is made of. */
  readonly stuff: Stuff;
  /** How bright, from 0 to 1. */
  readonly light: number;
  /** Closed paths, x and y by turns in the picture's units, y down. */
  readonly areas: readonly (readonly number[])[];
  /** Lines to draw; absent where they are the paths themselves. */
  readonly lines?: readonly (readonly number[])[];
}

/** A sign on a part of a picture. */
export interface PictureMark {
  /** What it says. */
  readonly verdict: Verdict;
  /** Written beside the sign, such as the number of a sentence. */
  readonly text: string;
  /** Its middle, in the picture's units, y down. */
  readonly at: Point2;
}

/** An arrow of a picture: a force, a way to push. */
export interface PictureArrow {
  /** Its tail, in the picture's units, y down. */
  readonly from: Point2;
  /** Its head. */
  readonly to: Point2;
  /** Written at its tail. */
  readonly text?: string;
}

/** A picture as data: numbers and words, painted in order. */
export interface PictureView {
  /** A picture. */
  readonly kind: "picture";
  /** Stands over it; nothing where it is empty. */
  readonly title: string;
  /** What it shows, for a reader who cannot see it. */
  readonly description: string;
  /** In its own units. */
  readonly width: number;
  /** In its own units. */
  readonly height: number;
  /** From the farthest to the nearest. */
  readonly faces: readonly PictureFace[];
  /** Share of what is painted on which something just added is seen, from 0 to 1. */
  readonly added: number;
  /** Outlines in broken line over all: parts that are hidden. */
  readonly hidden: readonly (readonly number[])[];
  /** Signs. */
  readonly marks: readonly PictureMark[];
  /** Arrows. */
  readonly arrows: readonly PictureArrow[];
  /** Sizes with their lines. */
  readonly sizes: readonly SizeLine[];
}
