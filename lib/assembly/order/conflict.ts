/** The fewest needs that no order meets together: a circle of steps each of which must come before the next. */
import type { OrderNeed } from "./need.js";

/** Needs that no order meets together. */
export interface Conflict {
  /** Without any one of them the rest could be met. */
  readonly conflict: readonly OrderNeed[];
  /** Whether no fewer needs would do; false where the search was given up and these are merely none too many. */
  readonly fewest: boolean;
}

/** A need of a blocked step as numbers. */
interface Blocking {
  /** The need itself. */
  readonly need: OrderNeed;
  /** Needs alike have one number. */
  readonly number: number;
  /** The blocked steps of each of its lists. */
  readonly lists: readonly (readonly number[])[];
}

/** What is chosen so far: needs, and steps that wait for a need of their own. */
interface Choice {
  readonly needs: readonly Blocking[];
  /** Numbers of steps, the one that waits longest first. */
  readonly waiting: readonly number[];
  /** By number of a step, 1 for one that was chosen. */
  readonly steps: Uint8Array;
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
  const count = blocked.size;
  // Choices with fewer needs stand before those with more: each is looked at in its turn.
  const choices: Choice[] = Array.from({ length: count }, (_, step) => ({
    needs: [],
    waiting: [step],
    steps: new Uint8Array(count).fill(1, step, step + 1),
  }));
  const seen = new Set<string>();
  for (const [i, choice] of choices.entries()) {
    if (i >= mostChoices) break;
    const [step, ...waiting] = choice.waiting;
    if (step === undefined) return { conflict: choice.needs.map(({ need }) => need), fewest: true };
    for (const need of of.get(step) ?? []) {
      // Nobody gets to what would come after so many.
      if (choices.length > mostChoices) break;
      const needsOf = [...choice.needs, need];
      const told = numbersIn(needsOf.map(({ number }) => number));
      for (const next of grown({ ...choice, waiting, needs: needsOf }, need)) {
        const name = `${told};${numbersIn(next.waiting)}`;
        if (!seen.has(name)) choices.push(next);
        seen.add(name);
      }
    }
  }
  const all = [...of.values()].flat().map(({ need }) => need);
  return { conflict: withoutAny(blocked, all), fewest: false };
}

/** Numbers as a text, whatever their order. */
function numbersIn(numbers: readonly number[]): string {
  return Uint32Array.from(numbers).sort().join();
}

/** Needs that keep the blocked steps blocked, by number of their step: its place among the blocked. */
function blockingNeeds(
  blocked: ReadonlySet<string>,
  needs: readonly OrderNeed[],
): ReadonlyMap<number, readonly Blocking[]> {
  const numbers = new Map([...blocked].map((step, i) => [step, i]));
  const of = new Map<number, Blocking[]>();
  const alike = new Map<string, number>();
  for (const need of needs) {
    const step = numbers.get(need.step);
    if (step === undefined) continue;
    const lists = need.before.map((list) => list.flatMap((one) => numbers.get(one) ?? []));
    if (!lists.every((list) => list.length > 0)) continue;
    const name = JSON.stringify([need.step, need.before]);
    const number = alike.get(name) ?? alike.size;
    alike.set(name, number);
    const own = of.get(step) ?? [];
    own.push({ need, number, lists });
    of.set(step, own);
  }
  return of;
}

/** A choice with a step of each list of a need: one that is in it already, or each that might be. */
function grown(choice: Choice, { lists }: Blocking): readonly Choice[] {
  return lists.reduce<readonly Choice[]>(
    (choices, list) =>
      choices.flatMap((one) => {
        if (list.some((step) => one.steps[step] === 1)) return [one];
        return list.map((step) => ({
          ...one,
          waiting: [...one.waiting, step],
          steps: withStep(one.steps, step),
        }));
      }),
    [choice],
  );
}

function withStep(steps: Uint8Array, step: number): Uint8Array {
  const more = Uint8Array.from(steps);
  more[step] = 1;
  return more;
}

/** Needs of the blocked steps, less all that can be left out one by one. */
function withoutAny(blocked: ReadonlySet<string>, needs: readonly OrderNeed[]): readonly OrderNeed[] {
  let kept = needs;
  for (const need of needs) {
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
