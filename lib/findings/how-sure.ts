/** How sure a verdict is where nobody measured its scatter: the input that it rests on most, and how far that may be off. */
import type { Moved, WorkedLine, WorkedValue } from "../formula.js";
import { type ShowStyle, showNumber } from "../quantity/index.js";
import { unlessRefused } from "../refusal.js";

/** The input that moves an answer most. */
export interface RestsOn {
  /** What it is: "height of the centre of gravity". */
  readonly input: string;
  /** Its value, ready to show. */
  readonly show: (style?: ShowStyle) => string;
  /** By what share the answer moves, for each share of the input. */
  readonly slope: number;
}

/** The step that a slope is read from. */
const step = 1e-3;

/** A larger slope says only that the answer stands on an edge. */
const steepest = 50;

/** A number that may come from any line: no sign of where it is from. */
const plainNumbers: ReadonlySet<number> = new Set([0, 1, 2]);

/** A result that comes from leaves, with the slope of each. */
type Slopes = ReadonlyMap<WorkedValue, number>;

/**
 * The input of some worked lines that their last results move with most. An input whose number is a result of an
 * earlier line stands for what that line rests on.
 *
 * @returns undefined where no line can be worked out again, or none moves
 */
export function restsOn(because: readonly WorkedLine[]): RestsOn | undefined {
  const found = new Map<number, Slopes>();
  const used = new Set<number>();
  for (const line of because) {
    for (const [number, slopes] of slopesOf(line, found, used)) found.set(number, slopes);
  }
  const leaves = [...found]
    .filter(([number]) => !used.has(number))
    .flatMap(([, slopes]) => [...slopes])
    .map(([leaf, slope]) => ({ leaf, slope: Math.min(steepest, Math.abs(slope)) }));
  if (leaves.length === 0) return undefined;
  const { leaf, slope } = leaves.reduce((most, one) => (one.slope > most.slope + step ? one : most));
  return slope < step ? undefined : { input: leaf.meaning, show: leaf.show, slope };
}

/** Slopes of each result of a line, by its number. */
function slopesOf(
  { inputs, results, again }: WorkedLine,
  found: ReadonlyMap<number, Slopes>,
  used: Set<number>,
): ReadonlyMap<number, Slopes> {
  const slopes = new Map<number, Map<WorkedValue, number>>();
  const numbers = results.flatMap(({ name, number }) =>
    number === undefined || plainNumbers.has(number) ? [] : [{ name, number }],
  );
  for (const { number } of numbers) slopes.set(number, new Map());
  for (const input of inputs) {
    const { number } = input;
    for (const part of partsOf(input)) used.add(part);
    if (number === undefined || number === 0) continue;
    const from = plainNumbers.has(number) ? undefined : found.get(number);
    if (from) used.add(number);
    const [before, after] = [movedBy(again, input, 0), movedBy(again, input, step)];
    for (const result of numbers) {
      const own = slopeOf(before?.get(result.name), after?.get(result.name));
      const kept = slopes.get(result.number);
      for (const [leaf, slope] of from ?? [[input, 1] as const])
        kept?.set(leaf, (kept.get(leaf) ?? 0) + own * slope);
    }
  }
  return slopes;
}

/** Numbers of a record or of a list: what they come from is used, though no slope is read through them. */
function partsOf({ fields = [], items = [] }: WorkedValue): readonly number[] {
  return [...fields, ...items.flat()].flatMap(({ number }) => (number === undefined ? [] : [number]));
}

function slopeOf(before: number | undefined, after: number | undefined): number {
  return before === undefined || after === undefined || before === 0 ? 0 : (after - before) / before / step;
}

/** Nothing at the edge of what a formula takes. */
function movedBy(again: WorkedLine["again"], { name }: WorkedValue, share: number): Moved | undefined {
  return unlessRefused(() => again?.(name, share));
}

/** Said before what a verdict rests on. */
const unmeasured = "Nobody measured how sure this is.";

/** What a verdict rests on, as a sentence, with how far the answer follows it. */
export function restsOnWords(rests: RestsOn | string, style: ShowStyle): string {
  if (typeof rests === "string") return `${unmeasured} It depends most on ${rests}.`;
  const { input, show, slope } = rests;
  const follows = showNumber(slope, 2);
  const moves =
    slope < steepest
      ? `1 % more or less of that moves the answer by about ${follows} %.`
      : "A little more or less of that changes which case is the worst.";
  return `${unmeasured} It depends most on ${input} (${show(style)}). ${moves}`;
}
