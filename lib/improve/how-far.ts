/** How far each number of a case may go until something stops holding, by bracketing on the real review. */
import { host } from "#host";
import { set } from "../design/index.js";
import type { Finding } from "../findings/index.js";
import type { Job } from "../job/index.js";
import { ProblemsError } from "../problem.js";
import { type CaseNumber, numbersOf, writtenNumber } from "./numbers.js";
import { graveTiers, holdsForSure, overBy } from "./standing.js";
import { bends, questionsOfIds } from "./steps.js";
import { type SearchBounds, stillTimeFor } from "./still-time.js";
import { answersOf } from "./trial.js";

/** What is asked. */
export interface HowFarAsked extends SearchBounds {
  /** Words that the places of the numbers have in this order, joined by dots; all of the case file unless said. */
  readonly places?: readonly string[];
  /**
   * Questions whose answers are looked at; unless said all that are quick and, where places are named, those that bend
   * panels and boxes too.
   */
  readonly questions?: readonly string[];
  /** Told which number is looked at. */
  readonly onProgress?: (words: string) => void;
}

/** Where a number stops, one way. */
export interface Stop {
  /** The last value tried with which all holds, as it is written in the file. */
  readonly holdsAt: string;
  /** The first value tried with which something does not; absent where nothing stopped holding. */
  readonly failsAt?: string;
  /** What then does not hold: ids of findings; empty where the case itself can go no further. */
  readonly fails: readonly string[];
  /** Why it can go no further, where the files then have a problem. */
  readonly because?: string;
  /** Whether every demand over capacity rose or fell steadily over what was tried. */
  readonly steady: boolean;
}

/** How far one number may go. */
export interface Reach {
  /** The number. */
  readonly number: CaseNumber;
  /** Upwards; absent where nothing that was asked depends on it. */
  readonly up?: Stop;
  /** Downwards. */
  readonly down?: Stop;
}

/** A number that moves a finding. */
export interface Mover {
  /** Its place. */
  readonly place: string;
  /** Per cent that demand over capacity changes with one per cent of the number. */
  readonly elasticity: number;
}

/** What moves a finding most. */
export interface Moved {
  /** The finding. */
  readonly id: string;
  /** At most three numbers, those that move it most first. */
  readonly movers: readonly Mover[];
}

/** What was found. */
export interface HowFar {
  /** By number, in the order of the file; those on which nothing depends are left out. */
  readonly reaches: readonly Reach[];
  /** By finding. */
  readonly moved: readonly Moved[];
  /** Numbers that no time was left for. */
  readonly untried: number;
  /** Questions that were looked at. */
  readonly questions: readonly string[];
}

/** Questions that look at every solid, and those of money: asked only where they are named. */
const leftOut = /^(assembly|money)\b/;

function questionsFor(job: Job, { questions, places }: HowFarAsked): readonly string[] {
  if (questions) return questions;
  const all = job.review.steps.map(({ id }) => id).filter((id) => !leftOut.test(id));
  return places ? all : all.filter((id) => !bends(id));
}

/** What the findings that are looked at come to. */
interface State {
  /** How far over each is, by id; nothing for one that is not compared. */
  readonly overs: ReadonlyMap<string, number | undefined>;
  /** Ids of those that hold for sure. */
  readonly holding: ReadonlySet<string>;
}

/** A value tried: its state, or why the files then have a problem. */
type Tried = { readonly state: State } | { readonly why: string };

/**
 * Tries each number of a case upwards and downwards until something stops holding that held, and tells what moves each
 * finding most. The last value that holds and the first that does not are both tried, never reckoned.
 */
