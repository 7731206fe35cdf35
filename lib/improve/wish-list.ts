/** What a builder asks for beyond the need, and how a case is planned without each of it. */
import { planSheets } from "../cutting/index.js";
import { type Change, type PanelPart, type Section, set, sheetPieces } from "../design/index.js";
import type { Job } from "../job/index.js";
import { kerfFromCuts } from "../measure/index.js";
import { washersOf } from "../model/index.js";
import {
  type Bill,
  billOf,
  buildingTime,
  type PurchaseList,
  purchaseList,
  sheetJobs,
} from "../plan/index.js";
import { inch, Length, mm, type Time } from "../quantity/index.js";
import { changedJob } from "./trial.js";

/** Something that the builder asks for and a plan obeys. */
export interface Wish {
  /** What is asked for: "the grain of upper.front runs across". */
  readonly what: string;
  /** What it is planned again with: "the grain runs as it saves most". */
  readonly without: string;
}

/** A case as it is bought. */
export interface Bought {
  /** What, and how it is cut. */
  readonly purchases: PurchaseList;
  /** What it costs. */
  readonly bill: Bill;
  /** At the bench. */
  readonly time: Time;
}

/** A wish with the way to plan without it. */
export interface Released extends Wish {
  /** The case without it; nothing where it cannot be. */
  readonly bought: () => Bought | undefined;
  /** The files without it, where the case itself would change. */
  readonly changes?: readonly Change[];
}

/** Less than this is no saving: half a hundredth of the currency. */
export const leastMoney = 0.005;

/** All wishes of a case that a plan obeys, each with ways to be without it, the least first. */
export function wishesOf(job: Job): readonly (readonly Released[])[] {
  const inOneWay = [
    ...grainsOf(job),
    ...mitresOf(job),
    ...oversizeOf(job),
    ...bladesOf(job),
    sparesOf(job),
    packsOf(job),
  ];
  return [...inOneWay.map((wish) => [wish]), ...sizesOf(job)];
}

/** A case as its review buys it. */
export function boughtFor(job: Job): Bought {
  const { purchases, bill } = job.review;
  return { purchases, bill, time: buildingTime(job, purchases).time };
}

/** The same case with other things bought. */
function boughtWith(job: Job, purchases: PurchaseList): Bought {
  return { purchases, bill: billOf(job, purchases), time: buildingTime(job, purchases).time };
}

/** A wish that stands in the files of the case. */
function inFiles(job: Job, wish: Wish, ...changes: readonly Change[]): Released {
  const bought = (): Bought | undefined => {
    const changed = changedJob(job, changes);
    return changed && boughtFor(changed);
  };
  return { ...wish, bought, changes };
}

/** The grain of each piece of sheet, and of all. */
function grainsOf(job: Job): readonly Released[] {
  const pieces = sheetPieces(job.parts);
  const each = pieces.map((panel): Released => {
    const turned = turnedGrain(panel);
    const wish = {
      what: `the grain of ${panel.id} runs ${panel.grain}`,
      without: `it runs ${otherGrain(panel)}`,
    };
    return {
      ...wish,
      bought: () => withGrainFree(job, [panel.id]),
      ...(turned ? { changes: [turned] } : {}),
    };
  });
  const ids = pieces.map(({ id }) => id);
  const all = { what: "every piece keeps its grain", without: "each lies as it saves most" };
  return [...each, { ...all, bought: () => withGrainFree(job, ids) }];
}

function otherGrain({ grain }: PanelPart): "across" | "up" {
  return grain === "across" ? "up" : "across";
}

/** The change that turns the grain of a face; nothing for a leaf or a shelf, whose grain the file does not name. */
function turnedGrain(panel: PanelPart): Change | undefined {
  const { role, section, face } = panel;
  if (role !== "face" || face === undefined) return undefined;
  return set(`sections.${section}.panels.${face}.grain`, otherGrain(panel));
}

