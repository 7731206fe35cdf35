/** Does each section keep its shape, and do its doors still close? Told from the joined boxes. */
import type { PanelPart } from "../../design/index.js";
import type { WorkedLine } from "../../formula.js";
import {
  type CaseBox,
  type CaseOutcome,
  type CaseRun,
  type CaseRuns,
  moduliInterval,
  onBothMeshes,
  type ReviewInput,
  rackingPowers,
  runsOf,
  sheetModuli,
} from "../../model/index.js";
import { Force, Length, type ShowStyle, SpringRate } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { fineAmount, showFine, styleOf, withinMesh } from "../amount.js";
import type { Finding } from "../finding.js";
import { verdictOf } from "../finding.js";
import { guarded, type Reply } from "../guarded.js";

/** What the boxes leave out, said with every finding made from them. */
export const boxAssumptions: readonly string[] = [
  "The boxes: panels meet at their middle planes; rivets slip as EN 1995 has it for metal on wood; extrusions run from corner to corner; edges without an extrusion are glued; what cuts less than 5 % of a face away, panes and inner fittings are left out. Sections bear on each other along their walls, and only latches hold them sideways and up.",
];

/** A finding a section, and one a door. */
export function boxFindings(input: ReviewInput, box: () => CaseBox): readonly Finding[] {
  const leaves = input.parts.panels.filter(({ role, leaf }) => role === "leaf" && leaf !== undefined);
  return [
    ...input.parts.sections.map(({ name }) => rackingFinding(input, name, box)),
    ...leaves.map((leaf) => doorFinding(input, leaf, box)),
  ];
}

function rackingFinding(input: ReviewInput, section: string, box: () => CaseBox): Finding {
  const question = `Does ${section} keep its shape when it is pushed sideways at its top?`;
  return guarded(
    { id: `stiffness.box.${section}`, topic: "stiffness", subject: `box of ${section}`, question },
    () => rackingReply(input, section, runsOf(box())),
    boxAssumptions,
  );
}

function rackingReply(input: ReviewInput, section: string, runs: CaseRuns): Reply {
  const { push, allowedSag } = input.case.demands;
  const of = (run: CaseRun) => run.sections.find((one) => one.section === section)!;
  const softer = of(runs.fine).racking[0] < of(runs.fine).racking[1] ? 0 : 1;
  const racked = onBothMeshes(runs, (run) => push / of(run).racking[softer]);
  const twist = onBothMeshes(runs, (run) => of(run).twist);
  const { height } = runs.fine.system.model.bodies.find(({ name }) => name === section)!.problem;
  const allowed = Length.si(allowedSag * height);
  const ratio = racked.value / allowed;
  const interval = moduliInterval(input, ratio, rackingPowers(runs, section, softer));
  const style = styleOf(input.case);
  const [way, other] = softer === 0 ? ["left", "front"] : ["front", "left"];
  return {
    verdict: verdictOf(ratio, interval),
    answer: `Pushed at its top edge from the ${way} with ${Force.show(push, style)}, ${section} racks ${showFine(Length.si(racked.value), style)} (${withinMesh(racked.meshError)} by the mesh), ${rateOf(of(runs.fine).racking[softer], style)}; from the ${other} it is ${rateOf(of(runs.fine).racking[1 - softer]!, style)}. Standing on three corners, the fourth gives by ${rateOf(twist.value, style)} (${withinMesh(twist.meshError)}). ${showFine(allowed, style)} is allowed.`,
    demand: fineAmount("racking under the push", Length.si(racked.value)),
    capacity: fineAmount("allowed, as a sag over its height", allowed),
    ratio,
    ...(interval ? { interval } : {}),
    because: moduliLines(input, section),
    cautions: boxAssumptions,
    source: [
      cite("mixed-interpolated-plates", "nine-node element, faces of the box"),
      cite("finite-element-procedures", "5.4.1, beams along its edges"),
      cite("common-practice", "allowed movement as a share of the height"),
      cite("en-1995", "7.1, table 7.1, slip of its rivets"),
    ],
  };
}

function rateOf(stiffness: number, style: ShowStyle): string {
  return SpringRate.show(SpringRate.si(stiffness), { ...style, digits: 2 });
}

function moduliLines({ parts, measurements }: ReviewInput, section: string): readonly WorkedLine[] {
  const panel = parts.panels.find((one) => one.section === section && one.role === "face");
  if (!panel) return [];
  const { along, across } = sheetModuli(panel.sheet, measurements);
  return [...along.because, ...across.because];
}

/** Load cases in which a door is used; nobody opens one while it falls. */
function inUse({ id }: CaseOutcome): boolean {
  return !id.startsWith("dropped") && !id.startsWith("carried") && id !== "lifted";
}

function doorFinding(input: ReviewInput, leaf: PanelPart, box: () => CaseBox): Finding {
  const question = `Does ${leaf.id} still close when the case is pushed or stands on three casters?`;
  return guarded(
    { id: `stiffness.door.${leaf.id}`, topic: "stiffness", subject: `${leaf.id} in its opening`, question },
    () => doorReply(input, leaf, runsOf(box())),
    boxAssumptions,
  );
}

function doorReply(input: ReviewInput, leaf: PanelPart, runs: CaseRuns): Reply {
  const lost = ({ doors }: CaseOutcome): number => doors.find(({ name }) => name === leaf.id)?.value ?? 0;
  const worst = runs.fine.outcomes
    .filter(inUse)
    .reduce<CaseOutcome | undefined>(
      (most, one) => (most === undefined || lost(one) > lost(most) ? one : most),
      undefined,
    );
  if (!worst) throw new RangeError(`no load case tells of ${leaf.id}: give the case casters to stand on`);
  const of = (run: CaseRun): CaseOutcome => run.outcomes.find(({ id }) => id === worst.id)!;
  const needs = onBothMeshes(runs, (run) => lost(of(run)));
  const square = onBothMeshes(runs, (run) => opening(of(run), leaf));
  const gap = leaf.leaf!.clearance;
  const ratio = needs.value / gap;
  // A door's gap goes with the racking of its wall.
  const way = leaf.face === "left" || leaf.face === "right" ? 1 : 0;
  const interval = moduliInterval(input, ratio, rackingPowers(runs, leaf.section, way));
  const style = styleOf(input.case);
  return {
    verdict: verdictOf(ratio, interval),
    answer: `Worst is ${worst.title}: the opening goes ${showFine(Length.si(square.value), style)} out of square (difference of its diagonals, ${withinMesh(square.meshError)} by the mesh), and at its tightest place the door loses ${showFine(Length.si(needs.value), style)} (${withinMesh(needs.meshError)}) of its gap of ${showFine(gap, style)}. ${ratio < 1 ? "It closes, if it was hung with an even gap." : "It jams: a wider gap, or a stiffer frame around it."}`,
    demand: fineAmount("gap lost at the tightest place", Length.si(needs.value)),
    capacity: fineAmount("gap all round", gap),
    ratio,
    ...(interval ? { interval } : {}),
    because: moduliLines(input, leaf.section),
    cautions: boxAssumptions,
    source: [
      cite("mixed-interpolated-plates", "nine-node element, faces of the box"),
      cite("geometry", "diagonals of a rectangle out of square"),
      cite("common-practice", "springs of casters"),
    ],
  };
}

function opening({ openings }: CaseOutcome, { id }: PanelPart): number {
  return openings.find(({ name }) => id.endsWith(`.${name}`))?.value ?? 0;
}
