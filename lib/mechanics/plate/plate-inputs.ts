/** Inputs that the plate formulas share, with their symbols and what can be wrong with them. */
import type { FormulaSymbols } from "../../formula.js";
import { OrthotropicStiffness, stiffnessFaults } from "../../material/index.js";
import { choice, Force, Length, Pressure } from "../../quantity/index.js";
import type { Box2 } from "../../shape/index.js";
import { type EdgeSupport, isOnPlate, type SeriesPlate } from "../series/index.js";

/** A rectangular plate. */
export interface PlateShape {
  /** Side along x. */
  readonly length: Length;
  /** Side along y. */
  readonly width: Length;
  /** With x along `length`; the result of a stiffness formula or of plywood.lamination fits. */
  readonly stiffness: OrthotropicStiffness;
}

/** How the four edges are held. */
export interface PlateEdges {
  /** Edge at x = 0. */
  readonly left: EdgeSupport;
  /** Edge at x = length. */
  readonly right: EdgeSupport;
  /** Edge at y = 0. */
  readonly bottom: EdgeSupport;
  /** Edge at y = width. */
  readonly top: EdgeSupport;
}

/** The same load on every bit of the plate. */
export interface PlatePressure {
  /** On all of the plate's material. */
  readonly pressure: Pressure;
}

/** A force spread evenly over a rectangle: a foot, a box, a caster plate. */
export interface PlatePatch {
  /** The whole force. */
  readonly force: Force;
  /** Middle of the patch from the left edge. */
  readonly patchX: Length;
  /** Middle of the patch from the lower edge. */
  readonly patchY: Length;
  /** Size of the patch along x. */
  readonly patchLength: Length;
  /** Size of the patch along y. */
  readonly patchWidth: Length;
}

/** A place on the plate. */
export interface PlatePlace {
  /** From the left edge. */
  readonly x: Length;
  /** From the lower edge. */
  readonly y: Length;
}

/** Symbols of a plate's shape. */
export const shapeSymbols: FormulaSymbols<PlateShape> = {
  length: { symbol: "a", kind: Length, meaning: "side along x", above: 0 },
  width: { symbol: "b", kind: Length, meaning: "side along y", above: 0 },
  stiffness: {
    symbol: "D_x, D_y, D_1, D_{xy}",
    kind: OrthotropicStiffness,
    meaning: "bending stiffness of the panel",
  },
};

const edgeKind = choice("edge support", ["free", "hinged", "clamped"]);

/** Symbols of the four edges. */
export const edgeSymbols: FormulaSymbols<PlateEdges> = {
  left: { symbol: "x=0", kind: edgeKind, meaning: "left edge" },
  right: { symbol: "x=a", kind: edgeKind, meaning: "right edge" },
  bottom: { symbol: "y=0", kind: edgeKind, meaning: "lower edge" },
  top: { symbol: "y=b", kind: edgeKind, meaning: "upper edge" },
};

/** Symbols of a pressure. */
export const pressureSymbols: FormulaSymbols<PlatePressure> = {
  pressure: { symbol: "q", kind: Pressure, meaning: "load per area", above: 0 },
};

/** Symbols of a patch load. */
export const patchSymbols: FormulaSymbols<PlatePatch> = {
  force: { symbol: "P", kind: Force, meaning: "force on the patch", above: 0 },
  patchX: { symbol: "\\xi", kind: Length, meaning: "middle of the patch along x", min: 0 },
  patchY: { symbol: String.raw`\eta`, kind: Length, meaning: "middle of the patch along y", min: 0 },
  patchLength: { symbol: "u", kind: Length, meaning: "patch size along x", above: 0 },
  patchWidth: { symbol: "v", kind: Length, meaning: "patch size along y", above: 0 },
};

/** Symbols of a place. */
export const placeSymbols: FormulaSymbols<PlatePlace> = {
  x: { symbol: "x", kind: Length, meaning: "place along x", min: 0 },
  y: { symbol: "y", kind: Length, meaning: "place along y", min: 0 },
};

/** The rectangle that a patch covers. */
export function patchRectangle({ patchX, patchY, patchLength, patchWidth }: PlatePatch): Box2 {
  return {
    left: patchX - patchLength / 2,
    bottom: patchY - patchWidth / 2,
    width: patchLength,
    height: patchWidth,
  };
}

/** A patch load as the series wants it. */
export function patchLoad(patch: PlatePatch): { readonly pressure: number; readonly over: Box2 } {
  const { force, patchLength, patchWidth } = patch;
  return { pressure: force / (patchLength * patchWidth), over: patchRectangle(patch) };
}

/** The plate as the series wants it, without openings. */
export function solidPlate({
  length,
  width,
  stiffness,
  left,
  right,
  bottom,
  top,
}: PlateShape & PlateEdges): SeriesPlate {
  return { length, width, stiffness, left, right, bottom, top, cornersHeld: false, openings: [] };
}

/** What is wrong with the shape. */
export function shapeFaults({ stiffness }: PlateShape): string[] {
  return stiffnessFaults(stiffness);
}

/** Why the edges cannot hold the plate: it takes one clamped edge, or two hinged ones. */
export function edgeFaults({ left, right, bottom, top }: PlateEdges): string[] {
  const edges = [left, right, bottom, top];
  const held = edges.includes("clamped") || edges.filter((edge) => edge === "hinged").length >= 2;
  return held ? [] : ["the plate needs a clamped edge or two hinged edges to stay in place"];
}

/** Why a patch is not on the plate. */
export function patchFaults(shape: PlateShape, patch: PlatePatch): string[] {
  return isOnPlate(shape, patchRectangle(patch)) ? [] : ["the patch must lie on the plate"];
}

/** Why a place is not on the plate. */
export function placeFaults({ length, width }: PlateShape, { x, y }: PlatePlace): string[] {
  return x <= length && y <= width
    ? []
    : [`the place must lie on the plate, got ${Length.show(x)}, ${Length.show(y)}`];
}
