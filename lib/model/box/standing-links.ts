/** Where bodies of the case bear on each other, and the feet a section stands on when it is tried by itself. */

import { at } from "../../algebra/lists.js";
import type { BoxSpot, FaceName, FaceSpots, LinkEnd } from "../../fem/index.js";
import { extents, frames } from "../../fem/index.js";
import type { Point2 } from "../../shape/index.js";
import { lowestSection } from "../mass/balance.js";
import type { ReviewInput } from "../review-input.js";
import { supportsOf } from "../travel/footprint.js";
import { type BoxBody, isBeside } from "./box-body.js";
import { type BoxModel, fitted, holding, onMaterial } from "./box-model.js";
import { type CaseLink, floorLinksAt } from "./hardware-links.js";
import { minus, placed, plus, spotOf } from "./places.js";

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
  const numberOf = (section: string): number => model.bodies.findIndex(({ name }) => name === section);
  return ordered.slice(1).flatMap(({ name, outside }, i) => {
    const below = at(ordered, i).name;
    return walls.flatMap((wall) =>
      bearingAt.flatMap((share): CaseLink[] => {
        const [lower, upper] = [numberOf(below), numberOf(name)];
        const place = bearingPlace(at(model.bodies, lower), wall, share, outside.low.z);
        const from = wallEnd(model, lower, { wall, share, place }, "top");
        const to = wallEnd(model, upper, { wall, share, place }, "bottom");
        if (!from || !to) return [];
        return [
          {
            kind: "bearing",
            name: `${name} on ${below}, ${wall} ${share}`,
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

/** Where a wall bears. */
interface Bearing {
  /** The wall. */
  readonly wall: FaceName;
  /** Along it, as a share of its length. */
  readonly share: number;
  /** In the stacked case. */
  readonly place: BoxSpot;
}

function bearingPlace(below: BoxBody, wall: FaceName, share: number, height: number): BoxSpot {
  const { axes, far } = frames[wall];
  const [along, , through] = axes;
  const size = extents(below.problem);
  return placed(
    [0, 0, height],
    [along, below.at[along] + share * size[along]],
    [through, below.at[through] + (far ? size[through] : 0)],
  );
}

/** Two places of a wall near its upper or lower rim, as one end; none where the wall has no material there. */
function wallEnd(
  model: BoxModel,
  number: number,
  { wall, share, place }: Bearing,
  rim: "top" | "bottom",
): LinkEnd | undefined {
  const { problem, name } = at(model.bodies, number);
  if (!problem.faces[wall]) return undefined;
  const size = extents(problem);
  const middle = share * size[frames[wall].axes[0]];
  const level = rim === "top" ? size[2] - inFromRim : inFromRim;
  const spots = [-halfBearing, halfBearing].map((aside) => ({ x: middle + aside, y: level }));
  const on = { face: wall, spots };
  if (onMaterial(model, number, on).spots.length < spots.length) return undefined;
  return { part: number, fitting: fitted(model, number, `${name}, ${rim} of ${wall}`, [on], place) };
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

/** Sideways, and down. */
const footWays: readonly BoxSpot[] = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, -1],
];

/** Four feet at the lower corners of a section, held every way. */
export function standLinks(model: BoxModel, number: number): readonly CaseLink[] {
  const { name } = at(model.bodies, number);
  return corners.flatMap((corner): CaseLink[] => {
    const from = footEnd(model, number, corner);
    const held = { kind: "stand", name: `corner ${corner.join(" ")} of ${name}`, from } as const;
    return footWays.map((along) => ({ ...held, along, stiffness: floorStiffness }));
  });
}

/**
 * A foot at a lower corner of a section: it holds the ends of the two walls that meet there, a hand's breadth of each,
 * or the corner of the bottom where both walls are left open.
 *
 * @param place where the floor is; at the corner unless said
 */
export function footEnd(
  model: BoxModel,
  number: number,
  [far, back]: readonly [0 | 1, 0 | 1],
  place?: BoxSpot,
): LinkEnd {
  const { problem, at: origin, name } = at(model.bodies, number);
  const [length, width] = extents(problem);
  const along = (extent: number, end: 0 | 1): readonly Point2[] =>
    fromCorner.map((place) => ({ x: end ? extent - place : place, y: aboveBottom }));
  const on: readonly FaceSpots[] = [
    { face: far ? "x1" : "x0", spots: along(width, back) },
    { face: back ? "y1" : "y0", spots: along(length, far) },
  ];
  const below: FaceSpots = {
    face: "bottom",
    spots: fromCorner.map((place) => ({ x: far ? length - place : place, y: back ? width - place : place })),
  };
  const corner = plus(origin, [far ? length : 0, back ? width : 0, 0]);
  const there = holding(model, number, on, [below]);
  return { part: number, fitting: fitted(model, number, `foot of ${name}`, there, place ?? corner) };
}

/** A case on its underside: it bears on the corners of its lowest section, and lifts off where it would pull. */
export function undersideLinks(input: ReviewInput, model: BoxModel): readonly CaseLink[] {
  if (supportsOf(input).length > 0) return [];
  const { name, outside } = lowestSection(input);
  const number = model.bodies.findIndex((body) => body.name === name);
  const [low, size] = [spotOf(outside.low), spotOf(outside.size)];
  return corners.flatMap(([far, back]) => {
    const place = plus(low, [far * size[0], back * size[1], 0]);
    return floorLinksAt(`corner ${far} ${back} of ${name}`, footEnd(model, number, [far, back], place));
  });
}

/** How far beside its opening a lid rests on the frame, and how far in from its own sides, m. */
const restBeside = 0.012;
const restInside = 0.012;

/** Lids rest on the frame around them at their four corners, and rise off it where they would pull. */
export function lidLinks(model: BoxModel): readonly CaseLink[] {
  return model.bodies.flatMap((leaf, number) => {
    const frame = model.bodies.findIndex(({ name }) => name === leaf.section);
    if (leaf.name === leaf.section || !leaf.problem.faces.top) return [];
    return corners.flatMap((corner) => restOf(model, number, frame, corner));
  });
}

/** Steps from a corner of a lid to where it rests beside it, along each of its sides, m. */
const cornerRest: readonly Point2[] = [
  { x: 0, y: 0.03 },
  { x: 0.03, y: 0 },
];
/** The same where one of its sides meets another lid: along the other side alone. */
const sharedRests: readonly (readonly Point2[])[] = [
  cornerRest,
  [
    { x: 0.03, y: 0 },
    { x: 0.06, y: 0 },
  ],
  [
    { x: 0, y: 0.03 },
    { x: 0, y: 0.06 },
  ],
];

/** One corner of a lid; none where the frame has no material beside it. */
function restOf(
  model: BoxModel,
  leaf: number,
  frame: number,
  [far, back]: readonly [0 | 1, 0 | 1],
): readonly CaseLink[] {
  const [own, around] = [at(model.bodies, leaf), at(model.bodies, frame)];
  const [length, width] = extents(own.problem);
  const side = ({ x, y }: Point2, inside: number): Point2 => ({
    x: far ? length - inside - x : inside + x,
    y: back ? width - inside - y : inside + y,
  });
  const off = minus(own.at, around.at);
  const besideOf = (steps: readonly Point2[]): FaceSpots => ({
    face: "top",
    spots: steps.map((step): Point2 => {
      const { x, y } = side(step, -restBeside);
      return { x: x + off[0], y: y + off[1] };
    }),
  });
  const shared = model.bodies.some((body) => isBeside(body, own));
  const steps = (shared ? sharedRests : [cornerRest]).find(
    (one) => onMaterial(model, frame, besideOf(one)).spots.length === one.length,
  );
  if (!steps) return [];
  const beside = besideOf(steps);
  const place = plus(own.at, [far ? length : 0, back ? width : 0, 0]);
  const name = `${own.name}, corner ${far} ${back}`;
  const on: FaceSpots = { face: "top", spots: steps.map((step) => side(step, restInside)) };
  return [
    {
      kind: "rest",
      name,
      from: { part: frame, fitting: fitted(model, frame, name, [beside], place) },
      to: { part: leaf, fitting: fitted(model, leaf, name, [on], place) },
      along: [0, 0, 1],
      stiffness: bearingStiffness,
      only: "push",
    },
  ];
}

/** The sections of a model, by number. */
export function sectionNumbers({ bodies }: BoxModel): readonly number[] {
  return bodies.flatMap(({ name, section }: BoxBody, i) => (name === section ? [i] : []));
}
