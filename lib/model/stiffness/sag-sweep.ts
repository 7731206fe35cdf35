import { type PanelPart, type PlacedOpening, withOutline } from "../../design/index.js";
import type { PanelTask } from "../../fem/index.js";
import { Area, type Length, Ratio } from "../../quantity/index.js";
import { boundsOf, middleOf, scaled } from "../../shape/index.js";
import type { ReviewInput } from "../review-input.js";
import { allowedSag, sagSpan } from "./allowed-sag.js";
import { panelNamed, sagTask } from "./panel-sag.js";
import { sheetModuli } from "./sheet-moduli.js";

/** One try: a thickness, openings of one size, and edges held one way. */
export interface SagTrial {
  /** Thickness of the sheet, without its facing. */
  readonly thickness: Length;
  /** Share of the face that its openings take. */
  readonly cutAway: Ratio;
  /** How its edges are held. */
  readonly edges: "hinged" | "clamped";
  /** What is allowed. */
  readonly allowed: Length;
  /** The panel to be solved. */
  readonly task: PanelTask;
}

/**
 * Tries that show what thicker ply and smaller openings buy, with edges free to turn and held stiffly: every opening
 * shrunk or grown about its own middle. The sheet keeps its moduli; only its thickness changes.
 *
 * @param id of the panel, such as "upper.front"
 * @param thicknesses of the sheet, without its facing
 * @param scales of the openings' sides, 1 as designed, 0 for none
 * @throws Refusal when there is no such panel
 */
export function sagTrials(
  input: ReviewInput,
  id: string,
  thicknesses: readonly Length[],
  scales: readonly number[],
): readonly SagTrial[] {
  const panel = panelNamed(input, id);
  const moduli = sheetModuli(panel.sheet, input.measurements);
  const { sidePressure: pressure } = input.case.demands;
  const allowed = allowedSag(input, sagSpan(panel));
  return thicknesses.flatMap((thickness) =>
    scales.flatMap((scale) => {
      const changed = withScale({ ...panel, sheet: { ...panel.sheet, thickness } }, scale);
      const cutAway = Ratio.si(1 - changed.netArea / changed.grossArea);
      return (["hinged", "clamped"] as const).map((edges) => {
        const task = sagTask({ panel: changed, moduli, pressure, edges });
        return { thickness, cutAway, edges, allowed, task };
      });
    }),
  );
}

/** The panel with every opening scaled about its own middle. */
function withScale(panel: PanelPart, scale: number): PanelPart {
  const openings = scale === 0 ? [] : panel.openings.map((opening) => shrunk(opening, scale));
  const cut = openings.reduce((sum, { area }) => sum + area, 0);
  return { ...panel, openings, netArea: Area.si(panel.grossArea - cut) };
}

function shrunk(opening: PlacedOpening, scale: number): PlacedOpening {
  return withOutline(opening, scaled(opening.outline, scale, middleOf(boundsOf(opening.outline))));
}
