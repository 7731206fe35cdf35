/** Where bodies of the case bear on each other, and the feet a section stands on when it is tried by itself. */
import type { BoxSpot, FaceName, FaceSpots, LinkEnd, Spot } from "../../fem/index.js";
import { extents, frames, placeOfEnd } from "../../fem/index.js";
import type { ReviewInput } from "../review-input.js";
import type { BoxBody } from "./box-body.js";
import { type BoxModel, fitted } from "./box-model.js";
import type { CaseLink } from "./hardware-links.js";

/** Where a wall bears, along it, as shares of its length. */
const bearingAt = [0.15, 0.85];
/** Half of how long it bears, and how far in from its rim the wall is held, m. */
const halfBearing = 0.03;
const inFromRim = 0.015;
/** Wood and metal pressed together at one of those places, N/m. Common practice, no source; results hardly depend on it. */
const bearingStiffness = 1e7;

const walls: readonly FaceName[] = ["x0", "x1", "y0", "y1"];

/** Section on section: every wall bears on the wall below it at two places, and lifts off where it would pull. */
export function bearingLinks({ parts }: ReviewInput, model: BoxModel): readonly CaseLink[] {
  const ordered = [...parts.sections].sort((a, b) => a.outside.low.z - b.outside.low.z);
  return ordered.slice(1).flatMap(({ name, outside }, i) => {
    const [below, above] = [ordered[i]!.name, name].map((own) =>
      model.bodies.findIndex((body) => body.name === own),
    );
    return walls.flatMap((wall) =>
      bearingAt.flatMap((share): CaseLink[] => {
        const from = wallEnd(model, below!, wall, share, "top", outside.low.z);
        const to = wallEnd(model, above!, wall, share, "bottom", outside.low.z, from);
        if (!from || !to) return [];
        return [
          {
            kind: "bearing",
            name: `${name} on ${below === undefined ? "" : ordered[i]!.name}, ${wall} ${share}`,
            from,
            to,
            along: [0, 0, 1],
            stiffness: bearingStiffness,
            only: "push",
          },
        ];
      }),
    );
  });
}

/** Two places of a wall near its upper or lower rim, as one end; none where the section has no such wall. */
function wallEnd(
  model: BoxModel,
  number: number,
  wall: FaceName,
  share: number,
  rim: "top" | "bottom",
  height: number,
  below?: LinkEnd,
): LinkEnd | undefined {
  const { problem, at, name } = model.bodies[number]!;
  if (!problem.faces[wall]) return undefined;
  const [along, , through] = frames[wall].axes;
  const size = extents(problem);
  const middle = share * size[along];
  const level = rim === "top" ? size[2] - inFromRim : inFromRim;
  const spots = [-halfBearing, halfBearing].map((aside): Spot => [middle + aside, level]);
  const place: [number, number, number] = [0, 0, height];
  place[along] = at[along] + middle;
  place[through] = at[through] + (frames[wall].far ? size[through] : 0);
  const meeting = below ? placeOfEnd(model.parts, below) : place;
  return {
    part: number,
    fitting: fitted(model, number, `${name}, ${rim} of ${wall}`, [{ face: wall, spots }], meeting),
  };
}

/** A foot holds the walls so far from a section's corner, and so far above its bottom, m. */
const fromCorner = [0.03, 0.08, 0.13];
const aboveBottom = 0.03;
/** Stiff enough to be a floor, N/m. */
const floorStiffness = 1e9;

/** The corners a section stands on, by their signs along x and y. */
export const corners: readonly (readonly [0 | 1, 0 | 1])[] = [
  [0, 0],
  [1, 0],
  [0, 1],
  [1, 1],
];

/** Four feet at the lower corners of a section, held every way. */
export function standLinks(model: BoxModel, number: number): readonly CaseLink[] {
  const body = model.bodies[number]!;
  return corners.flatMap((corner): CaseLink[] => {
    const from = footEnd(model, number, corner);
    return ([0, 1, 2] as const).map((axis) => ({
      kind: "stand",
      name: `corner ${corner.join(" ")} of ${body.name}`,
      from,
      along: [axis === 0 ? 1 : 0, axis === 1 ? 1 : 0, axis === 2 ? -1 : 0],
      stiffness: floorStiffness,
    }));
  });
}

/**
 * A foot at a lower corner of a section: it holds the ends of the two walls that meet there, a hand's breadth of each.
 *
 * @throws Refusal when the section has neither wall
 */
export function footEnd(model: BoxModel, number: number, [far, back]: readonly [0 | 1, 0 | 1]): LinkEnd {
  const { problem, at, name } = model.bodies[number]!;
  const [length, width] = extents(problem);
  const along = (extent: number, end: 0 | 1): readonly Spot[] =>
    fromCorner.map((place): Spot => [end ? extent - place : place, aboveBottom]);
  const on: readonly FaceSpots[] = [
    { face: far ? "x1" : "x0", spots: along(width, back) },
    { face: back ? "y1" : "y0", spots: along(length, far) },
  ];
  const there = on.filter(({ face }) => problem.faces[face]);
  const place: BoxSpot = [at[0] + (far ? length : 0), at[1] + (back ? width : 0), at[2]];
  return { part: number, fitting: fitted(model, number, `foot of ${name}`, there, place) };
}

/** The sections of a model, by number. */
export function sectionNumbers({ bodies }: BoxModel): readonly number[] {
  return bodies.flatMap(({ name, section }: BoxBody, i) => (name === section ? [i] : []));
}
