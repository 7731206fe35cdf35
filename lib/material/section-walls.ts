/** Thin-walled profiles drawn as walls, with their resistance to twisting. */
import { type Formula, formula } from "../formula.js";
import { Area, type Kind, Length, listOf, recordOf, SecondMoment } from "../quantity/index.js";
import { cite } from "../source.js";
import {
  type AreaMoments,
  aboutCentroid,
  addMoments,
  type SectionProperties,
  sectionResult,
} from "./section-outline.js";

/** A straight wall along its middle line. */
export interface ProfileWall {
  readonly fromX: Length;
  readonly fromY: Length;
  readonly toX: Length;
  readonly toY: Length;
  readonly thickness: Length;
}

/** An open profile; at a corner one wall runs through and the other butts against it. */
export interface WalledProfile {
  readonly walls: readonly ProfileWall[];
}

/** Section properties with the torsion constant. */
export type WalledSection = SectionProperties & {
  /** J: twisting moment over (shear modulus x twist a metre). */
  readonly torsion: SecondMoment;
};

const ProfileWall: Kind<ProfileWall> = recordOf<ProfileWall>("wall", {
  fromX: Length,
  fromY: Length,
  toX: Length,
  toY: Length,
  thickness: Length,
});

const torsion = { symbol: "J", kind: SecondMoment, meaning: "torsion constant" } as const;

/** Section properties of an open thin-walled profile: rectangles added up, and J = sum b t^3 / 3. */
export const walledSection: Formula<WalledProfile, WalledSection> = formula<WalledProfile, WalledSection>({
  id: "section.walls",
  title: "Section properties of an open thin-walled profile",
  equation: String.raw`J = \tfrac13 \sum b_i t_i^3,\quad I = \sum \left(I_i + A_i d_i^2\right)`,
  inputs: {
    walls: { symbol: "b_i, t_i", kind: listOf(ProfileWall), meaning: "walls along their middle lines" },
  },
  result: { ...sectionResult, torsion },
  source: [
    cite("stress-strain", "ch. 10, thin open sections"),
    cite("strength-of-materials", "parallel axes"),
  ],
  validity:
    "Walls at least five times as long as thick; the torsion of a wall's ends is left out, about 0.6 t of its length.",
  refuse: ({ walls }) => [
    ...(walls.length > 0 ? [] : ["at least one wall, got none"]),
    ...walls.flatMap((wall, i) =>
      wall.thickness > 0 && lengthOf(wall) > 0 ? [] : [`wall ${i + 1} must have a length and a thickness`],
    ),
  ],
  warn: ({ walls }) =>
    walls.some((wall) => lengthOf(wall) < 5 * wall.thickness)
      ? ["a stubby wall: its torsion is less than this says"]
      : [],
  compute: ({ walls }) => ({
    ...aboutCentroid(addMoments(walls.map(momentsOf))),
    torsion: walls.reduce((sum, wall) => sum + (lengthOf(wall) * wall.thickness ** 3) / 3, 0),
  }),
});

function lengthOf({ fromX, fromY, toX, toY }: ProfileWall): number {
  return Math.hypot(toX - fromX, toY - fromY);
}

function momentsOf(wall: ProfileWall): AreaMoments {
  const length = lengthOf(wall);
  const area = length * wall.thickness;
  const [c, s] = [(wall.toX - wall.fromX) / length, (wall.toY - wall.fromY) / length];
  const [x, y] = [(wall.fromX + wall.toX) / 2, (wall.fromY + wall.toY) / 2];
  const [long, short] = [(area * length ** 2) / 12, (area * wall.thickness ** 2) / 12];
  return {
    area,
    x: area * x,
    y: area * y,
    xx: area * x ** 2 + long * c ** 2 + short * s ** 2,
    yy: area * y ** 2 + long * s ** 2 + short * c ** 2,
    xy: area * x * y + (long - short) * c * s,
  };
}

/** A closed tube of one wall. */
export interface TubeInputs {
  /** Enclosed by the middle line of the wall. */
  readonly enclosed: Area;
  /** Length of the middle line. */
  readonly round: Length;
  readonly thickness: Length;
}

/** Torsion constant of a closed thin tube: J = 4 A^2 t / s. */
export const tubeTorsion: Formula<TubeInputs, SecondMoment> = formula({
  id: "section.torsion.tube",
  title: "Torsion constant of a closed tube",
  equation: String.raw`J = \frac{4\,A_m^2\,t}{s}`,
  inputs: {
    enclosed: { symbol: "A_m", kind: Area, meaning: "enclosed by the middle line", above: 0 },
    round: { symbol: "s", kind: Length, meaning: "length of the middle line", above: 0 },
    thickness: { symbol: "t", kind: Length, meaning: "wall", above: 0 },
  },
  result: torsion,
  source: [cite("stress-strain", "ch. 10, closed thin tubes (Bredt)")],
  validity: "One closed wall of even thickness, at most a tenth of the tube's width.",
  refuse: ({ enclosed, round }) =>
    4 * Math.PI * enclosed <= round ** 2 * (1 + 1e-9) ? [] : ["no line of that length encloses so much"],
  compute: ({ enclosed, round, thickness }) => (4 * enclosed ** 2 * thickness) / round,
});

/** A solid bar. */
export interface SolidBar {
  readonly width: Length;
  readonly height: Length;
}

/** Terms of the series; they fall with the fifth power. */
const terms = 150;

/** Torsion constant of a rectangle: J = a b^3 (1/3 - (64 b / pi^5 a) sum tanh(n pi a / 2 b) / n^5), n odd, a >= b. */
export const rectangleTorsion: Formula<SolidBar, SecondMoment> = formula({
  id: "section.torsion.rectangle",
  title: "Torsion constant of a rectangular bar",
  equation: String.raw`J = a b^3\left(\frac13 - \frac{64\,b}{\pi^5 a}\sum_{n=1,3,\ldots}\frac{\tanh(n\pi a/2b)}{n^5}\right)`,
  inputs: {
    width: { symbol: "a", kind: Length, meaning: "one side", above: 0 },
    height: { symbol: "b", kind: Length, meaning: "the other", above: 0 },
  },
  result: torsion,
  source: [cite("stress-strain", "table 10.1, rectangle (Saint-Venant)")],
  validity: "Any solid rectangle.",
  compute: ({ width, height }) => {
    const [a, b] = [Math.max(width, height), Math.min(width, height)];
    let sum = 0;
    for (let n = 1; n < 2 * terms; n += 2) sum += Math.tanh((n * Math.PI * a) / (2 * b)) / n ** 5;
    return a * b ** 3 * (1 / 3 - ((64 * b) / (Math.PI ** 5 * a)) * sum);
  },
});

/** An edge extrusion with two like legs, as a drawing: one leg runs through the corner. */
export function angleWalls(leg: Length, wall: Length): readonly ProfileWall[] {
  const si = Length.si;
  const middle = si(wall / 2);
  return [
    { fromX: si(0), fromY: middle, toX: leg, toY: middle, thickness: wall },
    { fromX: middle, fromY: wall, toX: middle, toY: leg, thickness: wall },
  ];
}
