/** The found steps of a case in rows of one kind, with the time of each: a work that was timed goes to the steps that do it. */
import type { Parts } from "../../design/index.js";
import { fastenerTraits } from "../../fastening/index.js";
import { Time } from "../../quantity/index.js";
import type { WorkTime } from "../money/business.js";
import type { CaseOrder } from "./case-order.js";
import { groupStep, keyOf, shared, wheelsOf } from "./section-steps.js";
import type { WorkStep } from "./work-step.js";

/** Steps of one stretch of the work in one section that follow on each other, with their time. */
export interface TimedRow {
  /** The steps, in their order; none of what ends the work. */
  readonly steps: readonly WorkStep[];
  /** Their section; absent for what is of the whole case. */
  readonly section?: string;
  /** What of the timed works is done here, as timings.csv names it. */
  readonly works: readonly string[];
  /** Time at the bench for all of them, by one person. */
  readonly time: Time;
  /** How long glue takes here while nobody works at it. */
  readonly wait: Time;
  /** Whether two people must be there: something is lifted or laid on its back. */
  readonly lifted: boolean;
  /** Places, in the list of rows, of those that must be done before. */
  readonly after: readonly number[];
}

/**
 * The rows of the found order, the last of them the end of the work: what is cleaned and checked.
 *
 * @param times bench time by kind of work
 * @param cure how long the slowest glue cures
 * @returns no rows where there is no order
 */
export function timedRows(
  found: CaseOrder,
  parts: Parts,
  times: readonly WorkTime[],
  cure: Time,
): readonly TimedRow[] {
  if (found.order.kind !== "found") return [];
  const steps = withBars(found.order.steps, parts);
  const shares = stepShares(steps, found, parts, times);
  const lifted = liftedSteps(parts);
  const runs = runsOf(steps, lifted);
  const rowOf = new Map(runs.flatMap((run, i) => run.map(({ key }) => [key, i] as const)));
  const rows = runs.map((run, i): TimedRow => {
    const section = run[0]?.section;
    return {
      steps: run,
      ...(section === undefined ? {} : { section }),
      ...timedWorks(shares.filter(({ key }) => run.some((step) => step.key === key))),
      wait: run.some(({ key }) => isCure(key)) ? cure : Time.si(0),
      lifted: run.some(({ key }) => lifted.has(key)),
      after: rowsBefore(i, runs, rowOf, found),
    };
  });
  const ending = timedWorks(shares.filter(({ key }) => key === undefined));
  const after = rows.map((_, i) => i);
  return [...rows, { steps: [], ...ending, wait: Time.si(0), lifted: false, after }];
}

/** Sawing bars is no step whose place matters; it fits in while laminate cures. */
const cutBars = "cut the bars";

function withBars(steps: readonly WorkStep[], { bars }: Parts): readonly WorkStep[] {
  if (bars.length === 0) return steps;
  const at = 1 + steps.findIndex(({ key }) => key === shared.cure);
  const after = at > 0 ? at : 1 + steps.findIndex(({ key }) => key === shared.saw);
  const step: WorkStep = { key: cutBars, words: cutBars, stage: "pieces", rank: 0 };
  return [...steps.slice(0, after), step, ...steps.slice(after)];
}

function isCure(key: string): boolean {
  return /^let the glue of .* cure$/.test(key);
}

/** Steps at which a section is lifted or laid on its back. */
function liftedSteps(parts: Parts): ReadonlySet<string> {
  const wheels = parts.sections.flatMap(({ name }) => wheelsOf(name, parts));
  return new Set([shared.mark, shared.stack, ...wheels.map(({ id }) => keyOf.fit(id))]);
}

/** Steps that follow on each other in one section and stretch of the work; pieces are made step by step. */
function runsOf(steps: readonly WorkStep[], lifted: ReadonlySet<string>): readonly (readonly WorkStep[])[] {
  const runs: WorkStep[][] = [];
  const done = new Set<string>();
  let stretch = "";
  for (const step of steps) {
    const run = runs.at(-1);
    const before = run?.at(-1);
    const goesOn =
      before !== undefined &&
      step.section !== undefined &&
      before.section === step.section &&
      lifted.has(before.key) === lifted.has(step.key) &&
      stretch === stretchOf(step, done);
    stretch = stretchOf(step, done);
    done.add(step.key);
    if (goesOn && run) run.push(step);
    else runs.push([step]);
  }
  return runs;
}

