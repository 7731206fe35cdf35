/** How the edges of a section hold: extrusions as beams, and the give of their rivets. */
import { glueFilms } from "../../bonding/index.js";
import { type BarPart, type Fastening, facesAt, type JointPart } from "../../design/index.js";
import { slipStiffness } from "../../fastening/index.js";
import type { BeamSection, BoxBeam, BoxProblem, BoxSeam, BoxSpot, FaceName } from "../../fem/index.js";
import { edgeBetween, frames, reachesEdge } from "../../fem/index.js";
import { sheetMaterials, walledSection } from "../../material/index.js";
import { Density, Length } from "../../quantity/index.js";
import { Refusal } from "../../refusal.js";
import { sheetUnder } from "../joints/fastener-strength.js";
import { woodSlip } from "../joints/wood-slip.js";
import type { ReviewInput } from "../review-input.js";
import { type Axis, boxFaces } from "./places.js";

/** What joins the faces of a box. */
export type EdgeJoints = Required<Pick<BoxProblem, "seams" | "beams">>;

const { modulus, poissonRatio } = sheetMaterials.aluminium;
const shearModulus = modulus / (2 * (1 + poissonRatio));

/** An edge that something holds. */
type HeldEdge = Pick<BarPart | JointPart, "id" | "section" | "edge">;

/** Seams and beams of every edge of a section that has an extrusion, and seams of those that the case joins without. */
export function edgeJoints(input: ReviewInput, section: string, box: BoxProblem): EdgeJoints {
  const here = (one: HeldEdge): boolean => one.section === section && joins(one, box);
  const bars = input.parts.bars.filter(here);
  return {
    seams: [
      ...bars.map((bar) => seamOf(input, bar)),
      ...input.parts.joints.filter(here).map((joint) => jointSeam(input, joint)),
    ],
    beams: bars.flatMap((bar) => beamOf(input, bar, box)),
  };
}

function joins({ edge }: HeldEdge, { faces }: BoxProblem): boolean {
  return facesAt(edge).every((face) => faces[boxFaces[face][0]]);
}

function boxPair({ edge }: HeldEdge): readonly [FaceName, FaceName] {
  const [one, other] = facesAt(edge);
  return [boxFaces[one][0], boxFaces[other][0]];
}

/**
 * The give of a riveted edge: the rivets of one leg and those of the other in a row. In bending the extrusion's legs
 * give between the two rows of rivets.
 */
function seamOf(input: ReviewInput, bar: BarPart): BoxSeam {
  const rows = edgeRows(input, bar);
  const slip = 1 / rows.reduce((sum, row) => sum + 1 / rowStiffness(input, row, bar), 0);
  const { leg, wall } = bar.stock;
  const plate = (modulus * wall ** 3) / (12 * (1 - poissonRatio ** 2));
  return { faces: boxPair(bar), slip, opening: slip, rotational: plate / (2 * rivetArm(leg, wall)) };
}

/**
 * An edge without an extrusion: films of glue, or rows of screws that slip as between wood and wood, one after the
 * other from panel to panel, over the share of the edge that they hold. Screws turn freely; a film resists turning by
 * its width. Screws that clamp a film are not added, for the film breaks before they bear.
 */
function jointSeam(input: ReviewInput, joint: JointPart): BoxSeam {
  const { adhesive, widths, length, clear } = joint;
  const share = Math.min(1, length / clear);
  const give = (springs: readonly number[]): number =>
    1 / springs.reduce((sum, spring) => sum + 1 / spring, 0);
  if (adhesive) {
    const film = glueFilms[adhesive.kind];
    const slip = share * give(widths.map((width) => (film.shearModulus * width) / film.thickness));
    const rotational =
      share * give(widths.map((width) => (film.shearModulus * width ** 3) / (12 * film.thickness)));
    return { faces: boxPair(joint), slip, opening: slip, rotational };
  }
  const rows = edgeRows(input, joint);
  const slip = give(rows.map((row) => (row.count * woodSlip(input, row)) / clear));
  return { faces: boxPair(joint), slip, opening: slip, rotational: 0 };
}

/** Rows of fasteners that hold an edge. */
function edgeRows({ parts }: ReviewInput, { id }: HeldEdge): readonly Fastening[] {
  return parts.fastenings.filter(({ why, holds }) => why === "edge" && holds === id);
}

/**
 * The wider pitch of the two rows of fasteners along a seam.
 *
 * A glued edge has no pitch: what a stretch as long as a hand is broad carries stands for it.
 *
 * @throws Refusal where nothing holds the edge
 */
