/** What each option mends by itself, tried side by side: one trial holds options that no finding has in common. */
import { host } from "#host";
import type { Job } from "../job/index.js";
import type { Ask } from "./asking.js";
import type { Option } from "./option.js";
import { holdsForSure } from "./standing.js";
import { questionsOfIds, type Taken } from "./steps.js";
import type { StillTime } from "./still-time.js";
import { withOptions } from "./trial.js";

/** An option with the findings that hold with it. */
export type Mended = Taken;

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

/** What became of options. */
export interface OutcomeOfOthers {
  /** Those that were tried, with what each mends. */
  readonly mended: readonly Mended[];
  /** Those that no time was left for. */
  readonly untried: number;
  /** Those that were not tried, as others of their lever and for their findings promise more. */
  readonly leftOut: number;
}

/** What options are tried in, and by whom. */
export interface Tried {
  /** The case as it is. */
  readonly job: Job;
  /** The design. */
  readonly taken: readonly Taken[];
  /** Ids of findings that matter beside those that the design mends. */
  readonly wanted?: readonly string[];
  /** When it says no, what is left is not tried. */
  readonly stillTime: StillTime;
  /** Those who are asked at the same time; what is found does not depend on how many they are. */
  readonly lanes: readonly Ask[];
}

/**
 * Tries options in the place of changes of a design that are there for the same findings, or move the same thing, and
 * tells what each then mends; the rest of the design stays, and only the questions concerned are asked.
 */
export async function mendedBy(
  options: readonly Option[],
  { job, taken, wanted = [], stillTime, lanes }: Tried,
): Promise<OutcomeOfOthers> {
  const mended = new Map<string, Mended>();
  let untried = 0;
  const goals = new Set([...wanted, ...taken.flatMap(({ mends }) => [...mends])]);
  const useful = options.filter(
    ({ id, helps }) => helps.some((one) => goals.has(one)) && !taken.some(({ option }) => option.id === id),
  );
  const others = promising(useful, goals);
  const queue = [...sideBySide(others, (option) => touchedBy(option, taken, goals))];
  const work = async (ask: Ask): Promise<void> => {
    for (let trial = queue.shift(); trial; trial = queue.shift()) {
      await host.pool.pause();
      if (!stillTime()) {
        untried += trial.length;
        continue;
      }
      const rest = taken.filter((one) => !trial?.some((option) => isReplaced(one, option)));
      const tried = withOptions(job, [...rest.map(({ option }) => option), ...trial]);
      const found = tried ? await outcomes(tried, { trial, taken, goals, ask }) : [];
      for (const one of found) mended.set(one.option.id, one);
      if (!tried && trial.length > 1) queue.unshift(...halves(trial));
    }
  };
  await Promise.all(lanes.map(work));
  return {
    mended: others.flatMap(({ id }) => mended.get(id) ?? []),
    untried,
    leftOut: useful.length - others.length,
  };
}

/** Others of a lever and of a finding that are tried: offers stand in the order of their promise. */
const mostOfLever = 2;
const mostOfFinding = 4;

/** The first options of each lever that are among the first of a finding that matters. */
function promising(options: readonly Option[], goals: ReadonlySet<string>): readonly Option[] {
  const counts = new Map<string, number>();
  const count = (key: string): number => counts.get(key) ?? 0;
  return options.filter(({ lever, helps }) => {
    const ids = helps.filter((id) => goals.has(id));
    if (count(`lever ${lever}`) >= mostOfLever || ids.every((id) => count(id) >= mostOfFinding)) return false;
    for (const key of [`lever ${lever}`, ...ids]) counts.set(key, count(key) + 1);
    return true;
  });
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

/** A trial of a design. */
interface Trial {
  readonly trial: readonly Option[];
  readonly taken: readonly Taken[];
  readonly goals: ReadonlySet<string>;
  readonly ask: Ask;
}

async function outcomes(tried: Job, { trial, taken, goals, ask }: Trial): Promise<readonly Mended[]> {
  const touched = trial.map((option) => touchedBy(option, taken, goals));
  const answers = await ask(tried, questionsOfIds(tried, touched.flat()));
  return trial.map((option, i): Mended => {
    const mends = (touched[i] ?? []).filter((id) => {
      const answer = answers.get(id);
      return answer === undefined || holdsForSure(answer);
    });
    return { option, mends: new Set(mends) };
  });
}
