/** How the lines of each layer look, the same in every kind of file. */
import type { Box2 } from "../shape/index.js";
import type { Layer } from "./plot.js";

/** How the lines of a layer look. */
export interface LayerLook {
  /** Width of its lines, mm. */
  readonly width: number;
  /** Dash and gap, mm; an unbroken line where absent. */
  readonly dash?: readonly [number, number];
  /** Colour number of a drawing program: 1 red, 3 green, 5 blue, 7 black or white, 8 grey. */
  readonly colour: number;
}

/** How the lines of each layer look. */
export const looks: Readonly<Record<Layer, LayerLook>> = {
  OUTLINE: { width: 0.5, colour: 7 },
  CUT: { width: 0.5, colour: 1 },
  DRILL: { width: 0.35, colour: 5 },
  LATER: { width: 0.25, dash: [4, 2.5], colour: 3 },
  WASTE: { width: 0.25, dash: [8, 4], colour: 8 },
  NOTES: { width: 0.18, colour: 8 },
};

/** The room of a drawing. */
export type Room = Box2;

/** White round a drawing, mm. */
export const margin = 10;

/** A room with white round it. */
export function spread({ left, bottom, width, height }: Room): Room {
  return {
    left: left - margin,
    bottom: bottom - margin,
    width: width + 2 * margin,
    height: height + 2 * margin,
  };
}