export function edgePitch(input: ReviewInput, section: string, { faces }: Pick<BoxSeam, "faces">): Length {
  const { bars, joints } = input.parts;
  const held = [...bars, ...joints].find(
    (one) => one.section === section && boxPair(one).every((face) => faces.includes(face)),
  );
  if (!held) throw new Refusal(`box: nothing holds the ${faces.join(" to ")} edge of ${section}`);
  const pitches = edgeRows(input, held).flatMap(({ pitch }) => pitch ?? []);
  return pitches.length === 0 ? handBreadth : Length.si(Math.max(...pitches));
}

/** Glue evens its flow out over about so much. Common practice, no source. */
const handBreadth = Length.of(100, "mm");

/** From the heel of an angle to its row of rivets: the middle of the flat. */
function rivetArm(leg: number, wall: number): number {
  return (leg - wall) / 2;
}

/** Metal on one side holds a fastener twice as stiffly as wood on both. */
const metalSide = 2;

/**
 * Stiffness of one fastener of a row against slip, N/m.
 *
 * @throws Refusal when there is no such panel
 */
export function fastenerSlip(input: ReviewInput, row: Fastening): number {
  const density = Density.si(sheetUnder(row, input).density);
  const { diameter } = row.fastener;
  return metalSide * slipStiffness({ density, diameter, shank: "screw, bolt or drilled" });
}

function rowStiffness(input: ReviewInput, row: Fastening, { length }: BarPart): number {
  return (row.count * fastenerSlip(input, row)) / length;
}

/** The extrusion as a beam on a face that its edge has whole; none where openings break both. */
function beamOf(input: ReviewInput, bar: BarPart, box: BoxProblem): readonly BoxBeam[] {
  const pair = boxPair(bar);
  const { axis, from, to } = edgeBetween(box, pair);
  const on = pair.find((face) => isWhole(box, face, from, to));
  if (!on) return [];
  return [{ name: bar.id, on, from, to, section: angleSection(input, bar, axis) }];
}

function isWhole(box: BoxProblem, face: FaceName, from: BoxSpot, to: BoxSpot): boolean {
  return (box.faces[face]?.cutouts ?? []).every((cutout) => !reachesEdge(box, face, cutout, from, to));
}

/** An angle with its legs outside on two panels, about the line where their middle planes meet. */
function angleSection(input: ReviewInput, bar: BarPart, axis: Axis): BeamSection {
  const [wayA, wayB] = nextAxes[axis];
  const { leg, wall } = bar.stock;
  const [a, b] = [heelOf(input, bar, wayA), heelOf(input, bar, wayB)];
  const reach = leg - wall / 2;
  const legTo = (toX: number, toY: number) => ({
    fromX: Length.si(a),
    fromY: Length.si(b),
    toX: Length.si(toX),
    toY: Length.si(toY),
    thickness: wall,
  });
  const { area, centroidX, centroidY, secondX, secondY, product, torsion } = walledSection({
    walls: [legTo(a - Math.sign(a) * reach, b), legTo(a, b - Math.sign(b) * reach)],
  });
  const shear = (5 / 6) * shearModulus * leg * wall;
  return {
    axial: modulus * area,
    bending: { aa: modulus * secondX, bb: modulus * secondY, ab: modulus * product },
    torsion: shearModulus * torsion,
    shear: { a: shear, b: shear },
    centroid: { a: centroidX, b: centroidY },
    shearCentre: { a, b },
  };
}

/** The two axes that follow each, in turn. */
const nextAxes: Readonly<Record<Axis, readonly [Axis, Axis]>> = { 0: [1, 2], 1: [2, 0], 2: [0, 1] };

/**
 * How far outside the seam's line, along an axis of the box, the middle of the leg on that side's panel lies.
 *
 * @throws RangeError where neither face of the bar lies across that axis
 */
function heelOf({ parts }: ReviewInput, { id, edge, section, stock }: BarPart, way: Axis): number {
  const face = facesAt(edge).find((one) => frames[boxFaces[one][0]].axes[2] === way);
  if (!face) throw new RangeError(`box: no face of ${id} lies across axis ${way}`);
  const panel = parts.panels.find(
    (one) => one.section === section && one.role === "face" && one.face === face,
  );
  const outside = (panel?.sheet.thickness ?? 0) / 2 + (panel?.facing?.stock.thickness ?? 0) + stock.wall / 2;
  return frames[boxFaces[face][0]].far ? outside : -outside;
}
