/** What a case comes to at one look: picture, sizes, weights, cost, what to settle and what to measure first. */

import type { Review } from "../../findings/index.js";
import {
  byDanger,
  capitalised,
  counted,
  keepsFromRelease,
  styleOf,
  type Tier,
  type Verdict,
} from "../../findings/index.js";
import type { ReviewInput } from "../../model/index.js";
import { Length, Mass, Time } from "../../quantity/index.js";
import { Refusal } from "../../refusal.js";
import { type PictureView, pictureOf, sizeOfSolids, tellingCorner, usualLook } from "../picture/index.js";
import { sentencesOf } from "../sentences.js";
import { shortAnswer } from "../short-answer.js";
import type { FindingView } from "../view.js";

/** A fact under a name. */
export interface Fact {
  /** What it is of. */
  readonly name: string;
  /** With its unit. */
  readonly value: string;
}

/** What to settle first. */
export interface ToSettle {
  /** Id of the finding. */
  readonly id: string;
  /** What it comes to. */
  readonly verdict: Verdict;
  /** What is wrong, with the number that matters. */
  readonly sentence: string;
  /** What was tried and mends it, or what would help, in a sentence or two; empty where nobody knows. */
  readonly remedy: string;
}

/** What to measure next. */
export interface ToMeasure {
  /** What to measure, and how many questions that would settle. */
  readonly sentence: string;
  /** How to measure it, in one sentence; empty where that is known. */
  readonly how: string;
}

/** The first page of a case. */
export interface FirstPage {
  /** Whether nothing of safety or strength keeps it from being built. */
  readonly released: boolean;
  /** The same as a sentence. */
  readonly release: string;
  /** Sizes, weights, cost, hours. */
  readonly facts: readonly Fact[];
  /** The whole case with numbered signs where there is something to settle; absent where it has no panels. */
  readonly picture?: PictureView;
  /** At most three, the worst first. */
  readonly settle: readonly ToSettle[];
  /** At most three, what settles most first. */
  readonly measure: readonly ToMeasure[];
  /** Every question, by danger. */
  readonly asked: readonly FindingView[];
}

/** What a first page is made of: a job has all of it. */
export interface FirstPageInput extends Pick<ReviewInput, "case"> {
  /** Its review; nothing that a finding needs is worked out here. */
  readonly review: Pick<Review, "solids" | "masses" | "bill" | "business">;
}

/** So many of each list at most. */
const most = 3;

/** What was tried and mends a finding, in words; nothing where nothing did, or where nobody tried. */
export type TriedRemedy = (id: string) => string | undefined;

/**
 * The first page of a case, from a job and its findings as they are shown.
 *
 * @param tried asked for what is to be settled
 * @example
 * const job = openJob("soil-lab");
 * firstPageOf(job, [findingView(job.finding("travel.slope"), styleOf(job.case))])
 */
export function firstPageOf(
  job: FirstPageInput,
  findings: readonly FindingView[],
  tried: TriedRemedy = () => undefined,
): FirstPage {
  const asked = byDanger(findings);
  const worst = worstOf(asked);
  const keeping = asked.filter(keepsFromRelease).length;
  return {
    released: keeping === 0,
    release: releaseWords(keeping),
    facts: factsOf(job),
    ...pictureOfCase(job, worst),
    settle: worst.map((one) => ({
      id: one.id,
      verdict: one.verdict,
      sentence: shortAnswer(one),
      remedy: tried(one.id) ?? sentencesOf(one.remedies[0]?.words ?? "")[0] ?? "",
    })),
    measure: measureNext(asked),
    asked,
  };
}

function releaseWords(keeping: number): string {
  if (keeping === 0) return "No question of safety or strength stands in the way.";
  const are = keeping === 1 ? "is" : "are";
  return `${counted(keeping, "question", "questions")} of safety or strength ${are} not answered with yes.`;
}

/** What keeps it from release, then what fails, then the rest that does not hold; of like questions the worst. */
function worstOf(asked: readonly FindingView[]): readonly FindingView[] {
  const rank = (one: FindingView): number => (keepsFromRelease(one) ? 0 : one.verdict === "fails" ? 1 : 2);
  const open = asked.filter(({ verdict }) => verdict !== "holds" && verdict !== "unknown");
  const kept = asked.filter((one) => one.verdict === "unknown" && keepsFromRelease(one));
  const first = [...open, ...kept].sort((a, b) => rank(a) - rank(b));
  const kinds = new Set<string>();
  return first.filter(({ asks }) => !kinds.has(asks) && kinds.add(asks)).slice(0, most);
}

