/** Tables, drawings and the answer of the notebook that asks whether thin ply stays stiff. */
import type { PanelPart } from "../../design/index.js";
import { meshChange } from "../../fem/index.js";
import { counted, type Finding, showFine, showMeshError, styleOf } from "../../findings/index.js";
import type { Job } from "../../job/index.js";
import {
  battenTrials,
  type CaseOutcome,
  type CaseRuns,
  type LinkKind,
  type LoadedCase,
  type MovedOutline,
  movedOutlines,
  type NamedValue,
  panelNamed,
  runsOf,
  sagTrials,
} from "../../model/index.js";
import {
  type ChartView,
  type Column,
  type DrawingMark,
  type DrawingView,
  drawing,
  type TableView,
  tableOf,
  verdictWords,
} from "../../page/index.js";
import { Force, Length, LineLoad, Ratio, ratio, type ShowStyle } from "../../quantity/index.js";
import { panelHolesDrawing, ruleOf } from "../../recipe/index.js";
import { Refusal } from "../../refusal.js";
import type { Point2 } from "../../shape/index.js";
import { lineChart } from "../line-chart.js";
import { progressLine, type SweepOptions, sweptPanels } from "../sweep/index.js";
import { chartLength, lengthUnit } from "./chart-units.js";
import { mostWanting, tallySentence } from "./tally.js";

/** One point of the trade-off, in plain numbers. */
export interface SagPoint {
  /** In the case's own unit: in or mm. */
  readonly thickness: number;
  /** % of the face */
  readonly cutAway: number;
  /** How the edges are held, in words. */
  readonly edges: string;
  /** Sag over allowed sag. */
  readonly use: number;
  /** The estimated mesh error, % */
  readonly meshError: number;
}

/**
 * What thicker ply and smaller openings buy on one panel: edges free to turn and held stiffly. Worked out on all
 * processors, with a line of progress.
 *
 * @param options threads and progress, of one's own
 */
export function sagPoints(
  job: Job,
  panel: string,
  thicknesses: readonly Length[],
  scales: readonly number[],
  options: SweepOptions = { progress: progressLine("panels tried") },
): Promise<readonly SagPoint[]> {
  const trials = sagTrials(job, panel, thicknesses, scales);
  const swept = sweptPanels(
    trials.map(({ task }) => task),
    options,
  );
  return begun(
    swept.then((answers) =>
      trials.map(({ thickness, cutAway, edges, allowed }, i) => ({
        thickness: chartThickness(job, thickness),
        cutAway: Ratio.in(cutAway, "%"),
        edges: edges === "hinged" ? "alone on the bench" : "edges held stiffly",
        use: answers[i]!.sag / allowed,
        meshError: 100 * answers[i]!.meshError,
      })),
    ),
  );
}

/** Thicknesses worth a try on a panel: its own and those of the sheets in stock, or two thirds and four thirds of its own. */
export function thicknessesToTry(job: Job, panel: string): readonly Length[] {
  const own = panelNamed(job, panel).sheet.thickness;
  const stock = job.stock.sheets.map(({ thickness }) => thickness);
  const others = stock.some((one) => one !== own) ? stock : [Length.si(own / 1.5), Length.si(own / 0.75)];
  const nearest = [...new Set(others)]
    .filter((one) => one !== own)
    .sort((a, b) => Math.abs(Math.log(a / own)) - Math.abs(Math.log(b / own)));
  return [own, ...nearest.slice(0, 2)].sort((a, b) => a - b);
}

/** Sizes of its openings worth a try, as shares of those drawn; a panel without openings has none to scale. */
export function scalesToTry(job: Job, panel: string): readonly number[] {
  return cutAwayOf(panelNamed(job, panel)) > 1e-9 ? [0, 0.7, 1] : [1];
}

/** A thickness as callipers tell it: three digits. */
function chartThickness(job: Job, thickness: Length): number {
  return chartLength(job, thickness, 3);
}

