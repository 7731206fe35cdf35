/** Whether tops and sides bear a person. */
import { describe, expect, test } from "vitest";
import { leaning, standing } from "../../lib/findings/strength/person.js";
import { type Job, openJob } from "../../lib/job/index.js";
import { holdOf, pressedWhereWeakest } from "../../lib/model/index.js";
import { Force, Length } from "../../lib/quantity/index.js";

const job = openJob("soil-lab");

function withTop(topBears: "stands" | "kneels" | "sits", thickness = 1): Job {
  const panels = job.parts.panels.map((panel) => ({
    ...panel,
    sheet: {
      ...panel.sheet,
      thickness: Length.si(panel.sheet.thickness * thickness),
      veneers: panel.sheet.veneers.map((one) => Length.si(one * thickness)),
    },
  }));
  return {
    ...job,
    parts: { ...job.parts, panels },
    case: { ...job.case, demands: { ...job.case.demands, topBears } },
  };
}

const top = (input: Job) => standing(input).find(({ subject }) => subject === "upper.top")!;

describe("a top of thin ply", () => {
  test("bears somebody sitting, not one kneeling or standing, and says so", () => {
    const sat = top(withTop("sits"));
    expect([sat.verdict, sat.tier]).toEqual(["holds", "safety"]);
    expect(sat.answer).toMatch(/does not bear somebody standing and does not bear somebody kneeling/);
    expect(top(withTop("kneels")).verdict).toBe("fails");
    const stood = top(withTop("stands"));
    expect(stood.verdict).toBe("fails");
    expect(stood.answer).toMatch(/300 lbf on a square of 2 in/);
    expect(stood.answer).toMatch(/NO STEP/);
  });

  test("asks more of somebody on a smaller place: sitting, kneeling, standing", () => {
    const ratios = (["sits", "kneels", "stands"] as const).map((way) => top(withTop(way)).ratio!);
    expect(ratios).toEqual([...ratios].sort((a, b) => a - b));
  });

  test("twice as thick bears one standing", () => {
    expect(top(withTop("stands", 2)).verdict).toBe("holds");
  });

  test("whose builder says nothing is asked to bear one standing", () => {
    const { topBears: _, ...demands } = job.case.demands;
    expect(top({ ...job, case: { ...job.case, demands } }).question).toBe(
      "Does upper.top bear somebody standing on it?",
    );
  });
});

test("every upright face and door is asked whether it bears somebody leaning, and each has a caution", () => {
  const asked = leaning(job);
  expect(asked.map(({ subject }) => subject)).toContain("lower.left.side door");
  expect(asked).toHaveLength(9);
  expect(asked.filter(({ cautions }) => cautions.length === 0)).toEqual([]);
});

test("where openings leave no room for a square foot the place shrinks until it lies on material", () => {
  const front = job.parts.panels.find(({ id }) => id === "upper.front")!;
  const foot = Length.of(1, "ft");
  const patch = { force: Force.of(50, "lbf"), length: foot, width: foot };
  const pressed = pressedWhereWeakest(front, holdOf(front, job), patch, job);
  const input = (name: string) => pressed.because.inputs.find((one) => one.name === name)!.number!;
  const [x, y] = [input("patchLength"), input("patchWidth")];
  expect(x).toBeLessThan(0.3);
  expect(x).toBeCloseTo(y, 9);
  // The shear around it is what the force comes to on its four sides, or what the edges bear.
  expect(pressed.moments.edgeShear).toBeGreaterThanOrEqual(patch.force / (2 * (x + y)) - 1e-9);
});
