/** Thin-walled profiles drawn as walls, with their resistance to twisting. */
import { type Formula, type FormulaSymbol, formula } from "../formula.js";
import { type Kind, Length, listOf, recordOf, SecondMoment } from "../quantity/index.js";
import { line } from "../shape/index.js";
import { cite } from "../source.js";
import { type AreaMoments, aboutCentroid, addMoments } from "./area-moments.js";
import { closedCells } from "./section-cells.js";
import { type SectionProperties, sectionResult } from "./section-outline.js";

/** A straight wall along its middle line. */
export interface ProfileWall {
  /** One end of its middle line, to the right. */
  readonly fromX: Length;
  /** One end of its middle line, up. */
  readonly fromY: Length;
  /** The other end, to the right. */
  readonly toX: Length;
  /** The other end, up. */
  readonly toY: Length;
  /** Across its middle line. */
  readonly thickness: Length;
}

/** A profile, open or closed; at a corner one wall runs through and the other butts against it. */
export interface WalledProfile {
  /** All of them. */
  readonly walls: readonly ProfileWall[];
}

/** Section properties with the torsion constant. */
export type WalledSection = SectionProperties & {
  /** J: twisting moment over (shear modulus x twist a metre). */
  readonly torsion: SecondMoment;
};

/** A wall as text. */
export const ProfileWall: Kind<ProfileWall> = recordOf<ProfileWall>("wall", {
  fromX: Length,
  fromY: Length,
  toX: Length,
  toY: Length,
  thickness: Length,
});

/** The symbol of a torsion constant. */
export const torsion: FormulaSymbol<SecondMoment> = {
  symbol: "J",
  kind: SecondMoment,
  meaning: "torsion constant",
};

/**
 * Section properties of a thin-walled profile: rectangles added up. J = sum b t^3 / 3 of what is open, and Bredt's
 * shear flow round each cell that the walls close.
 *
 * @example walledSection(walledSection.read({ walls: [{ fromX: "0 mm", fromY: "2.5 mm", toX: "50 mm",
 *   toY: "2.5 mm", thickness: "5 mm" }, { fromX: "2.5 mm", fromY: "5 mm", toX: "2.5 mm", toY: "50 mm",
 *   thickness: "5 mm" }] })) // area 4.75 cm2, centroidX 14.34 mm, centroidY 14.34 mm, secondX 11.25 cm4, secondY 11.25 cm4, product -6.661 cm4, largest 17.91 cm4, smallest 4.589 cm4, torsion 3958 mm4
 */
export const walledSection: Formula<WalledProfile, WalledSection> = formula<WalledProfile, WalledSection>({
  id: "section.walls",
  title: "Section properties of a thin-walled profile",
  equation: String.raw`J = \tfrac13 \sum_{open} b_i t_i^3 + \sum_{cells} 2 A_k q_k,\quad
    q_k \oint_k \frac{ds}{t} - \sum_{j} q_j \int_{kj} \frac{ds}{t} = 2 A_k,\quad
    I = \sum \left(I_i + A_i d_i^2\right)`,
  inputs: {
    walls: { symbol: "b_i, t_i", kind: listOf(ProfileWall), meaning: "walls along their middle lines" },
  },
  result: { ...sectionResult, torsion },
  source: [
    cite("stress-strain", "ch. 10, thin open sections; closed thin tubes (Bredt)"),
    cite("strength-of-materials", "parallel axes"),
  ],
  validity:
    "Walls at least five times as long as thick; walls that touch are taken as one piece, a slit must be drawn as a gap.",
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
    torsion: torsionOf(walls),
  }),
});

function torsionOf(walls: readonly ProfileWall[]): number {
  const { torsion: closed, open } = closedCells(
    walls.map(({ fromX, fromY, toX, toY, thickness }) => ({
      ...line({ x: fromX, y: fromY }, { x: toX, y: toY }),
      thickness,
    })),
  );
  return walls.reduce((sum, { thickness }, i) => sum + ((open[i] ?? 0) * thickness ** 3) / 3, closed);
}

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

/** An edge extrusion with two like legs, as a drawing: one leg runs through the corner. */
export function angleWalls(leg: Length, wall: Length): readonly ProfileWall[] {
  const si = Length.si;
  const middle = si(wall / 2);
  return [
    { fromX: si(0), fromY: middle, toX: leg, toY: middle, thickness: wall },
    { fromX: middle, fromY: wall, toX: middle, toY: leg, thickness: wall },
  ];
}
