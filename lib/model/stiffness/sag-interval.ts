/** What the scatter of the builder's own tests of a sheet does to the sag of a panel. */
import {
  bent,
  bentSheet,
  deflectionSlopes,
  factoredPanel,
  largestDeflection,
  meshedPanelProblem,
  type PanelProblem,
  type Sheet,
} from "../../fem/index.js";
import { keptByContent } from "../../kept/index.js";
import { spread, type Uncertainties } from "../../measure/index.js";
import { Pressure, Ratio } from "../../quantity/index.js";
import type { RatioInterval } from "../ratio-interval.js";
import { type SagCase, sagInputs } from "./panel-sag.js";
import type { KnownModulus } from "./sheet-moduli.js";

/** The moduli of a sheet that tests give, and what each is called. */
const words = {
  along: "modulus along the grain",
  across: "modulus across the grain",
  shear: "shear modulus in its plane",
  throughShear: "shear modulus through it",
} as const;

/** One of them. */
export type TestedModulus = keyof typeof words;

type Moduli = Readonly<Record<TestedModulus, Pressure>>;

/** Shares of a sag hardly change with the mesh, so a coarse one tells them. */
const slopeElementTarget = 20;
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
  const tested = (Object.keys(words) as TestedModulus[]).filter((name) => sagCase.moduli[name]?.uncertainty);
  if (tested.length === 0) return undefined;
  const slopes = sagSlopes(sagCase, tested);
  const known = (name: TestedModulus): KnownModulus => sagCase.moduli[name]!;
  const measured = Object.fromEntries(tested.map((name) => [name, known(name).modulus])) as Moduli;
  const uncertainties: Uncertainties<Moduli> = Object.fromEntries(
    tested.map((name) => [name, known(name).uncertainty!]),
  );
  const changed = (moduli: Moduli): number =>
    tested.reduce((sum, name, i) => sum + slopes[i]! * (moduli[name] / measured[name] - 1), 1);
  const { interval, shares } = spread(
    (moduli: Moduli) => Ratio.si(ratio * changed(moduli)),
    measured,
    uncertainties,
  );
  return {
    ...interval,
    shares: shares.map(({ input, share }) => ({ input: words[input as TestedModulus], share })),
  };
}

/**
 * By what share the panel's sag changes for each share of a modulus, its openings included: -1 where the sag falls as
 * the modulus grows.
 */
export function sagSlopes(sagCase: SagCase, names: readonly TestedModulus[]): readonly number[] {
  const changes = names.map((name) => sheetSlope(sagCase, name));
  return keptSlopes({ problem: meshedPanelProblem(sagInputs(sagCase)), changes });
}

/** Panels kept: those of a large case, and of some edits before. */
const mostPanels = 120;

const keptSlopes: (bending: {
  readonly problem: PanelProblem;
  readonly changes: readonly Sheet[];
}) => readonly number[] = keptByContent(mostPanels, ({ problem, changes }) => {
  const solved = bent(factoredPanel(problem, slopeElementTarget));
  const { value, at } = largestDeflection(solved);
  return deflectionSlopes(solved, at, changes).map((slope) => slope / value);
});

/** How the panel's make-up changes for each share of a modulus. */
function sheetSlope(sagCase: SagCase, name: TestedModulus): Sheet {
  const [more, less] = [1 + step, 1 - step].map((share) => {
    const known = sagCase.moduli[name]!;
    const moduli = { ...sagCase.moduli, [name]: { ...known, modulus: Pressure.si(share * known.modulus) } };
    return bentSheet(sagInputs({ ...sagCase, moduli }));
  }) as [Sheet, Sheet];
  const slope = (a: number, b: number): number => (a - b) / (2 * step);
  const rows = (part: "membrane" | "coupling" | "bending"): Sheet["bending"] => {
    const row = (i: 0 | 1 | 2): [number, number, number] => {
      const each = (j: 0 | 1 | 2): number => slope(more[part][i][j], less[part][i][j]);
      return [each(0), each(1), each(2)];
    };
    return [row(0), row(1), row(2)];
  };
  return {
    ...more,
    membrane: rows("membrane"),
    coupling: rows("coupling"),
    bending: rows("bending"),
    shear: [0, 1, 2].map((i) => slope(more.shear[i]!, less.shear[i]!)) as unknown as Sheet["shear"],
  };
}
