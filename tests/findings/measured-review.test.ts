/** Any answer of a review, with the interval that the builder's own measurements give it. */
import { describe, expect, test } from "vitest";
import { measuredReview, measuredThings } from "../../lib/findings/index.js";
import { corners } from "../../lib/findings/joints/hardware.js";
import { openJob } from "../../lib/job/index.js";
import { type Correlation, monteCarlo, propagate } from "../../lib/measure/index.js";
import { type ReviewInput, sectionBalance, sheetModuli } from "../../lib/model/index.js";
import { faceOptions } from "../../lib/plan/index.js";
import { ratio } from "../../lib/quantity/index.js";

const job = openJob("soil-lab-draft");
const massOf = (input: ReviewInput) => sectionBalance(input, "upper").value.mass;
const [ply, laminate] = ["weights of birch ply 3/8", "weights of laminate sheet 1 mm"] as const;

describe("what was measured more than once", () => {
  test("moves by its share whatever rests on it", () => {
    const things = measuredThings(job);
    const moved = (start: string) => {
      const thing = things.find(({ name }) => name.startsWith(start));
      if (!thing) throw new Error(`the demo measured ${start}`);
      return { ...job, measurements: thing.moved(job.measurements, 0.1) };
    };
    const [sheet] = job.stock.sheets;
    if (!sheet) throw new Error("the demo has sheets");
    const ratioOf = (pick: (input: ReviewInput) => number, start: string): number =>
      pick(moved(start)) / pick(job);
    expect(
      ratioOf(({ measurements }) => sheetModuli(sheet, measurements).along.modulus, "bent strips"),
    ).toBeCloseTo(1.1, 9);
    expect(
      ratioOf(({ measurements }) => sheetModuli(sheet, measurements).shear.modulus, "twisted"),
    ).toBeCloseTo(1.1, 9);
    const corner = (input: ReviewInput) => corners(input)[0]?.ratio ?? 0;
    expect(ratioOf(corner, "shear tests of rivet 3/16 short")).toBeCloseTo(1 / 1.1, 9);
    const glue = (input: ReviewInput) =>
      faceOptions(input).find(({ adhesive }) => adhesive.kind === "spray contact")?.cost.adhesive.amount ?? 0;
    expect(ratioOf(glue, "spread trials of spray")).toBeCloseTo(1.1, 9);
  });
});

describe("an answer of a review", () => {
  const { compute, at, uncertainties } = measuredReview(job, massOf);

  test("has the interval that its weights give it, first order and drawn alike", () => {
    const first = propagate(compute, at, uncertainties);
    const drawn = monteCarlo(compute, at, uncertainties, { draws: 1000, seed: 3 });
    expect(first.value).toBe(massOf(job));
    expect(
      first.shares
        .slice(0, 2)
        .map(({ input }) => input)
        .sort(),
    ).toEqual([ply, laminate].sort());
    expect(first.shares.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
    // A weighed mean is drawn as Student's t, whose few degrees of freedom widen it.
    expect(drawn.standardUncertainty).toBeGreaterThan(first.standardUncertainty);
    expect(drawn.mean / first.value).toBeCloseTo(1, 2);
  });

  test("opens further when all was weighed on one scale", () => {
    const sameScale: Correlation = { between: [ply, laminate], coefficient: 1 };
    const alone = (name: string) =>
      propagate(compute, at, { [name]: uncertainties[name] ?? { standard: 0 } }).standardUncertainty;
    const both = {
      [ply]: uncertainties[ply] ?? { standard: 0 },
      [laminate]: uncertainties[laminate] ?? { standard: 0 },
    };
    const apart = propagate(compute, at, both).standardUncertainty;
    const together = propagate(compute, at, both, ratio(0.95), [sameScale]).standardUncertainty;
    expect(apart).toBeCloseTo(Math.hypot(alone(ply), alone(laminate)), 9);
    expect(together).toBeCloseTo(alone(ply) + alone(laminate), 9);
    // Drawn normally: with two weights behind the laminate, Student's t would swamp what is compared.
    const normal = Object.fromEntries(
      Object.entries(both).map(([name, { standard }]) => [name, { standard }]),
    );
    const drawn = (correlations: readonly Correlation[]) =>
      monteCarlo(compute, at, normal, { draws: 1000, correlations }).standardUncertainty;
    expect(drawn([]) / apart).toBeCloseTo(1, 1);
    expect(drawn([sameScale]) / together).toBeCloseTo(1, 1);
  });
});