export async function howFar(job: Job, asked: HowFarAsked = {}): Promise<HowFar> {
  const stillTime = stillTimeFor(asked);
  const questions = questionsFor(job, asked);
  const base = stateOf(job, questions);
  const numbers = numbersOf(job.texts).filter(
    ({ place }) => asked.places === undefined || asked.places.some((words) => hasWords(place, words)),
  );
  const found: Found[] = [];
  for (const number of numbers) {
    if (!stillTime()) break;
    asked.onProgress?.(number.place);
    await host.pool.pause();
    found.push(reachOf(new Trials(job, number, questions), base));
  }
  return {
    reaches: found.map(({ reach }) => reach).filter(({ up, down }) => up !== undefined || down !== undefined),
    moved: movedBy(base, found),
    untried: numbers.length - found.length,
    questions,
  };
}

function hasWords(place: string, words: string): boolean {
  const steps = place.split(".");
  let from = 0;
  return words.split(".").every((word) => {
    from = steps.indexOf(word, from) + 1;
    return from > 0;
  });
}

/** Answers of a job to some questions. */
function stateOf(job: Job, questions: readonly string[]): State {
  const findings = answersOf(job, new Set(questions)).filter(
    ({ tier, verdict }) => graveTiers.includes(tier) && verdict !== "unknown" && verdict !== "broken",
  );
  return {
    overs: new Map(findings.map((one: Finding) => [one.id, overBy(one)])),
    holding: new Set(findings.filter(holdsForSure).map(({ id }) => id)),
  };
}

/** One number of a job with other values, each tried once. */
class Trials {
  readonly number: CaseNumber;
  readonly #job: Job;
  readonly #tried = new Map<string, Tried>();
  #questions: readonly string[];

  constructor(job: Job, number: CaseNumber, questions: readonly string[]) {
    this.#job = job;
    this.number = number;
    this.#questions = questions;
  }

