/** Lines of equal sag as few long lines: their short pieces joined end to end, and points on straight stretches left out. */
import type { Point2 } from "../../shape/index.js";
import { contourPieces } from "./panel-results.js";
import type { DeflectedPanel } from "./solve-panel.js";

/** Ends of pieces that are nearer than this are one, m. */
const sameEnd = 1e-7;

/**
 * Where a panel has sagged by so much, as lines; one that comes back to where it began ends there.
 *
 * @param panel bent
 * @param level deflection, m
 * @param within how far from the true line a drawn one may lie, m
 */
export function contourLines(
  panel: DeflectedPanel,
  level: number,
  within: number,
): readonly (readonly Point2[])[] {
  return joined(contourPieces(panel, level)).map((line) => thinned(line, within));
}

/** Pieces joined where they meet, in no order. */
export function joined(pieces: readonly (readonly [Point2, Point2])[]): readonly (readonly Point2[])[] {
  const key = ({ x, y }: Point2): string => `${Math.round(x / sameEnd)} ${Math.round(y / sameEnd)}`;
  const open = new Set(pieces.keys());
  const at = new Map<string, number[]>();
  pieces.forEach((ends, i) => {
    for (const end of ends) at.set(key(end), [...(at.get(key(end)) ?? []), i]);
  });
  const next = (end: Point2): Point2 | undefined => {
    const found = at.get(key(end))?.find((i) => open.has(i));
    if (found === undefined) return undefined;
    open.delete(found);
    const [from, to] = pieces[found]!;
    return key(from) === key(end) ? to : from;
  };
  const followed = (start: Point2): Point2[] => {
    const line: Point2[] = [];
    for (let end = next(start); end; end = next(end)) line.push(end);
    return line;
  };
  return pieces.flatMap(([from, to], i) => {
    if (!open.delete(i)) return [];
    const onwards = followed(to);
    return [[...followed(from).reverse(), from, to, ...onwards]];
  });
}

/** The line without the points that lie nearer to what is left than so much. */
export function thinned(line: readonly Point2[], within: number): readonly Point2[] {
  const [first, last] = [line[0], line.at(-1)];
  if (!first || !last || line.length < 3) return line;
  const away = line.map((point) => distance(point, first, last));
  const farthest = away.indexOf(Math.max(...away));
  if (away[farthest]! <= within) return [first, last];
  return [...thinned(line.slice(0, farthest + 1), within), ...thinned(line.slice(farthest), within).slice(1)];
}

function distance(point: Point2, from: Point2, to: Point2): number {
  const [x, y] = [to.x - from.x, to.y - from.y];
  const share = ((point.x - from.x) * x + (point.y - from.y) * y) / (x * x + y * y || 1);
  const near = Math.min(1, Math.max(0, share));
  return Math.hypot(point.x - from.x - near * x, point.y - from.y - near * y);
}
