/** A shell of facets meshed, held, loaded and solved: six degrees of freedom a node. */
import {
  dofsPerNode,
  elementRows,
  elementStiffness,
  nodeAreas,
  nodePlaces,
  type Sheet,
  type SheetLayer,
  sheetOfLayers,
} from "../../../fem/element/index.js";
import { type QuadMesh, strainsAtHeight, strainsNear } from "../../../fem/index.js";
import { displacementsUnder, factorPieces, type Piece } from "../../../fem/solve/index.js";
import { Angle, Density, Length, Pressure, Ratio } from "../../../quantity/index.js";

/** Degrees of freedom of a node: three ways, the turns about its two tangents, and about its normal. */
const perNode = 6;

/** A shell and what acts on it. */
export interface ShellProblem {
  /** Nodes and elements. */
  readonly mesh: ShellMesh;
  /** What it is made of. */
  readonly sheet: Sheet;
  /** The first tangent at each node, about which turns are measured: one that no support needs turned. */
  readonly tangent: (place: Vector, parameters: readonly [number, number]) => Vector;
  /** Degrees of freedom held at a node: 0 to 2 along x, y, z; 3 and 4 turns about its first and second tangent. */
  readonly held: (place: Vector, parameters: readonly [number, number]) => readonly number[];
  /** Force on each area. */
  readonly pressure?: Vector;
  /** Forces on places, which must be nodes. */
  readonly points?: readonly { readonly at: readonly [s: number, t: number]; readonly force: Vector }[];
  /** Further forces by node. */
  readonly forces?: (mesh: ShellMesh) => readonly { readonly node: number; readonly force: Vector }[];
}

/** A solved shell. */
export interface SolvedShell {
  /** Nodes and elements. */
  readonly mesh: ShellMesh;
  /** Unknowns. */
  readonly free: number;
  /** Half of force times way. */
  readonly energy: number;
  /** How far a node has moved. */
  readonly movement: (node: number) => Vector;
  /** Movements and turns of all nodes of a plate in the plane z = 0: u, v, w, bx, by a node. */
  readonly turned: () => Float64Array;
}

/**
 * An element's own axes, its nodes in them, and what each of its degrees of freedom is of its nodes' degrees of
 * degree of freedom.
 */
interface Facet {
  /** Along its first direction, m, a value a corner. */
  readonly x: Float64Array;
  /** Along its second direction, m, a value a corner. */
  readonly y: Float64Array;
  /** Rows u, v, w, bx, by; columns the node's six degrees of freedom. */
  readonly turns: readonly (readonly (readonly number[])[])[];
}

/** Solves a shell. */
export function solvedShell(problem: ShellProblem): SolvedShell {
  const { mesh, sheet } = problem;
  const frames = nodeFrames(problem);
  const facets = mesh.elements.map((nodes) => facetOf(mesh, nodes, frames));
  const pieces = facets.map((facet, e) => pieceOf(facet, mesh, e, sheet));
  const held = new Uint8Array(perNode * mesh.nodes.length);
  mesh.nodes.forEach((place, node) => {
    for (const dof of [5, ...problem.held(place, mesh.parameters[node]!)]) held[perNode * node + dof] = 1;
  });
  const load = loads(problem, facets);
  const moved = displacementsUnder(factorPieces(pieces, held), load);
  const movement = (node: number): Vector =>
    [0, 1, 2].map((i) => moved[perNode * node + i]!) as unknown as Vector;
  return {
    mesh,
    free: held.reduce((sum, each) => sum + 1 - each, 0),
    energy: load.reduce((sum, force, i) => sum + (held[i] ? 0 : force * moved[i]!), 0) / 2,
    movement,
    turned: () =>
      Float64Array.from(
        mesh.nodes.flatMap((_, node) => {
          const [u, v, w, first, second] = moved.subarray(perNode * node);
          const turn = plus(scaled(frames[node]![0], first!), scaled(frames[node]![1], second!));
          return [u!, v!, w!, turn[1], -turn[0]];
        }),
      ),
  };
}

/** Mean normal of the facets that meet at each node, and its tangents. */
function nodeFrames({ mesh, tangent }: ShellProblem): readonly (readonly [Vector, Vector])[] {
  const normals = mesh.nodes.map((): Vector => [0, 0, 0]);
  for (const nodes of mesh.elements) {
    const { normal } = axesOf(mesh, nodes);
    for (const node of nodes) normals[node] = plus(normals[node]!, normal);
  }
  return normals.map((sum, node) => {
    const normal = unit(Math.hypot(...sum) > 0 ? sum : [0, 0, 1]);
    const wanted = tangent(mesh.nodes[node]!, mesh.parameters[node]!);
    const first = unit(plus(wanted, scaled(normal, -dot(wanted, normal))));
    return [first, cross(normal, first)];
  });
}

