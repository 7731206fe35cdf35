/** Designs in words: what each costs, weighs and takes against the case as it is, and what it changes from what to what. */
import { type Change, placesOf } from "../design/index.js";
import type { Job } from "../job/index.js";
import { Mass, Money, money, type ShowStyle, Time } from "../quantity/index.js";
import type { Moved, Reach, Stop } from "./how-far.js";
import type { Option } from "./option.js";
import type { Improved, Improvement } from "./search.js";
import type { Measures } from "./trial.js";
import type { WishCost } from "./wishes.js";

/** One value of the files before and after a change. */
export interface BeforeAndAfter {
  /** Where: a place of case.yaml, or a table with a row of it. */
  readonly place: string;
  /** What stands there now; empty where nothing does. */
  readonly before: string;
  /** What stands there then; empty where it is taken away. */
  readonly after: string;
}

/** One figure of a design against that of the case as it is. */
export interface FigureOfDesign {
  /** As it is. */
  readonly before: string;
  /** With the changes. */
  readonly after: string;
  /** The difference with its sign. */
  readonly more: string;
}

/** A design's three figures. */
export interface FiguresOfDesign {
  /** Of the whole bill. */
  readonly cost: FigureOfDesign;
  /** Of the stacked case with what rides in it. */
  readonly mass: FigureOfDesign;
  /** At the bench. */
  readonly time: FigureOfDesign;
}

/** What a design costs, weighs and takes, and what the case as it is does. */
export function figuresOf(
  before: Measures,
  { measures }: Pick<Improved, "measures">,
  style: ShowStyle,
): FiguresOfDesign {
  const figure = (from: number, to: number, shown: (value: number) => string): FigureOfDesign => ({
    before: shown(from),
    after: shown(to),
    more: signed(to - from, shown),
  });
  const { currency } = before;
  return {
    cost: figure(before.cost, measures.cost, (value) => Money.show(money(round(value, 2), currency))),
    mass: figure(before.mass, measures.mass, (value) => Mass.show(Mass.si(value), style)),
    time: figure(before.time, measures.time, (value) =>
      Time.show(Time.si(value), { unit: "h", digits: Math.abs(value) < 36_000 ? 2 : 3 }),
    ),
  };
}

function round(value: number, digits: number): number {
  return Number(value.toFixed(digits));
}

/** Less than this share of a unit is no difference. */
const nothing = 1e-6;

function signed(value: number, shown: (value: number) => string): string {
  if (Math.abs(value) < nothing) return "the same";
  return `${value > 0 ? "+" : "−"}${shown(Math.abs(value))}`;
}

/** What an option changes, from what to what. */
export function beforeAndAfter(
  { texts }: Pick<Job, "texts">,
  { changes }: Option,
): readonly BeforeAndAfter[] {
  return changes.flatMap((change) => changeInWords(texts["case.yaml"] ?? "", change));
}

function changeInWords(text: string, change: Change): readonly BeforeAndAfter[] {
  if (change.kind === "edits") return [];
  const { at } = change;
  if (typeof at !== "string") {
    const row = change.kind === "add" && typeof change.what !== "string" ? Object.values(change.what) : [];
    const name = "row" in at ? String(at.row) : (row.at(-1) ?? "a row");
    return [{ place: `${at.file}, ${name}`, before: "", after: row.join(", ") }];
  }
  const [found] = placesOf(text, at);
  const before = found ? valueInWords(found.value) : "";
  const after = change.kind === "set" ? change.to : change.kind === "add" ? String(change.what) : "";
  return [{ place: at, before, after }];
}

