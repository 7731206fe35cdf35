/** How long the demo job takes to read and review, and its measurements to fit. */
import {
  bendModulus,
  kerfFor,
  mm,
  monteCarlo,
  panelSag,
  planSheets,
  propagate,
  purchaseList,
  reviewCase,
  SpringRate,
  sheetJobs,
  sheetModuli,
} from "../../index.js";
import { openJob, readJob } from "../../job/index.js";
import { type Timed, timed } from "./stopwatch.js";

/**
 * Times the parts of a review on the demo job.
 *
 * @throws RangeError when the demo has no panels
 */
export function demoBench(): readonly Timed[] {
  const job = openJob("soil-lab");
  const [panel] = [...job.parts.panels].sort((a, b) => b.openings.length - a.openings.length);
  if (!panel) throw new RangeError("bench: the demo has no panels");
  const moduli = sheetModuli(panel.sheet, job.measurements);
  const pressure = job.case.demands.sidePressure;
  return [
    timed("read and check the demo's files", () => {
      const read = readJob(job.folder);
      return "job" in read ? `${read.job.parts.panels.length} panels` : "problems";
    }),
    timed(`sag of ${panel.id}, ${panel.openings.length} openings`, () => {
      return `${(panelSag({ panel, moduli, pressure, edges: "hinged" }).sag * 1000).toFixed(3)} mm`;
    }),
    timed("sheet plans", () =>
      sheetJobs(job)
        .map((one) => planSheets(one.job).sheets.length)
        .join(" + "),
    ),
    timed(
      "everything to buy",
      () => `kerf ${kerfFor("sheets", job).from}, ${purchaseList(job).bars.length} bar stock`,
    ),
    timed("the whole review", () => `${reviewCase(job).findings.length} findings`, 1),
  ];
}

/** Times carrying scatter through a formula: first order, and by draws. */
export function measuringBench(): readonly Timed[] {
  const strip = { slope: SpringRate.of(7, "N/mm"), span: mm(600), width: mm(50), thickness: mm(9) };
  const known = {
    slope: { standard: 80, degreesOfFreedom: 3 },
    span: { standard: 0.0003 },
    width: { standard: 0.00003 },
    thickness: { standard: 0.00003 },
  };
  return [
    timed("scatter of a bend test, first order", () => {
      return `u ${(propagate(bendModulus, strip, known).standardUncertainty / 1e9).toFixed(3)} GPa`;
    }),
    timed("the same by 100 000 draws", () => {
      const { standardUncertainty } = monteCarlo(bendModulus, strip, known, { draws: 100_000 });
      return `u ${(standardUncertainty / 1e9).toFixed(3)} GPa`;
    }),
  ];
}
