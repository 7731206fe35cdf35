/** Fills one sheet piece by piece without regard to straight cuts: always at the lowest place of its outline. */
import { at } from "../../algebra/lists.js";
import { hair } from "../numbers.js";
import type { Item, Laid, Way } from "./item.js";

/** One step of the outline: from x on, everything is filled up to y. */
interface Step {
  /** Where it begins, along the sheet. */ readonly x: number;
  /** Along the sheet. */ readonly length: number;
  /** How far across the sheet it is filled. */ readonly y: number;
}

/** What was laid, what was not, and how far across the sheet it reaches. */
export interface SkylineFill {
  /** The pieces where they lie. */ readonly laid: readonly Laid[];
  /** Pieces that do not go on. */ readonly left: readonly Item[];
  /** How far across the sheet the pieces reach. */ readonly reach: number;
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
  let left = items;
  let outline: Step[] = [{ x: 0, length, y: 0 }];
  while (left.length > 0) {
    const place = placeOn(outline, width);
    if (place.step.y >= width - hair) break;
    const best = bestFit(left, place, next !== undefined && next() < randomPickRate);
    if (best) {
      const x = best.atRight ? place.step.x + place.step.length - best.way.length : place.step.x;
      left = left.toSpliced(left.indexOf(best.item), 1);
      laid.push({ item: best.item, ...best.way, x, y: place.step.y });
      outline = withSteps(outline, place, covered(place.step, x, best.way));
    } else outline = withSteps(outline, place, [raised(place)]);
  }
  return { laid, left, reach: Math.max(0, ...laid.map(({ y, width: height }) => y + height)) };
}

/** How often a search picks a piece without regard to its fit. */
const randomPickRate = 0.05;

/** The lowest step, and what stands beside it. */
interface Place {
  /** Index in the outline. */ readonly index: number;
  /** The step itself. */ readonly step: Step;
  /** How far its left neighbour rises above it, without end at the edge of the sheet. */
  readonly leftRise: number;
  /** The same of its right neighbour. */ readonly rightRise: number;
  /** What is left above the step, across the sheet. */ readonly room: number;
}

function placeOn(outline: readonly Step[], width: number): Place {
  let index = 0;
  for (const [i, { y }] of outline.entries()) if (y < at(outline, index).y - hair) index = i;
  const step = at(outline, index);
  const riseTo = (neighbour: Step | undefined): number => (neighbour?.y ?? Number.POSITIVE_INFINITY) - step.y;
  return {
    index,
    step,
    leftRise: riseTo(outline[index - 1]),
    rightRise: riseTo(outline[index + 1]),
    room: width - step.y,
  };
}

/** A piece for a step, and how it lies there. */
interface Fit {
  /** The piece. */ readonly item: Item;
  /** How it is turned. */ readonly way: Way;
  /** Whether it goes to the right end of the step. */ readonly atRight: boolean;
}

/** The piece with the highest score, of equals the first in the list; of all that go on, fit or not, where any will do. */
function bestFit(items: readonly Item[], place: Place, any: boolean): Fit | undefined {
  let best: Fit | undefined;
  let most = -1;
  for (const item of items) {
    for (const way of item.ways) {
      if (way.length > place.step.length + hair || way.width > place.room + hair) continue;
      const { score, atRight } = scoreOf(way, place);
      const own = any ? 0 : score;
      if (own <= most) continue;
      most = own;
      best = { item, way, atRight };
    }
  }
  return best;
}

/** Two for filling the length of the step, one for every side that ends flush with a neighbour's top. */
function scoreOf(
  way: Way,
  { step, leftRise, rightRise }: Place,
): { readonly score: number; readonly atRight: boolean } {
  const fillsStep = Math.abs(step.length - way.length) <= hair;
  const onLeft = Number(Math.abs(leftRise - way.width) <= hair);
  const onRight = Number(Math.abs(rightRise - way.width) <= hair);
  if (fillsStep) return { score: 2 + onLeft + onRight, atRight: false };
  const higherRight = onLeft === 0 && rightRise > leftRise;
  return { score: Math.max(onLeft, onRight), atRight: onRight > onLeft || higherRight };
}

/** A step filled up to its lower neighbour, or to the edge of the sheet. */
function raised({ step, leftRise, rightRise, room }: Place): Step {
  const rises = [leftRise, rightRise].map((rise) => (Number.isFinite(rise) ? rise : room));
  return { ...step, y: step.y + Math.min(...rises) };
}

/** What a step becomes under a piece. */
function covered(step: Step, x: number, way: Way): Step[] {
  const parts: Step[] = [
    { x: step.x, length: x - step.x, y: step.y },
    { x, length: way.length, y: step.y + way.width },
    { x: x + way.length, length: step.x + step.length - x - way.length, y: step.y },
  ];
  return parts.filter(({ length }) => length > hair);
}

/** The outline with other steps in one place; steps of one height become one. */
function withSteps(outline: readonly Step[], { index }: Place, steps: readonly Step[]): Step[] {
  const merged: Step[] = [];
  for (const step of outline.toSpliced(index, 1, ...steps)) {
    const before = merged.at(-1);
    if (before && Math.abs(before.y - step.y) <= hair)
      merged[merged.length - 1] = { ...before, length: before.length + step.length };
    else merged.push(step);
  }
  return merged;
}
