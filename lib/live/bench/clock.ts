/** Clocks that end at a time of day, so that a phone that slept shows what is left. */
import type { BenchClock } from "./view.js";

/** A clock that was started. */
export interface RunningClock {
  /** The adhesive. */
  readonly adhesive: string;
  /** Which of its times. */
  readonly what: BenchClock["what"];
  /** When it ends, ms since 1970. */
  readonly ends: number;
}

/** Starts a clock, in place of one that runs for the same. */
export function started(
  running: readonly RunningClock[],
  { adhesive, what, seconds }: BenchClock,
  now: number,
): readonly RunningClock[] {
  const others = running.filter((one) => one.adhesive !== adhesive || one.what !== what);
  return [...others, { adhesive, what, ends: now + seconds * 1000 }];
}

/** What each time is called. */
export const clockNames: Readonly<Record<BenchClock["what"], string>> = {
  open: "open time",
  press: "press time",
  cure: "cure time",
};

/** "12:05 left", "23 h 59 min left", "over for 3 min". */
export function clockWords({ ends }: RunningClock, now: number): string {
  const left = Math.ceil((ends - now) / 1000);
  return left > 0 ? `${spanWords(left)} left` : `over for ${spanWords(-left)}`;
}

function spanWords(seconds: number): string {
  const [hours, minutes] = [Math.floor(seconds / 3600), Math.floor(seconds / 60) % 60];
  if (hours > 0) return `${hours} h ${minutes} min`;
  return `${minutes}:${String(seconds % 60).padStart(2, "0")} min`;
}

/** Clocks that ended after one time and not after another. */
export function endedBetween(
  running: readonly RunningClock[],
  before: number,
  now: number,
): readonly RunningClock[] {
  return running.filter(({ ends }) => ends > before && ends <= now);
}
