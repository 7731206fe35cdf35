/** Closed cells of a thin-walled profile, and what they add to its resistance against twisting. */
import { solveSquare } from "../algebra/linear-systems.js";
import { at } from "../algebra/lists.js";
import { lengthOf, type Point2, turnOf } from "../shape/index.js";
import { type GraphWall, type WallGraph, type WallPiece, wallGraph } from "./wall-graph.js";

/** One cell: what its middle lines enclose, and the pieces of wall round it. */
interface Cell {
  /** The area that the walls enclose, in square metres. */
  readonly enclosed: number;
  /** The walls round it, in order. */
  readonly round: readonly WallPiece[];
}

/** Twisting resistance of the closed cells, and the lengths of wall that belong to none. */
export interface ClosedCells {
  /** Torsion constant by Bredt's shear flow, m4. */
  readonly torsion: number;
  /** How many cells there are. */
  readonly cells: number;
  /** How much of each wall's length lies outside all cells, m. */
  readonly open: readonly number[];
}

/**
 * Finds the cells that the walls close and the shear flow round them: for each cell the flow of its walls over their
 * thickness, less what neighbours take, adds up to twice the enclosed area. J = sum 2 A q.
 */
export function closedCells(walls: readonly GraphWall[]): ClosedCells {
  const graph = wallGraph(walls);
  const cells = cellsOf(graph);
  const closing = new Set(cells.flatMap(({ round }) => round.filter((piece) => bounds(piece, cells))));
  const open = walls.map((wall, i) => {
    const own = graph.pieces.filter((piece) => piece.wall === i);
    const outside = own.filter((piece) => !closing.has(piece));
    return outside.length === own.length
      ? lengthOf(wall)
      : outside.reduce((sum, { length }) => sum + length, 0);
  });
  const flows = shearFlows(cells);
  const torsion = cells.reduce((sum, { enclosed }, i) => sum + 2 * enclosed * (flows[i] ?? 0), 0);
  return { torsion, cells: cells.length, open };
}

/** A wall that only ties two cells together, or sticks into one, has the same cell on both sides. */
function bounds(piece: WallPiece, cells: readonly Cell[]): boolean {
  return cells.some(({ round }) => round.filter((one) => one === piece).length === 1);
}

/** A piece walked one way. */
interface Step {
  /** The wall that is walked along. */
  readonly piece: WallPiece;
  /** The number of the joint where it begins. */
  readonly from: number;
  /** The number of the joint where it ends. */
  readonly to: number;
}

/** Walks round every face, always turning as sharply as possible; those walked anticlockwise are cells. */
function cellsOf({ joints, pieces }: WallGraph): readonly Cell[] {
  const steps = pieces.flatMap((piece): Step[] => [
    { piece, from: piece.ends[0], to: piece.ends[1] },
    { piece, from: piece.ends[1], to: piece.ends[0] },
  ]);
  const walked = new Set<Step>();
  return steps.flatMap((first): Cell[] => {
    const face: Step[] = [];
    for (let step = first; !walked.has(step); step = nextStep(step, steps, joints)) {
      walked.add(step);
      face.push(step);
    }
    const cell = { enclosed: areaOf(face, joints), round: face.map(({ piece }) => piece) };
    return isCell(cell) ? [cell] : [];
  });
}

/** Square of the way round, of which an area below is rounding of a face walked out and back along the same walls. */
const rounding = 1e-9;

function isCell({ enclosed, round }: Cell): boolean {
  return enclosed > rounding * round.reduce((sum, { length }) => sum + length, 0) ** 2;
}

function nextStep(step: Step, steps: readonly Step[], joints: readonly Point2[]): Step {
  const heading = (one: Step): number => {
    const [a, b] = [at(joints, one.from), at(joints, one.to)];
    return Math.atan2(b.y - a.y, b.x - a.x);
  };
  const back = heading({ ...step, from: step.to, to: step.from });
  const ahead = steps.filter(({ from, piece }) => from === step.to && piece !== step.piece);
  const turn = (one: Step): number => (back - heading(one) + 4 * Math.PI) % (2 * Math.PI);
  const [sharpest] = [...ahead].sort((a, b) => turn(a) - turn(b));
  return (
    sharpest ??
    at(
      steps.filter(({ piece, from }) => piece === step.piece && from === step.to),
      0,
    )
  );
}

function areaOf(face: readonly Step[], joints: readonly Point2[]): number {
  const [first] = face;
  if (!first) return 0;
  const start = at(joints, first.from);
  return face.reduce((sum, { from, to }) => sum + turnOf(start, at(joints, from), at(joints, to)) / 2, 0);
}

/** Flow round each cell for a unit of shear modulus times twist. */
function shearFlows(cells: readonly Cell[]): readonly number[] {
  const slenderness = (pieces: readonly WallPiece[]): number =>
    pieces.reduce((sum, { length, thickness }) => sum + length / thickness, 0);
  const matrix = cells.map(({ round }, i) =>
    cells.map((other, j) => {
      const shared = round.filter((piece) => other.round.includes(piece));
      const own = round.filter((piece) => round.filter((one) => one === piece).length === 1);
      return i === j ? slenderness(own) : -slenderness(shared);
    }),
  );
  return [
    ...solveSquare(
      Float64Array.from(matrix.flat()),
      Float64Array.from(cells, ({ enclosed }) => 2 * enclosed),
    ),
  ];
}
