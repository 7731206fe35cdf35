/** How a panel bends, drawn, and what would make it stiffer, for the notebook on stiffness. */

import { panelRemedies, sagFigure, showFine, showMeshError, styleOf } from "../../findings/index.js";
import type { Job } from "../../job/index.js";
import { battenSize, hingedEdges, panelNamed, sagCaseOf } from "../../model/index.js";
import { type DrawingView, figureDrawing, type TableView, tableOf } from "../../page/index.js";
import { Length, Mass, Pressure, Ratio } from "../../quantity/index.js";

/** The panel to scale with lines of equal sag, alone on the bench under the side pressure. */
export function bendingDrawing(job: Job, id: string): DrawingView {
  const panel = panelNamed(job, id);
  const { sidePressure } = job.case.demands;
  const words = Pressure.show(sidePressure, styleOf(job.case));
  const sagCase = sagCaseOf(panel, sidePressure, "hinged", job);
  return figureDrawing(sagFigure(job, sagCase, hingedEdges(panel), words));
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
  const show = (size: number): string => Length.show(Length.si(size), style);
  return `${show(battenSize.width)} wide and ${show(battenSize.height)} high, of the same sheet`;
}
