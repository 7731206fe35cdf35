/** Changes taken round by round until nothing is left that fails: the quick questions first, the whole review last. */
import { byDanger, type Finding } from "../findings/index.js";
import type { Job } from "../job/index.js";
import { caseOverlaps } from "../model/index.js";
import type { Ask } from "./asking.js";
import type { Option } from "./option.js";
import { optionsFor } from "./options/index.js";
import { holdsForSure, overBy } from "./standing.js";
import { withOptions } from "./trial.js";

/** A change that is taken, with what it is there for. */
export interface Taken {
  /** The change. */
  readonly option: Option;
  /** Ids of the findings that it mends or lessens. */
  readonly mends: ReadonlySet<string>;
}

/** What steps are taken with. */
export interface Stepping {
  /** Whether what is at stake in a finding or a question has to hold. */
  readonly isWanted: (asked: Pick<Finding, "tier">) => boolean;
  /** Whether there is still time, asked between two pieces of work. */
  readonly stillTime: () => boolean;
  /** Told what is going on. */
  readonly tell: (words: string) => void;
  /** Who is asked. */
  readonly ask: Ask;
  /** Who answers the slow questions about the case as it is, meanwhile or when asked. */
  readonly askAside: Ask;
}

/** Where steps led. */
export interface Stepped {
  /** The changes. */
  readonly taken: readonly Taken[];
  /** The case with them. */
  readonly job: Job;
  /** What is wanted and does not hold for sure, or is unknown. */
  readonly open: readonly Finding[];
  /** Whether every question was asked of that case. */
  readonly isWhole: boolean;
  /** How many changes were offered on the way. */
  readonly offered: number;
}

/** Questions that bend many panels, join the boxes or move solids: asked when all others hold. */
export const slow: ReadonlySet<string> = new Set([
  "strength.panel",
  "strength.person",
  "strength.thrown",
  "strength.latch",
  "joints.box",
  "joints.handle-out",
  "joints.hinges",
  "strength.lean",
  "assembly.way-in",
  "assembly.order",
  "joints.seams",
  "stiffness",
  "stiffness.box",
]);

/** Rounds at the most: each takes at least one change more or has one tried. */
const mostRounds = 60;

/**
 * Takes changes until all that is wanted holds, nothing more is offered, or time is up.
 *
 * @param from changes to begin with
 */
export async function stepByStep(base: Job, from: readonly Taken[], stepping: Stepping): Promise<Stepped> {
  const steps = new Steps(base, from, stepping);
  return steps.run();
}

class Steps {
  readonly #base: Job;
  readonly #stepping: Stepping;
  readonly #isFromScratch: boolean;
  readonly #tried = new Set<string>();
  /** Changes that were taken back, by their ids, with the finding that each broke. */
  readonly #banned = new Map<string, { readonly lever: string; readonly broke: string }>();
  #taken: readonly Taken[];
  #job: Job;
  #offered = 0;

  constructor(base: Job, from: readonly Taken[], stepping: Stepping) {
    this.#base = base;
    this.#stepping = stepping;
    const { fit, job } = fitting(
      base,
      [],
      from.map(({ option }) => option),
    );
    this.#taken = from.filter(({ option }) => fit.includes(option));
    this.#isFromScratch = from.length === 0;
    this.#job = job ?? base;
  }

