/** How long a search goes on before it takes what it has. */
import { Time } from "../quantity/index.js";

/** How long a job may be searched for. */
export interface SearchTime {
  /** By the clock: a slow or busy machine finds less. Nothing else ends the search then. */
  readonly timeLimit?: Time;
  /**
   * Counted work, as long as an idle machine takes for it, more or less: every machine, however busy, comes to the
   * same plan. Goes for nothing beside a time limit.
   */
  readonly effort?: Time;
}

/** Told by a search of its work, asked by it whether to go on. */
export interface Patience {
  /** @param work in microseconds of an idle machine */
  spend(work: number): void;
  /** Whether no step is to be begun any more. */
  readonly isOver: boolean;
  /** Over after a part of what is left. */
  share(part: number): Patience;
}

/** Patience for a job: by the clock where it sets a time limit. */
export function patienceFor({ timeLimit, effort }: SearchTime, usual: Time): Patience {
  return timeLimit === undefined
    ? counted(effort ?? usual)
    : new ByTheClock(performance.now() + Time.in(timeLimit, "s") * 1000);
}

/** Patience that counts work, for a search that no builder sets a limit to. */
export function counted(effort: Time): Patience {
  return new ByWork(Time.in(effort, "s") * 1e6);
}

class ByTheClock implements Patience {
  /** @param until in milliseconds of the clock */
  constructor(private readonly until: number) {}

  spend(): void {}

  get isOver(): boolean {
    return performance.now() > this.until;
  }

  share(part: number): Patience {
    const now = performance.now();
    return new ByTheClock(now + part * (this.until - now));
  }
}

class ByWork implements Patience {
  private spent = 0;

  constructor(
    private readonly allowed: number,
    private readonly whole?: Patience,
  ) {}

  spend(work: number): void {
    this.spent += work;
    this.whole?.spend(work);
  }

  get isOver(): boolean {
    return this.spent >= this.allowed || (this.whole?.isOver ?? false);
  }

  share(part: number): Patience {
    return new ByWork(part * (this.allowed - this.spent), this);
  }
}
