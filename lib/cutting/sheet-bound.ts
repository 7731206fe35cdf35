import { type Formula, formula } from "../formula.js";
import { Count, type Kind, Length, listOf, recordOf } from "../quantity/index.js";
import { cite } from "../source.js";
import { fits } from "./numbers.js";
import { fewestToCover } from "./purchase.js";

/** Rectangles of one size, without a name. */
export interface SheetCut {
  /** One side. */ readonly length: Length;
  /** The other side. */ readonly width: Length;
  /** How many of that size. */ readonly count: number;
}

/** Rectangles to be cut from sheets of one size. */
export interface OneSizeJob {
  /** What is to be cut. */ readonly pieces: readonly SheetCut[];
  /** Of a sheet as sold. */ readonly sheetLength: Length;
  /** Of a sheet as sold. */ readonly sheetWidth: Length;
  /** Width of the saw's cut. */ readonly kerf: Length;
  /** Taken off each of the four edges. */ readonly edgeTrim: Length;
}

/** How long and how wide a piece is. */
export interface Size {
  /** Along the sheet, in metres. */ readonly length: number;
  /** Across the sheet, in metres. */ readonly width: number;
}

/** What a sheet holds after its edges are trimmed. */
export function usableSize({ length, width }: Size, edgeTrim: number): Size {
  return { length: length - 2 * edgeTrim, width: width - 2 * edgeTrim };
}

/** Area of a rectangle together with a kerf along two of its sides. */
export function areaWithKerf({ length, width }: Size, kerf: number): number {
  return (length + kerf) * (width + kerf);
}

/** Area of all pieces, each with its kerfs. */
export function totalWithKerf(pieces: readonly SheetCut[], kerf: number): number {
  return pieces.reduce((sum, piece) => sum + piece.count * areaWithKerf(piece, kerf), 0);
}

/** Whether a rectangle goes onto a sheet, one way or the other. */
function fitsEitherWay({ length, width }: Size, sheet: Size): boolean {
  return (
    (fits(length, sheet.length) && fits(width, sheet.width)) ||
    (fits(width, sheet.length) && fits(length, sheet.width))
  );
}

function tooLarge({ pieces, sheetLength, sheetWidth, edgeTrim }: OneSizeJob): string[] {
  const sheet = usableSize({ length: sheetLength, width: sheetWidth }, edgeTrim);
  const show = ({ length, width }: Size): string =>
    `${Length.show(Length.si(length))} x ${Length.show(Length.si(width))}`;
  if (!(sheet.length > 0 && sheet.width > 0))
    return ["nothing is left of the sheet after its edges are trimmed"];
  return pieces
    .filter((piece) => !(piece.length > 0 && piece.width > 0) || !fitsEitherWay(piece, sheet))
    .map((piece) => `a piece of ${show(piece)} does not come from ${show(sheet)} of usable sheet`);
}

/**
 * The fewest sheets of one size any plan can do with, by area: ceil(sum of (l + k)(w + k) / (L + k)(W + k)).
 *
 * Widen every piece by a kerf on two sides and the sheet likewise: the pieces still do not overlap, so
 * their area cannot exceed the sheets'. The true fewest is often higher; this says how much a better plan
 * could save at the most.
 *
 * @source Martello and Vigo 1998, continuous lower bound
 * @throws Refusal for a negative kerf or trim, or a piece larger than a trimmed sheet
 * @example sheetBound({ pieces: [{ length: mm(600), width: mm(400), count: 9 }], sheetLength: mm(1220), sheetWidth: mm(810), kerf: mm(0), edgeTrim: mm(0) }) // 3
 */
export const sheetBound: Formula<OneSizeJob, number> = formula({
  id: "sheets.bound",
  title: "Fewest sheets possible, by area",
  equation: String.raw`n \ge \left\lceil \frac{\sum_i (l_i + k)(w_i + k)}{(L + k)(W + k)} \right\rceil,\quad L = L_0 - 2t,\ W = W_0 - 2t`,
  inputs: {
    pieces: {
      symbol: "l_i, w_i",
      kind: listOf(recordOf<SheetCut>("cut", { length: Length, width: Length, count: Count })) as Kind<
        readonly SheetCut[]
      >,
      meaning: "pieces",
    },
    sheetLength: { symbol: "L_0", kind: Length, meaning: "length of a sheet", above: 0 },
    sheetWidth: { symbol: "W_0", kind: Length, meaning: "width of a sheet", above: 0 },
    kerf: { symbol: "k", kind: Length, meaning: "width of the saw's cut", min: 0 },
    edgeTrim: { symbol: "t", kind: Length, meaning: "taken off each edge", min: 0 },
  },
  result: { symbol: "n", kind: Count, meaning: "fewest sheets possible" },
  source: [cite("two-dimensional-bins", "continuous lower bound")],
  validity: "Rectangles of any grain; the area bound is often not reachable.",
  refuse: tooLarge,
  compute: ({ pieces, sheetLength, sheetWidth, kerf, edgeTrim }) => {
    const sheet = usableSize({ length: sheetLength, width: sheetWidth }, edgeTrim);
    return fewestToCover(totalWithKerf(pieces, kerf), areaWithKerf(sheet, kerf));
  },
});
