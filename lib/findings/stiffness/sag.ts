/** Whether each panel stays stiff, alone on the bench and locked into the box, and each shelf straight for years. */
import type { PanelPart } from "../../design/index.js";
import type { WorkedLine } from "../../formula.js";
import {
  allowedSag,
  allowedSagSource,
  facePressure,
  hingedEdges,
  type LockedSag,
  lockedSag,
  type PanelSag,
  panelSag,
  type SagCase,
  type SheetModuli,
  sagCaseOf,
  sagInterval,
  sagSpan,
  sheetModuli,
  shelfEdges,
  shelfMass,
  shelfPressure,
  shelfSag,
} from "../../model/index.js";
import { type Length, Mass, Pressure, Ratio, type ShowStyle } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { fineAmount, showFine, styleOf, withinMesh } from "../amount.js";
import { sagFigure } from "../figures/panel-figures.js";
import { type Remedy, type Verdict, verdictOf } from "../finding.js";
import { type Answer, type Question, question } from "../question.js";
import { type BoxedInput, boxAssumptions, each, eachShelf } from "../subjects.js";

/** A panel that something presses on. */
interface PressedPanel {
  /** The panel. */
  readonly panel: PanelPart;
  /** What presses on it. */
  readonly pressure: Pressure;
}

/** Whether each panel that something presses on stays stiff. */
export const panelSags: Question<BoxedInput> = question({
  id: "stiffness",
  about: each(
    (input): readonly PressedPanel[] =>
      input.parts.panels
        .map((panel) => ({ panel, pressure: facePressure(panel, input) }))
        .filter(({ pressure }) => pressure > 0),
    ({ panel }) => panel.id,
  ),
  ask: ({ panel, pressure }, input) => {
    const style = styleOf(input.case);
    return `Will ${panel.id} stay stiff under ${Pressure.show(pressure, style)}${openingWords(panel, style)}?`;
  },
  tier: "feel",
  cautions: [],
  assumes: [
    "Locked into the box, it is a face of its section, which stands on its lower corners. Doors and panes in its openings are left out.",
    ...boxAssumptions,
  ],
  answer: (input: BoxedInput, _, pressed) => pressedOn(input, pressed),
  figure: (input, { panel, pressure }) => {
    const words = Pressure.show(pressure, styleOf(input.case));
    return sagFigure(input, sagCaseOf(panel, pressure, "hinged", input), hingedEdges(panel), words);
  },
});

function openingWords(panel: PanelPart, style: ShowStyle): string {
  const share = Ratio.si(1 - panel.netArea / panel.grossArea);
  return panel.openings.length === 0
    ? ""
    : ` with ${Ratio.show(share, { ...style, unit: "%", digits: 2 })} of it cut away`;
}

function pressedOn(input: BoxedInput, { panel, pressure }: PressedPanel): Answer {
  const moduli = sheetModuli(panel.sheet, input.measurements);
  const sagCase: SagCase = sagCaseOf(panel, pressure, "hinged", input);
  const alone = panelSag(sagCase);
  const solved = panel.role === "face" ? input.box() : undefined;
  const locked = solved && "runs" in solved ? lockedSag(solved.runs, panel, alone.pressure) : undefined;
  const allowed = allowedSag(input, sagSpan(panel));
  const ratio = alone.sag / allowed;
  const interval = sagInterval(sagCase, ratio);
  const lockedHolds = locked !== undefined && locked.sag <= allowed;
  const verdict = ratio > 1 && lockedHolds ? "close" : verdictOf(ratio, interval);
  const holds = verdict === "holds" ? " It holds even alone." : "";
  return {
    verdict,
    demand: fineAmount("sag, edges free to turn", alone.sag),
    capacity: fineAmount("allowed sag", allowed),
    facts: `${sagWords(panel, alone, locked, allowed, styleOf(input.case))}${holds}`,
    remedies: [remedyFor(verdict)],
    interval,
    because: [...testsBehind(moduli), ...alone.because],
    limit: allowedSagSource,
    sources: [cite("mixed-interpolated-plates", "nine-node element, panel and box")],
  };
}

function remedyFor(verdict: Verdict): Remedy {
  return verdict === "close"
    ? {
        words: "Add a batten, or measure the sheet more often: how well the box holds its edges decides.",
      }
    : { words: "Use thicker ply, add a batten, or make an opening smaller." };
}

/** The tests behind the sheet's moduli, or the veneers where none was made: those once. */
function testsBehind({ along, across, shear, throughShear }: SheetModuli): readonly WorkedLine[] {
  return [...new Set([along, across, shear, throughShear].flatMap((known) => known?.because ?? []))];
}

/** Alone on the bench, and as a face of its box. */
function sagWords(
  { id }: PanelPart,
  alone: PanelSag,
  locked: LockedSag | undefined,
  allowed: Length,
  style: ShowStyle,
): string {
  const show = (sag: Length): string => showFine(sag, style);
  // Too much alone and little enough in the box: the two decide together, so both stand in the first sentence.
  if (locked && alone.sag > allowed && locked.sag <= allowed)
    return `${id} sags ${show(alone.sag)} with its edges free to turn and ${show(locked.sag)} locked into the box; ${show(allowed)} is allowed. By the mesh the first is ${withinMesh(alone.meshError)}, the second ${withinMesh(locked.meshError)}.`;
  const box = locked
    ? ` Locked into the box it sags ${show(locked.sag)} (${withinMesh(locked.meshError)}).`
    : "";
  return `${id} sags ${show(alone.sag)} with its edges free to turn (${withinMesh(alone.meshError)} by the mesh); ${show(allowed)} is allowed.${box}`;
}

/** Whether each shelf stays straight under what it carries, after years. */
export const shelfSags: Question = question({
  id: "stiffness.shelf",
  about: eachShelf,
  ask: ({ shelf }) => `Will the ${shelf.name} stay straight under what it carries, after years?`,
  tier: "feel",
  cautions: [],
  answer: (input, _, part) => {
    const { first, later, allowed, because, meshError } = shelfSag(part, input);
    const style = styleOf(input.case);
    const mesh = meshError === undefined ? "" : ` (${withinMesh(meshError)} by the mesh)`;
    return {
      demand: fineAmount("sag after years", later),
      capacity: fineAmount("allowed sag", allowed),
      facts: `It sags ${showFine(first, style)} when loaded${mesh} and ${showFine(later, style)} after years; ${showFine(allowed, style)} is allowed.`,
      because,
      limit: allowedSagSource,
    };
  },
  figure: (input, part) => {
    const { panel, shelf } = part;
    const words = Mass.show(shelfMass(part), styleOf(input.case));
    const sagCase = sagCaseOf(panel, shelfPressure(part), "hinged", input);
    return sagFigure(input, sagCase, shelfEdges(shelf.support), words);
  },
});
