/** Runs cases of steps and needs: an order that meets all of them, or the fewest that no order meets. */
import { brokenNeeds, findOrder, type OrderNeed } from "../../../assembly/index.js";
import { casesOf, type FileCase, nameOf, numberOf } from "../cutting-cases.js";
import type { ReferenceOutcome } from "../outcome.js";
import { expectedOf, listOf } from "./outline-in-file.js";

/** One row a case; of an order that a case expects, step by step, another. */
export function orderOutcomes(content: unknown): readonly ReferenceOutcome[] {
  return casesOf(content).flatMap((one) => {
    const steps = listOf(one, "steps").map((key, rank) => ({ key: String(key), rank }));
    const needs = listOf(one, "needs").map((need) => needOf(need as FileCase, nameOf(one)));
    const order = findOrder(steps, needs);
    const expect = expectedOf(one);
    const about = { item: nameOf(one), error: "–", tolerance: "none", known: String(one.known ?? "") };
    const keys = order.kind === "found" ? order.steps.map(({ key }) => key) : [];
    const broken = order.kind === "found" ? brokenNeeds(keys, needs).length : 0;
    const ours = order.kind === "found" ? `order, ${broken} broken` : `none, ${order.conflict.length} needs`;
    const expected =
      expect.conflict === undefined ? "order, 0 broken" : `none, ${numberOf(expect, "conflict")} needs`;
    const found = { ...about, result: "order", expected, ours, holds: expected === ours };
    if (expect.order === undefined) return [found];
    const [wanted, got] = [listOf(expect, "order").join(", "), keys.join(", ")];
    return [found, { ...about, result: "steps", expected: wanted, ours: got, holds: wanted === got }];
  });
}

/** A need of a file: "before" is a step, a list of steps that must all come later, or "any" a list of such lists. */
function needOf(need: FileCase, name: string): OrderNeed {
  const { step, before, any, why = "" } = need;
  const lists = any === undefined ? [before] : listOf(need, "any");
  if (typeof step !== "string" || (any === undefined && before === undefined))
    throw new TypeError(
      `${name}: expected needs with "step" and "before" or "any", got ${JSON.stringify(need)}`,
    );
  return {
    step,
    before: lists.map((list) => (Array.isArray(list) ? list : [list]).map(String)),
    why: String(why),
  };
}
