/** The nodes of a box: faces share them along rigid edges and have their own along edges that give. */
import type { QuadMesh } from "../mesh/index.js";
import { type BoxProblem, type BoxSpot, type FaceName, onFace } from "./box-problem.js";

/** A face with its mesh, not yet numbered. */
export interface FaceMesh {
  readonly name: FaceName;
  readonly mesh: QuadMesh;
}

/** Nodes of a box, and the number of each face's nodes among them, face by face. */
export interface BoxNodes {
  readonly nodes: readonly BoxSpot[];
  readonly numbers: readonly Int32Array[];
}

/** Numbers the nodes of all faces. */
export function boxNodes(problem: BoxProblem, faces: readonly FaceMesh[]): BoxNodes {
  const spots = faces.map(({ name, mesh }) =>
    Array.from(mesh.x, (u, node) => onFace(problem, name, [u, mesh.y[node]!])),
  );
  const meeting = facesBySpot(faces, spots);
  const nodes: BoxSpot[] = [];
  const known = new Map<string, number>();
  const numbers = faces.map(({ name }, i) =>
    Int32Array.from(spots[i]!, (spot) => {
      const key = keyOf(spot);
      const [first] = joinedTo(problem, name, meeting.get(key)!);
      const own = `${key} ${first}`;
      const number = known.get(own) ?? nodes.push(spot) - 1;
      known.set(own, number);
      return number;
    }),
  );
  return { nodes, numbers };
}

/** A place to a hundredth of a micrometre. */
function keyOf(spot: BoxSpot): string {
  return spot.map((at) => Math.round(at * 1e8)).join(" ");
}

function facesBySpot(
  faces: readonly FaceMesh[],
  spots: readonly (readonly BoxSpot[])[],
): ReadonlyMap<string, readonly FaceName[]> {
  const meeting = new Map<string, FaceName[]>();
  faces.forEach(({ name }, i) => {
    for (const spot of spots[i]!) {
      const key = keyOf(spot);
      const others = meeting.get(key);
      if (others) others.push(name);
      else meeting.set(key, [name]);
    }
  });
  return meeting;
}

/** The faces at a place that hang together with one by rigid edges, in the order given. */
function joinedTo({ seams = [] }: BoxProblem, name: FaceName, meeting: readonly FaceName[]): FaceName[] {
  const gives = (a: FaceName, b: FaceName): boolean =>
    seams.some(({ faces }) => faces.includes(a) && faces.includes(b));
  const joined = new Set([name]);
  for (const one of joined)
    for (const other of meeting) if (other !== one && !gives(one, other)) joined.add(other);
  return meeting.filter((other) => joined.has(other));
}