function axesOf(
  { nodes: places }: ShellMesh,
  nodes: readonly number[],
): { first: Vector; second: Vector; normal: Vector } {
  const [a, b, c, d] = [0, 1, 2, 3].map((i) => places[nodes[i]!]!) as [Vector, Vector, Vector, Vector];
  const [ac, bd] = [plus(c, scaled(a, -1)), plus(d, scaled(b, -1))];
  const normal = unit(cross(ac, bd));
  const first = unit(plus(ac, scaled(bd, -1)));
  return { first, second: cross(normal, first), normal };
}

/** @throws RangeError when the element is not flat */
function facetOf(
  mesh: ShellMesh,
  nodes: readonly number[],
  frames: readonly (readonly [Vector, Vector])[],
): Facet {
  const { first, second, normal } = axesOf(mesh, nodes);
  const origin = mesh.nodes[nodes[8]!]!;
  const from = nodes.map((node) => plus(mesh.nodes[node]!, scaled(origin, -1)));
  const size = Math.max(...from.map((place) => Math.hypot(...place)));
  const off = Math.max(...from.map((place) => Math.abs(dot(place, normal))));
  if (off > 1e-6 * size)
    throw new RangeError(`shell: an element is not flat, ${(off / size).toExponential(1)} of its size off`);
  return {
    x: Float64Array.from(from, (place) => dot(place, first)),
    y: Float64Array.from(from, (place) => dot(place, second)),
    turns: nodes.map((node) => {
      const tangents = frames[node]!;
      const rotated = (axis: Vector, sign: number): readonly number[] =>
        tangents.map((t) => sign * dot(axis, t));
      return [
        [...first, 0, 0, 0],
        [...second, 0, 0, 0],
        [...normal, 0, 0, 0],
        [0, 0, 0, ...rotated(second, 1), 0],
        [0, 0, 0, ...rotated(first, -1), 0],
      ];
    }),
  };
}

function pieceOf({ x, y, turns }: Facet, mesh: ShellMesh, element: number, sheet: Sheet): Piece {
  const own = elementStiffness(x, y, sheet);
  const nodes = mesh.elements[element]!;
  const size = perNode * nodes.length;
  const matrix = new Float64Array(size * size);
  nodes.forEach((_, a) => {
    nodes.forEach((__, b) => {
      for (let i = 0; i < dofsPerNode; i++)
        for (let j = 0; j < dofsPerNode; j++) {
          const value = own[(dofsPerNode * a + i) * elementRows + dofsPerNode * b + j]!;
          if (value === 0) continue;
          for (let p = 0; p < perNode; p++)
            for (let q = 0; q < perNode; q++)
              matrix[(perNode * a + p) * size + perNode * b + q]! +=
                value * turns[a]![i]![p]! * turns[b]![j]![q]!;
        }
    });
  });
  return {
    dofs: Int32Array.from(
      nodes.flatMap((node) => Array.from({ length: perNode }, (_, i) => perNode * node + i)),
    ),
    matrix,
    middle: mesh.nodes[nodes[8]!]! as [number, number, number],
  };
}

function loads(
  { mesh, pressure, points = [], forces }: ShellProblem,
  facets: readonly Facet[],
): Float64Array {
  const load = new Float64Array(perNode * mesh.nodes.length);
  const add = (node: number, force: Vector): void => {
    for (const i of [0, 1, 2] as const) load[perNode * node + i]! += force[i];
  };
  if (pressure)
    facets.forEach(({ x, y }, e) => {
      nodeAreas(x, y).forEach((area, i) => {
        add(mesh.elements[e]![i]!, scaled(pressure, area));
      });
    });
  for (const { at, force } of points) add(nodeAt(mesh, at), force);
  for (const { node, force } of forces?.(mesh) ?? []) add(node, force);
  return load;
}

/**
 * The node with these parameters.
 *
 * @throws RangeError when no node has them
 */
export function nodeAt({ parameters }: ShellMesh, [s, t]: readonly [number, number]): number {
  const node = parameters.findIndex(([a, b]) => Math.hypot(a - s, b - t) < 1e-9);
  if (node < 0) throw new RangeError(`shell: no node at the parameters ${s}, ${t}`);
  return node;
}

/** Stress of a plane sheet. */
interface PlaneStress {
  /** Along the first direction, Pa. */
  readonly x: number;
  /** Along the second direction, Pa. */
  readonly y: number;
  /** Between the two, Pa. */
  readonly shear: number;
}

/**
 * Stress of a flat plate at a node and a height, from the elements around it.
 *
 * @param solved a plate in the plane z = 0
 * @param parameters of the node
 * @param sheet a single layer
 * @param height above the middle
 */
