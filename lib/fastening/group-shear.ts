import { type Formula, formula } from "../formula.js";
import { Force, listOf, Moment } from "../quantity/index.js";
import { cite } from "../source.js";
import { groupShape, PlaneForce, Position } from "./position.js";

/** A group of like fasteners with a load in their plane. */
export interface GroupShearInputs {
  readonly positions: readonly Position[];
  readonly load: PlaneForce;
  /** Any point on the load's line. */
  readonly at: Position;
}

/** What each fastener carries. */
export type GroupShear = {
  /** Load about the middle of the group, anticlockwise positive. */
  readonly moment: Moment;
  /** In the order of the positions; they add up to the load. */
  readonly forces: readonly PlaneForce[];
  readonly largest: Force;
  readonly smallest: Force;
};

/**
 * Force on each fastener of a group under a load off its middle, elastic: each carries its equal share
 * V / n, and across its arm M r / sum r^2. For like fasteners and stiff parts.
 *
 * @throws RangeError for an empty group, or one whose fasteners share a place when the load turns it
 * @example groupShear(groupShear.read({ positions: [{ x: "0 mm", y: "0 mm" }, { x: "100 mm", y: "0 mm" }],
 *   load: { x: "0 N", y: "-100 N" }, at: { x: "100 mm", y: "30 mm" } })) // moment -5 N·m, forces x 0 N, y -7.105e-15 N; x 0 N, y -100 N, largest 100 N, smallest 7.105e-15 N
 */
export const groupShear: Formula<GroupShearInputs, GroupShear> = formula<GroupShearInputs, GroupShear>({
  id: "group.eccentric",
  title: "Fastener group under a load off its middle",
  equation: String.raw`\vec F_i = \frac{\vec V}{n} + \frac{M}{\sum r_j^2}\,\hat z \times \vec r_i`,
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
  readonly moment: number;
  /** Sum of squared arms. */
  readonly polar: number;
  readonly arms: readonly { readonly x: number; readonly y: number }[];
}

function turned({ positions, load, at }: GroupShearInputs): Turned {
  const { middle, arms } = groupShape(positions);
  return {
    moment: (at.x - middle.x) * load.y - (at.y - middle.y) * load.x,
    polar: arms.reduce((sum, { x, y }) => sum + x ** 2 + y ** 2, 0),
    arms,
  };
}
