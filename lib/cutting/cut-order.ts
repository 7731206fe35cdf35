/** The order of cuts: as many as possible with one setting of the fence, one after the other. */
import type { SheetArea, ThroughCut } from "./sheet-plan.js";

/** Width of what stays between fence and blade. */
export function fenceOf({ direction, at, part }: ThroughCut): number {
  return at - (direction === "along" ? part.y : part.x);
}

/** Whether two cuts need the same setting, to a micrometre. */
export function sameSetting(one: ThroughCut, other: ThroughCut): boolean {
  return one.direction === other.direction && Math.abs(fenceOf(one) - fenceOf(other)) < 1e-6;
}

/**
 * The same cuts in an order with fewer changes of setting. A cut can be made once its part lies on the bench;
 * of those, one with the setting at hand is taken, or else one whose setting most others share.
 */
export function groupedCuts(cuts: readonly ThroughCut[]): ThroughCut[] {
  const waiting = [...cuts];
  const done: ThroughCut[] = [];
  while (waiting.length > 0) {
    const ready = waiting.filter((cut) => !waiting.some((other) => other !== cut && makes(other, cut.part)));
    const last = done.at(-1);
    const next = ready.find((cut) => last && sameSetting(cut, last)) ?? mostShared(ready);
    if (!next) break;
    waiting.splice(waiting.indexOf(next), 1);
    done.push(next);
  }
  return done;
}

/** Whether a cut goes through something a part is still a piece of. */
function makes({ part }: ThroughCut, smaller: SheetArea): boolean {
  const hair = 1e-9;
  const inside =
    smaller.x >= part.x - hair &&
    smaller.y >= part.y - hair &&
    smaller.x + smaller.length <= part.x + part.length + hair &&
    smaller.y + smaller.width <= part.y + part.width + hair;
  return inside && smaller.length * smaller.width < part.length * part.width - hair;
}

function mostShared(ready: readonly ThroughCut[]): ThroughCut | undefined {
  const shared = ready.map((cut) => ready.filter((other) => sameSetting(cut, other)).length);
  return ready[shared.indexOf(Math.max(...shared))];
}
