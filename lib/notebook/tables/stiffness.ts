/** Tables, chart rows and the answer of the notebook that asks whether thin ply stays stiff. */
import type { PanelPart } from "../../design/index.js";
import { type Finding, styleOf } from "../../findings/index.js";
import type { Job } from "../../job/index.js";
import { battenTrials, sagTrials } from "../../model/index.js";
import { type DrawingView, type TableView, tableOf, verdictWords } from "../../page/index.js";
import { Length, mm, Ratio, ratio } from "../../quantity/index.js";
import { panelHolesDrawing, ruleOf } from "../../recipe/index.js";
import { Refusal } from "../../refusal.js";
import { progressLine, type SweepOptions, sweptPanels } from "../sweep/index.js";

/** One point of the trade-off, in plain numbers. */
export interface SagPoint {
  /** mm */
  readonly thickness: number;
  /** % of the face */
  readonly cutAway: number;
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
export async function sagPoints(
  job: Job,
  panel: string,
  thicknesses: readonly number[],
  scales: readonly number[],
  options: SweepOptions = { progress: progressLine("panels tried") },
): Promise<readonly SagPoint[]> {
  const trials = sagTrials(job, panel, thicknesses.map(mm), scales);
  const answers = await sweptPanels(
    trials.map(({ task }) => task),
    options,
  );
  return trials.map(({ thickness, cutAway, edges, allowed }, i) => ({
    thickness: Length.in(thickness, "mm"),
    cutAway: Ratio.in(cutAway, "%"),
    edges: edges === "hinged" ? "alone on the bench" : "edges held stiffly",
    use: answers[i]!.sag / allowed,
    meshError: 100 * answers[i]!.meshError,
  }));
}

/** One place tried for a batten, in plain numbers. */
export interface BattenPoint {
  readonly runs: string;
  /** Its middle from the lower or left end of the panel's clear span, mm */
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
export async function battenPoints(
  job: Job,
  panel: string,
  options: SweepOptions = { progress: progressLine("battens tried") },
): Promise<readonly BattenPoint[]> {
  const { drawn, trials } = battenTrials(job, panel);
  const [before, ...answers] = await sweptPanels([drawn, ...trials.map(({ task }) => task)], options);
  return trials.map(({ runs, place }, i) => ({
    runs,
    place: Length.in(place, "mm"),
    share: (100 * answers[i]!.sag) / before!.sag,
    meshError: 100 * answers[i]!.meshError,
  }));
}

/** The estimated mesh error. */
export function meshNote(points: readonly { readonly meshError: number }[]): string {
  const worst = Math.max(...points.map(({ meshError }) => meshError));
  return `The mesh adds at most ${Ratio.show(Ratio.of(worst, "%"), { unit: "%", digits: 2 })} error to any of these ${points.length} points.`;
}

/** The panel with its openings, to scale. */
export function panelDrawing({ parts, case: { units } }: Job, id: string): DrawingView {
  return panelHolesDrawing(panelNamed(parts.panels, id), [], ruleOf(units));
}

/** The face with the largest share cut away: the one to worry about. */
export function mostCutPanel({ parts }: Job): string {
  const share = ({ netArea, grossArea }: PanelPart): number => 1 - netArea / grossArea;
  const upright = parts.panels.filter(
    ({ role, face }) => role === "face" && face !== "top" && face !== "bottom",
  );
  const [most] = upright.sort((a, b) => share(b) - share(a));
  if (!most) throw new Refusal("stiffness: the case has no upright panel");
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
export function usedText({ ratio: used, interval }: Finding): string {
  if (used === undefined) return "";
  const percent = (value: number): string =>
    Ratio.show(ratio(value), { unit: "%", digits: value < 1 ? 2 : 3 });
  return interval
    ? `${percent(used)} (${percent(interval.low)} to ${percent(interval.high)})`
    : percent(used);
}

/** How many hold, and of which most is asked. */
export function stiffnessAnswer({ review }: Job): string {
  const [worst] = [...review.stiffness].sort((a, b) => (b.ratio ?? 0) - (a.ratio ?? 0));
  const holding = review.stiffness.filter(({ verdict }) => verdict === "holds").length;
  return `${holding} of ${review.stiffness.length} panels, shelves, doors and boxes hold. ${worst ? `Most is asked of ${worst.subject}: ${worst.answer}` : ""}`;
}

function panelNamed(panels: readonly PanelPart[], id: string): PanelPart {
  const found = panels.find((panel) => panel.id === id);
  if (!found)
    throw new Refusal(`no panel "${id}", expected one of ${panels.map((panel) => panel.id).join(", ")}`);
  return found;
}
