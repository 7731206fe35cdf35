/** The days of the work for one person and for two: who does which row when, with glue curing overnight. */
import { Time } from "../../quantity/index.js";
import type { TimedRow } from "./step-times.js";

/** Common practice: hours at the bench that a day has. */
const dayLength: Time = Time.of(8, "h");

/** Common practice: two people do the work of one in six tenths of the time, since not all of it can be shared. */
export const sharedWork = 0.6;

/** Less than this at the end of a day is not worth beginning with. */
const leastWork: Time = Time.of(30, "min");

const aDay: Time = Time.of(24, "h");

/** A row, or what of it is done in a day. */
export interface Stint {
  /** Place of the row in the list of rows. */
  readonly row: number;
  /** From 1 on. */
  readonly day: number;
  /** Who does it: the one, the other, or both at it together. */
  readonly hands: "one" | "other" | "both";
  /** Time at the bench for each who is at it. */
  readonly time: Time;
  /** When it begins, after the opening of its day. */
  readonly begins: Time;
}

/** Plans rows: each begins when what must be before is done, glue cured by the clock and not by the bench. */
export function plannedDays(rows: readonly TimedRow[], people: 1 | 2): readonly Stint[] {
  const done = new Map<number, number>();
  const stints: Stint[] = [];
  const free = { one: 0, other: people === 1 ? Number.POSITIVE_INFINITY : 0 };
  while (done.size < rows.length) {
    const open = rows.flatMap((row, i) =>
      !done.has(i) && row.after.every((one) => done.has(one))
        ? [{ i, row, ready: Math.max(0, ...row.after.map((one) => done.get(one) ?? 0)) }]
        : [],
    );
    const first = Math.min(free.one, free.other);
    const [next] = [...open].sort((a, b) => Math.max(a.ready, first) - Math.max(b.ready, first) || a.i - b.i);
    if (!next) break;
    const { i, row, ready } = next;
    const isBusy = Math.max(free.one, free.other) > Math.max(ready, first);
    const isSplit =
      row.section !== undefined &&
      !row.lifted &&
      (isBusy || open.some((one) => one.row.section !== undefined && one.row.section !== row.section));
    const hands: Stint["hands"] =
      people === 1 || isSplit ? (free.one <= free.other ? "one" : "other") : "both";
    const from = hands === "both" ? Math.max(free.one, free.other) : free[hands];
    const worked = atTheBench(Math.max(ready, from), row.time * (hands === "both" ? sharedWork : 1));
    stints.push(...worked.map((one) => ({ ...one, row: i, hands })));
    const last = worked.at(-1);
    const end = last ? (last.day - 1) * aDay + last.begins + last.time : ready;
    done.set(i, end + row.wait);
    if (last && hands !== "other") free.one = end;
    if (last && hands !== "one") free.other = end;
  }
  return stints;
}

/** Hours at the bench from a time of the clock on, day by day. */
function atTheBench(from: number, time: number): readonly Pick<Stint, "day" | "time" | "begins">[] {
  const parts: Pick<Stint, "day" | "time" | "begins">[] = [];
  let clock = from;
  for (let left = time; left > 0; ) {
    const day = Math.floor(clock / aDay);
    const begins = clock - day * aDay;
    const room = dayLength - begins;
    if (room < Math.min(leastWork, left)) {
      clock = (day + 1) * aDay;
      continue;
    }
    const worked = Math.min(left, room);
    parts.push({ day: day + 1, time: Time.si(worked), begins: Time.si(begins) });
    left -= worked;
    clock += worked;
  }
  return parts;
}
