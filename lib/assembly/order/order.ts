/**
 * An order of steps that meets every need, or the needs that no order meets. A need says that a step comes before all
 * the steps of at least one list: before the top goes on, or before both the door and the shelf.
 */
import { Refusal } from "../../refusal.js";
import { type Conflict, smallestConflict } from "./conflict.js";
import type { AssemblyStep, OrderNeed } from "./need.js";

/** The order, or why there is none. */
export type WorkOrder<Step extends AssemblyStep = AssemblyStep> =
  | {
      /** Every need is met. */
      readonly kind: "found";
      /** All the steps, from the first to the last. */
      readonly steps: readonly Step[];
    }
  | ({
      /** No order meets every need. */
      readonly kind: "none";
    } & Conflict);

/**
 * The needs that an order does not meet: the proof of an order is that there are none.
 *
 * @param keys the steps in their order
 */
export function brokenNeeds(keys: readonly string[], needs: readonly OrderNeed[]): readonly OrderNeed[] {
  const place = new Map(keys.map((key, i) => [key, i]));
  const at = (key: string): number => place.get(key) ?? Number.NaN;
  return needs.filter(({ step, before }) => !before.some((list) => list.every((one) => at(step) < at(one))));
}

/**
 * An order of all the steps that meets every need, as near to their ranks as the needs let it; or the needs that no
 * order meets. Exact: read from the last step back, a step may stand where one of its lists is all behind it, and what
 * may stand once may always stand, so that the first way tried is either whole or proves that there is none.
 *
 * @throws Refusal when two steps have one key, or a need names a step that is none
 * @example
 * const steps = [{ key: "put in the battery", rank: 2 }, { key: "close the top", rank: 1 }];
 * const needs = [{ step: "put in the battery", before: [["close the top"]], why: "no opening lets it in" }];
 * const order = findOrder(steps, needs);
 */
export function findOrder<Step extends AssemblyStep>(
  steps: readonly Step[],
  needs: readonly OrderNeed[],
): WorkOrder<Step> {
  const { order, open } = placedBackwards(steps, needs);
  return open.length === 0
    ? { kind: "found", steps: broughtForward(order, needs) }
    : { kind: "none", ...smallestConflict(new Set(open.map(({ key }) => key)), needs) };
}

/**
 * Whether an order meets every need; quicker than to find which needs none meets.
 *
 * @throws Refusal when two steps have one key, or a need names a step that is none
 */
export function hasOrder(steps: readonly AssemblyStep[], needs: readonly OrderNeed[]): boolean {
  return placedBackwards(steps, needs).open.length === 0;
}

/** Steps from the last backwards, and those that are left when none of them may stand. */
function placedBackwards<Step extends AssemblyStep>(
  steps: readonly Step[],
  needs: readonly OrderNeed[],
): { readonly order: readonly Step[]; readonly open: readonly Step[] } {
  checked(steps, needs);
  const sorted = steps.map((step, i) => ({ step, i })).sort((a, b) => a.step.rank - b.step.rank || a.i - b.i);
  const of = new Map<string, OrderNeed[]>(steps.map(({ key }) => [key, []]));
  for (const need of needs) of.get(need.step)?.push(need);
  const open = sorted.map(({ step }) => step);
  const behind = new Set<string>();
  const order: Step[] = [];
  const mayStand = ({ key }: Step): boolean =>
    (of.get(key) ?? []).every(({ before }) => before.some((list) => list.every((one) => behind.has(one))));
  for (;;) {
    const at = open.findLastIndex(mayStand);
    const [step] = at < 0 ? [] : open.splice(at, 1);
    if (step === undefined) return { order, open };
    behind.add(step.key);
    order.unshift(step);
  }
}

/**
 * An order with every step as near to its rank as it may be: of each need the list that the order meets is kept, and of
 * the steps that may come next the one with the lowest rank does.
 */
function broughtForward<Step extends AssemblyStep>(
  order: readonly Step[],
  needs: readonly OrderNeed[],
): readonly Step[] {
  const place = new Map(order.map(({ key }, i) => [key, i]));
  const at = (key: string): number => place.get(key) ?? 0;
  const waits = new Map<string, Set<string>>(order.map(({ key }) => [key, new Set()]));
  for (const { step, before } of needs)
    for (const later of before.find((list) => list.every((one) => at(step) < at(one))) ?? [])
      waits.get(later)?.add(step);
  // What others wait for is as urgent as they are.
  const urgent = new Map(order.map(({ key, rank }) => [key, rank]));
  const urgency = (key: string): number => urgent.get(key) ?? 0;
  for (const { key } of [...order].reverse())
    for (const one of waits.get(key) ?? []) urgent.set(one, Math.min(urgency(one), urgency(key)));
  const open = order
    .map((step, i) => ({ step, i }))
    .sort((a, b) => urgency(a.step.key) - urgency(b.step.key) || a.step.rank - b.step.rank || a.i - b.i);
  const done = new Set<string>();
  return order.map((fallback) => {
    const next = open.findIndex(({ step }) => [...(waits.get(step.key) ?? [])].every((one) => done.has(one)));
    const [found] = open.splice(next, 1);
    done.add(found?.step.key ?? fallback.key);
    return found?.step ?? fallback;
  });
}

function checked(steps: readonly AssemblyStep[], needs: readonly OrderNeed[]): void {
  const keys = new Set<string>();
  for (const { key } of steps) {
    if (keys.has(key)) throw new Refusal(`order of steps: "${key}" must stand once`);
    keys.add(key);
  }
  for (const { step, before } of needs)
    for (const key of [step, ...before.flat()])
      if (!keys.has(key)) throw new Refusal(`order of steps: a need names "${key}", which is no step`);
}
