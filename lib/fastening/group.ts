/** A group of fasteners: where each sits, and the share of a load that each takes. */

import { type Formula, formula } from "../formula.js";
import { Force, type Kind, Length, listOf, Moment, recordOf } from "../quantity/index.js";
import { cite } from "../source.js";

/** A place in the plane of a joint, from any fixed point. */
export interface Position {
  /** The distance along x. */
  readonly x: Length;
  /** The distance along y. */
  readonly y: Length;
}

/** A force in the plane of a joint. */
export interface PlaneForce {
  /** The force along x. */
  readonly x: Force;
  /** The force along y. */
  readonly y: Force;
}

/** Positions as a kind, for formulas. */
export const Position: Kind<Position> = recordOf<Position>("position", { x: Length, y: Length });

/** Plane forces as a kind, for formulas. */
export const PlaneForce: Kind<PlaneForce> = recordOf<PlaneForce>("force", { x: Force, y: Force });

/** The middle of a group of fasteners and where each stands from it, in metres. */
export interface GroupShape {
  /** The mean of the positions, in metres from where they start. */
  readonly middle: { readonly x: number; readonly y: number };
  /** The way from the middle to each fastener, in metres. */
  readonly arms: readonly { readonly x: number; readonly y: number }[];
}

/** Takes a group apart into its centroid and arms. */
export function groupShape(positions: readonly Position[]): GroupShape {
  const mean = (pick: (at: Position) => number): number =>
    positions.reduce((sum, at) => sum + pick(at), 0) / positions.length;
  const middle = { x: mean(({ x }) => x), y: mean(({ y }) => y) };
  return { middle, arms: positions.map(({ x, y }) => ({ x: x - middle.x, y: y - middle.y })) };
}

/** A group of like fasteners with a load in their plane. */
export interface GroupShearInputs {
  /** The places of the fasteners. */
  readonly positions: readonly Position[];
  /** The load in the plane. */
  readonly load: PlaneForce;
  /** Any point on the load's line. */
  readonly at: Position;
}

/** What each fastener carries. */
export type GroupShear = {
  /** Load about the middle of the group, anticlockwise positive. */
  readonly moment: Moment;
  /** The forces in the order of the positions; they add up to the load. */
  readonly forces: readonly PlaneForce[];
  /** The largest force on a fastener. */
  readonly largest: Force;
  /** The smallest force on a fastener. */
  readonly smallest: Force;
};

/**
 * Force on each fastener of a group under a load off its middle, elastic: each carries its equal share
 * V / n, and across its arm M r / sum r^2. For like fasteners and stiff parts.
 *
 * @throws Refusal for an empty group, or one whose fasteners share a place when the load turns it
 * @example groupShear(groupShear.read({ positions: [{ x: "0 mm", y: "0 mm" }, { x: "100 mm", y: "0 mm" }],
 *   load: { x: "0 N", y: "-100 N" }, at: { x: "100 mm", y: "30 mm" } })) // moment -5 N·m, forces x 0 N, y -7.105e-15 N; x 0 N, y -100 N, largest 100 N, smallest 7.105e-15 N
 */
export const groupShear: Formula<GroupShearInputs, GroupShear> = formula<GroupShearInputs, GroupShear>({
  id: "group.eccentric",
  title: "Fastener group under a load off its middle",
  equation: String.raw`\vec F_i = \frac{\vec V}{n} + \frac{M}{\sum |\vec r_j - \bar r|^2}\,\hat z \times (\vec r_i - \bar r)`,
  inputs: {
    positions: { symbol: String.raw`\vec r_i`, kind: listOf(Position), meaning: "places of the fasteners" },
    load: { symbol: String.raw`\vec V`, kind: PlaneForce, meaning: "load in the plane" },
    at: { symbol: String.raw`\vec r_V`, kind: Position, meaning: "a point on the load's line" },
  },
  result: {
    moment: { symbol: "M", kind: Moment, meaning: "moment about the middle" },
    forces: { symbol: String.raw`\vec F_i`, kind: listOf(PlaneForce), meaning: "force on each fastener" },
    largest: { symbol: "F_{max}", kind: Force, meaning: "largest force on a fastener" },
    smallest: { symbol: "F_{min}", kind: Force, meaning: "smallest force on a fastener" },
  },
  source: [cite("machine-design", "8-12, eq. 8-56 and 8-57; example 8-7")],
  validity: "Like fasteners in stiff parts, all snug in their holes; pull out of the plane is apart.",
  refuse: (inputs) =>
    inputs.positions.length === 0
      ? ["at least one fastener, got none"]
      : turned(inputs).moment !== 0 && turned(inputs).polar === 0
        ? ["fasteners in one place cannot hold a load that turns them: set them apart"]
        : [],
  compute: (inputs) => {
    const { moment, polar, arms } = turned(inputs);
    const twist = polar === 0 ? 0 : moment / polar;
    const share = { x: inputs.load.x / arms.length, y: inputs.load.y / arms.length };
    const forces = arms.map(({ x, y }) => ({ x: share.x - twist * y, y: share.y + twist * x }));
    const sizes = forces.map(({ x, y }) => Math.hypot(x, y));
    return { moment, forces, largest: Math.max(...sizes), smallest: Math.min(...sizes) };
  },
});

interface Turned {
  /** The moment of the load about the middle, in newton metres. */
  readonly moment: number;
  /** Sum of squared arms. */
  readonly polar: number;
  /** The way from the middle to each fastener, in metres. */
  readonly arms: readonly { readonly x: number; readonly y: number }[];
}

