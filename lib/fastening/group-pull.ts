import { type Formula, formula } from "../formula.js";
import { Force, listOf, Moment } from "../quantity/index.js";
import { cite } from "../source.js";
import { groupShape, Position } from "./position.js";

/** A group of like fasteners that is pulled off its panel and pried. */
export interface GroupPullInputs {
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
  /** In the order of the positions; negative where the part is pressed on. */
  readonly pulls: readonly Force[];
  readonly largest: Force;
  readonly smallest: Force;
};

/**
 * Pull on each fastener of a group: N / n plus what prying adds in proportion to the arm from the
 * group's middle, solved for groups of any shape. That the pressed side bears on the panel is left out,
 * which is on the safe side.
 *
 * @throws RangeError for an empty group, or when the fasteners stand in line with the axis of the prying
 * @example groupPull(groupPull.read({ positions: [{ x: "0 mm", y: "0 mm" }, { x: "200 mm", y: "0 mm" }],
 *   pull: "0 N", pryingX: "10 N·m", pryingY: "0 N·m" })) // pulls -50 N; 50 N, largest 50 N, smallest -50 N
 */
export const groupPull: Formula<GroupPullInputs, GroupPull> = formula<GroupPullInputs, GroupPull>({
  id: "group.pull",
  title: "Fastener group pulled and pried",
  equation: String.raw`T_i = \frac{N}{n} + a x_i + b y_i,\quad \sum x_i T_i = M_x,\ \sum y_i T_i = M_y`,
  inputs: {
    positions: { symbol: "x_i, y_i", kind: listOf(Position), meaning: "places of the fasteners" },
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
  validity: "A stiff flange; a thin one bends and loads the nearest fasteners more.",
  refuse: (inputs) =>
    inputs.positions.length === 0
      ? ["at least one fastener, got none"]
      : tilt(inputs) === undefined
        ? ["these fasteners have no arm against this prying: set them apart in its direction"]
        : [],
  compute: (inputs) => {
    // Refused above where it is undefined.
    const { a, b } = tilt(inputs) as Tilt;
    const { arms } = groupShape(inputs.positions);
    const pulls = arms.map(({ x, y }) => inputs.pull / arms.length + a * x + b * y);
    return { pulls, largest: Math.max(...pulls), smallest: Math.min(...pulls) };
  },
});

/** Change of the pull for each metre along x and along y. */
interface Tilt {
  readonly a: number;
  readonly b: number;
}

/** The tilt that balances the prying; undefined when the group has no arm against it. */
function tilt({ positions, pryingX, pryingY }: GroupPullInputs): Tilt | undefined {
  const { arms } = groupShape(positions);
  const sum = (pick: (arm: { x: number; y: number }) => number): number =>
    arms.reduce((total, arm) => total + pick(arm), 0);
  const [xx, yy, xy] = [sum(({ x }) => x ** 2), sum(({ y }) => y ** 2), sum(({ x, y }) => x * y)];
  const determinant = xx * yy - xy ** 2;
  if (determinant > 1e-9 * (xx + yy) ** 2) {
    return { a: (yy * pryingX - xy * pryingY) / determinant, b: (xx * pryingY - xy * pryingX) / determinant };
  }
  // All in one line, or in one place: the line can hold only prying along itself.
  const size = (xx + yy) ** 2;
  const [a, b] =
    size === 0 ? [0, 0] : [(xx * pryingX + xy * pryingY) / size, (xy * pryingX + yy * pryingY) / size];
  const held = [xx * a + xy * b, xy * a + yy * b] as const;
  const missed = Math.hypot(held[0] - pryingX, held[1] - pryingY);
  return missed <= 1e-9 * Math.hypot(pryingX, pryingY) ? { a, b } : undefined;
}
