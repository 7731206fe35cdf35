import { Length } from "../quantity/index.js";
import { turnsAllowed } from "./grain.js";
import { badCounts, badSizes, badStock, belowZero, refuse, repeatedNames, showSizes } from "./request.js";
import { fits } from "./rounding.js";
import { usableSize } from "./sheet-bound.js";
import type { SheetJob, SheetPiece } from "./sheet-plan.js";

/**
 * Refuses a job that no saw could do, with every reason at once.
 *
 * @throws RangeError naming the pieces and their sizes
 */
export function refuseSheetJob(job: SheetJob): void {
  const { pieces, stock, kerf, edgeTrim = Length.si(0) } = job;
  refuse("sheets", [
    ...badStock(stock),
    ...repeatedNames("pieces", pieces),
    ...badCounts(pieces),
    ...badSizes([...pieces, ...stock].map(({ name, length, width }) => ({ name, sizes: [length, width] }))),
    ...belowZero({ kerf, "edge trim": edgeTrim }),
  ]);
  refuse("sheets", [...trimmedAway(job, edgeTrim), ...largerThanEvery(job, edgeTrim)]);
}

function trimmedAway({ stock }: SheetJob, edgeTrim: Length): string[] {
  return stock
    .filter((sheet) => Object.values(usableSize(sheet, edgeTrim)).some((extent) => !(extent > 0)))
    .map(
      ({ name, length, width }) => `${name} (${showSizes([length, width])}) is used up by trimming its edges`,
    );
}

function largerThanEvery({ pieces, stock }: SheetJob, edgeTrim: Length): string[] {
  const sheets = stock.map((sheet) => usableSize(sheet, edgeTrim));
  const sizes = sheets.map(({ length, width }) => showSizes([Length.si(length), Length.si(width)]));
  return pieces
    .filter((piece) => piece.count > 0 && !sheets.some((sheet) => liesOn(piece, sheet)))
    .map(
      ({ name, length, width, grain }) =>
        `${name} (${showSizes([length, width])}, grain ${grain}) does not lie on any sheet, ${sizes.join(" or ")} after trimming`,
    );
}

function liesOn({ length, width, grain }: SheetPiece, sheet: ReturnType<typeof usableSize>): boolean {
  return turnsAllowed(grain).some((turned) =>
    turned
      ? fits(width, sheet.length) && fits(length, sheet.width)
      : fits(length, sheet.length) && fits(width, sheet.width),
  );
}
