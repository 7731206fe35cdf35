/** The fewest needs that no order meets together: a circle of steps each of which must come before the next. */
import type { OrderNeed } from "./need.js";

/** Needs that no order meets together. */
export interface Conflict {
  /** Without any one of them the rest could be met. */
  readonly conflict: readonly OrderNeed[];
  /** Whether no fewer needs would do; false where the search was given up and these are merely none too many. */
  readonly fewest: boolean;
}

/** What is chosen so far: needs, and steps that wait for a need of their own. */
interface Choice {
  readonly needs: readonly OrderNeed[];
  readonly waiting: readonly string[];
  readonly steps: ReadonlySet<string>;
}

/** Choices that are looked at before the search is given up. */
const mostChoices = 4000;

/**
 * The fewest needs that keep some steps out of every order. A set of needs is unmet by every order just where each list
 * of each of them names a step with a need of the set. Such sets are grown from one step, least first.
 *
 * @param blocked steps none of which can come last among themselves
 */
export function smallestConflict(blocked: ReadonlySet<string>, needs: readonly OrderNeed[]): Conflict {
  const of = blockingNeeds(blocked, needs);
  const layers: Choice[][] = [
    [...blocked].map((step) => ({ needs: [], waiting: [step], steps: new Set([step]) })),
  ];
  const seen = new Set<string>();
  const nameOf = namer();
  let looked = 0;
  for (let size = 0; size < layers.length; size++)
    for (const choice of layers[size] ?? []) {
      const [step, ...waiting] = choice.waiting;
      if (step === undefined) return { conflict: choice.needs, fewest: true };
      if (++looked > mostChoices) return { conflict: withoutAny(blocked, of), fewest: false };
      for (const need of of.get(step) ?? [])
        for (const next of grown({ ...choice, waiting, needs: [...choice.needs, need] }, need, blocked)) {
          const name = nameOf(next);
          if (seen.has(name)) continue;
          seen.add(name);
          const layer = layers[size + 1] ?? [];
          layer.push(next);
          layers[size + 1] = layer;
        }
    }
  return { conflict: withoutAny(blocked, of), fewest: false };
}

/** Names choices alike that have the same needs, told in full or once more, and wait for the same steps. */
function namer(): (choice: Choice) => string {
  const numbers = new Map<string, number>();
  const numbered = (words: string): number => {
    const known = numbers.get(words) ?? numbers.size;
    numbers.set(words, known);
    return known;
  };
  const needNumbers = new Map<OrderNeed, number>();
  const numberOf = (need: OrderNeed): number => {
    const known =
      needNumbers.get(need) ??
      numbered(`${need.step}<${need.before.map((list) => list.join("&")).join("|")}`);
    needNumbers.set(need, known);
    return known;
  };
  return ({ needs, waiting }) => {
    const [told, open] = [needs.map(numberOf), waiting.map(numbered)];
    return `${told.sort((a, b) => a - b)};${open.sort((a, b) => a - b)}`;
  };
}

/** Needs of the blocked steps that keep them blocked, by step. */
function blockingNeeds(
  blocked: ReadonlySet<string>,
  needs: readonly OrderNeed[],
): ReadonlyMap<string, readonly OrderNeed[]> {
  const of = new Map<string, OrderNeed[]>();
  for (const need of needs) {
    if (!blocked.has(need.step)) continue;
    if (need.before.every((list) => list.some((one) => blocked.has(one))))
      of.set(need.step, [...(of.get(need.step) ?? []), need]);
  }
  return of;
}

/** A choice with a step of each list of a need: one that is in it already, or each that might be. */
function grown(choice: Choice, { before }: OrderNeed, blocked: ReadonlySet<string>): readonly Choice[] {
  return before.reduce<readonly Choice[]>(
    (choices, list) =>
      choices.flatMap((one) => {
        if (list.some((step) => one.steps.has(step))) return [one];
        return list
          .filter((step) => blocked.has(step))
          .map((step) => ({
            ...one,
            waiting: [...one.waiting, step],
            steps: new Set([...one.steps, step]),
          }));
      }),
    [choice],
  );
}

/** Needs of the blocked steps, less all that can be left out one by one. */
function withoutAny(
  blocked: ReadonlySet<string>,
  of: ReadonlyMap<string, readonly OrderNeed[]>,
): readonly OrderNeed[] {
  let kept = [...of.values()].flat();
  for (const need of [...kept]) {
    const fewer = kept.filter((one) => one !== need);
    if (isBlocked(fewer, blocked)) kept = fewer;
  }
  return kept;
}

/** Whether no order of some steps meets the needs. */
function isBlocked(needs: readonly OrderNeed[], steps: ReadonlySet<string>): boolean {
  const open = new Set(steps);
  for (let before = -1; before !== open.size; ) {
    before = open.size;
    const held = new Set(
      needs
        .filter((need) => need.before.every((list) => list.some((one) => open.has(one))))
        .map(({ step }) => step),
    );
    for (const step of open) if (!held.has(step)) open.delete(step);
  }
  return open.size > 0;
}
