/** Tables, chart rows and the answer of the notebook that asks whether the joints hold. */
import type { Fastening, SheetStock } from "../../design/index.js";
import { jerkSweep, showFine, styleOf, worstVerdict } from "../../findings/index.js";
import type { Job } from "../../job/index.js";
import { fastenerKinds, gripCases, takesWasher } from "../../model/index.js";
import { type TableView, tableOf, verdictWords } from "../../page/index.js";
import { Force, Length, type Ratio, ratio } from "../../quantity/index.js";

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
  readonly section: string;
  readonly jerk: number;
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
  const not = joints.filter(({ verdict }) => verdict !== "holds");
  const verdict = worstVerdict(joints.map((finding) => finding.verdict));
  if (verdict === "holds") return `All ${joints.length} joints asked about hold.`;
  return `${joints.length - not.length} of ${joints.length} joints asked about hold. Not yet: ${not.map(({ subject, verdict: one }) => `${subject} (${verdictWords[one].toLowerCase()})`).join("; ")}.`;
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