/** What thickness and openings do to the sag of a panel; a panel without openings by its thickness alone. */
export function sagChart(job: Job, panel: string, points: readonly SagPoint[]): ChartView {
  const own = chartThickness(job, panelNamed(job, panel).sheet.thickness);
  const thickness = { field: "thickness", title: "Ply", unit: lengthUnit(job) } as const;
  const common = {
    title: `${panel}: sag over what is allowed`,
    rows: points,
    y: { field: "use", title: "Sag over allowed sag" },
    series: { field: "edges", title: "Edges" },
    limits: [{ value: 1, label: "allowed" }],
  } as const;
  if (points.every(({ cutAway }) => cutAway === points[0]?.cutAway)) {
    const description = "Sag as a share of the allowed sag, against the thickness of the sheet.";
    return lineChart({ ...common, description, x: thickness });
  }
  return lineChart({
    ...common,
    description:
      "Sag as a share of the allowed sag, against the share of the face that is cut away, for several thicknesses.",
    x: { field: "cutAway", title: "Cut away", unit: "% of the face", zero: true },
    slider: points.some((one) => one.thickness === own) ? { ...thickness, start: own } : thickness,
  });
}

/** One place tried for a batten, in plain numbers. */
export interface BattenPoint {
  /** Which way the batten runs. */
  readonly runs: string;
  /** Its middle from the lower or left end of the panel's clear span, in the case's own unit: in or mm. */
  readonly place: number;
  /** Sag with it over the sag as drawn, % */
  readonly share: number;
  /** The estimated mesh error, % */
  readonly meshError: number;
}

/**
 * What a batten does at every place where openings leave it room, both ways.
 *
 * @param options threads and progress, of one's own
 */
export function battenPoints(
  job: Job,
  panel: string,
  options: SweepOptions = { progress: progressLine("battens tried") },
): Promise<readonly BattenPoint[]> {
  const { drawn, trials } = battenTrials(job, panel);
  const swept = sweptPanels([drawn, ...trials.map(({ task }) => task)], options);
  return begun(
    swept.then(([before, ...answers]) =>
      trials.map(({ runs, place }, i) => ({
        runs,
        place: chartLength(job, place),
        share: (100 * answers[i]!.sag) / before!.sag,
        meshError: 100 * answers[i]!.meshError,
      })),
    ),
  );
}

/** Work may be begun in one cell and awaited in another; whoever awaits it is told of its error. */
function begun<Result>(work: Promise<Result>): Promise<Result> {
  work.catch(() => undefined);
  return work;
}

/** The estimated mesh error. */
export function meshNote(points: readonly { readonly meshError: number }[]): string {
  const worst = Math.max(...points.map(({ meshError }) => meshError));
  return `The mesh adds at most ${Ratio.show(Ratio.of(worst, "%"), { unit: "%", digits: 2 })} error to any of these ${points.length} points.`;
}

/** The panel with its openings, to scale. */
export function panelDrawing(job: Job, id: string): DrawingView {
  return panelHolesDrawing(panelNamed(job, id), [], ruleOf(job.case.units), job.parts);
}

const cutAwayOf = ({ netArea, grossArea }: PanelPart): number => 1 - netArea / grossArea;

/** The upright face with the largest share cut away, the one to worry about; without openings the one of which most is asked. */
export function mostCutPanel({ parts, review }: Job): string {
  const faces = parts.panels.filter(({ role }) => role === "face");
  const upright = faces.filter(({ face }) => face !== "top" && face !== "bottom");
  const asked = (id: string): number => review.stiffness.find(({ subject }) => subject === id)?.ratio ?? 0;
  const [most] = (upright.length > 0 ? upright : faces).sort(
    (a, b) => cutAwayOf(b) - cutAwayOf(a) || asked(b.id) - asked(a.id),
  );
  if (!most) throw new Refusal("stiffness: the case has no panel");
  return most.id;
}

/** The finding about one panel. */
export function stiffnessOf({ review: { stiffness } }: Job, subject: string): Finding {
  const found = stiffness.find((finding) => finding.subject === subject);
  if (!found) throw new Refusal(`no finding about "${subject}"`);
  return found;
}

