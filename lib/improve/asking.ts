/** Who answers the questions about a case: this thread and another beside it, which keeps what it once worked out. */
import { host } from "#host";
import type { Texts } from "../design/index.js";
import type { Finding } from "../findings/index.js";
import type { WorkerThread } from "../host/contract.js";
import type { Job } from "../job/index.js";
import { answersOf } from "./trial.js";

/** What the other thread is asked. */
export interface AskedOfThread {
  /** Folder of the job, as its name. */
  readonly folder: string;
  /** The files of the case. */
  readonly texts: Texts;
  /** Ids of questions. */
  readonly questions: readonly string[];
}

/** What it answers: findings, or what went wrong. */
export type AnswerOfThread = { readonly findings: readonly Finding[] } | { readonly fault: string };

/** Asks questions of a case and gives the answers by their ids. */
export type Ask = (job: Job, questions: ReadonlySet<string>) => Promise<ReadonlyMap<string, Finding>>;

/** Questions that the other thread answers: those of the joined boxes, whose parts it then keeps. */
const elsewhere: ReadonlySet<string> = new Set([
  "joints.seams",
  "joints.box",
  "joints.handle-out",
  "joints.hinges",
  "strength.thrown",
  "strength.latch",
  "strength.panel",
]);

/** A finding as it is judged: without its working and its amounts, which no thread can hand to another. */
export function judgedPart(finding: Finding): Finding {
  const { figure: _, demand: __, capacity: ___, remedies, ...rest } = finding;
  return { ...rest, because: [], remedies: remedies.map(({ words }) => ({ words })) };
}

/** Answers of some questions of a case, worked out here, as they are judged. */
export function answersHere(
  { review }: Pick<Job, "review">,
  questions: ReadonlySet<string>,
): readonly Finding[] {
  return answersOf({ review }, questions).map(judgedPart);
}

/** This thread and, where one can be had, another. The answers are the same with and without it. */
export class Asking {
  #thread: WorkerThread | undefined;
  /** The other thread takes one task after another. */
  #last: Promise<unknown> = Promise.resolve();
  /** What the other thread was asked of each case. */
  readonly #asked = new WeakMap<Job["review"], Map<string, Promise<readonly Finding[]>>>();

  /** @param threads 1 to stay in this one */
  constructor(threads: number) {
    this.#thread =
      threads > 1 && host.pool.spare() > 1 ? host.pool.start("improve/asking-worker") : undefined;
  }

  /** Asks this thread and the other, each its own questions. */
  readonly both: Ask = async (job, questions) => {
    const theirs = this.#thread ? [...questions].filter((id) => elsewhere.has(id)) : [];
    const far = this.#far(job, theirs);
    const near = await this.here(job, new Set([...questions].filter((id) => !theirs.includes(id))));
    return byId(inOrder(job, [...near.values(), ...(await far)]));
  };

  /** Asks this thread, with room for others between two questions. */
  readonly here: Ask = async (job, questions) => {
    const findings: Finding[] = [];
    for (const id of questions) {
      findings.push(...answersHere(job, new Set([id])));
      await host.pool.pause();
    }
    return byId(inOrder(job, findings));
  };

  /** Asks the other thread. */
  readonly there: Ask = async (job, questions) => byId(inOrder(job, await this.#far(job, [...questions])));

  /** Ways to ask at the same time. */
  get lanes(): readonly Ask[] {
    return this.#thread ? [this.here, this.there] : [this.here];
  }

  /** Has the other thread begin with questions about a case, to be asked for later. */
  begin(job: Job, questions: readonly string[]): void {
    if (this.#thread) void this.#far(job, questions);
  }

  /** Ends the other thread, whatever it is doing. */
  async end(): Promise<void> {
    const thread = this.#thread;
    this.#thread = undefined;
    await thread?.end();
  }

  async #far(job: Job, questions: readonly string[]): Promise<readonly Finding[]> {
    const known = this.#asked.get(job.review) ?? new Map<string, Promise<readonly Finding[]>>();
    this.#asked.set(job.review, known);
    const open = questions.filter((id) => !known.has(id));
    for (const id of open) known.set(id, this.#posted(job, id));
    const lists = await Promise.all(questions.map((id) => known.get(id) ?? []));
    return lists.flat();
  }

  /** One question in its turn; worked out here where the other thread has ended. */
  #posted({ folder, texts, review }: Job, id: string): Promise<readonly Finding[]> {
    const asked: AskedOfThread = { folder, texts, questions: [id] };
    const answer = this.#last.then(async () => {
      const reply = await this.#thread?.ask(asked).catch(() => undefined);
      const told = reply as AnswerOfThread | undefined;
      return told && "findings" in told ? told.findings : answersHere({ review }, new Set([id]));
    });
    this.#last = answer.catch(() => undefined);
    return answer;
  }
}

/** In the order in which a review asks, whoever answered first. */
function inOrder({ review }: Job, findings: readonly Finding[]): readonly Finding[] {
  const at = new Map(review.steps.map(({ id }, i) => [id, i]));
  return [...findings].sort((one, other) => (at.get(one.asks) ?? 0) - (at.get(other.asks) ?? 0));
}

function byId(findings: readonly Finding[]): ReadonlyMap<string, Finding> {
  return new Map(findings.map((one) => [one.id, one]));
}
