/** The steps in the order that was found, with the time of each, and the days of the work for one person and for two. */

import { listed } from "../../findings/index.js";
import { type TableView, tableOf } from "../../page/index.js";
import { plannedDays, type Stint, sharedWork, type TimedRow, timedRows } from "../../plan/index.js";
import { Ratio, showNumber, Time } from "../../quantity/index.js";
import { type GroupBlock, group, sentence, when } from "../recipe.js";
import { distinct, grouped, total } from "../words.js";
import type { Workshop } from "../workshop.js";

/** The works of timings.csv in the order in which they are done; others follow. */
const workOrder = [
  "cut sheet",
  "glue",
  "opening",
  "cut bar",
  "mark",
  "drill",
  "hardware",
  "assemble",
  "rivet",
  "clean",
];

/** The rows of the work: by the found order, or work by work where there is none. */
function rowsOf({ times = [], purchases, order, parts }: Workshop): readonly TimedRow[] {
  const cure = Time.si(Math.max(0, ...purchases.adhesives.map(({ stock }) => stock.cureTime)));
  if (order?.order.kind === "found") return timedRows(order, parts, times, cure);
  const rank = (work: string): number => {
    const at = workOrder.findIndex((word) => work.includes(word));
    return at < 0 ? workOrder.length : at;
  };
  return [...times]
    .sort((a, b) => rank(a.work) - rank(b.work))
    .map(({ work, time }, i) => ({
      steps: [{ key: work, words: work, rank: i, stage: "pieces" }],
      works: [work],
      time,
      wait: work.includes("glue") ? cure : Time.si(0),
      lifted: false,
      after: Array.from({ length: i }, (_, before) => before),
    }));
}

/** Days for one person. */
export function dayCount(workshop: Workshop): number {
  return Math.max(0, ...plannedDays(rowsOf(workshop), 1).map(({ day }) => day));
}

/** The steps with their times, and the days for one person and for two. */
export function stepsAndDays(workshop: Workshop): GroupBlock {
  const rows = rowsOf(workshop);
  const share = Ratio.show(Ratio.si(sharedWork), { unit: "%", digits: 2 });
  return group(
    "Steps and days",
    ...when(workshop.order?.order.kind === "found", () => stepTable(rows, workshop)),
    dayTable(rows),
    twoTable(rows),
    sentence(
      `A day has 8 hours at the bench. Two people at one row take ${share} of the time of one, by common practice.`,
    ),
  );
}

/** A line a row: what is done, by how many at least, and its time. */
function stepTable(rows: readonly TimedRow[], workshop: Workshop): TableView {
  return tableOf(
    rows.map((row, i) => ({ row, number: i + 1 })),
    [
      { heading: "Row", cell: ({ number }) => number },
      { heading: "Section", cell: ({ row }) => row.section ?? "" },
      { heading: "Steps in their order", cell: ({ row }) => rowWords(row, workshop) },
      {
        heading: "People",
        cell: ({ row }) => (row.lifted ? "2, to lift" : row.wait > 0 ? "–" : "1"),
        align: "left",
      },
      {
        heading: "Time of one",
        cell: ({ row: { time } }) => (time > 0 ? Time.show(time, { digits: 2 }) : "–"),
        align: "left",
      },
    ],
  );
}

function rowWords(row: TimedRow, workshop: Workshop): string {
  const { steps, works, wait, section, time } = row;
  if (steps.length === 0) return listed(works);
  const told = inARow(steps, ({ key }) => verbOf(key))
    .map(([verb, some]) =>
      verb === ""
        ? some.map((step) => step.words).join(", ")
        : `${verb} ${numbered(some.map(({ key }) => thingOf(key.slice(verb.length + 1), workshop)))}`,
    )
    .join("; ");
  if (wait > 0) return `${told}: ${Time.show(wait, { digits: 2 })}`;
  if (section !== undefined) return told;
  return time > 0 && works.length > 0 ? `${told} (${works.join(", ")})` : told;
}

/** Things that follow on each other under the same name. */
function inARow<Item>(
  items: readonly Item[],
  nameOf: (item: Item) => string,
): readonly (readonly [string, readonly Item[]])[] {
  const runs: [string, Item[]][] = [];
  for (const item of items) {
    const [name, run] = runs.at(-1) ?? [];
    if (run && name === nameOf(item)) run.push(item);
    else runs.push([nameOf(item), [item]]);
  }
  return runs;
}

