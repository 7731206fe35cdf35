/** A group of fasteners whose load is off its middle: by the elastic method, and turned about a point. */
import type { Fastening } from "../../design/index.js";
import { groupCentre, groupShear, steelBoltSlip } from "../../fastening/index.js";
import { Force, Length, newton, Ratio } from "../../quantity/index.js";

/** A group of a handle with the hand off its middle. */
export interface OffMiddle {
  readonly off: Length;
  /** Load that the group holds, as a share of the load through its middle: elastic, and turned about a point. */
  readonly elastic: Ratio;
  readonly ultimate: Ratio;
}

/** What a group still holds when its load is off the middle: no fastener beyond its strength, or all of them used up. */
export function offMiddle({ at }: Fastening, offs: readonly Length[]): readonly OffMiddle[] {
  const positions = at.map(({ u, v }) => ({ x: u, y: v }));
  const [each, load] = [newton(1), { x: newton(0), y: newton(1) }];
  const middle = { x: mean(positions.map(({ x }) => x)), y: mean(positions.map(({ y }) => y)) };
  return offs.map((off) => {
    const on = { x: Length.si(middle.x + off), y: Length.si(middle.y) };
    const { largest } = groupShear({ positions, load, at: on });
    const whole =
      off === 0
        ? Force.si(positions.length)
        : groupCentre({ positions, direction: load, at: on, each, law: steelBoltSlip }).strength;
    const share = (held: number): Ratio => Ratio.si(held / positions.length);
    return { off, elastic: share(1 / largest), ultimate: share(whole) };
  });
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, one) => sum + one, 0) / values.length;
}