/** The stretch of the work that a step belongs to when it is done. */
function stretchOf({ key, stage, section = "" }: WorkStep, done: ReadonlySet<string>): string {
  if (isCure(key) || key === keyOf.close(section)) return key;
  if (stage === "box" || stage === "doors" || stage === "joined") return stage;
  if (done.has(keyOf.close(section))) return "closed";
  return done.has(keyOf.box(section)) ? "inside" : "flat";
}

/** Rows that must be done before one: all pieces, what was begun in its section, and what a need of its steps says. */
function rowsBefore(
  row: number,
  runs: readonly (readonly WorkStep[])[],
  rowOf: ReadonlyMap<string, number>,
  { needs }: CaseOrder,
): readonly number[] {
  if (runs[row]?.[0]?.key === cutBars) return [rowOf.get(shared.saw) ?? 0];
  const own = new Set((runs[row] ?? []).map(({ key }) => key));
  const needed = needs.flatMap(({ step, before }) => {
    const from = rowOf.get(step) ?? row;
    // Of several lists the order meets the first whose steps are all later.
    const met = before.find((list) => list.every((key) => (rowOf.get(key) ?? -1) >= from)) ?? [];
    return from < row && met.some((key) => own.has(key)) ? [from] : [];
  });
  const section = runs[row]?.[0]?.section;
  const earlier = runs.slice(0, row).flatMap((run, i) => {
    const before = run[0];
    return before && (before.stage === "pieces" || before.section === section) ? [i] : [];
  });
  return [...new Set([...needed, ...earlier])];
}

/** A part of a timed work. */
interface Share {
  /** The step that does it; absent for what ends the work. */
  readonly key?: string;
  /** The work, as timings.csv names it. */
  readonly work: string;
  /** Its time, s. */
  readonly time: number;
}

function timedWorks(shares: readonly Share[]): Pick<TimedRow, "works" | "time"> {
  return {
    works: [...new Set(shares.map(({ work }) => work))],
    time: Time.si(shares.reduce((sum, { time }) => sum + time, 0)),
  };
}

/** The timed works, step by step. What is timed for a whole case goes in equal parts to what no other work times. */
function stepShares(
  steps: readonly WorkStep[],
  found: CaseOrder,
  parts: Parts,
  times: readonly WorkTime[],
): readonly Share[] {
  const spread = ({ work, time }: WorkTime, weights: ReadonlyMap<string, number>): readonly Share[] => {
    const there = [...weights].filter(([key]) => steps.some((step) => step.key === key));
    const whole = there.reduce((sum, [, weight]) => sum + weight, 0);
    if (whole === 0) return time > 0 ? [{ work, time }] : [];
    return there.map(([key, weight]) => ({ key, work, time: (time * weight) / whole }));
  };
  const counted = times
    .filter(({ unit }) => unit !== "case")
    .flatMap((work) => spread(work, weightsOf(work, found, parts)));
  const timed = new Set(counted.map(({ key }) => key));
  const untimed = steps.filter(
    ({ key, section, stage }) =>
      (section !== undefined || stage === "joined") && !timed.has(key) && !isCure(key),
  );
  const ofCase = times
    .filter(({ unit }) => unit === "case")
    .flatMap((work) =>
      spread(work, new Map(/clean|check/.test(work.work) ? [] : untimed.map(({ key }) => [key, 1]))),
    );
  return [...counted, ...ofCase];
}

/** Which steps do a work, and how much of it. */
function weightsOf({ unit }: WorkTime, { choices }: CaseOrder, parts: Parts): ReadonlyMap<string, number> {
  const alone: Readonly<Partial<Record<WorkTime["unit"], string>>> = {
    cut: shared.saw,
    bar: cutBars,
    "square metre": shared.laminate,
    panel: shared.open,
    hole: shared.drill,
  };
  const key = alone[unit];
  if (key !== undefined) return new Map([[key, 1]]);
  if (unit === "hardware") return new Map(parts.hardware.map(({ id }) => [keyOf.fit(id), 1]));
  const weights = new Map<string, number>();
  for (const group of parts.fastenings) {
    const section = parts.panels.find(({ id }) => id === group.panel)?.section;
    const choice = section === undefined ? undefined : choices.get(section);
    if (!choice || fastenerTraits[group.fastener.kind].timedAs !== "rivet") continue;
    const step = groupStep(group, choice, parts);
    weights.set(step, (weights.get(step) ?? 0) + group.count);
  }
  return weights;
}
