/** Results that the plate formulas share, with their symbols. */
import type { FormulaSymbols } from "../../formula.js";
import { Length, PlateMoment } from "../../quantity/index.js";
import type { PlatePoint, SeriesOrder } from "../series/index.js";

/** Deflection and moments at one place. */
export type PlateResponse = {
  readonly deflection: Length;
  /** Bending strips along x; positive where the loaded face is hollow. */
  readonly momentX: PlateMoment;
  /** Bending strips along y. */
  readonly momentY: PlateMoment;
  /** Twisting. */
  readonly momentXY: PlateMoment;
};

/** Symbols of the deflection and moments at one place. */
export const responseSymbols: FormulaSymbols<PlateResponse> = {
  deflection: { symbol: "w", kind: Length, meaning: "deflection there" },
  momentX: { symbol: "M_x", kind: PlateMoment, meaning: "bending moment along x" },
  momentY: { symbol: "M_y", kind: PlateMoment, meaning: "bending moment along y" },
  momentXY: { symbol: "M_{xy}", kind: PlateMoment, meaning: "twisting moment" },
};

/** Where the plate deflects most. */
export type PlateLargest = {
  /** By size, either way. */
  readonly largestDeflection: Length;
  /** Its place from the left edge. */
  readonly largestX: Length;
  /** Its place from the lower edge. */
  readonly largestY: Length;
};

/** Symbols of the largest deflection. */
export const largestSymbols: FormulaSymbols<PlateLargest> = {
  largestDeflection: { symbol: String.raw`w_{\max}`, kind: Length, meaning: "largest deflection" },
  largestX: { symbol: "x_w", kind: Length, meaning: "its place along x" },
  largestY: { symbol: "y_w", kind: Length, meaning: "its place along y" },
};

/** Largest moments on the edges. */
export type PlateEdgeMoments = {
  /** Across a clamped edge; zero when none is clamped. */
  readonly clampedMoment: PlateMoment;
  /** Along a free edge; zero when none is free. */
  readonly freeMoment: PlateMoment;
};

/** Symbols of the edge moments. */
export const edgeMomentSymbols: FormulaSymbols<PlateEdgeMoments> = {
  clampedMoment: { symbol: "M_c", kind: PlateMoment, meaning: "largest moment across a clamped edge" },
  freeMoment: { symbol: "M_f", kind: PlateMoment, meaning: "largest moment along a free edge" },
};

/** A point of the series as plain results. */
export function responseOf({ deflection, momentX, momentY, momentXY }: PlatePoint): Bared<PlateResponse> {
  return { deflection, momentX, momentY, momentXY };
}

/** The point of the largest deflection as plain results. */
export function largestOf({ x, y, deflection }: PlatePoint): Bared<PlateLargest> {
  return { largestDeflection: deflection, largestX: x, largestY: y };
}

/** A record of numbers without their labels. */
export type Bared<T> = { readonly [Field in keyof T]: number };

/** The energy that the series makes smallest, as TeX. */
export const plateEnergy: string = String.raw`\min_w\;\tfrac12\!\int\!\left(D_x w_{xx}^2+2D_1 w_{xx}w_{yy}+D_y w_{yy}^2+4D_{xy}w_{xy}^2\right)dA-\int\! q\,w\,dA`;

/**
 * Degree 22 without openings, 8 between the sides of one. Moments in the classical tables then hold within
 * 1 %, and a solution takes about a tenth of a second.
 */
export const seriesOrder: SeriesOrder = { shapes: 23, leastDegree: 4 };

/** What thin-plate theory leaves out, for every formula's validity. */
export const thinPlateLimits: string =
  "Thin panel, sag below about half its thickness (beyond that a panel held all round sags less than this), edges that do not give, shear left out (1 to 3 % more sag for plywood of these sizes).";
