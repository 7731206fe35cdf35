/** Which ways a thing gets into its section: straight through a side, or through an opening, turned if it must be. */
import { type Axis, axes, type Vector3, vector3 } from "../../algebra/matrix3.js";
import { type Attitude, attitudesOf, metByBox, reachOfSolid, type SolidReach } from "../../assembly/index.js";
import { faceAxes, frameOf, type PanelPart, pointIn } from "../../design/index.js";
import { memoizeLast } from "../../kept/index.js";
import type { ReviewInput } from "../review-input.js";
import { type CaseSolid, caseOverlaps, caseSolids, meantToShare } from "../solids/index.js";
import { insideOf, withDoorsOpen } from "./entries.js";

/** One way in. */
export interface WayIn {
  /** In a builder's words: "through "side door" of lower.left, 254 mm side first". */
  readonly words: string;
  /** Through this opening; absent for a whole side. */
  readonly opening?: { readonly panel: PanelPart; readonly name: string };
  /** How it is turned in the opening. */
  readonly attitude?: Attitude;
  /** Parts that must come later than it, so that the way is free. */
  readonly later: readonly string[];
}

/** A thing that is put into a section as a whole. */
export interface ThingPutIn {
  /** Id of its part. */
  readonly id: string;
  /** Its section. */
  readonly section: string;
  /** Lowest corner of the box round it, m. */
  readonly low: Vector3;
  /** Its three sizes, m. */
  readonly size: Vector3;
  /** Every way that is known; those through openings first. */
  readonly ways: readonly WayIn[];
}

/** Contents and shelves with their ways in. */
export const waysIn: (input: ReviewInput) => readonly ThingPutIn[] = memoizeLast(
  ({ parts }: ReviewInput) => parts,
  ({ case: build }) => [build.journey, build.leftOut],
  newWaysIn,
);

function newWaysIn(input: ReviewInput): readonly ThingPutIn[] {
  const { parts } = input;
  const things = [
    ...parts.contents.map(({ content }) => content.name),
    ...parts.shelves.map(({ panel }) => panel.id),
  ];
  const { solids } = caseSolids(input);
  return things.flatMap((id) => {
    const solid = solids.find(({ part }) => part === id);
    return solid ? [putIn(solid, input)] : [];
  });
}

function putIn(solid: CaseSolid, input: ReviewInput): ThingPutIn {
  const { low, high } = reachOfSolid(solid);
  const size = vector3((i) => high[i] - low[i]);
  const { part: id, section } = solid;
  return {
    ...{ id, section, low, size },
    ways: [...openingWays(solid, low, size, input), ...sideWays(solid, input)],
  };
}

/** One leg after another, each along an axis, m. */
type Legs = readonly Vector3[];

/** What may stand in the way. */
const metOf = memoizeLast(
  (input: ReviewInput) => caseSolids(input),
  () => [],
  (input) => metByBox(withDoorsOpen(input).filter(({ piece }) => piece !== "entering")),
);

/** Parts that share space with each other where they stand: told there, and nobody's way. */
const sharing = memoizeLast(
  (input: ReviewInput) => caseOverlaps(input),
  () => [],
  (input) => {
    const shared = new Map<string, Set<string>>();
    const put = (part: string, other: string): void => {
      shared.set(part, (shared.get(part) ?? new Set()).add(other));
    };
    for (const { one, other } of Object.values(caseOverlaps(input)).flat()) {
      put(one.part, other.part);
      put(other.part, one.part);
    }
    return shared;
  },
);

/** What the box round a thing meets on its way out, in reverse the way in. */
function metOn(
  solid: CaseSolid,
  { low, high }: SolidReach,
  legs: Legs,
  input: ReviewInput,
): readonly string[] {
  const overlapping = sharing(input).get(solid.part);
  const met = new Set<string>();
  let [from, to] = [low, high];
  for (const by of legs) {
    const swept = {
      low: vector3((i) => from[i] + Math.min(0, by[i])),
      high: vector3((i) => to[i] + Math.max(0, by[i])),
    };
    const found = metOf(input)(
      swept,
      (other) => !met.has(other.part) && !overlapping?.has(other.part) && !meantToShare(solid, other),
    );
    for (const { part } of found) met.add(part);
    [from, to] = [vector3((i) => from[i] + by[i]), vector3((i) => to[i] + by[i])];
  }
  return [...met];
}

const along = (axis: Axis, by: number): Vector3 => vector3((i) => (i === axis ? by : 0));

/** Straight out through each side of the section. */
function sideWays(solid: CaseSolid, input: ReviewInput): readonly WayIn[] {
  const { low, high } = insideOf(solid.section, input);
  const reach = reachOfSolid(solid);
  const names = [
    ["left", "right"],
    ["front", "back"],
    ["bottom", "top"],
  ] as const;
  return axes.flatMap((axis) =>
    ([0, 1] as const).flatMap((end): readonly WayIn[] => {
      const far = end === 0 ? low[axis] - reach.high[axis] - wall : high[axis] - reach.low[axis] + wall;
      const out = along(axis, far);
      const words = `straight from the ${names[axis][end]}`;
      const level = metOn(solid, reach, [out], input);
      if (axis === 2 || level.length === 0) return [{ words, later: level }];
      return [
        { words, later: level },
        {
          words: `${words}, lifted over what stands up there`,
          later: metOn(solid, reach, [along(2, lift), out], input),
        },
      ];
    }),
  );
}

