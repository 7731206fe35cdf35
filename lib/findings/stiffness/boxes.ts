/** Does each section keep its shape, and do its doors still close? Told from the joined boxes. */
import type { HungLeaf, PanelPart } from "../../design/index.js";
import type { WorkedLine } from "../../formula.js";
import {
  allowedSag,
  allowedSagSource,
  type CaseOutcome,
  type CaseRun,
  castersOf,
  moduliInterval,
  onBothMeshes,
  type ReviewInput,
  runsOf,
  sectionNamed,
  sheetModuli,
} from "../../model/index.js";
import { Force, Length, type ShowStyle, SpringRate } from "../../quantity/index.js";
import { Refusal } from "../../refusal.js";
import { cite } from "../../source.js";
import { fineAmount, showFine, styleOf, withinMesh } from "../amount.js";
import { besideOutcomes, withoutOutcomes } from "../box-cases.js";
import { rackedFigure } from "../figures/box-figures.js";
import { type Answer, type Question, question } from "../question.js";
import { type BoxedInput, boxAssumptions, each, mostOf, sectionNames, theOne } from "../subjects.js";

const boxElements = cite("mixed-interpolated-plates", "nine-node element, faces of the box");

/** Whether each section keeps its shape when it is pushed sideways at its top. */
export const racking: Question<BoxedInput> = question({
  id: "stiffness.box",
  about: each(
    sectionNames,
    (section) => section,
    (section) => `box of ${section}`,
  ),
  ask: (section) => `Does ${section} keep its shape when it is pushed sideways at its top?`,
  tier: "feel",
  cautions: [],
  assumes: boxAssumptions,
  figure: (input: BoxedInput, section, { demand }) => {
    const { push } = input.case.demands;
    const style = styleOf(input.case);
    const [toRight, toBack] = sectionNamed(runsOf(input.box()).fine.sections, section).racking;
    const axis = toRight < toBack ? "x" : "y";
    const racks = demand?.show(style);
    const outcome = `Its top moves ${racks ?? "a little"}`;
    return rackedFigure(input, { section, axis, push: Force.show(push, style), outcome, racks });
  },
  answer: (input: BoxedInput, _, section) => {
    const runs = runsOf(input.box());
    const { push } = input.case.demands;
    const of = (run: CaseRun) => sectionNamed(run.sections, section);
    const [toRight, toBack] = of(runs.fine).racking;
    const softer = toRight < toBack ? 0 : 1;
    const racked = onBothMeshes(runs, (run) => push / of(run).racking[softer]);
    const twist = onBothMeshes(runs, (run) => of(run).twist);
    const body = theOne(runs.fine.system.model.bodies, ({ name }) => name === section, `box of ${section}`);
    const allowed = allowedSag(input, Length.si(body.problem.height));
    const sag = Length.si(racked.value);
    const style = styleOf(input.case);
    const [way, other] = softer === 0 ? ["left", "front"] : ["front", "left"];
    return {
      demand: fineAmount("racking under the push", sag),
      capacity: fineAmount("allowed, as a sag over its height", allowed),
      facts: `Pushed at its top edge from the ${way} with ${Force.show(push, style)}, ${section} racks ${showFine(sag, style)} of ${showFine(allowed, style)} allowed. That is ${withinMesh(racked.meshError)} by the mesh. It resists with ${rateOf(Math.min(toRight, toBack), style)}, and with ${rateOf(Math.max(toRight, toBack), style)} from the ${other}. When it stands on three corners, the fourth gives by ${rateOf(twist.value, style)} (${withinMesh(twist.meshError)}).`,
      interval: moduliInterval(input, racked.value / allowed, runs.powers(section)[softer]),
      because: moduliLines(input, section),
      limit: allowedSagSource,
      sources: [
        boxElements,
        cite("finite-element-procedures", "5.4.1, beams along its edges"),
        cite("en-1995", "7.1, table 7.1, slip of its rivets"),
      ],
    };
  },
});

function rateOf(stiffness: number, style: ShowStyle): string {
  return SpringRate.show(SpringRate.si(stiffness), { ...style, digits: 2 });
}

