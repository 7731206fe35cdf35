/** Running marks along two sides of a panel: every distance from the one corner, none from another mark. */
import type { DrawingMark } from "../../page/index.js";
import type { Length } from "../../quantity/index.js";
import type { Rule } from "../rule.js";
import { millimetres } from "./marks.js";

/** A mark on the tape that is hooked at the corner. */
export interface RunningMark {
  /** How far it is from the corner. */
  readonly at: Length;
  /** What stands behind the number; nothing for an edge. */
  readonly what?: string;
}

/** Room between two numbers, in letters. */
const step = 1.3;

/** The marks below a panel, which read from below upwards. */
export function scaleBelow(marks: readonly RunningMark[], rule: Rule, letter: number): DrawingMark[] {
  return scale(marks, rule, letter, ({ along, shown, text }) => [
    {
      mark: "line",
      role: "thin",
      points: [
        { x: along, y: 0 },
        { x: along, y: -0.8 * letter },
        { x: shown, y: -2 * letter },
      ],
    },
    {
      mark: "text",
      at: { x: shown + 0.35 * letter, y: -2.3 * letter },
      text,
      anchor: "end",
      turn: 90,
    },
  ]);
}

/** The marks left of a panel. */
export function scaleLeft(marks: readonly RunningMark[], rule: Rule, letter: number): DrawingMark[] {
  return scale(marks, rule, letter, ({ along, shown, text }) => [
    {
      mark: "line",
      role: "thin",
      points: [
        { x: 0, y: along },
        { x: -0.8 * letter, y: along },
        { x: -2 * letter, y: shown },
      ],
    },
    { mark: "text", at: { x: -2.3 * letter, y: shown - 0.35 * letter }, text, anchor: "end" },
  ]);
}

/** A number with its own place and the place it is written at, mm. */
interface PlacedMark {
  /** Where it belongs. */
  readonly along: number;
  /** Where it is written. */
  readonly shown: number;
  /** What is written. */
  readonly text: string;
}

function scale(
  marks: readonly RunningMark[],
  rule: Rule,
  letter: number,
  drawn: (mark: PlacedMark) => DrawingMark[],
): DrawingMark[] {
  const sorted = merged(marks, rule);
  const shown = spread(
    sorted.map(({ along }) => along),
    step * letter,
  );
  return sorted.flatMap((mark, i) => drawn({ ...mark, shown: shown[i] ?? mark.along }));
}

/** In their order, those that read alike once with all that is said of them. */
function merged(marks: readonly RunningMark[], rule: Rule): Omit<PlacedMark, "shown">[] {
  const sorted = [...marks].sort((a, b) => a.at - b.at);
  const numbers = [...new Set(sorted.map(({ at }) => rule.running(at)))];
  return numbers.map((number) => {
    const alike = sorted.filter(({ at }) => rule.running(at) === number);
    const words = new Set(alike.flatMap(({ what }) => what ?? []));
    return { along: millimetres((alike[0] as RunningMark).at), text: [number, ...words].join(" ") };
  });
}

/**
 * The places nearest to those wanted, in the sense of least squares, that keep a distance: runs of places that would
 * lie too close share their mean.
 *
 * @param wanted in rising order
 * @param apart the least distance of two neighbours
 */
export function spread(wanted: readonly number[], apart: number): readonly number[] {
  const runs: { sum: number; count: number }[] = [];
  for (const [i, place] of wanted.entries()) {
    let run = { sum: place - i * apart, count: 1 };
    for (let before = runs.at(-1); before && before.sum / before.count > run.sum / run.count; ) {
      run = { sum: before.sum + run.sum, count: before.count + run.count };
      runs.pop();
      before = runs.at(-1);
    }
    runs.push(run);
  }
  return runs
    .flatMap(({ sum, count }) => Array<number>(count).fill(sum / count))
    .map((x, i) => x + i * apart);
}
