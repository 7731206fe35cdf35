/** Sections of bars and stiffeners as properties of the drawn outline. */
import { type Formula, type FormulaSymbols, formula } from "../formula.js";
import { Area, type Kind, Length, listOf, recordOf, SecondMoment } from "../quantity/index.js";
import { closed, type Point2, perimeterOf, type Side, turnOf } from "../shape/index.js";
import { cite } from "../source.js";
import {
  type AreaMoments,
  aboutCentroid,
  addMoments,
  outlineMoments,
  scaledMoments,
} from "./area-moments.js";

/** A profile as it is drawn: the outer outline first, then the outlines of its hollows. */
export interface DrawnProfile {
  /** Closed paths; one inside another is a hole. */
  readonly outlines: readonly (readonly Point2<Length>[])[];
}

/** What a section amounts to. */
export type SectionProperties = {
  readonly area: Area;
  /** Centroid, in the axes of the drawing. */
  readonly centroidX: Length;
  readonly centroidY: Length;
  /** About the horizontal line through the centroid. */
  readonly secondX: SecondMoment;
  /** About the vertical line through the centroid. */
  readonly secondY: SecondMoment;
  /** Of the product x y about the centroid. */
  readonly product: SecondMoment;
  /** Largest and smallest second moment, about the section's own slanted axes. */
  readonly largest: SecondMoment;
  readonly smallest: SecondMoment;
};

/** Corners of an outline as text. */
export const outlineCorners: Kind<readonly Point2<Length>[]> = listOf(
  recordOf<Point2<Length>>("point", { x: Length, y: Length }),
);

/** The symbols of a section's properties. */
export const sectionResult: FormulaSymbols<SectionProperties> = {
  area: { symbol: "A", kind: Area, meaning: "area" },
  centroidX: { symbol: String.raw`\bar x`, kind: Length, meaning: "centroid, x" },
  centroidY: { symbol: String.raw`\bar y`, kind: Length, meaning: "centroid, y" },
  secondX: { symbol: "I_x", kind: SecondMoment, meaning: "second moment about the horizontal" },
  secondY: { symbol: "I_y", kind: SecondMoment, meaning: "second moment about the vertical" },
  product: { symbol: "I_{xy}", kind: SecondMoment, meaning: "product of area" },
  largest: { symbol: "I_1", kind: SecondMoment, meaning: "largest second moment" },
  smallest: { symbol: "I_2", kind: SecondMoment, meaning: "smallest second moment" },
};

/**
 * Area, centroid and second moments of a drawn profile, by Green's theorem along its outlines.
 *
 * @example outlineSection(outlineSection.read({ outlines: [[{ x: "5 mm", y: "7 mm" }, { x: "35 mm",
 *   y: "7 mm" }, { x: "5 mm", y: "37 mm" }]] })) // area 4.5 cm2, centroidX 15 mm, centroidY 17 mm, secondX 2.25 cm4, secondY 2.25 cm4, product -1.125 cm4, largest 3.375 cm4, smallest 1.125 cm4
 */
export const outlineSection: Formula<DrawnProfile, SectionProperties> = formula<
  DrawnProfile,
  SectionProperties
>({
  id: "section.outline",
  title: "Section properties of a drawn profile",
  equation: String.raw`A = \tfrac12\sum c_i,\quad A\bar x = \tfrac16\sum (x_i + x_{i+1}) c_i,\quad
    I_x = \tfrac1{12}\sum (y_i^2 + y_i y_{i+1} + y_{i+1}^2) c_i - A\bar y^2,\quad c_i = x_i y_{i+1} - x_{i+1} y_i`,
  inputs: {
    outlines: {
      symbol: "(x_i, y_i)",
      kind: listOf(outlineCorners),
      meaning: "corners, outer outline first, then hollows",
    },
  },
  result: sectionResult,
  source: [cite("geometry", "Green's theorem on polygons"), cite("strength-of-materials", "principal axes")],
  validity: "Straight sides; draw a round corner as a few short ones. Outlines must not cross.",
  refuse: ({ outlines }) => [
    ...(outlines.length > 0 ? [] : ["at least one outline, got none"]),
    ...outlines.flatMap((points, i) => outlineFaults(points, `outline ${i + 1}`)),
    ...(outlines[0] && summed(outlines).area <= roundingOf(outlines[0])
      ? ["hollows must be smaller than the profile"]
      : []),
  ],
  compute: ({ outlines }) => aboutCentroid(summed(outlines)),
});

/** What is wrong with one outline, under its name. */
export function outlineFaults(points: readonly Point2[], name: string): string[] {
  return [
    ...(Math.abs(outlineMoments(points).area) > roundingOf(points) ? [] : [`${name} must enclose an area`]),
    ...(crossesItself(points) ? [`${name} must not cross itself`] : []),
  ];
}

/** What rounding alone makes of the area that a line encloses. */
function roundingOf(points: readonly Point2[]): number {
  return 1e-12 * perimeterOf(closed(points)) ** 2;
}

/** Hollows are taken off, whichever way round they were drawn. */
function summed(outlines: readonly (readonly Point2<Length>[])[]): AreaMoments {
  return addMoments(
    outlines.map((points, i) => {
      const own = outlineMoments(points);
      const sign = (i === 0 ? 1 : -1) * Math.sign(own.area);
      return scaledMoments(own, sign);
    }),
  );
}

/** Whether sides cross; those that only touch, as along a seam to a hollow, do not. */
function crossesItself(points: readonly Point2[]): boolean {
  const { sides } = closed(points);
  const parted = ({ from, to }: Side, other: Side): boolean =>
    Math.sign(turnOf(from, to, other.from)) * Math.sign(turnOf(from, to, other.to)) < 0;
  return sides.some((one, i) => sides.slice(i + 1).some((other) => parted(one, other) && parted(other, one)));
}
