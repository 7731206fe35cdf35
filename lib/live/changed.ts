/** What the last edit changed, in sentences: what no longer holds, what now holds, what moved, what it costs. */
import type { Verdict } from "../findings/index.js";
import { percent, verdictWords } from "../page/verdict.js";
import type { AnswerView, Totals } from "./messages.js";

/** One sentence about a change. */
export interface ChangeTold {
  /** The answer that changed; absent for a figure of the whole case. */
  readonly id?: string;
  /** What stands there now. */
  readonly verdict?: Verdict;
  /** From what to what. */
  readonly words: string;
}

/** Answers by their id. */
export type Answers = ReadonlyMap<string, AnswerView>;

/** A ratio that moved by less is called the same. */
const leastMove = 0.005;

/** What changed between two states of the answers, what turned worse or better first, then by how far it moved. */
export function changesTold(before: Answers, now: Answers): readonly ChangeTold[] {
  const told = [...now.values()].flatMap((answer) => {
    const old = before.get(answer.id);
    if (!old) return [{ weight: 2, told: newAnswer(answer) }];
    const moved = Math.abs((answer.ratio ?? 0) - (old.ratio ?? 0));
    const turned = old.verdict !== answer.verdict;
    if (!turned && (moved < leastMove || amountOf(old) === amountOf(answer))) return [];
    return [{ weight: turned ? 1e6 + moved : moved, told: moveOf(old, answer) }];
  });
  const gone = [...before.values()]
    .filter(({ id }) => !now.has(id))
    .map((old) => ({ weight: 1, told: { id: old.id, words: `${titleOf(old)}: no longer asked.` } }));
  return [...told, ...gone].sort((a, b) => b.weight - a.weight).map((one) => one.told);
}

/** What changed of the whole case. */
export function totalsTold(before: Totals | undefined, now: Totals | undefined): readonly ChangeTold[] {
  if (!before || !now) return [];
  const figures = [
    ["Size over metal", before.size, now.size],
    ["Weight", before.mass, now.mass],
    ["Material", before.cost, now.cost],
    ["Bench time", before.hours, now.hours],
  ] as const;
  return figures
    .filter(([, old, fresh]) => old !== fresh)
    .map(([what, old, fresh]) => ({ words: `${what}: ${old} to ${fresh}.` }));
}

function newAnswer(answer: AnswerView): ChangeTold {
  const { id, verdict } = answer;
  return { id, verdict, words: `${titleOf(answer)}: now asked. ${verdictWords[verdict]}.` };
}

function moveOf(old: AnswerView, answer: AnswerView): ChangeTold {
  const { id, verdict } = answer;
  const isSame = old.demand?.meaning === answer.demand?.meaning;
  const [from, to] = isSame ? [amountOf(old), amountOf(answer)] : [shareOf(old), shareOf(answer)];
  const moved = from !== to && from !== "" && to !== "" ? `${from} to ${to}` : "";
  const turned = old.verdict === verdict ? "" : `now: ${verdictWords[verdict].toLowerCase()}`;
  const title = isSame ? titleOf(answer) : answer.question.replace(/\?$/, "");
  return { id, verdict, words: `${title}: ${[moved, turned].filter(Boolean).join("; ")}.` };
}

function amountOf({ demand, ratio }: AnswerView): string {
  return demand ? demand.value : shareOf({ ratio });
}

function shareOf({ ratio }: { readonly ratio?: number | undefined }): string {
  return ratio === undefined ? "" : `${percent(ratio)} of the limit`;
}

/** What is asked, short: the subject, and the demand's meaning where it has one. */
function titleOf({ question, subject, demand }: AnswerView): string {
  return demand ? `${subject}, ${demand.meaning}` : question.replace(/\?$/, "");
}
