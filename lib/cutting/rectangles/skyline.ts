/** Fills one sheet piece by piece without regard to straight cuts: always at the lowest place of its outline. */
import { hair } from "../numbers.js";
import type { Item, Laid, Way } from "./item.js";

/** One step of the outline: from x on, everything is filled up to y. */
interface Step {
  readonly x: number;
  readonly length: number;
  readonly y: number;
}

/** What was laid, what was not, and how far across the sheet it reaches. */
export interface SkylineFill {
  readonly laid: readonly Laid[];
  readonly left: readonly Item[];
  readonly reach: number;
}

/**
 * Lays as many pieces as go on: at the lowest step the piece that fits it best (both sides flush, then its
 * length, then its height against a neighbour), of equals the first in the list; a step too short for every
 * piece is filled up to its lower neighbour.
 *
 * @param length of the sheet, along the steps
 * @param width how far across the sheet pieces may reach
 * @param next chance, if a search wants now and then the first piece in the list that goes on, fit or not
 */
export function fillSkyline(
  items: readonly Item[],
  length: number,
  width: number,
  next?: () => number,
): SkylineFill {
  const laid: Laid[] = [];
  const left = [...items];
  let outline: Step[] = [{ x: 0, length, y: 0 }];
  while (left.length > 0) {
    const at = lowest(outline);
    const step = outline[at] as Step;
    if (step.y >= width - hair) break;
    const best = bestFor(left, outline, at, width, next !== undefined && next() < careless);
    if (!best) {
      outline = raised(outline, at, width);
      continue;
    }
    const [item] = left.splice(best.index, 1) as [Item];
    const x = best.atRight ? step.x + step.length - best.way.length : step.x;
    laid.push({ item, ...best.way, x, y: step.y });
    outline = covered(outline, at, x, best.way);
  }
  return { laid, left, reach: Math.max(0, ...laid.map(({ y, width: height }) => y + height)) };
}

function lowest(outline: readonly Step[]): number {
  let at = 0;
  for (const [i, { y }] of outline.entries()) if (y < (outline[at] as Step).y - hair) at = i;
  return at;
}

/** How often a piece is laid without regard to its fit, in a search. */
const careless = 0.05;

interface Fit {
  readonly index: number;
  readonly way: Way;
  readonly atRight: boolean;
}

function bestFor(
  items: readonly Item[],
  outline: readonly Step[],
  at: number,
  width: number,
  anyFit: boolean,
): Fit | undefined {
  const step = outline[at] as Step;
  const leftRise = (outline[at - 1]?.y ?? Number.POSITIVE_INFINITY) - step.y;
  const rightRise = (outline[at + 1]?.y ?? Number.POSITIVE_INFINITY) - step.y;
  let best: Fit | undefined;
  let most = -1;
  for (const [index, { ways }] of items.entries()) {
    for (const way of ways) {
      if (way.length > step.length + hair || step.y + way.width > width + hair) continue;
      const flush = Number(Math.abs(step.length - way.length) <= hair);
      const onLeft = Number(Math.abs(leftRise - way.width) <= hair);
      const onRight = Number(Math.abs(rightRise - way.width) <= hair);
      const score = anyFit ? 0 : 2 * flush + (flush ? onLeft + onRight : Math.max(onLeft, onRight));
      if (score <= most) continue;
      most = score;
      best = { index, way, atRight: !flush && (onRight > onLeft || (onLeft === 0 && rightRise > leftRise)) };
    }
  }
  return best;
}

/** Fills a step up to its lower neighbour, or to the edge of the sheet. */
function raised(outline: readonly Step[], at: number, width: number): Step[] {
  const y = Math.min(outline[at - 1]?.y ?? width, outline[at + 1]?.y ?? width);
  return merged(outline.map((step, i) => (i === at ? { ...step, y } : step)));
}

function covered(outline: readonly Step[], at: number, x: number, way: Way): Step[] {
  const step = outline[at] as Step;
  const parts: Step[] = [
    { x: step.x, length: x - step.x, y: step.y },
    { x, length: way.length, y: step.y + way.width },
    { x: x + way.length, length: step.x + step.length - x - way.length, y: step.y },
  ];
  return merged([
    ...outline.slice(0, at),
    ...parts.filter(({ length }) => length > hair),
    ...outline.slice(at + 1),
  ]);
}

function merged(outline: readonly Step[]): Step[] {
  const steps: Step[] = [];
  for (const step of outline) {
    const before = steps.at(-1);
    if (before && Math.abs(before.y - step.y) <= hair)
      steps[steps.length - 1] = { ...before, length: before.length + step.length };
    else steps.push(step);
  }
  return steps;
}
