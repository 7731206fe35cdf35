/** What is told of load cases of the joined boxes that tip before their whole push, or have no answer. */
import type { CaseRun } from "../model/index.js";
import { Force, type ShowStyle } from "../quantity/index.js";
import { Refusal } from "../refusal.js";
import type { Citation } from "../source.js";
import { capitalised } from "./amount.js";
import type { Refused } from "./question.js";

/** Which load cases a question looks at. */
export type Chosen = (loadCase: { readonly id: string }) => boolean;

/** Sentences on load cases that tip before their whole push, and on those without an answer. */
export function besideOutcomes({ cases, unanswered }: CaseRun, chosen: Chosen, style: ShowStyle): string {
  const tipping = cases
    .filter(chosen)
    .flatMap(({ title, tips }) =>
      tips === undefined
        ? []
        : [` ${capitalised(title)}: that is at ${Force.show(tips, style)}, less than the push asked for.`],
    );
  const open = unanswered.filter(chosen);
  const reasons = [...new Set(open.map(({ why }) => why))].map((why) => {
    const titles = open.flatMap((one) => (one.why === why ? [one.title] : []));
    return ` Not worked out: ${titles.join("; ")}. ${capitalised(why)}.`;
  });
  return [...tipping, ...reasons].join("");
}

/**
 * What is answered where no load case is left: no, where it falls over or open in one.
 *
 * @param none what would give an answer where nothing was tried
 * @throws Refusal where the boxes are held too loosely to say
 */
export function withoutOutcomes(
  { unanswered }: CaseRun,
  chosen: Chosen,
  none: string,
  limit: Citation,
): Refused {
  const open = unanswered.filter(chosen);
  const [first = open[0]] = open.filter(({ givesWay }) => givesWay);
  if (!first?.givesWay) throw new Refusal(first?.why ?? none);
  return { plainNo: true, facts: `${capitalised(first.title)}: ${first.why}.`, because: [], limit };
}
