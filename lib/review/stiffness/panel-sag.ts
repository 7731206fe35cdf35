import type { PanelPart } from "../../design/index.js";
import type { WorkedLine } from "../../formula.js";
import { spread, type Uncertainties } from "../../measure/index.js";
import { type EdgeSupport, glazedPressure, type Opening, openPlateUniform } from "../../mechanics/index.js";
import { Length, Pressure, Ratio, type ShowStyle, standardGravity } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { fineAmount, showFine, styleOf } from "../amount.js";
import type { Finding, RatioInterval, Verdict } from "../finding.js";
import type { ReviewInput } from "../review-input.js";
import { verdictOf } from "../verdict.js";
import { type BendingModuli, panelStiffness } from "./panel-stiffness.js";
import { type SheetModuli, sheetModuli } from "./sheet-moduli.js";

/** A panel under a pressure, held alike on all four edges. */
export interface SagCase {
  readonly panel: PanelPart;
  readonly moduli: SheetModuli;
  /** On the whole face; panes and doors in its openings pass their share on. */
  readonly pressure: Pressure;
  /** Edges free to turn, as on the bench, or held stiffly, as in an ideal box. */
  readonly edges: EdgeSupport;
}

/** Whether each panel of the case stays stiff, alone on the bench and locked into the box. */
export function panelSagFindings(input: ReviewInput): readonly Finding[] {
  return input.parts.panels.flatMap((panel) => {
    const pressure = pressureOn(panel, input);
    return pressure > 0 ? [panelSagFinding(panel, pressure, input)] : [];
  });
}

/** Sag of a panel with its openings. */
export function panelSag(
  { panel, moduli, pressure, edges }: SagCase,
  bending?: BendingModuli,
): { readonly sag: Length; readonly because: readonly WorkedLine[] } {
  const { stiffness, because } = panelStiffness(panel, moduli, bending);
  const cutAway = Ratio.si(1 - panel.netArea / panel.grossArea);
  const passedOn = glazedPressure.worked({ pressure, cutAway });
  const line = openPlateUniform.worked({
    length: panel.clearWidth,
    width: panel.clearHeight,
    stiffness,
    left: edges,
    right: edges,
    bottom: edges,
    top: edges,
    openings: openingsInSpan(panel),
    pressure: passedOn.value,
  });
  return { sag: line.value.largestDeflection, because: [because, passedOn, line] };
}

/** Openings of a panel seen from where its clear span begins; a part beyond the span is cut off. */
export function openingsInSpan(panel: PanelPart): readonly Opening[] {
  const { clearLow, clearWidth, clearHeight } = panel;
  return panel.openings.flatMap(({ low, width, height, outline }) => {
    const left = Math.max(0, low.u - clearLow.u);
    const bottom = Math.max(0, low.v - clearLow.v);
    const right = Math.min(clearWidth, low.u + width - clearLow.u);
    const top = Math.min(clearHeight, low.v + height - clearLow.v);
    if (right <= left || top <= bottom) return [];
    const radius =
      outline.kind === "rectangle" ? outline.cornerRadius : outline.kind === "circle" ? width / 2 : 0;
    return [
      {
        left: Length.si(left),
        bottom: Length.si(bottom),
        width: Length.si(right - left),
        height: Length.si(top - bottom),
        cornerRadius: Length.si(Math.min(radius, (right - left) / 2, (top - bottom) / 2)),
      },
    ];
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
    ({ content }) => content.section === section && content.held.by === "floor",
  );
  const weight = standing.reduce((sum, { content }) => sum + content.mass * standardGravity, 0);
  return Pressure.si((demands.jerk * weight) / (clearWidth * clearHeight));
}

function panelSagFinding(panel: PanelPart, pressure: Pressure, input: ReviewInput): Finding {
  const style = styleOf(input.case);
  const moduli = sheetModuli(panel.sheet, input.measurements);
  const alone = panelSag({ panel, moduli, pressure, edges: "hinged" });
  const locked = panelSag({ panel, moduli, pressure, edges: "clamped" });
  const allowed = Length.si(input.case.demands.allowedSag * Math.min(panel.clearWidth, panel.clearHeight));
  const ratio = alone.sag / allowed;
  const interval = sagInterval({ panel, moduli, pressure, edges: "hinged" }, allowed);
  const lockedHolds = locked.sag <= allowed;
  const verdict: Verdict = ratio > 1 && lockedHolds ? "close" : verdictOf(ratio, interval);
  return {
    id: `stiffness.${panel.id}`,
    topic: "stiffness",
    subject: panel.id,
    question: `Will ${panel.id} stay stiff under ${Pressure.show(pressure, style)}${openingWords(panel, style)}?`,
    verdict,
    answer: sagSentence(panel.id, alone.sag, locked.sag, allowed, verdict, style),
    demand: fineAmount("sag, edges free to turn", alone.sag),
    capacity: fineAmount("allowed sag", allowed),
    ratio,
    ...(interval ? { interval } : {}),
    because: [
      ...moduli.along.because,
      ...moduli.across.because,
      ...alone.because,
      ...locked.because.slice(1),
    ],
    cautions: [],
    source: [
      cite("plates-shells", "thin plates"),
      cite("common-practice", "allowed sag as a share of the span"),
    ],
  };
}

function openingWords(panel: PanelPart, style: ShowStyle): string {
  const share = Ratio.si(1 - panel.netArea / panel.grossArea);
  return panel.openings.length === 0
    ? ""
    : ` with ${Ratio.show(share, { ...style, unit: "%", digits: 2 })} of it cut away`;
}

/** The bench is one bound, an ideal box the other; a riveted edge lies between. */
function sagSentence(
  panel: string,
  alone: Length,
  locked: Length,
  allowed: Length,
  verdict: Verdict,
  style: ShowStyle,
): string {
  const show = (sag: Length): string => showFine(sag, style);
  const facts = `${panel} sags ${show(alone)} with its edges free to turn and ${show(locked)} with them held stiffly; ${show(allowed)} is allowed.`;
  const meaning: Readonly<Record<Verdict, string>> = {
    holds: "It holds even alone.",
    close:
      "It depends on how well the box holds its edges, or on a better measured sheet: add a batten where it can be had.",
    fails: "It is too soft even in the box: thicker ply, a batten or a smaller opening.",
    unknown: "",
  };
  return `${facts} ${meaning[verdict]}`;
}

/** What the scatter of the bend tests does to the ratio; nothing to say without tests of one's own. */
function sagInterval(sagCase: SagCase, allowed: Length): RatioInterval | undefined {
  const { along, across } = sagCase.moduli;
  const uncertainties: Uncertainties<BendingModuli> = {
    ...(along.uncertainty ? { along: along.uncertainty } : {}),
    ...(across.uncertainty ? { across: across.uncertainty } : {}),
  };
  if (Object.keys(uncertainties).length === 0) return undefined;
  const { interval, shares } = spread(
    (bending: BendingModuli) => Ratio.si(panelSag(sagCase, bending).sag / allowed),
    { along: along.modulus, across: across.modulus },
    uncertainties,
  );
  return {
    ...interval,
    shares: shares.map(({ input, share }) => ({ input: `modulus ${input} the grain`, share })),
  };
}
