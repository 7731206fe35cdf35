/** How far a panel sags with its openings, and the panel as a problem for the solver. */
import type { PanelPart, PanelSide } from "../../design/index.js";
import {
  bentSheet,
  formulaElementTarget,
  type HeldEdge,
  type HeldEdges,
  type MeshedPanel,
  type MeshedPanelAnswer,
  meshedPanelProblem,
  meshedPanelUniform,
  type PanelProblem,
  type PanelTask,
  type SheetRegion,
  trustedDeflection,
} from "../../fem/index.js";
import type { WorkedLine } from "../../formula.js";
import { keptForAll } from "../../kept/index.js";
import { glazedPressure } from "../../mechanics/index.js";
import { Area, Length, Pressure, Ratio } from "../../quantity/index.js";
import { Refusal } from "../../refusal.js";
import { areaOf, clipped, moved, type Shape } from "../../shape/index.js";
import type { ReviewInput } from "../review-input.js";
import { panelSheet, panelStiffness, throughShearOf } from "./panel-stiffness.js";
import { type SheetModuli, sheetModuli } from "./sheet-moduli.js";
import { stiffenedSpan } from "./stiffened.js";

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
  /** Strips of its clear span that stiffeners make stiffer; none where left out. */
  readonly regions?: readonly SheetRegion[];
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
  const stiffer = stiffenedAnswer(sagInputs(sagCase), sagCase.regions ?? []);
  const { largestDeflection, meshError } = stiffer ?? line.value;
  return { sag: largestDeflection, meshError, pressure: passedOn.value, because: [because, passedOn, line] };
}

/** Sag of a piece with its stiffeners, each edge held in its own way; nothing for a bare one. */
export function stiffenedSag(
  sagCase: SagCase,
  edges: HeldEdges,
  input: ReviewInput,
): Pick<MeshedPanelAnswer, "largestDeflection" | "meshError"> | undefined {
  const inputs = { ...sagInputs(sagCase), ...edges };
  return stiffenedAnswer(inputs, stiffenedSpan(sagCase.panel, bentSheet(inputs), input));
}

/** The same with stiffeners, by the same elements; nothing for a bare panel. */
function stiffenedAnswer(
  { pressure, ...inputs }: MeshedPanel,
  regions: readonly SheetRegion[],
): Pick<MeshedPanelAnswer, "largestDeflection" | "meshError"> | undefined {
  if (regions.length === 0) return undefined;
  const problem = { ...meshedPanelProblem({ ...inputs, pressure: Pressure.si(1) }), regions };
  const { value, meshError } = keptStiffened(problem);
  return { largestDeflection: Length.si(pressure * value), meshError: Ratio.si(meshError) };
}

/** Stiffened panels kept: those of a large case, and of some edits before. */
const mostStiffened = 60;

const keptStiffened: (problem: PanelProblem) => { readonly value: number; readonly meshError: number } =
  keptForAll("stiffened panel bent", mostStiffened, (problem) => {
    const { value, meshError } = trustedDeflection(problem, formulaElementTarget);
    return { value: Math.abs(value), meshError };
  });

/** The panel as pressed and held, with its stiffeners. */
export function sagCaseOf(
  panel: PanelPart,
  pressure: Pressure,
  edges: HeldEdge,
  input: ReviewInput,
): SagCase {
  const moduli = sheetModuli(panel.sheet, input.measurements);
  const bare: SagCase = { panel, moduli, pressure, edges };
  return { ...bare, regions: stiffenedSpan(panel, bentSheet(sagInputs(bare)), input) };
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
  return glazedPressure.worked({
    pressure,
    cutAway: Ratio.si(cutFromSpan(panel) / (panel.clearWidth * panel.clearHeight)),
  });
}

type Span = Pick<MeshedPanel, "length" | "width" | "left" | "right" | "bottom" | "top"> & {
  /** What is cut out of the span, m. */
  readonly openings: readonly Shape[];
};

function spanOf(panel: PanelPart, edges: HeldEdge): Span {
  const held = (side: PanelSide): HeldEdge => (panel.freeSides?.includes(side) ? "free" : edges);
  return {
    length: panel.clearWidth,
    width: panel.clearHeight,
    left: held("left"),
    right: held("right"),
    bottom: held("bottom"),
    top: held("top"),
    openings: openingsInSpan(panel),
  };
}

/** What the openings of a panel cut out of its clear span, from where the span begins; a part beyond it is cut off. */
export function openingsInSpan({ openings, clearLow, clearWidth, clearHeight }: PanelPart): readonly Shape[] {
  const span = { left: 0, bottom: 0, width: clearWidth, height: clearHeight };
  return openings.flatMap(({ outline }) => clipped(moved(outline, { x: -clearLow.x, y: -clearLow.y }), span));
}

/** The area that openings cut out of a panel's clear span. */
export function cutFromSpan(panel: PanelPart): Area {
  return Area.si(openingsInSpan(panel).reduce((sum, outline) => sum + areaOf(outline), 0));
}

/**
 * The panel named.
 *
 * @throws Refusal when there is no such panel
 */
export function panelNamed({ parts }: ReviewInput, id: string): PanelPart {
  const panel = parts.panels.find((one) => one.id === id);
  if (!panel)
    throw new Refusal(
      `stiffness: no panel "${id}", expected one of ${parts.panels.map((one) => one.id).join(", ")}`,
    );
  return panel;
}

/** The panel as a problem for the solver, hinged on all edges under the side pressure. */
export function hingedProblem(panel: PanelPart, input: ReviewInput): PanelProblem {
  const moduli = sheetModuli(panel.sheet, input.measurements);
  const sagCase: SagCase = { panel, moduli, pressure: input.case.demands.sidePressure, edges: "hinged" };
  const sheet = panelSheet(panel, input);
  const regions = stiffenedSpan(panel, sheet, input);
  return { ...meshedPanelProblem(sagInputs(sagCase)), name: panel.id, sheet, regions };
}
