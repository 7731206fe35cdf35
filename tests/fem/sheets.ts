/** Sheets and panels that the tests share. */
import { plainLayer as layerOfProblem } from "../../lib/command/reference/shells/solve-shell.js";
import {
  type Cutout,
  cutCircle,
  cutRectangle,
  type HeldLine,
  type Hold,
  type PanelLoad,
  type PanelProblem,
  type Sheet,
  type SheetLayer,
  sheetOfLayers,
} from "../../lib/fem/index.js";
import { Angle, Density, Pressure } from "../../lib/quantity/index.js";
import { type Box2, type Point2, polygon } from "../../lib/shape/index.js";

/** A layer alike in every direction, as heavy as wood; kG is five sixths of the shear modulus. */
export function plainLayer(thickness: number, modulus: number, poisson: number): SheetLayer {
  return { ...layerOfProblem(thickness, modulus, poisson), density: Density.si(700) };
}

/** Plywood with its grain at an angle from x. */
export function plyLayer(thickness: number, grainDegrees = 0): SheetLayer {
  return {
    ...plainLayer(thickness, 8.5e9, 0.1),
    grain: Angle.of(grainDegrees, "deg"),
    modulusAcross: Pressure.si(4.2e9),
    shearModulus: Pressure.si(0.65e9),
    throughAlong: Pressure.si(0.2e9),
    throughAcross: Pressure.si(0.08e9),
  };
}

/** A rectangular panel with all four edges held alike. */
export function panel(
  length: number,
  width: number,
  sheet: Sheet,
  hold: Hold,
  loads: readonly PanelLoad[],
): PanelProblem {
  return {
    name: "test panel",
    outline: { length, width, cutouts: [] },
    sheet,
    regions: [],
    heldLines: rimOf(length, width).map(([from, to]): HeldLine => ({ from, to, hold })),
    heldPoints: [],
    loads,
    masses: [],
    places: [{ x: length / 2, y: width / 2 }],
  };
}

/** A cutout by its measures, as the tests write it down. */
export type DrawnCutout = { readonly name: string } & (
  | (Box2 & { readonly kind: "rectangle"; readonly radius: number })
  | { readonly kind: "circle"; readonly x: number; readonly y: number; readonly radius: number }
  | { readonly kind: "polygon"; readonly points: readonly Point2[] }
);

/** The cutout of such measures. */
export function cut(drawn: DrawnCutout): Cutout {
  const { name } = drawn;
  if (drawn.kind === "circle") return cutCircle(name, drawn, drawn.radius);
  if (drawn.kind === "rectangle") return cutRectangle(name, drawn);
  return { name, shape: polygon(drawn.points.map(({ x, y }) => ({ x, y }))) };
}

/** A rounded window in the lower left of such a panel. */
export const roundedWindow: DrawnCutout & { readonly kind: "rectangle" } = {
  kind: "rectangle",
  name: "window",
  left: 0.2,
  bottom: 0.1,
  width: 0.2,
  height: 0.15,
  radius: 0.02,
};

/** The four sides of a rectangle. */
export function rimOf(length: number, width: number): readonly (readonly [Point2, Point2])[] {
  const corners: Point2[] = [
    { x: 0, y: 0 },
    { x: length, y: 0 },
    { x: length, y: width },
    { x: 0, y: width },
  ];
  return corners.map((corner, i) => [corner, corners[(i + 1) % 4]!]);
}

/** Bare stiffness of a plain sheet against bending, N m. */
export function plainStiffness(thickness: number, modulus: number, poisson: number): number {
  return (modulus * thickness ** 3) / 12 / (1 - poisson ** 2);
}

/** Plywood 9 mm thick. */
export const ply: Sheet = sheetOfLayers([plyLayer(0.009)]);
