/** Answers that are worked out once for several threads: each hands the others what it has found. */
import { contentKey, putLast } from "./by-content.js";

/** An answer that was worked out elsewhere: plain data, so that it can be sent. */
export interface HandedAnswer {
  /** Name of the work that it is an answer of. */
  readonly work: string;
  /** The content of its inputs. */
  readonly key: string;
  /** The answer. */
  readonly answer: unknown;
}

/** What is kept of one work. */
interface Kept {
  readonly answers: Map<string, unknown>;
  /** Keys of answers that were worked out here and are not handed over yet. */
  readonly fresh: Set<string>;
  readonly most: number;
}

const works = new Map<string, Kept>();

/**
 * Keeps answers as `keptByContent` does, and hands them over to other threads that work on the same case.
 *
 * @param name of the work, the same in every thread
 * @param most answers kept; the one longest not asked for goes first
 * @param work from inputs to answer, both plain data; pure. An error it throws is not kept
 */
export function keptForAll<Inputs, Answer>(
  name: string,
  most: number,
  work: (inputs: Inputs) => Answer,
): (inputs: Inputs) => Answer {
  const kept: Kept = { answers: new Map(), fresh: new Set(), most };
  works.set(name, kept);
  return (inputs) => {
    const key = contentKey(inputs);
    const isKnown = kept.answers.has(key);
    const answer = isKnown ? (kept.answers.get(key) as Answer) : work(inputs);
    put(kept, key, answer);
    if (!isKnown) kept.fresh.add(key);
    return answer;
  };
}

/** The answers worked out here since they were last handed over. */
export function answersToHandOver(): readonly HandedAnswer[] {
  return [...works].flatMap(([work, { answers, fresh }]) => {
    const handed = [...fresh].map((key) => ({ work, key, answer: answers.get(key) }));
    fresh.clear();
    return handed;
  });
}

/** Takes answers that were worked out elsewhere. */
export function takeAnswers(handed: readonly HandedAnswer[]): void {
  for (const { work, key, answer } of handed) {
    const kept = works.get(work);
    if (kept && !kept.answers.has(key)) put(kept, key, answer);
  }
}

/** Keeps an answer; what goes for it is handed over no more. */
function put({ answers, fresh, most }: Kept, key: string, answer: unknown): void {
  const gone = putLast(answers, most, key, answer);
  if (gone !== undefined) fresh.delete(gone);
}