function valueInWords(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(valueInWords).join(", ")}]`;
  if (typeof value === "object" && value !== null) {
    return `{ ${Object.entries(value)
      .map(([key, one]) => `${key}: ${valueInWords(one)}`)
      .join(", ")} }`;
  }
  return String(value);
}

/** What a design takes that no table of the job prices, each once. */
export function unpricedOf({ options }: Improved): readonly string[] {
  return [...new Set(options.flatMap(({ unpriced }) => unpriced ?? []))];
}

/** How far a number may go, as a row of words: now, up to, what then stops, down to, what then stops. */
export function reachInWords({ number, up, down }: Reach): readonly string[] {
  return [number.place, number.text, ...stopInWords(up), ...stopInWords(down)];
}

/** Headings of such rows. */
export const reachHeadings: readonly string[] = [
  "number",
  "now",
  "holds up to",
  "then stops",
  "holds down to",
  "then stops",
];

function stopInWords(stop: Stop | undefined): readonly [string, string] {
  if (!stop) return ["", ""];
  const { holdsAt, failsAt, fails, because, steady } = stop;
  const wavers = steady ? "" : ", not steadily";
  const stops = because === undefined ? fails.join(", ") : `the case itself: ${because}`;
  return [`${holdsAt}${failsAt === undefined ? " and more" : wavers}`, stops || "nothing tried"];
}

/** What moves a finding most, as a row of words. */
export function movedInWords({ id, movers }: Moved): readonly string[] {
  const words = movers.map(({ place, elasticity }) => `${place} (${signedShare(elasticity)})`);
  return [id, words.join(", ")];
}

/** Headings of such rows. */
export const movedHeadings: readonly string[] = ["finding", "moved most by, per cent for one per cent"];

function signedShare(value: number): string {
  return `${value < 0 ? "−" : "+"}${Math.abs(value).toFixed(2)}`;
}

/** Headings of rows that say what a wish costs. */
export const wishHeadings: readonly string[] = [
  "wish",
  "without it",
  "saves",
  "sheets",
  "bars",
  "time",
  "proven",
  "then fails",
];

/** What a wish costs, as a row of words. */
export function wishInWords({ what, without, money: saved, ...cost }: WishCost): readonly string[] {
  const { sheets, bars, time, proven, fails } = cost;
  const count = (saving: number): string => (saving === 0 ? "" : `${saving}`);
  const hours = signed(-time, (value) => Time.show(Time.si(value), { unit: "h", digits: 2 }));
  const then = fails === undefined ? "not asked" : fails.join(", ") || "nothing more";
  return [what, without, Money.show(saved), count(sheets), count(bars), hours, proven ? "yes" : "no", then];
}

/** How far the search can be trusted, in sentences. */
export function searchInWords(found: Improvement): readonly string[] {
  const { offered, untried, leftOut, isWhole, designs, seconds, firstAt } = found;
  const took = (value: number): string => `${value.toFixed(1)} s`;
  const first = firstAt === undefined ? "" : ` The first verified design was there after ${took(firstAt)}.`;
  const rest = leftOut > 0 ? ` Another ${leftOut} were left out, as others of their kind promise more.` : "";
  const left = untried > 0 ? `with ${untried} of them untried` : "before all choices were reviewed";
  return [
    `${offered} changes were offered in ${took(seconds)}.${first}`,
    isWhole
      ? `The search came to its end.${rest}`
      : `Time ran out ${left}, so there may be a better design.${rest}`,
    ...(designs.length > 0
      ? [
          "Each design was reviewed as a whole, and nothing of safety or strength fails in it, the upper end of each interval included.",
          "Findings that have no change in common were settled by themselves, by going through all that was tried for them.",
          ...gapInWords(found),
          "Among changes that work on each other a better choice may have been missed.",
        ]
      : []),
  ];
}

/** What the parts of a design would cost, against what the cheapest verified one does. */
function gapInWords({ before: { currency }, designs, leastAdded }: Improvement): readonly string[] {
  const [cheapest] = designs;
  if (!cheapest || leastAdded === undefined) return [];
  const more = (cost: number): string =>
    signed(cost, (value) => Money.show(money(round(value, 2), currency)));
  return [
    `Added up change by change, the cheapest choice of what was tried comes to ${more(leastAdded)}. The cheapest verified design comes to ${more(cheapest.weights.cost)}.`,
  ];
}