export function stressAt(
  solved: SolvedShell,
  parameters: readonly [number, number],
  sheet: Sheet,
  height: number,
): PlaneStress {
  const { mesh } = solved;
  const place = mesh.nodes[nodeAt(mesh, parameters)]!;
  const flat: QuadMesh = {
    x: Float64Array.from(mesh.nodes, ([x]) => x),
    y: Float64Array.from(mesh.nodes, ([, y]) => y),
    elements: Int32Array.from(mesh.elements.flat()),
    rim: [],
  };
  const { strains } = strainsNear(
    { structure: { mesh: flat, sheets: mesh.elements.map(() => sheet) }, displacement: solved.turned() },
    { x: place[0], y: place[1] },
  );
  const strain = strainsAtHeight(strains, height);
  const [x = 0, y = 0, shear = 0] = sheet.membrane.map(
    (row) => row.reduce((sum, entry, i) => sum + entry * strain[i]!, 0) / (sheet.faces[0] - sheet.faces[1]),
  );
  return { x, y, shear };
}

/** x, y, z. */
export type Vector = readonly [x: number, y: number, z: number];

/** A patch of a surface by two parameters from 0 to 1, and how many elements it has along each. */
interface SurfacePatch {
  /** Number of elements along s. */
  readonly along: number;
  /** Number of elements along t. */
  readonly across: number;
  /** Place of a point of the surface, s and t from 0 to 1. */
  readonly at: (s: number, t: number) => Vector;
  /** Whether nodes between corners lie on the surface too: only where that keeps every element flat. */
  readonly follows?: boolean;
}

/** A mesh of facets. */
export interface ShellMesh {
  /** Places of the nodes. */
  readonly nodes: readonly Vector[];
  /** The parameters of each node. */
  readonly parameters: readonly (readonly [s: number, t: number])[];
  /** Nine nodes an element, in the element's order. */
  readonly elements: readonly (readonly number[])[];
}

/** Meshes a patch. */
export function shellMesh({ along, across, at, follows = false }: SurfacePatch): ShellMesh {
  const [columns, rows] = [2 * along + 1, 2 * across + 1];
  const number = (i: number, j: number): number => j * columns + i;
  const placed = (i: number, j: number): Vector => {
    if (follows) return at(i / (2 * along), j / (2 * across));
    const ends = (k: number): readonly number[] => (k % 2 === 0 ? [k, k] : [k - 1, k + 1]);
    const corners = ends(i).flatMap((a) => ends(j).map((b) => at(a / (2 * along), b / (2 * across))));
    return scaled(corners.reduce(plus), 1 / 4);
  };
  const every = Array.from(
    { length: columns * rows },
    (_, k) => [k % columns, Math.floor(k / columns)] as const,
  );
  return {
    nodes: every.map(([i, j]) => placed(i, j)),
    parameters: every.map(([i, j]) => [i / (2 * along), j / (2 * across)]),
    elements: Array.from({ length: along * across }, (_, e) => {
      const [i, j] = [2 * (e % along) + 1, 2 * Math.floor(e / along) + 1];
      return nodePlaces.map(([xi, eta]) => number(i + xi, j + eta));
    }),
  };
}

/** a + b */
export function plus(a: Vector, b: Vector): Vector {
  return [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
}

/** a times a number. */
export function scaled(a: Vector, by: number): Vector {
  return [by * a[0], by * a[1], by * a[2]];
}

/** Sum of products. */
export function dot(a: Vector, b: Vector): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

/** The vector across both. */
export function cross(a: Vector, b: Vector): Vector {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}

/** The same direction, 1 long. */
export function unit(a: Vector): Vector {
  return scaled(a, 1 / Math.hypot(...a));
}

/**
 * A layer alike in every direction, in the units of its problem; five sixths of its shear modulus count through it.
 */
export function plainLayer(thickness: number, modulus: number, poisson: number): SheetLayer {
  const shear = modulus / (2 * (1 + poisson));
  return {
    thickness: Length.si(thickness),
    grain: Angle.si(0),
    modulusAlong: Pressure.si(modulus),
    modulusAcross: Pressure.si(modulus),
    shearModulus: Pressure.si(shear),
    poissonRatio: Ratio.si(poisson),
    throughAlong: Pressure.si((5 / 6) * shear),
    throughAcross: Pressure.si((5 / 6) * shear),
    density: Density.si(1),
  };
}

/** A sheet of one such layer. */
export function plainSheet(thickness: number, modulus: number, poisson: number): Sheet {
  return sheetOfLayers([plainLayer(thickness, modulus, poisson)]);
}

/** A slice 1 thick that cannot grow thicker. */
export function planeStrain(modulus: number, poisson: number): Sheet {
  const scale = modulus / ((1 + poisson) * (1 - 2 * poisson));
  const [direct, cross] = [scale * (1 - poisson), scale * poisson];
  return {
    ...plainSheet(1, modulus, 0.3),
    membrane: [
      [direct, cross, 0],
      [cross, direct, 0],
      [0, 0, (direct - cross) / 2],
    ],
  };
}
