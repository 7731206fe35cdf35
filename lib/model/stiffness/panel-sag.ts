/** How far a panel sags with its openings, and the panel as a problem for the solver. */
import type { PanelPart } from "../../design/index.js";
import {
  type HeldEdge,
  type MeshedPanel,
  meshedPanelProblem,
  meshedPanelUniform,
  type PanelProblem,
  type PanelTask,
} from "../../fem/index.js";
import type { WorkedLine } from "../../formula.js";
import { glazedPressure, type Opening } from "../../mechanics/index.js";
import { Length, type Pressure, Ratio } from "../../quantity/index.js";
import { Refusal } from "../../refusal.js";
import type { ReviewInput } from "../review-input.js";
import { panelSheet, panelStiffness, throughShearOf } from "./panel-stiffness.js";
import { type SheetModuli, sheetModuli } from "./sheet-moduli.js";

/** A panel under a pressure, held alike on all four edges. */
export interface SagCase {
  /** The panel with its openings. */
  readonly panel: PanelPart;
  /** Moduli of its sheet. */
  readonly moduli: SheetModuli;
  /** On the whole face; panes and doors in its openings pass their share on. */
  readonly pressure: Pressure;
  /** Edges free to turn, as on the bench, or held stiffly. */
  readonly edges: HeldEdge;
}

/** What a panel's sag comes to, with the lines behind it. */
export interface PanelSag {
  /** The farthest that any place of it moves. */
  readonly sag: Length;
  /** The estimated mesh error, as a share. */
  readonly meshError: Ratio;
  /** On what is left of the face. */
  readonly pressure: Pressure;
  /** The worked lines behind it. */
  readonly because: readonly WorkedLine[];
}

/** Sag of a panel with its openings, by finite elements. */
export function panelSag(sagCase: SagCase): PanelSag {
  const { because } = panelStiffness(sagCase.panel, sagCase.moduli);
  const passedOn = passedOnPressure(sagCase);
  const line = meshedPanelUniform.worked(sagInputs(sagCase));
  const { largestDeflection, meshError } = line.value;
  return { sag: largestDeflection, meshError, pressure: passedOn.value, because: [because, passedOn, line] };
}

/** The panel as the formula takes it. */
export function sagInputs(sagCase: SagCase): MeshedPanel {
  const { panel, moduli, edges } = sagCase;
  const { stiffness } = panelStiffness(panel, moduli);
  return {
    ...spanOf(panel, edges),
    thickness: stiffness.thickness,
    stiffness,
    throughShear: throughShearOf(panel, moduli),
    pressure: passedOnPressure(sagCase).value,
  };
}

/** Elements of a mesh for one point of a chart: within a few percent. */
const chartElementTarget = 16;

/** The panel to be solved where many cases are laid side by side and the eye sees no percent. */
export function sagTask(sagCase: SagCase): PanelTask {
  return { problem: meshedPanelProblem(sagInputs(sagCase)), elementTarget: chartElementTarget };
}

function passedOnPressure({ panel, pressure }: SagCase): WorkedLine & { readonly value: Pressure } {
  return glazedPressure.worked({ pressure, cutAway: Ratio.si(1 - panel.netArea / panel.grossArea) });
}

type Span = Pick<MeshedPanel, "length" | "width" | "left" | "right" | "bottom" | "top"> & {
  readonly openings: readonly Opening[];
};

function spanOf(panel: PanelPart, edges: HeldEdge): Span {
  return {
    length: panel.clearWidth,
    width: panel.clearHeight,
    left: edges,
    right: edges,
    bottom: edges,
    top: edges,
    openings: openingsInSpan(panel),
  };
}

/** Openings of a panel seen from where its clear span begins; a part beyond the span is cut off. */
function openingsInSpan(panel: PanelPart): readonly Opening[] {
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

/**
 * The panel named, under the pressure that its face is asked to bear.
 *
 * @throws Refusal when there is no such panel
 */
export function panelNamed({ parts }: ReviewInput, id: string): PanelPart {
  const panel = parts.panels.find((one) => one.id === id);
  if (!panel) throw new Refusal(`stiffness: no panel "${id}"`);
  return panel;
}

/** The panel as a problem for the solver, hinged on all edges under the side pressure. */
export function hingedProblem(panel: PanelPart, input: ReviewInput): PanelProblem {
  const moduli = sheetModuli(panel.sheet, input.measurements);
  const sagCase: SagCase = { panel, moduli, pressure: input.case.demands.sidePressure, edges: "hinged" };
  return { ...meshedPanelProblem(sagInputs(sagCase)), name: panel.id, sheet: panelSheet(panel, input) };
}