/** How stiff every panel, shelf, door and box is, the most used first. */
export function stiffnessTable({ review, case: description }: Job): TableView {
  const style = styleOf(description);
  const used = [...review.stiffness].sort((a, b) => (b.ratio ?? 0) - (a.ratio ?? 0));
  return tableOf(
    used,
    [
      { heading: "What", cell: ({ subject }) => subject },
      { heading: "Sag or movement", cell: ({ demand }) => demand?.show(style) ?? "" },
      { heading: "Allowed", cell: ({ capacity }) => capacity?.show(style) ?? "" },
      { heading: "Used", cell: (finding) => usedText(finding) },
      { heading: "Verdict", cell: ({ verdict }) => verdictWords[verdict] },
    ],
    "Every panel, shelf, door and box, the most used first",
  );
}

/** Share of what is allowed, with the range that the builder's scatter gives it. */
function usedText({ ratio: used, interval }: Finding): string {
  if (used === undefined) return "";
  const percent = (value: number): string =>
    Ratio.show(ratio(value), { unit: "%", digits: value < 1 ? 2 : 3 });
  return interval
    ? `${percent(used)} (${percent(interval.low)} to ${percent(interval.high)})`
    : percent(used);
}

/** How many questions of stiffness and strength hold, and the one to look at first. */
export function stiffnessAnswer({ review: { stiffness, strength } }: Job): string {
  const all = [...stiffness, ...strength];
  if (mostWanting(all)) return tallySentence(all);
  const [most] = all.sort((a, b) => (b.ratio ?? 0) - (a.ratio ?? 0));
  const used = Ratio.show(ratio(most?.ratio ?? 0), { unit: "%", digits: 2 });
  return `All ${counted(all.length, "question", "questions")} hold. Most is asked of ${most?.subject ?? "nothing"}: ${used} of what it may be.`;
}

/** A load case on both meshes. */
interface CaseRow {
  /** The outcome on the usual mesh. */
  readonly fine: CaseOutcome;
  /** The outcome on a coarser mesh. */
  readonly coarse: CaseOutcome;
}

/** Reads a value of a load case; undefined where the case has none. */
type Read = (outcome: CaseOutcome) => NamedValue | undefined;

/** What each load case comes to, each value with what the mesh leaves open about it. Throws RangeError that says why there is none. */
export function loadCaseTable({ review, case: description }: Job): TableView {
  const { fine, coarse }: CaseRuns = runsOf(review.box);
  const style = styleOf(description);
  const rows = fine.outcomes.map((outcome, i): CaseRow => ({ fine: outcome, coarse: coarse.outcomes[i]! }));
  const length = (value: number): string => showFine(Length.si(value), style);
  const force = (value: number): string => Force.show(Force.si(value), style);
  const flow = (value: number): string => LineLoad.show(LineLoad.si(value), style);
  const of = (heading: string, kind: LinkKind): Column<CaseRow> => ({
    heading,
    cell: cellOf(({ hardware }) => hardware[kind]?.[0], force),
  });
  const columns: readonly Column<CaseRow>[] = [
    { heading: "Load case", cell: ({ fine: { title } }) => title },
    { heading: "Moves at most", cell: cellOf(({ movement }) => ({ name: "", value: movement }), length) },
    { heading: "Out of square", cell: cellOf(({ openings }) => openings[0], length) },
    { heading: "Seam", cell: cellOf(({ seams }) => seams[0], flow) },
    of("Latch", "latch"),
    of("Caster", "caster"),
    of("Handle", "handle"),
    of("Hinge", "hinge"),
  ];
  return tableOf(
    rows,
    columns.filter(({ cell }) => rows.some((row) => cell(row) !== "")),
    "Load cases of the joined boxes: the largest of each, in brackets the estimated mesh error",
  );
}

function cellOf(read: Read, show: (value: number) => string): (row: CaseRow) => string {
  return ({ fine, coarse }) => {
    const found = read(fine);
    if (!found) return "";
    const coarser = read(coarse)?.value ?? 0;
    const open = showMeshError(meshChange(found.value, coarser));
    const where = found.name === "" ? "" : `${found.name}: `;
    return `${where}${show(found.value)} (${open})`;
  };
}

