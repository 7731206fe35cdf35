/** The most valuable pieces that can be cut from one sheet. */
import { Length, Time } from "../quantity/index.js";
import { commonDivisor } from "./numbers.js";
import { type Patience, patienceFor, type SearchTime } from "./patience.js";
import { freeValue } from "./rectangles/free-value.js";
import { type BestValue, type LimitedSize, limitedValue } from "./rectangles/limited-value.js";
import { UnlimitedValues } from "./rectangles/unlimited-value.js";
import { badSizes, belowZero, refuse, repeatedNames } from "./request.js";

/** A piece one could cut, and what it would be worth. */
export interface ValuePiece {
  /** Unique in the job. */ readonly name: string;
  /** Along the sheet. */ readonly length: Length;
  /** Across the sheet. */ readonly width: Length;
  /** Worth of one, in any unit. */ readonly value: number;
  /** The most of it worth cutting; any number when absent. */ readonly max?: number;
}

/** One sheet, an offcut say, and what could be cut from it. */
export interface ValueJob extends SearchTime {
  /** Usable extent along the sheet. */ readonly length: Length;
  /** Usable extent across the sheet. */ readonly width: Length;
  /** What could be cut. */ readonly pieces: readonly ValuePiece[];
  /** Width of the saw's cut. Default 0. */ readonly kerf?: Length;
  /** Whether pieces may be turned. Default false. */ readonly turn?: boolean;
  /** Straight cuts from edge to edge, or cuts of any shape. Default "straight". */
  readonly cuts?: "straight" | "any shape";
}

/** What to cut. */
export interface ValuePlan {
  /** Worth of all pieces. */ readonly value: number;
  /** No choice is worth more. */ readonly bound: number;
  /** Whether the two meet. */ readonly proven: boolean;
  /** Where each piece lies, from the sheet's near corner. */
  readonly pieces: readonly { readonly name: string; readonly x: Length; readonly y: Length }[];
}

/** The most steps an extent may have; more would take too much memory. */
const mostSteps = 5000;
const usualEffort = Time.of(10, "s");

/**
 * The most valuable choice of pieces from one sheet, exactly: a dynamic programme where any number of each
 * may be cut, a best-first search where numbers are limited, a search over the sheet's cells where cuts may
 * have any shape.
 *
 * @source Gilmore and Gomory 1966; Beasley 1985; Viswanathan and Bagchi 1993
 * @throws Refusal for sizes or a kerf out of range, two pieces of one name, cuts of any shape without
 * limits, or sizes without a common step (whole millimetres have one)
 * @example bestValueSheet({ length: mm(600), width: mm(400), pieces: [{ name: "shelf", length: mm(300), width: mm(200), value: 1 }] }).value // 4
 */
export function bestValueSheet(job: ValueJob): ValuePlan {
  refuseValueJob(job);
  const { kerf = Length.si(0), pieces } = job;
  const step = commonStep(job);
  const steps = (length: number): number => Math.round((length + kerf) / step);
  const [length, width] = [steps(job.length), steps(job.width)];
  if (Math.max(length, width) > mostSteps) {
    refuse("best value", [
      `sizes need a common step of at least ${Length.show(Length.si(Math.max(job.length, job.width) / mostSteps))}`,
    ]);
  }
  const sizes = sizesOf(job, steps);
  const found = search(job, sizes, length, width);
  return {
    value: found.value,
    bound: found.bound,
    proven: found.bound <= found.value + 1e-9,
    pieces: found.pieces.map(({ piece, x, y }) => ({
      name: pieces[piece]?.name ?? "",
      x: Length.si(x * step),
      y: Length.si(y * step),
    })),
  };
}

function refuseValueJob({ length, width, pieces, kerf = Length.si(0), cuts }: ValueJob): void {
  refuse("best value", [
    ...repeatedNames("pieces", pieces),
    ...badSizes([{ name: "sheet", sizes: [length, width] }]),
    ...badSizes(pieces.map((piece) => ({ name: piece.name, sizes: [piece.length, piece.width] }))),
    ...belowZero({ kerf }),
    ...(cuts === "any shape" && pieces.some(({ max }) => max === undefined)
      ? ["cuts of any shape need a largest number of every piece"]
      : []),
  ]);
}

function search(job: ValueJob, sizes: readonly LimitedSize[], length: number, width: number): BestValue {
  if (sizes.every(({ max }) => max === Number.POSITIVE_INFINITY)) {
    const values = new UnlimitedValues(sizes, length, width);
    const value = values.valueOf(length, width);
    return { value, bound: value, pieces: values.piecesOf(length, width) };
  }
  const patience = (): Patience => patienceFor(job, usualEffort);
  const straight = limitedValue(sizes, length, width, patience());
  return job.cuts === "any shape" ? freeValue(sizes, length, width, straight, patience()) : straight;
}

function sizesOf(
  { pieces, turn, length, width }: ValueJob,
  steps: (length: number) => number,
): LimitedSize[] {
  return pieces.flatMap(({ value, max = Number.POSITIVE_INFINITY, ...size }, piece) => {
    const straight = { length: steps(size.length), width: steps(size.width), value, max, piece };
    const turned = { ...straight, length: straight.width, width: straight.length };
    const ways = turn && straight.length !== straight.width ? [straight, turned] : [straight];
    return ways.filter((way) => way.length <= steps(length) && way.width <= steps(width));
  });
}

/** The largest step all sizes with their kerfs are whole multiples of, to a micrometre. */
function commonStep({ length, width, pieces, kerf = Length.si(0) }: ValueJob): number {
  const all = [length, width, ...pieces.flatMap((piece) => [piece.length, piece.width])];
  return all.map((one) => Math.round((one + kerf) * 1e6)).reduce(commonDivisor) / 1e6;
}
