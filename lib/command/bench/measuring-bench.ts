import { bendModulus, mm, monteCarlo, propagate, SpringRate } from "../../index.js";
import { type Timed, timed } from "./stopwatch.js";

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
