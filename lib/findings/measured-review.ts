/**
 * What the builder's measurements leave open about any answer of a review. Each measured thing is moved by a share in
 * its own table and the review run again, so that nothing in the review has to know about scatter; `propagate` and
 * `monteCarlo` then carry it, correlations included.
 */
import type { Measurements } from "../design/index.js";
import { measuredMean, sheetDensity, type Uncertainties, type Uncertainty } from "../measure/index.js";
import {
  type KnownModulus,
  knownRate,
  type ReviewInput,
  sheetModuli,
  testedStrength,
} from "../model/index.js";
import { Force, Length, Mass, type Ratio, ratio } from "../quantity/index.js";

/** An answer of a review as a computation of its measured things, each a share off what was measured. */
export interface MeasuredReview<Answer extends number> {
  /** The answer with each measured thing off by a share. */
  compute(shares: MeasuredShares): Answer;
  /** Nothing off. */
  readonly at: MeasuredShares;
  /** The uncertainty of each measured thing, as a share of it. */
  readonly uncertainties: Uncertainties<MeasuredShares>;
}

/** By the name of the measured thing. */
export type MeasuredShares = Readonly<Record<string, Ratio>>;

/**
 * Readies an answer of a review for `propagate` or `monteCarlo`.
 *
 * @param ask runs the review, or the part of it that is asked about
 * @param things to move, all that were measured more than once unless said
 * @example
 * const job = openJob("soil-lab");
 * const { compute, at, uncertainties } = measuredReview(job, (input) => sectionBalance(input, "upper").value.mass);
 * propagate(compute, at, uncertainties).interval
 */
export function measuredReview<Answer extends number>(
  input: ReviewInput,
  ask: (input: ReviewInput) => Answer,
  things: readonly MeasuredThing[] = measuredThings(input),
): MeasuredReview<Answer> {
  return {
    compute: (shares) => {
      const measurements = things.reduce((moved, thing) => {
        const share = shares[thing.name] ?? 0;
        return share === 0 ? moved : thing.moved(moved, share);
      }, input.measurements);
      return ask({ ...input, measurements });
    },
    at: Object.fromEntries(things.map(({ name }) => [name, ratio(0)])),
    uncertainties: Object.fromEntries(things.map(({ name, uncertainty }) => [name, uncertainty])),
  };
}

/** One thing that the builder measured more than once. */
export interface MeasuredThing {
  /** "weights of birch ply 3/8". */
  readonly name: string;
  /** Standard uncertainty as a share of the thing itself. */
  readonly uncertainty: Uncertainty;
  /** The measurements with this thing larger by a share. */
  moved(measurements: Measurements, share: number): Measurements;
}

/** All that was measured more than once and that a review counts on: weights, glue, strengths, moduli. */
export function measuredThings(input: ReviewInput): readonly MeasuredThing[] {
  return [...weighed(input), ...spreadGlue(input), ...strengths(input), ...bent(input), ...twisted(input)];
}

function weighed({ measurements }: ReviewInput): MeasuredThing[] {
  return namesOf(measurements.weights, ({ material }) => material).flatMap((material) => {
    const own = measurements.weights.filter((row) => row.material === material);
    if (own.length < 2) return [];
    const { mean, standardUncertainty, degreesOfFreedom } = measuredMean(
      own.map((row) => sheetDensity(row).density),
    );
    return {
      name: `weights of ${material}`,
      uncertainty: { standard: standardUncertainty / mean, degreesOfFreedom },
      moved: (now, share) => ({
        ...now,
        weights: now.weights.map((row) =>
          row.material === material ? { ...row, mass: Mass.si(row.mass * (1 + share)) } : row,
        ),
      }),
    };
  });
}

/** More glue leaves the container, and a weighed panel gains as much more. */
function spreadGlue(input: ReviewInput): MeasuredThing[] {
  return input.stock.adhesives.flatMap((adhesive) => {
    const { rate, uncertainty } = knownRate(adhesive, input);
    if (!uncertainty) return [];
    return {
      name: `spread trials of ${adhesive.name}`,
      uncertainty: asShare(uncertainty, rate),
      moved: (now, share) => ({
        ...now,
        spreads: now.spreads.map(({ gained, ...row }) =>
          row.adhesive === adhesive.name
            ? {
                ...row,
                after: Mass.si(row.before - (row.before - row.after) * (1 + share)),
                ...(gained === undefined ? {} : { gained: Mass.si(gained * (1 + share)) }),
              }
            : { ...row, gained },
        ),
      }),
    };
  });
}

function strengths({ measurements }: ReviewInput): MeasuredThing[] {
  type Pull = Measurements["pulls"][number];
  const group = ({ fastener, sheet, washer, direction }: Pull): string =>
    `${direction} tests of ${fastener} in ${sheet}${washer === "yes" ? ", washer" : ""}`;
  return namesOf(measurements.pulls, group).flatMap((name) => {
    const loads = measurements.pulls.filter((row) => group(row) === name).map(({ load }) => load);
    const tested = testedStrength(loads, name);
    if (!tested?.uncertainty) return [];
    return {
      name,
      uncertainty: asShare(tested.uncertainty, tested.strength),
      moved: (now, share) => ({
        ...now,
        pulls: now.pulls.map((row) =>
          group(row) === name ? { ...row, load: Force.si(row.load * (1 + share)) } : row,
        ),
      }),
    };
  });
}

/** The same sag under a larger load is a larger modulus. */
function bent({ stock, measurements }: ReviewInput): MeasuredThing[] {
  return stock.sheets.flatMap((sheet) =>
    (["along", "across"] as const).flatMap((way) =>
      ofModulus(
        `bent strips of ${sheet.name}, ${way}`,
        sheetModuli(sheet, measurements)[way],
        (now, share) => ({
          ...now,
          bends: now.bends.map((row) =>
            row.sheet === sheet.name && row.direction === way && row.faced === "bare"
              ? { ...row, load: Force.si(row.load * (1 + share)) }
              : row,
          ),
        }),
      ),
    ),
  );
}

function twisted({ stock, measurements }: ReviewInput): MeasuredThing[] {
  return stock.sheets.flatMap((sheet) =>
    ofModulus(`twisted offcuts of ${sheet.name}`, sheetModuli(sheet, measurements).shear, (now, share) => ({
      ...now,
      twists: now.twists.map((row) =>
        row.sheet === sheet.name ? { ...row, drop: Length.si(row.drop / (1 + share)) } : row,
      ),
    })),
  );
}

function ofModulus(
  name: string,
  { uncertainty, modulus }: KnownModulus,
  moved: MeasuredThing["moved"],
): MeasuredThing[] {
  return uncertainty ? [{ name, uncertainty: asShare(uncertainty, modulus), moved }] : [];
}

function asShare({ standard, ...rest }: Uncertainty, of: number): Uncertainty {
  return { ...rest, standard: standard / of };
}

function namesOf<Row>(rows: readonly Row[], name: (row: Row) => string): readonly string[] {
  return [...new Set(rows.map(name))];
}