function withGrainFree(job: Job, ids: readonly string[]): Bought {
  const sheets = sheetJobs(job).map(({ stock, job: cut }) => {
    const pieces = cut.pieces.map((piece) =>
      ids.includes(piece.name) ? { ...piece, grain: "free" as const } : piece,
    );
    return { stock, plan: planSheets({ ...cut, pieces }) };
  });
  return boughtWith(job, { ...job.review.purchases, sheets });
}

/** A section may be smaller by so much before it is another case; the least comes first. */
const smaller: Readonly<Record<Job["case"]["units"], readonly Length[]>> = {
  inch: [1 / 16, 1 / 8, 1 / 4, 3 / 8].map((size) => inch(size)),
  metric: [1, 3, 6, 10].map((size) => mm(size)),
};

/** The inside sizes of each section, a little smaller. */
function sizesOf(job: Job): readonly (readonly Released[])[] {
  return job.case.sections.flatMap((section) =>
    (["width", "depth", "height"] as const).map((side) => smallerBy(job, section, side)),
  );
}

function smallerBy(job: Job, { name, inside }: Section, side: keyof Section["inside"]): readonly Released[] {
  const style = { system: job.case.units };
  return smaller[job.case.units].map((step) => {
    const wish = {
      what: `${name} is ${Length.show(inside[side], style)} in ${side} inside`,
      without: `it is ${Length.show(step, style)} less`,
    };
    const size = Length.si(inside[side] - step);
    return inFiles(job, wish, set(`sections.${name}.inside.${side}`, `${Length.in(size, "mm")} mm`));
  });
}

/** Bars mitred at their ends. */
function mitresOf(job: Job): readonly Released[] {
  if (!job.parts.bars.some(({ ends }) => ends === "mitred")) return [];
  const wish = { what: "the ends of the bars are mitred", without: "they are square" };
  return [inFiles(job, wish, set("build.edges.ends", "square"))];
}

/** Laminate larger than its panel. */
function oversizeOf(job: Job): readonly Released[] {
  if (job.parts.facings.length === 0) return [];
  const wish = { what: "laminate is larger than its panel", without: "it is cut to size" };
  return [inFiles(job, wish, set("build.facing.oversize", "0"))];
}

/** The mean cut of all blades that were tried. */
function bladesOf(job: Job): readonly Released[] {
  const [thinnest, ...others] = [...job.measurements.kerfs].sort((a, b) => kerfFromCuts(a) - kerfFromCuts(b));
  if (!thinnest || others.length === 0) return [];
  const measurements = { ...job.measurements, kerfs: [{ ...thinnest, use: "both" as const }] };
  const wish = {
    what: "cuts are as wide as those of all blades in the mean",
    without: `all are made with the ${thinnest.blade}`,
  };
  return [{ ...wish, bought: () => boughtWith(job, purchaseList({ ...job, measurements })) }];
}

/** Fasteners and washers beyond their number. */
function sparesOf(job: Job): Released {
  const bought = (): Bought => {
    const { purchases } = job.review;
    const fasteners = purchases.fasteners.map((need) => ({
      ...need,
      packs: Math.ceil(need.count / need.stock.packOf),
      washers: need.washers > 0 ? need.groups.reduce((sum, group) => sum + washersOf(group), 0) : 0,
    }));
    return boughtWith(job, { ...purchases, fasteners });
  };
  return { what: "spare fasteners and washers are bought", without: "only those that are set", bought };
}

/** Fasteners and adhesives by the whole pack and container. */
function packsOf(job: Job): Released {
  const bought = (): Bought => {
    const { purchases } = job.review;
    const fasteners = purchases.fasteners.map((need) => ({ ...need, packs: need.count / need.stock.packOf }));
    const adhesives = purchases.adhesives.map((need) => ({
      ...need,
      containers: need.volume / need.stock.content,
    }));
    return boughtWith(job, { ...purchases, fasteners, adhesives });
  };
  return { what: "packs and containers are bought whole", without: "only what is used", bought };
}
