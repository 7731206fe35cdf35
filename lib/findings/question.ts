/**
 * A question is declared once: what it is about, what it needs to know, who can be hurt, and how it is answered. Its id,
 * its verdict, what it waits for, and the sentences of margin and criterion are made here for all questions alike.
 */
import type { WorkedLine } from "../formula.js";
import type { RatioInterval, ReviewInput } from "../model/index.js";
import { Ratio } from "../quantity/index.js";
import { type MissingMeasurement, Refusal, unlessRefused } from "../refusal.js";
import { type Citation, type SourceKey, shortTitle } from "../source.js";
import { type Measured, styleOf } from "./amount.js";
import type { Figure } from "./figures/figure.js";
import { type Amount, type Finding, type Remedy, type Tier, type Verdict, verdictOf } from "./finding.js";
import { restsOn, restsOnWords } from "./how-sure.js";

/** Words that may depend on what is asked about. */
export type Said<Subject, Words = string> = Words | ((subject: Subject, input: ReviewInput) => Words);

/** What a question is asked of: the whole case, each section, each thing inside. */
export interface Subjects<Subject> {
  /** Those of a case that the question is asked of. */
  readonly each: (input: ReviewInput) => readonly Subject[];
  /** Ends the finding's id; nothing where there is one subject a case. */
  readonly id: (subject: Subject) => string | undefined;
  /** The subject in a builder's words. */
  readonly words: (subject: Subject, input: ReviewInput) => string;
}

/** Something that must be known to answer. */
export interface Need<Subject, T> {
  /** The thing itself, or else the measurement that would tell it. */
  readonly find: (input: ReviewInput, subject: Subject) => T | MissingMeasurement;
}

/** What a question needs to know, by name. */
export type Needs<Subject> = Readonly<Record<string, Need<Subject, unknown>>>;

/** What was found of it. */
export type Given<Wanted extends Needs<never>> = {
  readonly [Name in keyof Wanted]: Exclude<ReturnType<Wanted[Name]["find"]>, MissingMeasurement>;
};

/** What an answer says in every case. */
export interface Told {
  /** The first sentences, from the values. */
  readonly facts: string;
  /** Where the limit comes from. */
  readonly limit: Citation;
  /** What else the working rests on. */
  readonly sources?: readonly Citation[];
  /** The worked lines, in order. */
  readonly because: readonly WorkedLine[];
  /** What would help; said where the answer is not yes. */
  readonly remedies?: readonly Remedy[];
  /** What the builder's own scatter leaves open about the ratio. */
  readonly interval?: RatioInterval | undefined;
  /**
   * What the answer rests on most, where its working does not show it: in words, or the lines that decide. Told of
   * safety and strength without an interval.
   */
  readonly rests?: string | readonly WorkedLine[];
  /** What was taken where nobody measured, as sentences; told beside what the question always takes for granted. */
  readonly assumed?: readonly string[];
}

/** A demand against a capacity. */
export interface Compared extends Told {
  /** What is asked for. */
  readonly demand: Measured;
  /** What is there or allowed, of the same kind. */
  readonly capacity: Measured;
  /** Stands in place of what demand and capacity come to, where more than they decide. */
  readonly verdict?: Verdict;
}

/** A ratio of things that are no amounts. */
export interface Rated extends Told {
  /** What is asked for over what is there. */
  readonly ratio: number;
}

/** A plain no, where there is nothing to compare: nobody may lift it, no push gets over it. */
export interface Refused extends Told {
  /** Nothing is compared. */
  readonly plainNo: true;
  /** What is asked for, where it is an amount. */
  readonly demand?: Amount;
  /** What is there, where it is an amount. */
  readonly capacity?: Amount;
}

/** What a question comes to. */
export type Answer = Compared | Rated | Refused;

/** At least one caution. */
export type Cautions = readonly [string, ...string[]];

/** What is at stake, and what is told whatever the answer: where somebody is hurt there is always a caution. */
export type Stake<Subject> =
  | {
      /** What happens where the answer is no. */
      readonly tier: "safety";
      /** Told whatever the answer, and while it is unknown. */
      readonly cautions: Said<Subject, Cautions>;
    }
  | {
      /** What happens where the answer is no. */
      readonly tier: Exclude<Tier, "safety">;
      /** Told whatever the answer, and while it is unknown. */
      readonly cautions: Said<Subject, readonly string[]>;
    };

/** All there is to say about a question. */
export type Declaration<Subject, Wanted extends Needs<Subject>, Input extends ReviewInput> = Asking<
  Subject,
  Wanted,
  Input
> &
  Stake<Subject>;