/** What answers wait for, and what scatters most in those that are close, by how many it would settle. */
function measureNext(asked: readonly FindingView[]): readonly ToMeasure[] {
  const wanted = new Map<string, { readonly said: (settles: string) => ToMeasure; count: number }>();
  const want = (key: string, said: (settles: string) => ToMeasure): void => {
    const before = wanted.get(key);
    wanted.set(key, { said, count: (before?.count ?? 0) + 1 });
  };
  for (const { verdict, missing, interval } of asked) {
    if (verdict === "unknown" && missing && !missing.isChange)
      want(missing.measure, (settles) => ({
        sentence: `Measure ${missing.measure}: it settles ${settles}.`,
        how: sentencesOf(asSentence(missing.how))[0] ?? "",
      }));
    const [largest] = [...(interval?.shares ?? [])].sort((a, b) => b.share - a.share);
    if (verdict !== "close" || !largest) continue;
    const input = largest.input.replace(/^your /, "");
    want(input, (settles) => ({ sentence: `More readings of ${input} may settle ${settles}.`, how: "" }));
  }
  return [...wanted.values()]
    .sort((a, b) => b.count - a.count)
    .slice(0, most)
    .map(({ said, count }) => said(counted(count, "question", "questions")));
}

function asSentence(words: string): string {
  const text = capitalised(words);
  return /[.!?]$/.test(text) ? text : `${text}.`;
}

function factsOf({ case: build, review }: FirstPageInput): readonly Fact[] {
  const style = styleOf(build);
  const size = sizeOfSolids(review.solids.solids);
  const weigh = (of: (group: string) => boolean): string => {
    const sum = review.masses.reduce((total, { group, mass }) => total + (of(group) ? mass : 0), 0);
    return Mass.show(Mass.si(sum), style);
  };
  return [
    {
      name: "Size over metal",
      value: size.map((one) => sizeInWords(one, build)).join(" × "),
    },
    { name: "Empty", value: weigh((group) => group !== "contents") },
    { name: "Loaded", value: weigh(() => true) },
    { name: "Material", value: `${Math.round(review.bill.total.amount)} ${review.bill.total.currency}` },
    ...worked(() => ({ name: "Work", value: Time.show(review.business.time, { unit: "h", digits: 2 }) })),
  ];
}

/** A size of the whole case, in m: one over a metre is still told to the millimetre. */
function sizeInWords(size: number, build: FirstPageInput["case"]): string {
  return Length.show(Length.si(size), { ...styleOf(build), denominator: 32, digits: 4 });
}

/** A fact, or none where the case file does not say what it rests on. */
function worked(fact: () => Fact): readonly Fact[] {
  try {
    return [fact()];
  } catch (error) {
    if (error instanceof Refusal) return [];
    throw error;
  }
}

/** The case from the corner that tells most, its sizes over metal, and a numbered sign for each thing to settle. */
function pictureOfCase(
  { case: build, review }: FirstPageInput,
  worst: readonly FindingView[],
): { readonly picture?: PictureView } {
  const { solids } = review.solids;
  if (solids.every((solid) => usualLook(solid) === undefined)) return {};
  const parts = new Set(solids.map(({ part }) => part));
  const marks = worst.flatMap(({ id, subject, verdict }, i) => {
    const part = [subject, id.split(".").slice(2).join(".")].find((one) => parts.has(one));
    return part === undefined ? [] : [{ part, verdict, text: String(i + 1) }];
  });
  const failing = new Set(marks.flatMap(({ part, verdict }) => (verdict === "fails" ? [part] : [])));
  const size = sizeOfSolids(solids).map((one) => sizeInWords(one, build));
  const from = tellingCorner(solids);
  const picture = pictureOf(solids, {
    description: `${build.name} from its ${from} corner.`,
    from,
    look: (solid) => (usualLook(solid) && failing.has(solid.part) ? "fails" : usualLook(solid)),
    marks,
    sizes: (["x", "y", "z"] as const).map((along, i) => ({ along, text: size[i] ?? "" })),
  });
  return { picture };
}

/** The tiers in words, the gravest first. */
export const tierWords: Readonly<Record<Tier, string>> = {
  safety: "Safety: somebody may be hurt",
  strength: "Strength: something may break",
  handling: "Handling: harder than guidance allows",
  feel: "Feel: comfort, looks and marks",
};
