/** Whether each panel of the case stays stiff, alone on the bench and locked into the box. */
import type { PanelPart } from "../../design/index.js";
import type { WorkedLine } from "../../formula.js";
import {
  type CaseBox,
  type LockedSag,
  lockedSag,
  type PanelSag,
  panelSag,
  type ReviewInput,
  type SagCase,
  type SheetModuli,
  sagInterval,
  sheetModuli,
} from "../../model/index.js";
import { Length, Pressure, Ratio, type ShowStyle, standardGravity } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { fineAmount, showFine, styleOf, withinMesh } from "../amount.js";
import type { Finding, Verdict } from "../finding.js";
import { verdictOf } from "../finding.js";
import { guarded, type Reply } from "../guarded.js";

/**
 * A finding a panel that something presses on.
 *
 * @param box the case as joined boxes; a panel is told alone where it cannot be worked out
 */
export function panelSagFindings(input: ReviewInput, box: () => CaseBox): readonly Finding[] {
  return input.parts.panels.flatMap((panel) => {
    const pressure = pressureOn(panel, input);
    return pressure > 0 ? [panelSagFinding(panel, pressure, input, box)] : [];
  });
}

/** What presses on a panel: leaning on upright faces, things on the top; a floor carries what stands on it. */
function pressureOn(
  { face, section, clearWidth, clearHeight }: PanelPart,
  { case: { demands }, parts }: ReviewInput,
): Pressure {
  if (face === "top") return demands.topPressure;
  if (face !== "bottom") return demands.sidePressure;
  const standing = parts.contents.filter(
    ({ content: { section: where, held } }) =>
      where === section && (held.by === "floor" || (held.by === "cradle" && held.shelf === undefined)),
  );
  const weight = standing.reduce((sum, { content }) => sum + content.mass * standardGravity, 0);
  return Pressure.si((demands.dynamicFactor * weight) / (clearWidth * clearHeight));
}

function panelSagFinding(
  panel: PanelPart,
  pressure: Pressure,
  input: ReviewInput,
  box: () => CaseBox,
): Finding {
  const style = styleOf(input.case);
  const question = `Will ${panel.id} stay stiff under ${Pressure.show(pressure, style)}${openingWords(panel, style)}?`;
  return guarded({ id: `stiffness.${panel.id}`, topic: "stiffness", subject: panel.id, question }, () =>
    sagReply(panel, pressure, input, box),
  );
}

function sagReply(panel: PanelPart, pressure: Pressure, input: ReviewInput, box: () => CaseBox): Reply {
  const moduli = sheetModuli(panel.sheet, input.measurements);
  const sagCase: SagCase = { panel, moduli, pressure, edges: "hinged" };
  const alone = panelSag(sagCase);
  const solved = panel.role === "face" ? box() : undefined;
  const locked = solved && "runs" in solved ? lockedSag(solved.runs, panel, alone.pressure) : undefined;
  const allowed = Length.si(input.case.demands.allowedSag * Math.min(panel.clearWidth, panel.clearHeight));
  const ratio = alone.sag / allowed;
  const interval = sagInterval(sagCase, ratio);
  const lockedHolds = locked !== undefined && locked.sag <= allowed;
  const verdict: Verdict = ratio > 1 && lockedHolds ? "close" : verdictOf(ratio, interval);
  return {
    verdict,
    answer: sagSentence(panel, alone, locked, allowed, verdict, styleOf(input.case)),
    demand: fineAmount("sag, edges free to turn", alone.sag),
    capacity: fineAmount("allowed sag", allowed),
    ratio,
    ...(interval ? { interval } : {}),
    because: [...testsBehind(moduli), ...alone.because],
    cautions: locked ? [boxAssumptions] : [],
    source: [
      cite("mixed-interpolated-plates", "nine-node element, panel and box"),
      cite("common-practice", "allowed sag as a share of the span"),
    ],
  };
}

/** The tests behind the sheet's moduli, or the veneers where none was made: those once. */
function testsBehind({ along, across, shear, throughShear }: SheetModuli): readonly WorkedLine[] {
  return [...new Set([along, across, shear, throughShear].flatMap((known) => known?.because ?? []))];
}

/** What being locked in means. */
const boxAssumptions =
  "Locked in means: as a face of its section, which stands on its lower corners; rivets slip and extrusions give along its edges, doors and panes in its openings are left out.";

function openingWords(panel: PanelPart, style: ShowStyle): string {
  const share = Ratio.si(1 - panel.netArea / panel.grossArea);
  return panel.openings.length === 0
    ? ""
    : ` with ${Ratio.show(share, { ...style, unit: "%", digits: 2 })} of it cut away`;
}

/** Alone on the bench, and as a face of its box. */
function sagSentence(
  { id }: PanelPart,
  alone: PanelSag,
  locked: LockedSag | undefined,
  allowed: Length,
  verdict: Verdict,
  style: ShowStyle,
): string {
  const show = (sag: Length): string => showFine(sag, style);
  const box = locked ? ` and ${show(locked.sag)} locked into the box (${withinMesh(locked.meshError)})` : "";
  const facts = `${id} sags ${show(alone.sag)} with its edges free to turn (${withinMesh(alone.meshError)} by the mesh)${box}; ${show(allowed)} is allowed.`;
  const meaning: Readonly<Record<Verdict, string>> = {
    holds: "It holds even alone.",
    close:
      "It depends on how well the box holds its edges, or on a better measured sheet: add a batten where it can be had.",
    fails: "It is too soft: thicker ply, a batten or a smaller opening.",
    unknown: "",
    broken: "",
  };
  return `${facts} ${meaning[verdict]}`;
}
