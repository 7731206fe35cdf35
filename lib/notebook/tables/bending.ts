/** How a panel bends, drawn, and what would make it stiffer, for the notebook on stiffness. */

import { contourPieces, trustedDeflection, usualElementTarget } from "../../fem/index.js";
import { panelRemedies, showFine, showMeshError, styleOf } from "../../findings/index.js";
import type { Job } from "../../job/index.js";
import { battenSize, hingedProblem, panelNamed } from "../../model/index.js";
import { type DrawingMark, type DrawingView, drawing, type TableView, tableOf } from "../../page/index.js";
import { Length, Mass, Ratio, ratio } from "../../quantity/index.js";
import type { Point2 } from "../../shape/index.js";
import { panelDrawing } from "./stiffness.js";

/** Lines drawn between no sag and the largest. */
const contourShares = [0.2, 0.4, 0.6, 0.8, 0.95];

/** The panel to scale with lines of equal sag, alone on the bench under the side pressure. */
export function bendingDrawing(job: Job, id: string): DrawingView {
  const panel = panelNamed(job, id);
  const style = styleOf(job.case);
  const most = trustedDeflection(hingedProblem(panel, job), usualElementTarget);
  const onPanel = ({ x, y }: Point2): Point2 => ({
    x: 1e3 * (x + panel.clearLow.x),
    y: 1e3 * (y + panel.clearLow.y),
  });
  const lines = contourShares.flatMap((share): DrawingMark[] =>
    contourPieces(most.panel, share * most.value).map(([from, to]) => ({
      mark: "line",
      role: share > 0.9 ? "attention" : "hardware",
      points: [onPanel(from), onPanel(to)],
    })),
  );
  const plain = panelDrawing(job, id);
  const shown = showFine(Length.si(most.value), style);
  const words = `Lines of equal sag at ${contourShares.map((share) => Ratio.show(ratio(share), { unit: "%" })).join(", ")} of the largest, ${shown}, edges free to turn (within ${showMeshError(ratio(most.meshError))} by the mesh).`;
  const largestHere = { mark: "text", at: onPanel(most.at), text: shown, anchor: "middle" } as const;
  const outline = plain.marks.filter(({ mark }) => mark !== "dimension" && mark !== "text");
  return drawing(`${id}: where it sags`, words, [...outline, ...lines, largestHere], plain.letter);
}

/** What could be done for a panel, the stiffest first, with its mass and the price of the sheet it takes. */
export function remedyTable(job: Job, id: string): TableView {
  const style = styleOf(job.case);
  const { currency } = panelNamed(job, id).sheet.price;
  return tableOf(
    panelRemedies(job, id),
    [
      { heading: "What", cell: ({ words }) => words },
      { heading: "Sag alone", cell: ({ sag }) => showFine(sag, style) },
      { heading: "Mesh error", cell: ({ meshError }) => showMeshError(meshError) },
      { heading: "Of the sag as drawn", cell: ({ share }) => Ratio.show(share, { unit: "%", digits: 2 }) },
      { heading: "Adds", cell: ({ mass }) => Mass.show(mass, style) },
      {
        heading: "Sheet it takes",
        cell: ({ cost }) => (cost === undefined ? "" : `${cost.toFixed(2)} ${currency}`),
      },
    ],
    `What would make ${id} stiffer, the stiffest first; a batten is ${battenWords(job)}`,
  );
}

/** The size of a batten that is tried, in the case's own units. */
function battenWords({ case: description }: Job): string {
  const style = styleOf(description);
  const show = (size: number): string => showFine(Length.si(size), style);
  return `${show(battenSize.width)} wide and ${show(battenSize.height)} high, of the same sheet`;
}
