import { Length } from "../quantity/index.js";
import { usableLength } from "./bar-bound.js";
import type { BarJob, StockBar } from "./bar-plan.js";
import { badCounts, badSizes, badStock, belowZero, refuse, repeatedNames, showSizes } from "./request.js";
import { fits } from "./rounding.js";

/**
 * Refuses a job that no saw could do, with every reason at once.
 *
 * @throws RangeError naming the pieces and their lengths
 */
export function refuseBarJob(job: BarJob): void {
  const { pieces, stock, leftovers = [], kerf, endTrim = Length.si(0), smallestUseful = Length.si(0) } = job;
  const sized = [...pieces, ...stock, ...leftovers].map(({ name, length }) => ({ name, sizes: [length] }));
  refuse("bars", [
    ...badStock(stock),
    ...repeatedNames("pieces", pieces),
    ...repeatedNames("leftovers", leftovers),
    ...badCounts([...pieces, ...leftovers]),
    ...badSizes(sized),
    ...belowZero({ kerf, "end trim": endTrim, "smallest useful remainder": smallestUseful }),
    ...badMitres(job),
  ]);
  refuse("bars", [...trimmedAway(stock, endTrim), ...longerThanEvery(job, endTrim)]);
}

function badMitres({ pieces }: BarJob): string[] {
  const bad = (angle: number): boolean => !(angle >= 0 && angle < Math.PI / 2);
  return pieces
    .filter(({ mitre }) => mitre && (bad(mitre.left) || bad(mitre.right)))
    .map(({ name }) => `${name}: a mitre must be from 0 to below 90 degrees off square`);
}

function trimmedAway(stock: readonly StockBar[], endTrim: Length): string[] {
  return stock
    .filter(({ length }) => !(usableLength(length, endTrim) > 0))
    .map(({ name, length }) => `${name} (${showSizes([length])}) is used up by trimming its ends`);
}

function longerThanEvery({ pieces, stock, leftovers = [] }: BarJob, endTrim: Length): string[] {
  const lengths = [
    ...stock.map(({ length }) => usableLength(length, endTrim)),
    ...leftovers.map(({ length }) => length),
  ];
  const longest = Math.max(...lengths);
  return pieces
    .filter(({ length, count }) => count > 0 && !fits(length, longest))
    .map(
      ({ name, length }) =>
        `${name} (${showSizes([length])}) is longer than every bar, ${showSizes([Length.si(longest)])} at most after trimming`,
    );
}
