/** The search for the least changes that make a case hold, best so far kept, every proposal reviewed as a whole. */
import type { Finding, Tier } from "../findings/index.js";
import type { Job } from "../job/index.js";
import { Asking } from "./asking.js";
import { fewestAtOdds } from "./at-odds.js";
import {
  byCost,
  type Candidate,
  leastCovers,
  noWeights,
  spread,
  undominated,
  type Weights,
} from "./cover.js";
import type { Option } from "./option.js";
import { optionsFor } from "./options/index.js";
import { type Mended, mendedBy, type Tried } from "./singles.js";
import { graveTiers, mayFail } from "./standing.js";
import {
  goalsOf,
  type Stepped,
  type Stepping,
  slow,
  stepByStep,
  type Taken,
  wantedQuestions,
} from "./steps.js";
import type { StillTime } from "./still-time.js";
import { type Measures, measuresOf, withOptions } from "./trial.js";

/** What is looked for, and for how long. */
export interface Wanted {
  /** Tiers that must hold; safety and strength unless said. */
  readonly tiers?: readonly Tier[];
  /** Designs at the most; seven unless said. */
  readonly most?: number;
  /** Time for it, s; 60 unless said. What is found by then is kept. */
  readonly seconds?: number;
  /** Threads: two unless said, 1 to stay in this one. What is found is the same. */
  readonly threads?: number;
  /** Ends the search early; what is found by then is kept. */
  readonly signal?: AbortSignal;
  /** Told what is going on, and every verified design as it is found. */
  readonly onProgress?: (progress: Progress) => void;
}

/** What the search is at. */
export interface Progress {
  /** In words. */
  readonly words: string;
  /** Since it began, s. */
  readonly seconds: number;
  /** Verified designs so far. */
  readonly designs: number;
}

/** A case with changes, reviewed as a whole. */
export interface Improved {
  /** What is changed. */
  readonly options: readonly Option[];
  /** The changed case in memory. */
  readonly job: Job;
  /** What it costs, weighs and takes. */
  readonly measures: Measures;
  /** What weighs against other designs: differences from the case as it is, rules and changes counted. */
  readonly weights: Weights;
  /** Findings of the wanted tiers that do not hold for sure; empty for a design that is proposed. */
  readonly failing: readonly Finding[];
  /** Findings of these tiers that wait for a measurement. */
  readonly unknown: readonly Finding[];
}

/** What a search found. */
export interface Improvement {
  /** What the case costs, weighs and takes as it is. */
  readonly before: Measures;
  /** Findings of the wanted tiers that do not hold for sure as it is. */
  readonly failing: readonly Finding[];
  /** Verified designs that no other beats, the cheapest first. */
  readonly designs: readonly Improved[];
  /** The design that leaves least unmet, where none holds. */
  readonly nearest?: Improved;
  /** Findings that nothing known mends, alone or together. */
  readonly unmet: readonly Finding[];
  /** Where no design holds: the fewest findings of which each can be mended and not all together; else none. */
  readonly atOdds: readonly string[];
  /** How long it took, s. */
  readonly seconds: number;
  /** When the first verified design was there, s. */
  readonly firstAt?: number;
  /** Options that were offered, and how many of them no time was left for. */
  readonly offered: number;
  /** Options that no time was left for. */
  readonly untried: number;
  /** Options that were left out, as others of their kind promise more. */
  readonly leftOut: number;
  /** What the cheapest choice of what was tried costs more than the case as it is, added up change by change. */
  readonly leastAdded?: number;
  /** Whether the search went through all that it had offered. */
  readonly isWhole: boolean;
}

/**
 * Looks for the least changes of a case that make it hold. Ends when all that is known was tried, when time is up, or
 * when it is told to; a design is proposed only after a whole review in which nothing of the wanted tiers may fail.
 */
export async function improve(job: Job, wanted: Wanted = {}): Promise<Improvement> {
  return new Search(job, wanted).run();
}