/** What is asked, of what, and how it is answered. */
export interface Asking<Subject, Wanted extends Needs<Subject>, Input extends ReviewInput> {
  /** Dotted path, its topic first; the subject's own id follows it: "travel.wind". */
  readonly id: string;
  /** What it is asked of. */
  readonly about: Subjects<Subject>;
  /** The question as a builder would ask it. */
  readonly ask: Said<Subject>;
  /** What the answer takes for granted. */
  readonly assumes?: readonly string[];
  /** What must be known; the first that is not makes the answer unknown. */
  readonly needs?: Wanted;
  /** Works the answer out; a refusal makes it unknown. */
  readonly answer: (input: Input, given: Given<Wanted>, subject: Subject) => Answer;
  /** Its picture, with the amounts that were found; a refusal is no picture. */
  readonly figure?: (input: Input, subject: Subject, found: Found) => Figure;
}

/** What a picture is told of the answer. */
export type Found = Pick<Finding, "demand" | "capacity" | "verdict">;

/** A declared question: asks it of a case, one finding a subject. */
export interface Question<Input extends ReviewInput = ReviewInput> {
  (input: Input): readonly Finding[];
  /** The declaration's id, before that of a subject. */
  readonly id: string;
  /** What is at stake. */
  readonly tier: Tier;
}

/** Declares a question. */
export function question<
  Subject,
  Wanted extends Needs<Subject> = Readonly<Record<never, never>>,
  Input extends ReviewInput = ReviewInput,
>(declaration: Declaration<Subject, Wanted, Input>): Question<Input> {
  const { id, tier, cautions } = declaration;
  const ask = (input: Input): readonly Finding[] => {
    try {
      return declaration.about.each(input).map((subject) => findingOf(declaration, input, subject));
    } catch (error) {
      const about = { id, asks: id, topic: topicOf(id), subject: id, question: id, tier, assumes: [] };
      const told = cautions instanceof Function ? [] : cautions;
      return [{ ...about, cautions: told, ...unanswered(error) }];
    }
  };
  return Object.assign(ask, { id, tier });
}

/** What a verdict rests on where no line of its working can be moved, and its question does not say. */
const allFigures = "the figures of the case file and the tables, all alike";

function isGrave({ tier }: Pick<Finding, "tier">): boolean {
  return tier === "safety" || tier === "strength";
}

/** What was assumed, and where it matters and nobody measured scatter, the input that decides. */
function takenFor(about: Pick<Finding, "tier">, answer: Answer, input: ReviewInput): readonly string[] {
  const { assumed = [], interval, because, rests } = answer;
  if (!isGrave(about) || interval) return assumed;
  const most = typeof rests === "string" ? rests : (restsOn(rests ?? because) ?? allFigures);
  return [...assumed, restsOnWords(most, styleOf(input.case))];
}

/** What is so of a finding before anything is worked out. */
type About = Pick<
  Finding,
  "id" | "asks" | "topic" | "subject" | "question" | "tier" | "cautions" | "assumes"
>;

function findingOf<Subject, Wanted extends Needs<Subject>, Input extends ReviewInput>(
  declaration: Declaration<Subject, Wanted, Input>,
  input: Input,
  subject: Subject,
): Finding {
  const about = aboutOf(declaration, input, subject);
  const found = (): Finding => {
    try {
      const given = gathered(declaration, input, subject);
      const answer = declaration.answer(input, given, subject);
      const assumes = [...about.assumes, ...takenFor(about, answer, input)];
      return { ...about, assumes, ...judged(about, answer) };
    } catch (error) {
      return { ...about, ...unanswered(error) };
    }
  };
  return pictured(declaration, input, subject, found());
}

/** The finding with its picture, where its question has one. */
function pictured<Subject, Wanted extends Needs<Subject>, Input extends ReviewInput>(
  { figure }: Declaration<Subject, Wanted, Input>,
  input: Input,
  subject: Subject,
  finding: Finding,
): Finding {
  return figure
    ? { ...finding, figure: () => unlessRefused(() => figure(input, subject, finding)) }
    : finding;
}

function aboutOf<Subject, Wanted extends Needs<Subject>, Input extends ReviewInput>(
  { id, about, ask, tier, cautions, assumes = [] }: Declaration<Subject, Wanted, Input>,
  input: Input,
  subject: Subject,
): About {
  const said = <Words>(words: Said<Subject, Words>): Words =>
    words instanceof Function ? words(subject, input) : words;
  return {
    id: [id, about.id(subject)].filter((part) => part !== undefined).join("."),
    asks: id,
    topic: topicOf(id),
    subject: about.words(subject, input),
    question: said(ask),
    tier,
    cautions: said(cautions),
    assumes,
  };
}

function topicOf(id: string): string {
  return id.replace(/\..*/, "");
}

/**
 * Everything that is needed, by name.
 *
 * @throws Refusal that names the first measurement that is missing
 */
function gathered<Subject, Wanted extends Needs<Subject>, Input extends ReviewInput>(
  { needs }: Declaration<Subject, Wanted, Input>,
  input: Input,
  subject: Subject,
): Given<Wanted> {
  const found = Object.entries(needs ?? {}).map(([name, need]) => {
    const value = need.find(input, subject);
    if (isMissing(value)) throw new Refusal(`${value.measure} is not known`, value);
    return [name, value];
  });
  return Object.fromEntries(found) as Given<Wanted>;
}

