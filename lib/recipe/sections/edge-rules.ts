/** Which panel runs past which at the edges of a section, in words. */
import type { Edge, EdgeName, Face, Section } from "../../design/index.js";
import { edgeNames, faces } from "../../design/index.js";
import { listed } from "../words.js";

/** One sentence for all edges. */
export function edgeRules({ edges }: Section): string[] {
  const runs = faces.flatMap((face) => {
    const past = edgeNames
      .filter((name) => edges[name].through === face)
      .map((name) => otherFace(name, face));
    return past.length > 0 ? [`the ${face} runs past the ${listed(past)}`] : [];
  });
  const bare = edgeNames.filter((name) => edges[name].extrusion === undefined);
  const neither = edgeNames.filter((name) => stopsShort(edges[name]));
  return [
    ...(runs.length > 0
      ? [`Mind which panel runs past which: ${runs.join("; ")}. The sizes of the cut list count on it.`]
      : []),
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
  return `The case names no bar at ${where}: join those panels in your own way, for instance glued and screwed to battens inside, and write down how.`;
}

function stopsShort({ through }: Edge): boolean {
  return through === "neither";
}

function otherFace(edge: EdgeName, face: Face): string {
  return edge.split("-").find((name) => name !== face) ?? "";
}
