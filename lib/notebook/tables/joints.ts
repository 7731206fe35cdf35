/** Tables, drawings and the answer of the notebook that asks whether the joints hold. */
import type { Fastening, SheetStock } from "../../design/index.js";
import { fastenerTraits, rivetCount } from "../../fastening/index.js";
import { jerkSweep, showFine, styleOf } from "../../findings/index.js";
import type { WorkedLine } from "../../formula.js";
import type { Job } from "../../job/index.js";
import { fastenerKinds, fastenerWays, gripCases, offMiddle, takesWasher } from "../../model/index.js";
import { type DrawingView, type TableView, tableOf } from "../../page/index.js";
import { fastenerSchedule, fastenerTotals } from "../../plan/index.js";
import {
  Force,
  Length,
  Money,
  Ratio,
  ratio,
  type ShowStyle,
  SpringRate,
  Time,
} from "../../quantity/index.js";
import { panelHolesDrawing, ruleOf } from "../../recipe/index.js";
import { Refusal } from "../../refusal.js";
import { tallySentence } from "./tally.js";

/** Fasteners of the whole case, one row for what they hold. */
export function fastenerTable({ parts, case: description }: Job): TableView {
  const style = styleOf(description);
  const groups = new Map<string, Fastening[]>();
  for (const fastening of parts.fastenings) {
    const key = `${whatItHolds(fastening)}, ${fastening.fastener.name}`;
    groups.set(key, [...(groups.get(key) ?? []), fastening]);
  }
  const total = (rows: readonly Fastening[]): number => rows.reduce((sum, { count }) => sum + count, 0);
  return tableOf(
    [...groups.values()],
    [
      { heading: "Holds", cell: ([first]) => (first ? whatItHolds(first) : "") },
      { heading: "Fastener", cell: ([first]) => first?.fastener.name ?? "" },
      { heading: "How many", cell: (rows) => total(rows) },
      { heading: "Washer", cell: (rows) => washers(rows) },
      {
        heading: "Widest pitch",
        cell: (rows) => {
          const pitches = rows.flatMap(({ pitch }) => pitch ?? []);
          return pitches.length === 0 ? "" : Length.show(Length.si(Math.max(...pitches)), style);
        },
      },
    ],
    `${total(parts.fastenings)} fasteners in the whole case`,
  );
}

/** Every different stack and whether its rivet closes it. */
export function gripTable(job: Job): TableView {
  const style = styleOf(job.case);
  return tableOf(
    gripCases(job),
    [
      { heading: "Fastener", cell: ({ fastener }) => fastener.name },
      { heading: "Stack", cell: ({ grip }) => showFine(grip.value, style) },
      {
        heading: "Its range",
        cell: ({ fastener: { gripMin, gripMax } }) =>
          `${showFine(gripMin, style)} to ${showFine(gripMax, style)}`,
      },
      { heading: "Places", cell: ({ groups }) => groups.reduce((sum, { count }) => sum + count, 0) },
      { heading: "Fits", cell: ({ fits, better }) => (fits ? "yes" : better ? `no: take ${better}` : "no") },
    ],
    "Stacks, washers counted where the back is bare wood",
  );
}

/** One fastener of each kind in one sheet. */
export function fastenerKindTable(sheet: SheetStock): TableView {
  return tableOf(
    [...fastenerKinds(sheet)].sort((a, b) => b.load - a.load),
    [
      { heading: "One of", cell: ({ kind }) => kind },
      { heading: "Load", cell: ({ load }) => Force.show(load, { unit: "N", digits: 2 }) },
      { heading: "That figure is", cell: ({ figure }) => figure },
    ],
    `One fastener of each kind in ${sheet.name}; an average or an estimate is no load to put on it`,
  );
}

/** One point of the handle chart, in plain numbers. */
export interface JerkPoint {
  /** Name of the section. */
  readonly section: string;
  /** How many times its weight the lift asks. */
  readonly jerk: number;
  /** Load over what is allowed. */
  readonly use: number;
}

/** What a rougher lift does to the handles. */
export function jerkPoints(job: Job, jerks: readonly number[]): readonly JerkPoint[] {
  return jerkSweep(
    job,
    jerks.map((jerk): Ratio => ratio(jerk)),
  );
}

/** How the joints come out as a whole. */
export function jointsAnswer({ review: { joints } }: Job): string {
  return tallySentence(joints);
}

