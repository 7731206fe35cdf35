/** A bench that knows nothing of the planner: it holds the parts of a sheet and saws one in two. */
import type { CutSheet, SheetArea } from "../../lib/cutting/index.js";

type Rectangle = { readonly [Extent in keyof SheetArea]: number };

const close = (a: number, b: number): boolean => Math.abs(a - b) < 1e-7;

/** Whether two rectangles are the same, up to the rounding of sums. */
export const same = (a: Rectangle, b: Rectangle): boolean =>
  close(a.x, b.x) && close(a.y, b.y) && close(a.length, b.length) && close(a.width, b.width);

/**
 * What lies on the bench after every cut of a sheet is made.
 *
 * @throws Error for a cut into a part that is not there, or beside it
 */
export function followCuts({ length, width, cuts }: CutSheet, edgeTrim: number, kerf: number): Rectangle[] {
  let bench: Rectangle[] = [
    { x: edgeTrim, y: edgeTrim, length: length - 2 * edgeTrim, width: width - 2 * edgeTrim },
  ];
  for (const { part, direction, at } of cuts) {
    const found = bench.find((one) => same(one, part));
    if (!found) throw new Error(`no such part on the bench: ${JSON.stringify(part)}`);
    bench = [...bench.filter((one) => one !== found), ...inTwo(found, direction === "along", at, kerf)];
  }
  return bench;
}

function inTwo(part: Rectangle, along: boolean, at: number, kerf: number): Rectangle[] {
  const [from, extent] = along ? [part.y, part.width] : [part.x, part.length];
  const kept = at - from;
  const rest = extent - kept - kerf;
  if (kept <= 0 || kept >= extent) throw new Error(`the cut at ${at} misses the part`);
  const near = along ? { ...part, width: kept } : { ...part, length: kept };
  if (rest <= 1e-9) return [near];
  const far = along ? { ...part, y: at + kerf, width: rest } : { ...part, x: at + kerf, length: rest };
  return [near, far];
}
