/** One place of a job tried with several values, and a question asked of each. */
import { type CellPlace, type ChangeValue, type PutAt, set } from "../../design/index.js";
import type { Finding } from "../../findings/index.js";
import { type ChartView, type TableView, tableOf } from "../../page/index.js";
import { ProblemsError } from "../../problem.js";
import { isMoney, isUnitNumber, Money, showNumber, type UnitNumber } from "../../quantity/index.js";
import { Refusal } from "../../refusal.js";
import { lineChart } from "../line-chart.js";
import type { AskedJob } from "./asked-job.js";

/** What a question may answer: a quantity, a number, money, a finding, yes or no, or words. */
export type Answered = UnitNumber<string> | number | Money | Finding | boolean | string;

/** One value tried. */
export interface Tried {
  /** What stood at the place. */
  readonly value: string;
  /** The same as a number of the sweep's unit; absent for words. */
  readonly number?: number;
  /** The answer as it prints; the reason where there is none. */
  readonly answer: string;
  /** The answer as a number of its unit; absent for words, and where there is none. */
  readonly answerNumber?: number;
}

/** A place tried with several values. */
export interface Sweep<Answer extends Answered = Answered> {
  /** The place: "upper.front.stage.width". */
  readonly place: string;
  /** One a value, in the order given. */
  readonly tried: readonly Tried[];
  /** The answers by themselves; undefined where there is none. */
  readonly answers: readonly (Answer | undefined)[];
  /** The unit of the values, where they have one. */
  readonly unit?: string;
  /** The unit of the answers, where they have one. */
  readonly answerUnit?: string;
}

/**
 * Tries values at a place of the job, one by one and in memory, and asks each time. A value that the case cannot have,
 * such as an opening past its panel's edge, is told with its reason.
 *
 * @throws RangeError for a place that is not there, or values that it does not measure
 * @example
 * const job = openJob("soil-lab");
 * const widths = [mm(400), mm(450)];
 * sweep(job, "upper.front.display window.width", widths, (one) => one.panel("upper.front").mass())
 */
export function sweep<
  const At extends string | CellPlace,
  const Values extends readonly ChangeValue[],
  Answer extends Answered,
>(
  job: AskedJob,
  place: At,
  values: { readonly [I in keyof Values]: PutAt<At, Values[I]> },
  ask: (job: AskedJob) => Answer,
): Sweep<Answer>;
export function sweep<Answer extends Answered>(
  job: AskedJob,
  place: string | CellPlace,
  values: readonly ChangeValue[],
  ask: (job: AskedJob) => Answer,
): Sweep<Answer> {
  if (values.length === 0) throw new Refusal("sweep: give at least one value to try");
  const outcomes = values.map((value) => outcome(() => ask(job.with(set(place as string, value as never)))));
  const unit = sharedUnit(values);
  const answers = outcomes.map((one) => ("answer" in one ? one.answer : undefined));
  const answerUnit = sharedUnit(answers.filter((one) => one !== undefined));
  const tried = outcomes.map((one, i): Tried => {
    const number = numberOf(values[i], unit);
    const answerNumber = "answer" in one ? numberOf(one.answer, answerUnit) : undefined;
    return {
      value: answerText(values[i]),
      ...(number === undefined ? {} : { number }),
      answer: "answer" in one ? answerText(one.answer) : one.why,
      ...(answerNumber === undefined ? {} : { answerNumber }),
    };
  });
  return {
    place: typeof place === "string" ? place : `${place.file}, ${place.row}, ${place.column}`,
    tried,
    answers,
    ...(unit === undefined ? {} : { unit }),
    ...(answerUnit === undefined ? {} : { answerUnit }),
  };
}

/** What a question comes to. */
export type Outcome<Answer> = { readonly answer: Answer } | { readonly why: string };

/** The answer, or why there is none; whatever else is thrown is a mistake and goes on. */
export function outcome<Answer>(ask: () => Answer): Outcome<Answer> {
  try {
    const answer = ask();
    return isUnitNumber(answer) && answer.whyNone !== undefined ? { why: answer.show() } : { answer };
  } catch (error) {
    if (error instanceof Refusal) return { why: `no answer: ${error.message}` };
    if (error instanceof ProblemsError)
      return { why: `cannot be: ${error.problems[0]?.expected ?? error.message}` };
    throw error;
  }
}

/** The unit that the first of several quantities prints in, for all of them. */
function sharedUnit(values: readonly unknown[]): string | undefined {
  const first = values.find((one) => isUnitNumber(one) || isMoney(one));
  if (isUnitNumber(first)) return first.printsIn() || undefined;
  return isMoney(first) ? first.currency : undefined;
}

function numberOf(value: unknown, unit: string | undefined): number | undefined {
  if (isUnitNumber(value)) return unit === undefined ? value.si : value.in(unit);
  if (isMoney(value)) return value.amount;
  if (isFinding(value)) return value.ratio;
  return typeof value === "number" ? value : undefined;
}

/** A value as a notebook prints it. */
export function answerText(value: unknown): string {
  if (isUnitNumber(value)) return value.show();
  if (isMoney(value)) return Money.show(value);
  if (isFinding(value)) return value.answer;
  if (typeof value === "number") return Number.isInteger(value) ? String(value) : showNumber(value, 4);
  if (typeof value === "boolean") return value ? "yes" : "no";
  return Array.isArray(value) ? value.join(", ") : String(value);
}

function isFinding(value: unknown): value is Finding {
  return typeof value === "object" && value !== null && "verdict" in value;
}

/** Whether a value is what `sweep` gives. */
export function isSweep(value: unknown): value is Sweep {
  return typeof value === "object" && value !== null && "tried" in value && "place" in value;
}

/** The values tried and their answers, in rows. */
export function sweepTable({ place, tried }: Sweep): TableView {
  return tableOf(
    tried,
    [
      { heading: place, align: "right", cell: ({ value }) => value },
      { heading: "answer", align: "right", cell: ({ answer }) => answer },
    ],
    `${place}, tried`,
  );
}

/** What the words of a chart of a sweep may be. */
export interface SweepChart {
  /** Above the chart. */
  readonly title?: string;
  /** Beside the values along the lower side. */
  readonly x?: string;
  /** Beside the answers. */
  readonly y?: string;
}

/**
 * The answers of a sweep against its values.
 *
 * @throws Refusal for a sweep of words, or one without an answer
 */
export function sweepChart(swept: Sweep, words: SweepChart = {}): ChartView {
  const { place, unit, answerUnit } = swept;
  const rows = swept.tried.flatMap(({ number, answerNumber }) =>
    number === undefined || answerNumber === undefined ? [] : [{ value: number, answer: answerNumber }],
  );
  if (rows.length === 0) {
    throw new Refusal(
      `chart: no number to draw among the answers of ${place}; ask for a quantity, or look at the sweep itself`,
    );
  }
  const title = words.title ?? `${words.y ?? "What it answers"} against ${place}`;
  return lineChart({
    title,
    description: `${rows.length} values were tried, each by itself.`,
    rows,
    x: { field: "value", title: words.x ?? place, ...(unit === undefined ? {} : { unit }), zero: false },
    y: {
      field: "answer",
      title: words.y ?? "What it answers",
      ...(answerUnit === undefined ? {} : { unit: answerUnit }),
      zero: true,
    },
  });
}
