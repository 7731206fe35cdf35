/** What the scatter of the builder's own tests of a sheet does to the sag of a panel. */
import { at } from "../../algebra/lists.js";
import {
  bent,
  bentSheet,
  coarsePanel,
  deflectionSlopes,
  formulaElementTarget,
  largestDeflection,
  meshedPanelProblem,
  type PanelProblem,
  type Sheet,
} from "../../fem/index.js";
import { keptForAll } from "../../kept/index.js";
import { propagate } from "../../measure/index.js";
import { Pressure, Ratio } from "../../quantity/index.js";
import type { RatioInterval } from "../ratio-interval.js";
import { type SagCase, sagInputs } from "./panel-sag.js";

/** The moduli of a sheet that tests give, and what each is called. */
const words = {
  along: "modulus along the grain",
  across: "modulus across the grain",
  shear: "shear modulus in its plane",
  throughShear: "shear modulus through it",
} as const;

/** One of them. */
export type TestedModulus = keyof typeof words;

const testedNames: readonly TestedModulus[] = ["along", "across", "shear", "throughShear"];

/** Step to either side of a modulus, as a share of it. */
const step = 0.01;

/**
 * The interval of a panel's sag over what is allowed, and which test owns how much of it.
 *
 * @param sagCase the panel with its moduli
 * @param ratio sag over what is allowed
 * @returns undefined without a test of one's own
 */
export function sagInterval(sagCase: SagCase, ratio: number): RatioInterval | undefined {
  const tested = testedNames.flatMap((name) => {
    const { modulus, uncertainty } = sagCase.moduli[name] ?? {};
    return modulus !== undefined && uncertainty ? [{ name, modulus, uncertainty }] : [];
  });
  if (tested.length === 0) return undefined;
  const slopes = sagSlopes(
    sagCase,
    tested.map(({ name }) => name),
  );
  const of = <Value>(value: (one: (typeof tested)[number]) => Value): Readonly<Record<string, Value>> =>
    Object.fromEntries(tested.map((one) => [words[one.name], value(one)]));
  const changed = (moduli: Readonly<Record<string, Pressure>>): number =>
    tested.reduce((sum, { name, modulus }, i) => {
      const now = moduli[words[name]] ?? modulus;
      return sum + at(slopes, i) * (now / modulus - 1);
    }, 1);
  const { interval, shares } = propagate(
    (moduli: Readonly<Record<string, Pressure>>) => Ratio.si(ratio * changed(moduli)),
    of(({ modulus }) => modulus),
    of(({ uncertainty }) => uncertainty),
  );
  return { ...interval, shares };
}

/**
 * By what share the panel's sag changes for each share of a modulus, its openings included: -1 where the sag falls as
 * the modulus grows.
 */
export function sagSlopes(sagCase: SagCase, names: readonly TestedModulus[]): readonly number[] {
  const changes = names.map((name) => sheetSlope(sagCase, name));
  const bare = meshedPanelProblem({ ...sagInputs(sagCase), pressure: Pressure.si(1) });
  const problem = { ...bare, regions: sagCase.regions ?? [] };
  return keptSlopes({ problem, changes });
}

/** Panels kept: those of a large case, and of some edits before. */
const mostPanels = 120;

const keptSlopes: (bending: {
  readonly problem: PanelProblem;
  readonly changes: readonly Sheet[];
}) => readonly number[] = keptForAll("panel sag by moduli", mostPanels, ({ problem, changes }) => {
  // Shares of a sag hardly change with the mesh, so the one that tells the mesh error of the sag will do.
  const solved = bent(coarsePanel(problem, formulaElementTarget));
  const { value, at: place } = largestDeflection(solved);
  return deflectionSlopes(solved, place, changes).map((slope) => slope / value);
});

/**
 * How the panel's make-up changes for each share of a modulus.
 *
 * @throws RangeError for a modulus that is not known
 */
function sheetSlope(sagCase: SagCase, name: TestedModulus): Sheet {
  const known = sagCase.moduli[name];
  if (!known) throw new RangeError(`sag: ${words[name]} is not known`);
  const sheetAt = (share: number): Sheet => {
    const moduli = { ...sagCase.moduli, [name]: { ...known, modulus: Pressure.si(share * known.modulus) } };
    return bentSheet(sagInputs({ ...sagCase, moduli }));
  };
  const [more, less] = [sheetAt(1 + step), sheetAt(1 - step)];
  const row = (a: Sheet["shear"], b: Sheet["shear"]): Sheet["shear"] => {
    const slope = (i: 0 | 1 | 2): number => (a[i] - b[i]) / (2 * step);
    return [slope(0), slope(1), slope(2)];
  };
  const rows = (part: "membrane" | "coupling" | "bending"): Sheet["bending"] => {
    const [a, b] = [more[part], less[part]];
    return [row(a[0], b[0]), row(a[1], b[1]), row(a[2], b[2])];
  };
  return {
    ...more,
    membrane: rows("membrane"),
    coupling: rows("coupling"),
    bending: rows("bending"),
    shear: row(more.shear, less.shear),
  };
}
