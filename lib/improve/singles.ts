/** What each option mends by itself, tried side by side: one trial holds options that no finding has in common. */
import { host } from "#host";
import type { Job } from "../job/index.js";
import type { Option } from "./option.js";
import { holdsForSure } from "./standing.js";
import { questionsOfIds, type Taken } from "./steps.js";
import { answersOf, withOptions } from "./trial.js";

/** An option with the findings that hold with it. */
export type Mended = Taken;

/** Whether there is still time, asked between two pieces of work. */
export type StillTime = () => boolean;

/**
 * Options in as few trials as possible, so that no two of a trial share a lever or a finding: what then holds is the
 * doing of one of them.
 *
 * @param touches the findings that an option may change
 */
export function sideBySide(
  options: readonly Option[],
  touches: (option: Option) => readonly string[] = ({ helps }) => helps,
): readonly (readonly Option[])[] {
  const trials: { readonly options: Option[]; readonly taken: Set<string> }[] = [];
  for (const option of options) {
    const takes = [`lever ${option.lever}`, ...touches(option)];
    const free = trials.find(({ taken }) => !takes.some((one) => taken.has(one)));
    const trial = free ?? { options: [], taken: new Set<string>() };
    if (!free) trials.push(trial);
    trial.options.push(option);
    for (const one of takes) trial.taken.add(one);
  }
  return trials.map((trial) => trial.options);
}

/**
 * Tries options in the place of changes of a design that are there for the same findings, or move the same thing, and
 * tells what each then mends; the rest of the design stays, and only the questions concerned are asked.
 *
 * @param taken the design
 * @param wanted ids of findings that matter beside those that the design mends
 * @param stillTime when it says no, what is left is not tried
 */
export async function mendedBy(
  job: Job,
  taken: readonly Taken[],
  options: readonly Option[],
  stillTime: StillTime,
  wanted: readonly string[] = [],
): Promise<{ readonly mended: readonly Mended[]; readonly untried: number }> {
  const mended: Mended[] = [];
  let untried = 0;
  const goals = new Set([...wanted, ...taken.flatMap(({ mends }) => [...mends])]);
  const others = options.filter(
    ({ id, helps }) => helps.some((one) => goals.has(one)) && !taken.some(({ option }) => option.id === id),
  );
  const queue = [...sideBySide(others, (option) => touchedBy(option, taken, goals))];
  for (let trial = queue.shift(); trial; trial = queue.shift()) {
    await host.pool.pause();
    if (!stillTime()) {
      untried += trial.length;
      continue;
    }
    const rest = taken.filter((one) => !trial.some((option) => isReplaced(one, option)));
    const tried = withOptions(job, [...rest.map(({ option }) => option), ...trial]);
    if (tried) mended.push(...outcomes(tried, trial, taken, goals));
    else if (trial.length > 1) queue.unshift(...halves(trial));
  }
  return { mended, untried };
}

function isReplaced({ option, mends }: Taken, other: Option): boolean {
  return option.lever === other.lever || other.helps.some((id) => mends.has(id));
}

/** The findings that an option, and what it takes the place of, are there for. */
function touchedBy(option: Option, taken: readonly Taken[], goals: ReadonlySet<string>): readonly string[] {
  const replaced = taken.filter((one) => isReplaced(one, option));
  return [
    ...new Set([
      ...option.helps.filter((id) => goals.has(id)),
      ...replaced.flatMap(({ mends }) => [...mends]),
    ]),
  ];
}

function halves(trial: readonly Option[]): readonly (readonly Option[])[] {
  const middle = Math.ceil(trial.length / 2);
  return [trial.slice(0, middle), trial.slice(middle)];
}

function outcomes(
  tried: Job,
  trial: readonly Option[],
  taken: readonly Taken[],
  goals: ReadonlySet<string>,
): readonly Mended[] {
  const touched = trial.map((option) => touchedBy(option, taken, goals));
  const asked = questionsOfIds(tried, touched.flat());
  const answers = new Map(answersOf(tried, asked).map((finding) => [finding.id, finding]));
  return trial.map((option, i): Mended => {
    const mends = (touched[i] ?? []).filter((id) => {
      const answer = answers.get(id);
      return answer === undefined || holdsForSure(answer);
    });
    return { option, mends: new Set(mends) };
  });
}