function isMissing(found: unknown): found is MissingMeasurement {
  return typeof found === "object" && found !== null && "measure" in found && "how" in found;
}

/** A refusal waits for what would give the answer; anything else is a bug, and says so. */
function unanswered(error: unknown): Omit<Finding, keyof About> {
  const open = { because: [], remedies: [], source: [] };
  if (error instanceof Refusal) {
    const { would } = error;
    return {
      ...open,
      verdict: "unknown",
      answer: `It waits for ${would.measure}.`,
      missing: would,
    };
  }
  const answer = "This could not be computed; please report it.";
  return { ...open, verdict: "broken", answer, error: String(error) };
}

/** Verdict, margin and criterion of what was worked out. */
function judged(about: Pick<Finding, "tier">, answer: Answer): Omit<Finding, keyof About> {
  const { facts, limit, sources: rest = [], because, remedies = [], interval } = answer;
  const ratio = ratioOf(answer);
  const verdict = verdictFor(answer, ratio);
  const recalled = isRecalled(limit) ? " Its limit is recalled, not read." : "";
  const behind = isGrave(about) ? recalledWords([...rest, ...because.flatMap(({ source }) => source)]) : "";
  const helping = verdict === "holds" ? [] : remedies;
  return {
    verdict,
    answer: [
      facts,
      ...helping.map(({ words }) => words),
      marginWords(ratio),
      `${criterionWords(limit)}${recalled}${behind}`,
    ].join(" "),
    ...amountsOf(answer),
    ...(ratio === undefined ? {} : { ratio }),
    ...(interval ? { interval } : {}),
    because,
    remedies: helping,
    source: [limit, ...rest],
  };
}

/** A citation says where it was not read. */
function isRecalled({ where }: Citation): boolean {
  return /from memory/.test(where);
}

/** Works from which a figure behind an answer is recalled, each named once. */
function recalledWords(cited: readonly Citation[]): string {
  const titles = new Set(cited.filter(isRecalled).map(({ source }) => shortTitle(source)));
  return titles.size === 0 ? "" : ` A figure behind it is recalled, not read: ${[...titles].join(", ")}.`;
}

function verdictFor(answer: Answer, ratio: number | undefined): Verdict {
  if ("verdict" in answer && answer.verdict) return answer.verdict;
  return ratio === undefined ? "fails" : verdictOf(ratio, answer.interval);
}

function amountsOf(answer: Answer): Pick<Finding, "demand" | "capacity"> {
  if ("ratio" in answer) return {};
  const { demand, capacity } = answer;
  return { ...(demand ? { demand } : {}), ...(capacity ? { capacity } : {}) };
}

/**
 * Demand over capacity; nothing where there is no capacity at all, or nothing is compared.
 *
 * @throws Refusal where nothing is asked of nothing
 */
function ratioOf(answer: Answer): number | undefined {
  if ("ratio" in answer) return answer.ratio;
  if ("plainNo" in answer) return undefined;
  const { demand, capacity } = answer;
  if (capacity.value > 0) return demand.value / capacity.value;
  if (demand.value > 0) return undefined;
  throw new Refusal(`${capacity.meaning}: nothing to compare with`);
}

/** A margin is worth a tenth of a percent at best, and ten times too much is no figure to build by. */
const finestMargin = 0.001;
const farOver = 10;

/** How far from the limit, in words. */
function marginWords(ratio: number | undefined): string {
  if (ratio === undefined) return "It has no margin.";
  if (ratio > farOver) return `It is over by more than ${100 * (farOver - 1)} %.`;
  const share = Math.round(Math.abs(1 - ratio) / finestMargin) * finestMargin;
  const shown = Ratio.show(Ratio.si(share), { unit: "%", digits: 2 });
  return ratio <= 1 ? `The margin is ${shown}.` : `It is over by ${shown}.`;
}

/** Guidance, which one may depart from with reasons. */
const guidance: ReadonlySet<SourceKey> = new Set([
  "niosh-lifting",
  "hse-manual-handling",
  "ctu-code",
  "ieee-485",
  "ashrae",
  "package-handbook",
  "cushion-design",
  "wood-handbook",
  "mil-std-1472",
]);

/** Nobody's rule: what follows from the laws of nature, of numbers and of money. */
const laws: ReadonlySet<SourceKey> = new Set([
  "statics",
  "geometry",
  "dynamics",
  "vibration",
  "electricity",
  "fluid-flow",
  "heat-transfer",
  "strength-of-materials",
  "engineering-economy",
]);

/** Where a limit comes from and what it is, short enough for a sentence. */
function criterionWords({ source, where }: Citation): string {
  const title = shortTitle(source);
  if (source === "common-practice")
    return /case file/.test(where)
      ? `The criterion is your own wish: ${where}.`
      : `The criterion is a rule of the trade, as no published rule was found: ${where}.`;
  if (laws.has(source)) return `The criterion is a law, not a code: ${title}, ${where}.`;
  return `The criterion is ${guidance.has(source) ? "guidance" : "a standard or code"}: ${title}, ${where}.`;
}