  /** Of what bends panels and boxes, asks from now on only what some findings answer. */
  narrow(ids: readonly string[]): void {
    const moved = questionsOfIds(this.#job, ids);
    this.#questions = this.#questions.filter((one) => !bends(one) || moved.has(one));
  }

  at(value: number): Tried {
    const text = writtenNumber(this.number, value);
    const before = this.#tried.get(text);
    if (before) return before;
    const made = this.#try(text);
    this.#tried.set(text, made);
    return made;
  }

  /** @throws whatever is no problem of the files */
  #try(text: string): Tried {
    try {
      return { state: stateOf(this.#job.with(set(this.number.place, text)), this.#questions) };
    } catch (error) {
      if (error instanceof ProblemsError) return { why: error.problems[0]?.expected ?? error.message };
      if (error instanceof RangeError) return { why: error.message };
      throw error;
    }
  }
}

/** A number with how far it goes and what it moves. */
interface Found {
  readonly reach: Reach;
  readonly movers: ReadonlyMap<string, Mover>;
}

/** A small step, as a share. */
const small = 0.02;
/** Shares by which a number is moved until something stops holding. */
const strides = [1.02, 1.1, 1.25, 1.5, 2, 3, 5, 8] as const;

function reachOf(trials: Trials, base: State): Found {
  const { number } = trials;
  const movers = moversOf(trials, base);
  if (movers.size === 0) return { reach: { number }, movers };
  trials.narrow([...movers.keys()]);
  const up = stopOf(trials, base, (stride) => stepped(number, number.value * stride, 1));
  const down = stopOf(trials, base, (stride) => stepped(number, number.value / stride, -1));
  return { reach: { number, up, down }, movers };
}

/** Counts go by one at least. */
function stepped({ counts, value }: CaseNumber, to: number, way: 1 | -1): number {
  if (!counts) return to;
  const whole = Math.round(to);
  return whole === value ? value + way : whole;
}

/** What a small step of the number moves, either way where the other cannot be had. */
function moversOf(trials: Trials, base: State): ReadonlyMap<string, Mover> {
  const { number } = trials;
  const ways = [
    stepped(number, number.value * (1 + small), 1),
    stepped(number, number.value * (1 - small), -1),
  ];
  for (const to of ways) {
    const tried = trials.at(to);
    if (!("state" in tried) || number.value === 0) continue;
    return new Map(
      [...base.overs].flatMap(([id, before]) => {
        const after = tried.state.overs.get(id);
        if (before === undefined || after === undefined || before <= 0 || after <= 0) return [];
        const elasticity = Math.log(after / before) / Math.log(to / number.value);
        return Math.abs(elasticity) < leastElasticity
          ? []
          : [[id, { place: number.place, elasticity }] as const];
      }),
    );
  }
  return new Map();
}

/** Less than this is round-off of a value written to a few figures. */
const leastElasticity = 0.002;

function holdsAll(base: State, tried: Tried): boolean {
  return "state" in tried && brokenBy(base, tried).length === 0;
}

/** What held and no longer does; what is no longer asked is not broken. */
function brokenBy(base: State, tried: Tried): readonly string[] {
  if (!("state" in tried)) return [];
  const { overs, holding } = tried.state;
  return [...base.holding].filter((id) => overs.has(id) && !holding.has(id));
}

/** Between the last that holds and the first that does not, as a share of the number. */
const nearEnough = 0.005;
const mostHalvings = 12;

function stopOf(trials: Trials, base: State, at: (stride: number) => number): Stop {
  const { number } = trials;
  const tries: AtValue[] = [];
  const holdsAt = (value: number): boolean => {
    const tried = trials.at(value);
    tries.push({ value, tried });
    return holdsAll(base, tried);
  };
  const values = strides.map(at);
  const first = values.findIndex((value) => !holdsAt(value));
  const last = values[first < 0 ? values.length - 1 : first - 1] ?? number.value;
  const outside = values[first];
  if (outside === undefined) {
    return { holdsAt: writtenNumber(number, last), fails: [], steady: isSteady(tries) };
  }
  const [inside, beyond] = halved(number, last, outside, holdsAt);
  const tried = trials.at(beyond);
  return {
    holdsAt: writtenNumber(number, inside),
    failsAt: writtenNumber(number, beyond),
    fails: brokenBy(base, tried),
    ...("why" in tried ? { because: tried.why } : {}),
    steady: isSteady(tries),
  };
}

/** Halves what lies between a value that holds and one that does not. */
function halved(
  number: CaseNumber,
  holding: number,
  failing: number,
  holdsAt: (value: number) => boolean,
): readonly [number, number] {
  let [inside, outside] = [holding, failing];
  for (let i = 0; i < mostHalvings && !isNear(number, inside, outside); i++) {
    const between = (inside + outside) / 2;
    const middle = number.counts ? Math.round(between) : between;
    if (holdsAt(middle)) inside = middle;
    else outside = middle;
  }
  return [inside, outside];
}

function isNear({ counts, value }: CaseNumber, inside: number, outside: number): boolean {
  const gap = Math.abs(outside - inside);
  return counts ? gap <= 1 : gap <= nearEnough * Math.abs(value);
}

/** A value with what it gave. */
interface AtValue {
  readonly value: number;
  readonly tried: Tried;
}

/** Whether every ratio goes one way over the values that were tried. */
function isSteady(tries: readonly AtValue[]): boolean {
  const states = [...tries]
    .sort((one, other) => one.value - other.value)
    .flatMap(({ tried }) => ("state" in tried ? [tried.state] : []));
  const ids = new Set(states.flatMap(({ overs }) => [...overs.keys()]));
  return [...ids].every((id) => {
    const values = states.flatMap(({ overs }) => overs.get(id) ?? []);
    const steps = values.slice(1).map((value, i) => value - (values[i] ?? value));
    return steps.every((step) => step >= -1e-9) || steps.every((step) => step <= 1e-9);
  });
}

/** How many numbers are told of a finding. */
const mostMovers = 3;

function movedBy(base: State, found: readonly Found[]): readonly Moved[] {
  return [...base.overs.keys()].flatMap((id): Moved[] => {
    const movers = found
      .flatMap((one) => one.movers.get(id) ?? [])
      .sort((one, other) => Math.abs(other.elasticity) - Math.abs(one.elasticity))
      .slice(0, mostMovers);
    return movers.length > 0 ? [{ id, movers }] : [];
  });
}