/** Edges are one thing to a reader, whichever bar it is. */
function whatItHolds({ why, holds }: Fastening): string {
  return why === "edge" ? "edge bars" : holds.replace(/ (\d+|on .*)$/, "");
}

function washers(rows: readonly Fastening[]): string {
  const backed = rows.filter(takesWasher);
  if (backed.length === 0) return "none";
  return backed.length === rows.length ? "each" : "some";
}

/** Every rivet and bolt of the case, the most used first. */
export function rivetNames({ parts }: Job): readonly string[] {
  const count = (name: string): number =>
    parts.fastenings.reduce((sum, { fastener, count: n }) => (fastener.name === name ? sum + n : sum), 0);
  const closing = parts.fastenings.filter(({ fastener }) => fastenerTraits[fastener.kind].endsBehind);
  return [...new Set(closing.map(({ fastener }) => fastener.name))].sort((a, b) => count(b) - count(a));
}

/** One fastener every way it can give, where it sits nearest to an edge. */
export function fastenerWaysTable(job: Job, name: string): TableView {
  const group = nearestToEdge(job, name);
  const { ways, slip, length } = fastenerWays(group, job);
  const style = styleOf(job.case);
  return tableOf(
    ways,
    [
      { heading: "One of it", cell: ({ way }) => way },
      { heading: "At", cell: ({ load }) => Force.show(load, style) },
      { heading: "By", cell: ({ known }) => known },
    ],
    `${name} in ${group.panel}, the weakest way first. It slips at ${SpringRate.show(slip, { ...style, digits: 2 })}, and by the rule of thumb is ${showFine(length, style)} long for its stack`,
  );
}

/** The working behind the table. */
export function fastenerWaysLines(job: Job, name: string): readonly WorkedLine[] {
  return fastenerWays(nearestToEdge(job, name), job).because;
}

function nearestToEdge({ parts }: Job, name: string): Fastening {
  const [nearest] = parts.fastenings
    .filter(({ fastener }) => fastener.name === name)
    .sort((a, b) => (a.edgeDistance ?? 1) - (b.edgeDistance ?? 1));
  if (!nearest) throw new Refusal(`fasteners: the case has no ${name}`);
  return nearest;
}

/** What a handle's fasteners still hold when the hand pulls off their middle, at shares of half its width. */
export function offMiddleTable(job: Job, shares: readonly Ratio[]): TableView {
  const handle = job.parts.hardware.find(({ item }) => item.duty === "lift");
  const group = job.parts.fastenings.find(({ holds }) => holds === handle?.id);
  const half = (handle?.stock.width ?? 0) / 2;
  const rows = group
    ? offMiddle(
        group,
        shares.map((share) => Length.si(share * half)),
      )
    : [];
  const style = styleOf(job.case);
  const percent = (share: Ratio): string => Ratio.show(share, { unit: "%", digits: 3 });
  return tableOf(
    rows,
    [
      { heading: "Hand off the middle", cell: ({ off }) => showFine(off, style) },
      { heading: "Holds, elastic", cell: ({ elastic }) => percent(elastic) },
      { heading: "Holds, turned about a point", cell: ({ ultimate }) => percent(ultimate) },
    ],
    `Fasteners of ${handle?.stock.name ?? "a handle"}: share of what they hold pulled through their middle. Count on the elastic share; the other wants metal that yields before it breaks`,
  );
}

/** Rivets of the hardware, counted by part: rivets each times parts, before any edge is riveted; or that there are none. */
export function hardwareRivets({ parts }: Job): WorkedLine | string {
  const rivets = (id: string): number =>
    parts.fastenings.reduce(
      (sum, { holds, fastener, count }) =>
        holds === id && fastenerTraits[fastener.kind].timedAs === "rivet" ? sum + count : sum,
      0,
    );
  const items = [...new Set(parts.hardware.map(({ stock }) => stock.name))];
  const riveted = items.flatMap((part) => {
    const placed = parts.hardware.filter(({ stock, id }) => stock.name === part && rivets(id) > 0);
    const [first] = placed;
    return first ? [{ part, each: rivets(first.id), parts: placed.length }] : [];
  });
  return riveted.length === 0 ? "No hardware is riveted." : rivetCount.worked({ riveted });
}