/** The pushed case that racks most, seen from the front, left and above, its movements drawn larger. */
export function rackedDrawing({ review, case: description }: Job): DrawingView {
  const { fine } = runsOf(review.box);
  const pushed = fine.cases
    .map((loaded, i) => ({ loaded, outcome: fine.outcomes[i]! }))
    .filter(({ loaded }) => loaded.id.startsWith("pushed"));
  if (pushed.length === 0) throw new Refusal("racked box: give the case casters to stand on");
  const worst = pushed.reduce((most, one) => (one.outcome.movement > most.outcome.movement ? one : most));
  const push = Force.show(worst.loaded.tips ?? description.demands.push, styleOf(description));
  return movedDrawing(worst.loaded, worst.outcome.title, { push, style: styleOf(description) });
}

/** The way of each push by the end of its id, in the axes of the case. */
const pushedWays: Readonly<Record<string, Point2>> = {
  x: { x: 1, y: 0 },
  right: { x: -1, y: 0 },
  y: { x: 0, y: 1 },
  back: { x: 0, y: -1 },
};

/** The push, at the middle of the upper edge that it acts on. */
function pushArrow(
  { id }: LoadedCase,
  outlines: readonly MovedOutline[],
  text: string,
): readonly DrawingMark[] {
  const way = pushedWays[id.replace("pushed.", "")];
  const places = outlines.flatMap(({ places: own }) => own.map(({ at }) => at));
  if (!way) return [];
  const ends = [0, 1, 2].map((axis) => {
    const all = places.map((place) => place[axis]!);
    return { low: Math.min(...all), high: Math.max(...all) };
  });
  const edge = ({ low, high }: { low: number; high: number }, towards: number): number =>
    towards === 0 ? (low + high) / 2 : towards > 0 ? low : high;
  const [x, y] = [edge(ends[0]!, way.x), edge(ends[1]!, way.y)];
  const top = ends[2]!.high;
  const long = 0.4 * (top - ends[2]!.low);
  const from = onPaper([x - long * way.x, y - long * way.y, top]);
  return [{ mark: "arrow", from, to: onPaper([x, y, top]), text, isForce: true }];
}

/** The faces that can be seen from the front, the left and above. */
const seen = ["x0", "top", "y0"] as const;

function movedDrawing(
  loaded: LoadedCase,
  title: string,
  { push, style }: { readonly push: string; readonly style: ShowStyle },
): DrawingView {
  const outlines = movedOutlines(loaded, seen);
  const movement = Math.max(...outlines.flatMap(({ places }) => places.map(({ by }) => Math.hypot(...by))));
  const larger = roundFactor((drawnShare * heightOf(outlines)) / movement);
  const roles = { face: "panel", opening: "opening", leaf: "hardware" } as const;
  const marks = [
    ...outlines.map(
      ({ what, places }): DrawingMark => ({
        mark: "polygon",
        role: roles[what],
        points: places.map(({ at, by }) => onPaper(at.map((own, axis) => own + larger * by[axis]!))),
      }),
    ),
    ...outlines
      .filter(({ what }) => what === "face")
      .map(
        ({ places }): DrawingMark => ({
          mark: "line",
          role: "hidden",
          points: [...places, places[0]!].map(({ at }) => onPaper(at)),
        }),
      ),
    ...pushArrow(loaded, outlines, push),
  ];
  return drawing(
    `The case ${title}`,
    `Seen from the front, the left and above. Broken lines show it at rest. Its farthest place moves ${showFine(Length.si(movement), style)} against the floor, drawn ${larger} times as large.`,
    marks,
  );
}

/** The largest movement is drawn as about this share of the case's height. */
const drawnShare = 0.13;

function heightOf(outlines: readonly MovedOutline[]): number {
  const heights = outlines.flatMap(({ places }) => places.map(({ at }) => at[2]));
  return Math.max(...heights) - Math.min(...heights);
}

/** 1, 2 or 5 times a power of ten, no larger than asked. */
function roundFactor(wanted: number): number {
  const power = 10 ** Math.floor(Math.log10(wanted));
  return power * ([5, 2, 1].find((step) => step * power <= wanted) ?? 1);
}

/** Depth runs to the left and up on the paper, at half its length; mm. */
function onPaper([x = 0, y = 0, z = 0]: readonly number[]): Point2 {
  return { x: 1000 * (x - 0.42 * y), y: 1000 * (z + 0.28 * y) };
}