function turned({ positions, load, at }: GroupShearInputs): Turned {
  const { middle, arms } = groupShape(positions);
  const moment = (at.x - middle.x) * load.y - (at.y - middle.y) * load.x;
  // What rounding of the middle leaves of a load that goes through it is no moment.
  const farthest = Math.max(...[at, ...positions].map(({ x, y }) => Math.hypot(x, y)));
  const rounding = 1e-12 * farthest * Math.hypot(load.x, load.y);
  return {
    moment: Math.abs(moment) > rounding ? moment : 0,
    polar: arms.reduce((sum, { x, y }) => sum + x ** 2 + y ** 2, 0),
    arms,
  };
}

/** A group of like fasteners that is pulled off its panel and pried. */
export interface GroupPullInputs {
  /** The places of the fasteners, from any one point. */
  readonly positions: readonly Position[];
  /** Straight off the panel. */
  readonly pull: Force;
  /** Prying that pulls on the fasteners with larger x. */
  readonly pryingX: Moment;
  /** Prying that pulls on the fasteners with larger y, such as a load on a handle that stands off. */
  readonly pryingY: Moment;
}

/** What each fastener is pulled with. */
export type GroupPull = {
  /** The pulls in the order of the positions; negative where the part is pressed on. */
  readonly pulls: readonly Force[];
  /** The largest pull on a fastener. */
  readonly largest: Force;
  /** The smallest pull on a fastener. */
  readonly smallest: Force;
};

/**
 * Pull on each fastener of a group: N / n plus what prying adds in proportion to the arm from the
 * group's middle, solved for groups of any shape. Positions may start from any one point: the middle of the
 * group, the mean of the positions, is taken from them, and the straight pull acts there. That the pressed side bears on the panel is left out,
 * which is on the safe side.
 *
 * @throws Refusal for an empty group, or when the fasteners stand in line with the axis of the prying
 * @example groupPull(groupPull.read({ positions: [{ x: "0 mm", y: "0 mm" }, { x: "200 mm", y: "0 mm" }],
 *   pull: "0 N", pryingX: "10 N·m", pryingY: "0 N·m" })) // pulls -50 N; 50 N, largest 50 N, smallest -50 N
 */
export const groupPull: Formula<GroupPullInputs, GroupPull> = formula<GroupPullInputs, GroupPull>({
  id: "group.pull",
  title: "Fastener group pulled and pried",
  equation: String.raw`T_i = \frac{N}{n} + a (x_i - \bar x) + b (y_i - \bar y),\quad \sum (x_i - \bar x) T_i = M_x,\ \sum (y_i - \bar y) T_i = M_y`,
  inputs: {
    positions: {
      symbol: "x_i, y_i",
      kind: listOf(Position),
      meaning: "places of the fasteners, from any one point",
    },
    pull: { symbol: "N", kind: Force, meaning: "pull straight off the panel" },
    pryingX: { symbol: "M_x", kind: Moment, meaning: "prying towards larger x" },
    pryingY: { symbol: "M_y", kind: Moment, meaning: "prying towards larger y" },
  },
  result: {
    pulls: { symbol: "T_i", kind: listOf(Force), meaning: "pull on each fastener" },
    largest: { symbol: "T_{max}", kind: Force, meaning: "largest pull on a fastener" },
    smallest: { symbol: "T_{min}", kind: Force, meaning: "smallest pull on a fastener" },
  },
  source: [cite("statics", "equilibrium of a stiff plate on like springs")],
  validity:
    "Positions from any one point; arms, straight pull and prying count from the middle of the group. A stiff flange; a thin one bends and loads the nearest fasteners more.",
  refuse: (inputs) =>
    inputs.positions.length === 0
      ? ["at least one fastener, got none"]
      : !tilt(inputs).holds
        ? ["these fasteners have no arm against this prying: set them apart in its direction"]
        : [],
  compute: (inputs) => {
    const { a, b } = tilt(inputs);
    const { arms } = groupShape(inputs.positions);
    const pulls = arms.map(({ x, y }) => inputs.pull / arms.length + a * x + b * y);
    return { pulls, largest: Math.max(...pulls), smallest: Math.min(...pulls) };
  },
});

/** Change of the pull for each metre along x and along y. */
interface Tilt {
  /** The change of the pull along x, in newtons a metre. */
  readonly a: number;
  /** The change of the pull along y, in newtons a metre. */
  readonly b: number;
  /** Whether the group has an arm against the prying, so that this tilt balances it. */
  readonly holds: boolean;
}

/** The tilt that balances the prying, where the group has an arm against it. */
function tilt({ positions, pryingX, pryingY }: GroupPullInputs): Tilt {
  const { arms } = groupShape(positions);
  const sum = (pick: (arm: { x: number; y: number }) => number): number =>
    arms.reduce((total, arm) => total + pick(arm), 0);
  const [xx, yy, xy] = [sum(({ x }) => x ** 2), sum(({ y }) => y ** 2), sum(({ x, y }) => x * y)];
  const determinant = xx * yy - xy ** 2;
  if (determinant > 1e-9 * (xx + yy) ** 2) {
    return {
      a: (yy * pryingX - xy * pryingY) / determinant,
      b: (xx * pryingY - xy * pryingX) / determinant,
      holds: true,
    };
  }
  // All in one line, or in one place: the line can hold only prying along itself.
  const size = (xx + yy) ** 2;
  const [a, b] =
    size === 0 ? [0, 0] : [(xx * pryingX + xy * pryingY) / size, (xy * pryingX + yy * pryingY) / size];
  const held = [xx * a + xy * b, xy * a + yy * b] as const;
  const missed = Math.hypot(held[0] - pryingX, held[1] - pryingY);
  return { a, b, holds: missed <= 1e-9 * Math.hypot(pryingX, pryingY) };
}