function moduliLines({ parts, measurements }: ReviewInput, section: string): readonly WorkedLine[] {
  const panel = parts.panels.find((one) => one.section === section && one.role === "face");
  if (!panel) return [];
  const { along, across } = sheetModuli(panel.sheet, measurements);
  return [...along.because, ...across.because];
}

/** A door. */
type Door = PanelPart & { readonly leaf: HungLeaf };

/** Load cases in which a door is used; nobody opens one while it falls. */
function inUse({ id }: Pick<CaseOutcome, "id">): boolean {
  return !id.startsWith("dropped") && !id.startsWith("carried") && id !== "lifted";
}

/** Whether each door still closes in the load cases in which it is used. */
export const doors: Question<BoxedInput> = question({
  id: "stiffness.door",
  about: each(
    ({ parts }) =>
      parts.panels.filter((panel): panel is Door => panel.role === "leaf" && panel.leaf !== undefined),
    ({ id }) => id,
    ({ id }) => `${id} in its opening`,
  ),
  ask: ({ id }, input) =>
    `Does ${id} still close when the case is pushed${castersOf(input).length > 0 ? " or stands on three casters" : ""}?`,
  tier: "feel",
  cautions: [],
  assumes: boxAssumptions,
  figure: (input: BoxedInput, { id, section, face }, { demand }) => {
    const axis = face === "left" || face === "right" ? "y" : "x"; // along its face
    const style = styleOf(input.case);
    const push = Force.show(input.case.demands.push, style);
    const outcome = `The gap round ${id} loses ${demand?.show(style) ?? "a little"} in its worst load case`;
    return rackedFigure(input, { section, axis, push, outcome });
  },
  answer: (input: BoxedInput, _, door) => pinched(input, door),
});

const criterion = cite("common-practice", "springs of casters");

function pinched(input: BoxedInput, { id, section, face, leaf }: Door): Answer {
  const runs = runsOf(input.box());
  const loose = runs.fine.unanswered.find((one) => one.id === `shut.${id}`);
  if (loose) throw new Refusal(loose.why);
  const lost = (outcome: CaseOutcome): number => outcome.doors.find(({ name }) => name === id)?.value ?? 0;
  const skewed = (outcome: CaseOutcome): number =>
    outcome.openings.find(({ name }) => name === leaf.opening)?.value ?? 0;
  const told = runs.fine.outcomes.filter(inUse);
  const none = `no load case tells of ${id}`;
  if (told.length === 0) return withoutOutcomes(runs.fine, inUse, none, criterion);
  const worst = mostOf(told, lost, none);
  const of = (run: CaseRun): CaseOutcome => theOne(run.outcomes, (one) => one.id === worst.id, worst.title);
  const needs = onBothMeshes(runs, (run) => lost(of(run)));
  const square = onBothMeshes(runs, (run) => skewed(of(run)));
  const { clearance, between = clearance } = leaf;
  const gap = Length.si(Math.min(between, clearance));
  const [lostGap, outOfSquare] = [Length.si(needs.value), Length.si(square.value)];
  const ratio = lostGap / gap;
  // A door's gap goes with the racking of its wall.
  const way = face === "left" || face === "right" ? 1 : 0;
  const style = styleOf(input.case);
  return {
    demand: fineAmount("gap lost at the tightest place", lostGap),
    capacity: fineAmount(leaf.between === undefined ? "gap all round" : "smallest gap beside it", gap),
    facts: `The door loses ${showFine(lostGap, style)} (${withinMesh(needs.meshError)} by the mesh) of its gap of ${showFine(gap, style)}. The worst load case is this: ${worst.title}. The diagonals of its opening then differ by ${showFine(outOfSquare, style)} (${withinMesh(square.meshError)}). ${ratio < 1 ? "It closes, if it was hung with an even gap." : "It jams."}${besideOutcomes(runs.fine, inUse, style)}`,
    remedies: [{ words: "Leave a wider gap, or make the frame around it stiffer." }],
    interval: moduliInterval(input, ratio, runs.powers(section)[way]),
    because: moduliLines(input, section),
    limit: criterion,
    sources: [boxElements, cite("geometry", "diagonals of a rectangle out of square")],
  };
}
