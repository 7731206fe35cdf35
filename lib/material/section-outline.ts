/** Sections of bars and stiffeners as properties of the drawn outline. */
import { type Formula, type FormulaSymbols, formula } from "../formula.js";
import { Area, type Kind, Length, listOf, recordOf, SecondMoment } from "../quantity/index.js";
import { cite } from "../source.js";

/** A corner of an outline. */
export interface OutlinePoint {
  readonly x: Length;
  readonly y: Length;
}

/** A profile as it is drawn: the outer outline first, then the outlines of its hollows. */
export interface DrawnProfile {
  readonly outlines: readonly (readonly OutlinePoint[])[];
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

/** A corner as text. */
export const OutlinePoint: Kind<OutlinePoint> = recordOf<OutlinePoint>("point", { x: Length, y: Length });

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

/** Area, centroid and second moments of a drawn profile, by Green's theorem along its outlines. */
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
      kind: listOf(listOf(OutlinePoint)),
      meaning: "corners, outer outline first, then hollows",
    },
  },
  result: sectionResult,
  source: [cite("geometry", "Green's theorem on polygons"), cite("strength-of-materials", "principal axes")],
  validity: "Straight sides; draw a round corner as a few short ones. Outlines must not cross.",
  refuse: ({ outlines }) => [
    ...(outlines.length > 0 ? [] : ["at least one outline, got none"]),
    ...outlines.flatMap((points, i) => outlineFaults(points, `outline ${i + 1}`)),
    ...(outlines.length > 0 && summed(outlines).area <= 0
      ? ["hollows must be smaller than the profile"]
      : []),
  ],
  compute: ({ outlines }) => aboutCentroid(summed(outlines)),
});

/** What is wrong with one outline, under its name. */
export function outlineFaults(points: readonly OutlinePoint[], name: string): string[] {
  return [
    ...(Math.abs(momentsOf(points).area) > 0 ? [] : [`${name} must enclose an area`]),
    ...(crossesItself(points) ? [`${name} must not cross itself`] : []),
  ];
}

/** Integrals of 1, x, y, y^2, x^2 and x y. */
export interface AreaMoments {
  readonly area: number;
  readonly x: number;
  readonly y: number;
  readonly yy: number;
  readonly xx: number;
  readonly xy: number;
}

/** Adds areas, each with a sign. */
export function addMoments(parts: readonly AreaMoments[]): AreaMoments {
  const sum = (pick: (part: AreaMoments) => number): number =>
    parts.reduce((total, part) => total + pick(part), 0);
  return {
    area: sum(({ area }) => area),
    x: sum(({ x }) => x),
    y: sum(({ y }) => y),
    yy: sum(({ yy }) => yy),
    xx: sum(({ xx }) => xx),
    xy: sum(({ xy }) => xy),
  };
}

/** Moves the integrals to the centroid. */
export function aboutCentroid({
  area,
  x,
  y,
  yy,
  xx,
  xy,
}: AreaMoments): Readonly<Record<keyof SectionProperties, number>> {
  const [secondX, secondY, product] = [yy - y ** 2 / area, xx - x ** 2 / area, xy - (x * y) / area];
  const middle = (secondX + secondY) / 2;
  const reach = Math.hypot((secondX - secondY) / 2, product);
  const own = { secondX, secondY, product, largest: middle + reach, smallest: middle - reach };
  return { area, centroidX: x / area, centroidY: y / area, ...own };
}

/** Hollows are taken off, whichever way round they were drawn. */
function summed(outlines: readonly (readonly OutlinePoint[])[]): AreaMoments {
  return addMoments(
    outlines.map((points, i) => {
      const own = momentsOf(points);
      const sign = (i === 0 ? 1 : -1) * Math.sign(own.area);
      return scaled(own, sign);
    }),
  );
}

function scaled({ area, x, y, yy, xx, xy }: AreaMoments, by: number): AreaMoments {
  return { area: by * area, x: by * x, y: by * y, yy: by * yy, xx: by * xx, xy: by * xy };
}

function momentsOf(points: readonly OutlinePoint[]): AreaMoments {
  const [first] = points;
  if (!first) return scaled({ area: 0, x: 0, y: 0, yy: 0, xx: 0, xy: 0 }, 1);
  return addMoments(
    points.map((a, i) => {
      const b = points[(i + 1) % points.length] ?? first;
      const cross = a.x * b.y - b.x * a.y;
      return {
        area: cross / 2,
        x: ((a.x + b.x) * cross) / 6,
        y: ((a.y + b.y) * cross) / 6,
        yy: ((a.y ** 2 + a.y * b.y + b.y ** 2) * cross) / 12,
        xx: ((a.x ** 2 + a.x * b.x + b.x ** 2) * cross) / 12,
        xy: ((a.x * b.y + 2 * a.x * a.y + 2 * b.x * b.y + b.x * a.y) * cross) / 24,
      };
    }),
  );
}

function crossesItself(points: readonly OutlinePoint[]): boolean {
  const side = (a: OutlinePoint, b: OutlinePoint, c: OutlinePoint): number =>
    Math.sign((b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x));
  const end = (i: number): OutlinePoint => points[(i + 1) % points.length] as OutlinePoint;
  return points.some((a, i) =>
    points.some(
      (c, j) =>
        j > i &&
        side(a, end(i), c) * side(a, end(i), end(j)) < 0 &&
        side(c, end(j), a) * side(c, end(j), end(i)) < 0,
    ),
  );
}