  async run(): Promise<Stepped> {
    let open = await this.#goals((id) => !slow.has(id));
    let [isWhole, isForeseen] = [false, false];
    for (let round = 0; round < mostRounds && this.#stepping.stillTime(); round++) {
      if (open.length > 0 && (await this.#round(open))) {
        const asked = questionsOfIds(this.#job, [...open.map(({ id }) => id), ...this.#broken()]);
        open = await this.#goals((id) => asked.has(id));
        isWhole = false;
        continue;
      }
      if (isWhole) break;
      if (!isForeseen && this.#isFromScratch) {
        isForeseen = true;
        open = await this.#foreseen();
        if (open.length > 0) continue;
      }
      this.#stepping.tell(`asking all questions of the case with ${this.#taken.length} changes`);
      open = await this.#goals(() => true);
      isWhole = true;
      if (open.length === 0) break;
    }
    return { taken: this.#taken, job: this.#job, open, isWhole, offered: this.#offered };
  }

  /** What the slow questions find of the case as it is, but for what a change broke or mended already. */
  #foreseen(): Promise<readonly Finding[]> {
    const { isWanted, askAside } = this.#stepping;
    return goalsOf(this.#base, (id) => slow.has(id), { isWanted, ask: askAside });
  }

  #goals(isAsked: (question: string) => boolean): Promise<readonly Finding[]> {
    return goalsOf(this.#job, isAsked, this.#stepping);
  }

  /** Tries one change for each open finding, all at once; false where nothing is left to try. */
  async #round(open: readonly Finding[]): Promise<boolean> {
    const picks = this.#picks(open);
    if (picks.length === 0) return this.#withoutCulprit(open);
    this.#stepping.tell(`${open.length} open, first ${open[0]?.id}: trying ${picks.length} changes at once`);
    for (const { id, helps } of picks) for (const one of helps) this.#tried.add(`${id} for ${one}`);
    const before = this.#taken;
    const { fit, job: trial } = fitting(this.#base, before, picks);
    if (!trial) return true;
    const moved = before.filter(({ option }) => fit.some(({ lever }) => lever === option.lever));
    const about = [...open.map(({ id }) => id), ...moved.flatMap(({ mends }) => [...mends])];
    const answers = await this.#stepping.ask(trial, questionsOfIds(trial, about));
    const than: Compared = {
      open,
      answers,
      isLess: (id) => sharedIn(trial, id) < sharedIn(this.#job, id) - 1e-6,
    };
    const kept = fit.flatMap((option) => judged(option, before, than));
    this.#taken = joined(before, kept);
    this.#job = kept.length === fit.length ? trial : (caseWith(this.#base, this.#taken) ?? this.#job);
    return true;
  }

  /** The first untried option of each open finding that nothing picked before it is offered for. */
  #picks(open: readonly Finding[]): readonly Option[] {
    const options = optionsFor(this.#job, open);
    this.#offered += options.length;
    const taken = new Set(this.#taken.map(({ option }) => option.id));
    const picks: Option[] = [];
    for (const { id } of open) {
      if (picks.some(({ helps }) => helps.includes(id))) continue;
      const next = options.find(
        (one) =>
          one.helps.includes(id) &&
          !taken.has(one.id) &&
          !this.#isBanned(one) &&
          !this.#tried.has(`${one.id} for ${id}`) &&
          !picks.some(({ lever }) => lever === one.lever),
      );
      if (next) picks.push(next);
    }
    return picks;
  }

  /** Takes back the change that brought a finding for which nothing is offered; false where none did. */
  async #withoutCulprit(open: readonly Finding[]): Promise<boolean> {
    for (const { id } of open) {
      const culprit = await this.#culpritOf(id);
      if (!culprit) continue;
      this.#stepping.tell(`taking back a change that breaks ${id}`);
      this.#banned.set(culprit.option.id, { lever: culprit.option.lever, broke: id });
      this.#taken = this.#taken.filter((one) => one !== culprit);
      this.#job = caseWith(this.#base, this.#taken) ?? this.#job;
      for (const one of culprit.mends) this.#forget(one);
      return true;
    }
    return false;
  }

  /** Findings that a change broke which was taken back: asked again after each round. */
  #broken(): readonly string[] {
    return [...new Set([...this.#banned.values()].map(({ broke }) => broke))];
  }

  /** Whether a change was taken back, or two others of its lever that broke the same. */
  #isBanned({ id, lever }: Option): boolean {
    if (this.#banned.has(id)) return true;
    const broke = [...this.#banned.values()].filter((one) => one.lever === lever).map((one) => one.broke);
    return new Set(broke).size < broke.length;
  }

  /** What was tried for a finding may help now that something else is taken back. */
  #forget(id: string): void {
    for (const one of [...this.#tried]) if (one.endsWith(` for ${id}`)) this.#tried.delete(one);
  }

  /** The first change with which a finding does not hold, by halving; none where it fails without any. */
  async #culpritOf(id: string): Promise<Taken | undefined> {
    if (!(await this.#holdsWith(0, id))) return undefined;
    let [fine, bad] = [0, this.#taken.length];
    while (bad - fine > 1 && this.#stepping.stillTime()) {
      const middle = Math.floor((fine + bad) / 2);
      if (await this.#holdsWith(middle, id)) fine = middle;
      else bad = middle;
    }
    return this.#taken[bad - 1];
  }

  async #holdsWith(count: number, id: string): Promise<boolean> {
    const job = caseWith(this.#base, this.#taken.slice(0, count));
    if (!job) return false;
    const found = (await this.#stepping.ask(job, questionsOfIds(job, [id]))).get(id);
    return found === undefined || holdsForSure(found);
  }
}

/** The questions of a case in whose answers something wanted is at stake. */
export function wantedQuestions(
  { review }: Job,
  { isWanted }: Pick<Stepping, "isWanted">,
): ReadonlySet<string> {
  return new Set(review.steps.filter(isWanted).map(({ id }) => id));
}

/** Answers of a case to some questions that have to hold and do not for sure. */
export async function goalsOf(
  job: Job,
  isAsked: (question: string) => boolean,
  { isWanted, ask }: Pick<Stepping, "isWanted" | "ask">,
): Promise<readonly Finding[]> {
  const asked = new Set([...wantedQuestions(job, { isWanted })].filter(isAsked));
  const answers = [...(await ask(job, asked)).values()];
  return byDanger(answers.filter((one) => isWanted(one) && one.verdict !== "broken" && !holdsForSure(one)));
}

/** The questions that some findings answer: the longest id that begins theirs. */
export function questionsOfIds({ review }: Pick<Job, "review">, ids: readonly string[]): ReadonlySet<string> {
  const steps = review.steps.map(({ id }) => id);
  return new Set(
    ids.flatMap((id) => {
      const own = steps.filter((one) => id === one || id.startsWith(`${one}.`));
      return own.sort((one, other) => other.length - one.length).slice(0, 1);
    }),
  );
}

const bending = /^(stiffness|strength\.(lean|panel|person)|joints\.(seams|glue|box|handle-out|hinges))\b/;

/** Whether a question, or a finding by its id, bends panels or boxes, which takes longest. */
export function bends(id: string): boolean {
  return bending.test(id);
}

/** A case with changes; nothing where it cannot have them. */
export function caseWith(base: Job, taken: readonly Taken[]): Job | undefined {
  return taken.length === 0
    ? base
    : withOptions(
        base,
        taken.map(({ option }) => option),
      );
}

function withoutMends(option: Option): Taken {
  return { option, mends: new Set() };
}

/** Changes with others in the place of those that move the same thing. */
function joined(before: readonly Taken[], more: readonly Taken[]): readonly Taken[] {
  const levers = new Set(more.map(({ option }) => option.lever));
  return [...before.filter(({ option }) => !levers.has(option.lever)), ...more];
}

/** What a case can have together, and the case with it; none where it can have nothing of it. */
interface Fit {
  readonly fit: readonly Option[];
  readonly job?: Job;
}

/** Those that the case can have together with what is taken, the first ones rather than what comes in their way. */
function fitting(base: Job, before: readonly Taken[], picks: readonly Option[]): Fit {
  const job = caseWith(base, joined(before, picks.map(withoutMends)));
  if (job) return { fit: picks, job };
  if (picks.length < 2) return { fit: [] };
  const middle = Math.ceil(picks.length / 2);
  const first = fitting(base, before, picks.slice(0, middle));
  const rest = fitting(base, joined(before, first.fit.map(withoutMends)), picks.slice(middle));
  const last = rest.job ?? first.job;
  return { fit: [...first.fit, ...rest.fit], ...(last ? { job: last } : {}) };
}

/** What was open, against what is answered with changes. */
interface Compared {
  /** What did not hold. */
  readonly open: readonly Finding[];
  /** Answers with the changes. */
  readonly answers: ReadonlyMap<string, Finding>;
  /** Whether less space is shared, of a finding about shared space. */
  readonly isLess: (id: string) => boolean;
}

/** The lists of shared space that findings are about. */
const shared = {
  "assembly.inside": "inside",
  "assembly.heads": "heads",
  "assembly.under-contents": "contents",
  "assembly.parts": "parts",
} as const;

/** All the depths to which parts share space, of a finding about it, m. */
function sharedIn(job: Job, id: string): number {
  const list = Object.entries(shared).find(([one]) => one === id)?.[1];
  return list === undefined ? 0 : caseOverlaps(job)[list].reduce((sum, { depth }) => sum + depth, 0);
}

/** A change with what it mends or lessens; nothing where it helps nothing, or breaks what it takes the place of. */
function judged(
  option: Option,
  before: readonly Taken[],
  { open, answers, isLess: sharesLess }: Compared,
): readonly Taken[] {
  const holds = (id: string): boolean => {
    const answer = answers.get(id);
    return answer === undefined || holdsForSure(answer);
  };
  const replaced = before.find((one) => one.option.lever === option.lever);
  const own = open.filter(({ id }) => option.helps.includes(id));
  const helped = own
    .filter((one) => holds(one.id) || isLess(answers.get(one.id), one) || sharesLess(one.id))
    .map(({ id }) => id);
  if (helped.length === 0) return [];
  const isOpen = (id: string): boolean => open.some((one) => one.id === id);
  const kept = [...(replaced?.mends ?? [])];
  return kept.every((id) => isOpen(id) || holds(id))
    ? [{ option, mends: new Set([...helped, ...kept]) }]
    : [];
}

/** Less over than this share of before is some help. */
const someHelp = 0.98;

function isLess(after: Finding | undefined, before: Finding): boolean {
  const [now, then] = [after && overOf(after), overOf(before)];
  return now !== undefined && now < someHelp * then;
}

/** What nobody knows is over all measure. */
function overOf(finding: Finding): number {
  return (finding.verdict === "unknown" ? undefined : overBy(finding)) ?? Number.POSITIVE_INFINITY;
}