class Search {
  readonly #job: Job;
  readonly #wanted: Wanted;
  readonly #start = performance.now();
  readonly #designs: Improved[] = [];
  readonly #asking: Asking;
  #nearest: Improved | undefined;
  #firstAt: number | undefined;
  #offered = 0;
  #untried = 0;
  #leftOut = 0;
  #leastAdded: number | undefined;
  #before: Measures | undefined;
  #atOdds: readonly string[] = [];

  constructor(job: Job, wanted: Wanted) {
    this.#job = job;
    this.#wanted = wanted;
    this.#asking = new Asking(wanted.threads ?? 2);
  }

  async run(): Promise<Improvement> {
    try {
      return await this.#found();
    } finally {
      await this.#asking.end();
    }
  }

  async #found(): Promise<Improvement> {
    this.#tell("reviewing the case as it is");
    const dear = [...wantedQuestions(this.#job, this.#stepping())].filter((id) => slow.has(id));
    this.#asking.begin(this.#job, dear);
    const first = await stepByStep(this.#job, [], this.#stepping());
    this.#before = measuresOf(this.#job);
    if (first.taken.length > 0) this.#keep(first);
    const open = first.taken.length > 0 ? await this.#asItIs() : first.open;
    if (!this.#stillTime()) return this.#outcome(open.filter(mayFail));
    if (this.#designs.length > 0) await this.#others(first.taken, open);
    else if (this.#nearest) await this.#sayWhy(first, open);
    return this.#outcome(open.filter(mayFail));
  }

  /** What does not hold of the case as it is. */
  async #asItIs(): Promise<readonly Finding[]> {
    const { isWanted, ask, askAside } = this.#stepping();
    return [
      ...(await goalsOf(this.#job, (id) => !slow.has(id), { isWanted, ask })),
      ...(await goalsOf(this.#job, (id) => slow.has(id), { isWanted, ask: askAside })),
    ];
  }

  #stepping(): Stepping {
    const { tiers = graveTiers } = this.#wanted;
    return {
      isWanted: ({ tier }) => tiers.includes(tier),
      stillTime: this.#stillTime,
      tell: (words) => this.#tell(words),
      ask: this.#asking.both,
      askAside: this.#asking.there,
    };
  }

  /** Other designs: what else mends each finding that the first design mends, put together anew and reviewed whole. */
  async #others(taken: readonly Taken[], open: readonly Finding[]): Promise<void> {
    const options = optionsFor(this.#job, open);
    this.#offered += options.length;
    this.#tell(`trying ${options.length} other changes`);
    const { mended, untried, leftOut } = await mendedBy(options, this.#trying(taken));
    this.#untried += untried;
    this.#leftOut += leftOut;
    const own = taken.map(({ option, mends }): Mended => ({ option, mends }));
    const all = [...own, ...mended.filter(({ option }) => !own.some((one) => one.option.id === option.id))];
    const goals = [...new Set(taken.flatMap(({ mends }) => [...mends]))];
    for (const cover of this.#choices(goals, all)) {
      if (!this.#stillTime()) return;
      this.#keep(await stepByStep(this.#job, cover, this.#stepping()));
    }
  }

  #trying(taken: readonly Taken[]): Tried {
    return { job: this.#job, taken, stillTime: this.#stillTime, lanes: this.#asking.lanes };
  }

  /** Where no design holds: the fewest findings that nothing offered mends together. */
  async #sayWhy({ taken, open: left }: Stepped, open: readonly Finding[]): Promise<void> {
    const failing = left.filter(mayFail).map(({ id }) => id);
    const options = optionsFor(this.#job, open);
    const { mended, untried } = await mendedBy(options, { ...this.#trying(taken), wanted: failing });
    this.#untried += untried;
    if (untried > 0) return;
    const goals = [...new Set([...failing, ...taken.flatMap(({ mends }) => [...mends])])];
    const all = [...taken, ...mended].map(
      ({ option, mends }): Candidate => ({ ...option, mends, weights: noWeights }),
    );
    this.#atOdds = fewestAtOdds(
      goals.filter((id) => all.some(({ mends }) => mends.has(id))),
      all,
    );
  }

  /** The least choices of changes, those that lie furthest apart first. */
  #choices(goals: readonly string[], mended: readonly Mended[]): readonly (readonly Taken[])[] {
    const byId = new Map(mended.map((one) => [one.option.id, one]));
    const covers = leastCovers(goals, this.#weighed(mended));
    const costs = covers.map(({ weights }) => weights.cost);
    if (costs.length > 0) this.#leastAdded = Math.min(...costs);
    return spread(covers, this.#most()).map(({ chosen }) => chosen.flatMap(({ id }) => byId.get(id) ?? []));
  }

  #most(): number {
    return this.#wanted.most ?? 7;
  }

  readonly #stillTime: StillTime = () =>
    !this.#wanted.signal?.aborted && this.#seconds() < (this.#wanted.seconds ?? 60);

  #seconds(): number {
    return (performance.now() - this.#start) / 1000;
  }

  #tell(words: string): void {
    const { onProgress } = this.#wanted;
    onProgress?.({ words, seconds: this.#seconds(), designs: this.#designs.length });
  }

  #weighed(mended: readonly Mended[]): readonly Candidate[] {
    const useful = mended.filter(({ mends }) => mends.size > 0);
    return useful.map(({ option, mends }) => ({
      id: option.id,
      lever: option.lever,
      mends,
      weights: this.#weightsOf([option], withOptions(this.#job, [option])),
    }));
  }

  #weightsOf(options: readonly Option[], job: Job | undefined): Weights {
    const now = job && needsPlan(options) ? measuresOf(job) : this.#before;
    const from = this.#before;
    return {
      cost: now && from ? now.cost - from.cost : 0,
      mass: now && from ? now.mass - from.mass : 0,
      time: now && from ? now.time - from.time : 0,
      rules: options.filter(({ rule }) => rule).length,
      changes: options.length,
    };
  }

  #keep({ taken, job, open, isWhole, offered }: Stepped): void {
    this.#offered += offered;
    const options = taken.map(({ option }) => option);
    const [failing, unknown] = [open.filter(mayFail), open.filter(({ verdict }) => verdict === "unknown")];
    const measures = measuresOf(job);
    const weights = this.#weightsOf(options, job);
    const design: Improved = { options, job, measures, weights, failing, unknown };
    if (failing.length > 0 || !isWhole) {
      if (!this.#nearest || failing.length < this.#nearest.failing.length) this.#nearest = design;
      this.#tell(`${failing.length} findings left in a design of ${options.length} changes`);
      return;
    }
    this.#firstAt ??= this.#seconds();
    this.#designs.push(design);
    this.#tell(`verified a design of ${options.length} changes`);
  }

  #outcome(failing: readonly Finding[]): Improvement {
    const designs = [...undominated(this.#designs)].sort(byCost).slice(0, this.#most());
    const unmet = designs.length > 0 ? [] : (this.#nearest?.failing ?? failing);
    return {
      before: this.#before ?? measuresOf(this.#job),
      failing,
      designs,
      ...(designs.length === 0 && this.#nearest ? { nearest: this.#nearest } : {}),
      unmet,
      atOdds: designs.length > 0 ? [] : this.#atOdds,
      seconds: this.#seconds(),
      ...(this.#firstAt === undefined ? {} : { firstAt: this.#firstAt }),
      offered: this.#offered,
      untried: this.#untried,
      leftOut: this.#leftOut,
      ...(this.#leastAdded === undefined ? {} : { leastAdded: this.#leastAdded }),
      isWhole: this.#untried === 0 && this.#stillTime(),
    };
  }
}

/** Blocks of the case file of which nothing is bought, cut or fastened. */
const unplanned =
  /^(journey|services|demands|contents\.[^.]+\.(at|needs)|boards)(\.|$)|\.held(\.(lid|lid rated|rated))?$/;

/** Whether options change what the plan of purchases and work rests on. */
function needsPlan(options: readonly Option[]): boolean {
  return options.some(({ changes }) =>
    changes.some(
      (change) => change.kind === "edits" || typeof change.at !== "string" || !unplanned.test(change.at),
    ),
  );
}
