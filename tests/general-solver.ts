/** The general-purpose solver, for tests that compare with it; said loudly where it is missing. */
import { hasGeneralSolver } from "../lib/command/bench/solvers/general-solver.js";

/** True where it is missing; never under CI, where its absence fails the tests. */
export const noGeneralSolver: boolean = !hasGeneralSolver() && process.env.CI !== "true";

if (noGeneralSolver)
  console.warn("SKIPPED: ccx (Debian's calculix-ccx) is not installed, so decks are not run through it");