function verbOf(key: string): string {
  return /^(fit|rivet bar|put in|hang|put on|join) /.exec(key)?.[1] ?? "";
}

/** A bar under its code, all else by its name. */
function thingOf(name: string, { pieces }: Workshop): string {
  const [bar = "", ...panel] = name.split(" to ");
  const code = pieces.bars.find((one) => one.name === bar)?.code;
  return code === undefined ? name : [code, ...panel].join(" to ");
}

/** "corner 1", "corner 2" and "lamp" as "corner 1, 2, lamp"; bars of one panel as "B1, B2 to lower.top". */
function numbered(names: readonly string[]): string {
  return inARow(names, (name) => name.replace(/^B\d+ to | \d+$/, ""))
    .map(([base, some]) => {
      const [first = ""] = some;
      if (some.length < 2) return first;
      if (first.startsWith(base))
        return `${base} ${some.map((name) => name.slice(base.length + 1)).join(", ")}`;
      return `${some.map((name) => name.split(" ")[0]).join(", ")} to ${base}`;
    })
    .join(", ");
}

/** "rows 7 to 9, lower, 1.2 h": the work of some stints, row by row of one kind. */
function stintWords(stints: readonly Stint[], rows: readonly TimedRow[]): string {
  const kinds = grouped(stints, ({ row }) => {
    const one = rows[row];
    return one?.section ?? one?.steps[0]?.words ?? listed(one?.works ?? []);
  });
  return kinds
    .map(([kind, some]) => {
      const time = Time.si(total(some, (one) => one.time));
      return `${rowNumbers(some)}, ${kind}, ${Time.show(time, { digits: 2 })}`;
    })
    .join("; ");
}

function rowNumbers(stints: readonly Stint[]): string {
  const numbers = distinct(stints.map(({ row }) => row + 1)).sort((a, b) => a - b);
  const [first = 0, last = 0] = [numbers[0], numbers.at(-1)];
  if (first === last) return `row ${first}`;
  const runOn = last - first + 1 === numbers.length && numbers.length > 2;
  return `rows ${runOn ? `${first} to ${last}` : listed(numbers.map(String))}`;
}

interface WorkDay {
  /** From 1 on. */
  readonly day: number;
  /** What is done; nothing where glue cures all day. */
  readonly stints: readonly Stint[];
}

function daysOf(stints: readonly Stint[]): readonly WorkDay[] {
  const last = Math.max(0, ...stints.map(({ day }) => day));
  return Array.from({ length: last }, (_, i) => ({
    day: i + 1,
    stints: stints.filter(({ day }) => day === i + 1),
  }));
}

function hoursOf(stints: readonly Stint[]): string {
  return stints.length === 0 ? "–" : Time.show(Time.si(total(stints, ({ time }) => time)), { digits: 2 });
}

/** A line a day, for one person. */
function dayTable(rows: readonly TimedRow[]): TableView {
  return tableOf(
    daysOf(plannedDays(rows, 1)),
    [
      { heading: "Day", cell: ({ day }) => day },
      { heading: "Work", cell: (day) => dayWords(day, rows) },
      { heading: "At the bench", cell: ({ stints }) => hoursOf(stints), align: "left" },
    ],
    "Days for one person",
  );
}

/** What some do in a day, or that nothing can be done, and from when on. */
function dayWords({ stints }: WorkDay, rows: readonly TimedRow[], mine = stints): string {
  const [first] = stints;
  if (!first) return "the glue cures";
  const wait =
    first.begins > 0
      ? `from hour ${showNumber(Time.in(first.begins, "h"), 2)} on, when the glue has cured: `
      : "";
  return mine.length === 0 ? "–" : `${wait}${stintWords(mine, rows)}`;
}

/** A line a day, for two people: what they do together, and what goes side by side. */
function twoTable(rows: readonly TimedRow[]): TableView {
  const cell = (day: WorkDay, hands: Stint["hands"]): string =>
    dayWords(
      day,
      rows,
      day.stints.filter((stint) => stint.hands === hands),
    );
  return tableOf(
    daysOf(plannedDays(rows, 2)),
    [
      { heading: "Day", cell: ({ day }) => day },
      { heading: "Both together", cell: (day) => cell(day, "both") },
      { heading: "Side by side: the one", cell: (day) => cell(day, "one") },
      { heading: "The other", cell: (day) => cell(day, "other") },
    ],
    "Days for two people",
  );
}
