/** Answers kept under what they were worked out from, whichever object said it. */

/**
 * Keeps the answers that were asked for last under the content of their inputs.
 *
 * The inputs are plain data (numbers, texts, lists and records of them); what is no data in them, such as a function,
 * has no say in the answer. Answers are handed out as they are, so nobody may change one.
 *
 * @param most answers kept; the one longest not asked for goes first
 * @param work from inputs to answer; pure. An error it throws is not kept
 */
export function keptByContent<Inputs, Answer>(
  most: number,
  work: (inputs: Inputs) => Answer,
): (inputs: Inputs) => Answer {
  const kept = new Map<string, { readonly answer: Answer }>();
  return (inputs) => {
    const key = contentKey(inputs);
    const found = kept.get(key) ?? { answer: work(inputs) };
    putLast(kept, most, key, found);
    return found.answer;
  };
}

/**
 * Puts what was asked for last at the end of the row of those to go.
 *
 * @param most so many are kept
 * @returns the key of the one that went; nothing where there was room
 */
export function putLast<Value>(
  kept: Map<string, Value>,
  most: number,
  key: string,
  value: Value,
): string | undefined {
  kept.delete(key);
  kept.set(key, value);
  if (kept.size <= most) return undefined;
  const oldest = firstOf(kept.keys());
  kept.delete(oldest);
  return oldest;
}

/**
 * Keeps the answers to the lists that were asked for last, each under the content of its inputs, as `keptByContent`
 * does. However long the lists are, each finds what it has in common with those before it.
 *
 * @param most lists whose answers are kept
 * @param work from inputs to answer; pure. An error it throws is not kept
 */
export function keptByLists<Inputs, Answer>(
  most: number,
  work: (inputs: Inputs) => Answer,
): (list: readonly Inputs[]) => readonly Answer[] {
  const kept = new Map<string, { readonly answer: Answer; readonly asked: number }>();
  let lists = 0;
  return (list) => {
    lists++;
    const answers = list.map((inputs) => {
      const key = contentKey(inputs);
      const found = kept.get(key) ?? { answer: work(inputs) };
      kept.set(key, { ...found, asked: lists });
      return found.answer;
    });
    for (const [key, { asked }] of kept) if (asked <= lists - most) kept.delete(key);
    return answers;
  };
}

/** A text that is the same for what says the same. */
export function contentKey(inputs: unknown): string {
  return JSON.stringify(inputs, unambiguous);
}

/** What JSON would write as null says what it is. */
function unambiguous(_: string, value: unknown): unknown {
  return typeof value === "number" && !Number.isFinite(value) ? String(value) : value;
}

function firstOf(keys: IterableIterator<string>): string {
  const { value = "" } = keys.next();
  return value;
}
