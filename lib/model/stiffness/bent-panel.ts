/** A panel of the case for the solver, alone with its edges free to turn. */
import type { PanelPart } from "../../design/index.js";
import { meshedPanelProblem, type PanelProblem } from "../../fem/index.js";
import type { ReviewInput } from "../review-input.js";
import { type SagCase, sagInputs } from "./panel-sag.js";
import { panelSheet } from "./panel-sheet.js";
import { sheetModuli } from "./sheet-moduli.js";

/**
 * The panel named, under the pressure that its face is asked to bear.
 *
 * @throws RangeError when there is no such panel
 */
export function panelNamed({ parts }: ReviewInput, id: string): PanelPart {
  const panel = parts.panels.find((one) => one.id === id);
  if (!panel) throw new RangeError(`stiffness: no panel "${id}"`);
  return panel;
}

/** The panel as a problem for the solver, hinged on all edges under the side pressure. */
export function hingedProblem(panel: PanelPart, input: ReviewInput): PanelProblem {
  const moduli = sheetModuli(panel.sheet, input.measurements);
  const sagCase: SagCase = { panel, moduli, pressure: input.case.demands.sidePressure, edges: "hinged" };
  return { ...meshedPanelProblem(sagInputs(sagCase)), name: panel.id, sheet: panelSheet(panel, input) };
}