/** How far a thing is lifted over nuts and rivet tails, m. */
const lift = 0.03;

/** Beyond a wall with its metal, m. */
const wall = 0.04;

function openingWays(solid: CaseSolid, low: Vector3, size: Vector3, input: ReviewInput): readonly WayIn[] {
  const panels = input.parts.panels.filter(
    ({ section, role }) => section === solid.section && role === "face",
  );
  return panels.flatMap((panel) =>
    panel.openings
      .filter(({ why }) => why === "case")
      .flatMap((opening) => {
        const attitudes = attitudesOf(size, opening.outline, 0);
        return attitudes.flatMap((attitude) =>
          throughOpening(solid, low, size, panel, opening.name, attitude, input),
        );
      }),
  );
}

function throughOpening(
  solid: CaseSolid,
  low: Vector3,
  size: Vector3,
  panel: PanelPart,
  name: string,
  attitude: Attitude,
  input: ReviewInput,
): readonly WayIn[] {
  const { face } = panel;
  if (!face) return [];
  const frame = frameOf(panel);
  const normal = axisNumber(faceAxes[face].normal);
  const [u, v] = [axisNumber(faceAxes[face].u.axis), axisNumber(faceAxes[face].v.axis)];
  const at = pointIn(frame, attitude.at, 0);
  const about = { opening: { panel, name }, attitude };
  const words = `through "${name}" of ${panel.id}`;
  const isStraight =
    attitude.along === normal &&
    (attitude.across === u ? attitude.angle === 0 : Math.abs(attitude.angle - Math.PI / 2) < 1e-9);
  if (!isStraight) {
    const hit = hullMet(solid, low, size, { at, normal, u, v, attitude, panel }, input);
    return hit ? [{ ...about, words: `${words}, turned`, later: hit }] : [];
  }
  const inward = faceAxes[face].end === "high" ? -1 : 1;
  const out = -inward;
  const inside = insideOf(solid.section, input);
  const shift = (axis: Axis): Vector3 => along(axis, at[axis] - low[axis] - size[axis] / 2);
  const toWall = along(
    normal,
    out > 0 ? inside.high[normal] - low[normal] - size[normal] : inside.low[normal] - low[normal],
  );
  const gone = along(normal, out * (size[normal] + 2 * wall + Math.abs(toWall[normal])));
  const fromWall = along(normal, out * (size[normal] + 2 * wall));
  const ways: readonly Legs[] = [
    [shift(u), shift(v), gone],
    [shift(v), shift(u), gone],
    [toWall, shift(u), shift(v), fromWall],
    [toWall, shift(v), shift(u), fromWall],
  ];
  const box = reachOfSolid(solid);
  return ways.map((legs) => ({ ...about, words, later: metOn(solid, box, legs, input) }));
}

function axisNumber(axis: "x" | "y" | "z"): Axis {
  return ({ x: 0, y: 1, z: 2 } as const)[axis];
}

interface Through {
  readonly at: Vector3;
  readonly normal: Axis;
  readonly u: Axis;
  readonly v: Axis;
  readonly attitude: Attitude;
  readonly panel: PanelPart;
}

/**
 * What a thing meets that goes in turned: everything in the box round its place inside the wall, turned as it goes
 * through, and its own place. Undefined where that box is larger than the section.
 */
function hullMet(
  solid: CaseSolid,
  low: Vector3,
  size: Vector3,
  { at, normal, u, v, attitude, panel }: Through,
  input: ReviewInput,
): readonly string[] | undefined {
  const up = axes.find((axis) => axis !== attitude.along && axis !== attitude.across) ?? 0;
  const [c, s] = [Math.abs(Math.cos(attitude.angle)), Math.abs(Math.sin(attitude.angle))];
  const [p, q] = [size[attitude.across], size[up]];
  const half = vector3((i) =>
    i === normal ? size[attitude.along] / 2 : (i === u ? p * c + q * s : p * s + q * c) / 2,
  );
  const room = insideOf(solid.section, input);
  const isHigh = panel.face !== undefined && faceAxes[panel.face].end === "high";
  const edge = isHigh ? room.high[normal] - half[normal] : room.low[normal] + half[normal];
  const middle = vector3((i) => (i === normal ? edge : i === u || i === v ? at[i] : 0));
  const from = vector3((i) => Math.min(low[i], middle[i] - half[i]));
  const to = vector3((i) => Math.max(low[i] + size[i], middle[i] + half[i]));
  const slack = 2e-3;
  if (axes.some((i) => from[i] < room.low[i] - slack || to[i] > room.high[i] + slack)) return undefined;
  return metOn(solid, { low: from, high: to }, [along(normal, 1e-5)], input);
}