/** Panels that have fasteners, those with the most first. */
export function fastenedPanels({ parts }: Job): readonly string[] {
  const count = (id: string): number =>
    parts.fastenings.reduce((sum, { panel, count: n }) => (panel === id ? sum + n : sum), 0);
  return [...new Set(parts.fastenings.map(({ panel }) => panel))].sort((a, b) => count(b) - count(a));
}

/** Every fastener group of a panel, numbered as its drawing is; of the whole case without a panel. */
export function scheduleTable(job: Job, panel?: string): TableView {
  const style = styleOf(job.case);
  const rows = fastenerSchedule(job).filter((row) => panel === undefined || row.panel === panel);
  const numbered = rows.map((row, i) => ({ ...row, number: i + 1 }));
  return tableOf(
    numbered,
    [
      { heading: "No.", cell: ({ number }) => number },
      ...(panel === undefined
        ? [{ heading: "Panel", cell: (row: (typeof numbered)[number]) => row.panel }]
        : []),
      { heading: "Holds", cell: ({ holds }) => holds },
      { heading: "Fastener", cell: ({ fastener }) => fastener.name },
      { heading: "How many", cell: ({ count }) => count },
      { heading: "Washers", cell: ({ washers }) => (washers > 0 ? "each" : "") },
      { heading: "Hole", cell: ({ hole }) => decimal(hole, style) },
      { heading: "Grip", cell: ({ grip }) => decimal(grip, style) },
      { heading: "Pitch", cell: ({ pitch }) => (pitch === undefined ? "" : Length.show(pitch, style)) },
      { heading: "To the edge", cell: ({ edgeDistance }) => decimal(edgeDistance, style) },
    ],
    panel === undefined ? "Every fastener group of the case" : `Fasteners of ${panel}`,
  );
}

/** One decimal figure in the reader's unit, so that the table fits a page. */
function decimal(length: Length | undefined, { system }: ShowStyle): string {
  if (length === undefined) return "";
  return Length.show(length, { unit: system === "inch" ? "in" : "mm", digits: 3, exact: true });
}

/** A panel with its holes, numbered as its table is. Nothing for a panel that has none. */
export function scheduleDrawing(job: Job, panel: string): readonly DrawingView[] {
  const part = [...job.parts.panels, ...job.parts.shelves.map((shelf) => shelf.panel)].find(
    ({ id }) => id === panel,
  );
  const order = fastenerSchedule(job).filter((row) => row.panel === panel);
  const groups = job.parts.fastenings
    .filter((fastening) => fastening.panel === panel)
    .map((fastening) => ({
      letter: String(order.findIndex(({ holds }) => holds === fastening.holds) + 1),
      fastening,
    }));
  return part && groups.length > 0
    ? [panelHolesDrawing(part, groups, ruleOf(job.case.units), job.parts)]
    : [];
}

/** Fasteners to buy. */
export function fastenerTotalsTable(job: Job): TableView {
  return tableOf(
    fastenerTotals(job, job.review.purchases),
    [
      { heading: "Fastener", cell: ({ stock }) => stock.name },
      { heading: "In the case", cell: ({ count }) => count },
      { heading: "Spares", cell: ({ spares }) => spares },
      { heading: "Packs", cell: ({ packs, stock }) => `${packs} of ${stock.packOf}` },
      { heading: "Washers", cell: ({ washers }) => washers || "" },
      { heading: "Cost", cell: ({ cost }) => Money.show(cost) },
    ],
    "Totals for each fastener",
  );
}

/** Time of each kind of work on all fasteners, by the tools that were timed. */
export function workOnFastenersTable(job: Job): TableView {
  const works = new Map<string, { work: string; tool: string; time: number }>();
  for (const { work, tool, time } of fastenerTotals(job, job.review.purchases).flatMap(
    ({ byTool }) => byTool,
  )) {
    const key = `${work} ${tool}`;
    works.set(key, { work, tool, time: (works.get(key)?.time ?? 0) + time });
  }
  return tableOf(
    [...works.values()],
    [
      { heading: "Work", cell: ({ work }) => work },
      { heading: "Tool", cell: ({ tool }) => tool },
      { heading: "Time", cell: ({ time }) => Time.show(Time.si(time), { unit: "min", digits: 2 }) },
    ],
    "Time for all of them, with each tool that you timed",
  );
}
