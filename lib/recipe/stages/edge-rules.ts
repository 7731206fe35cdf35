/** Which panel runs past which, and where an edge has no bar, in words. */
import { type EdgeName, edgeNames, type Face, faces, type Section } from "../../design/index.js";
import { listed } from "../../findings/index.js";

/** One sentence for all edges, and one for those that need more. */
export function edgeRules({ edges }: Section): string[] {
  const runs = faces.flatMap((face) => {
    const past = edgeNames
      .filter((name) => edges[name]?.through === face)
      .map((name) => otherFace(name, face));
    return past.length > 0 ? [`The ${face} covers the ${listed(past)}.`] : [];
  });
  const bare = edgeNames.filter((name) => {
    const edge = edges[name];
    return edge !== undefined && edge.extrusion === undefined && edge.joint === undefined;
  });
  const neither = edgeNames.filter((name) => edges[name]?.through === "neither");
  return [
    ...(runs.length > 0 ? [`Which panel covers which. ${runs.join(" ")}`] : []),
    ...(neither.length > 0
      ? [
          `At ${listed(neither)} both panels stop in the seat of the bar: fit an offcut of the bar there while you clamp.`,
        ]
      : []),
    ...(bare.length > 0 ? [bareEdges(bare)] : []),
  ];
}

function bareEdges(bare: readonly EdgeName[]): string {
  const where = bare.length === edgeNames.length ? "any edge" : listed(bare);
  return `The case names no bar at ${where}. Join those panels your own way, such as glued and screwed to battens; write down how.`;
}

function otherFace(edge: EdgeName, face: Face): string {
  return edge.split("-").find((name) => name !== face) ?? "";
}
