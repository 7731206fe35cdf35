/** What strips bent until they broke say, beside the handbook. */
import type { Job } from "../../job/index.js";
import { sheetStrength, testedBending } from "../../model/index.js";
import { type TableView, tableOf } from "../../page/index.js";
import { Pressure } from "../../quantity/index.js";

/** Bending strengths of every sheet: by broken strips, by the handbook, and which counts. */
export function brokenStripTable({ stock, measurements }: Job): TableView {
  const rows = stock.sheets.flatMap((sheet) => {
    const published = sheetStrength(sheet, { ...measurements, breaks: [] });
    return (["along", "across"] as const).map((way) => {
      const broken = measurements.breaks.filter((row) => row.sheet === sheet.name && row.direction === way);
      const handbook = "bending" in published ? published.bending[way].strength : undefined;
      return { sheet, way, broken, own: testedBending(broken)?.strength, handbook };
    });
  });
  const megapascals = (stress: Pressure): string => Pressure.show(stress, { unit: "MPa", digits: 3 });
  return tableOf(
    rows,
    [
      { heading: "Sheet", cell: ({ sheet }) => sheet.name },
      { heading: "Strips cut", cell: ({ way }) => `${way} the grain` },
      { heading: "Broken", cell: ({ broken }) => broken.length },
      { heading: "95 of 100 hold", cell: ({ own }) => (own ? megapascals(own) : "break at least 3") },
      {
        heading: "Handbook, birch throughout",
        cell: ({ handbook }) => (handbook ? megapascals(handbook) : "no figure"),
      },
      { heading: "Counts", cell: ({ own, handbook }) => countsWords(own, handbook) },
    ],
    "Bending strength: small strips run higher than panels, so the lower of the two counts",
  );
}

function countsWords(own: Pressure | undefined, handbook: Pressure | undefined): string {
  if (own === undefined) return handbook === undefined ? "nothing yet" : "handbook";
  return handbook === undefined || own < handbook ? "your strips" : "handbook";
}
