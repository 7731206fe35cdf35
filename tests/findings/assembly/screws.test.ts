/** Points of screws against what they go into, and slides against the walls that hold them; figures by hand from the demo's files. */
import { expect, test } from "vitest";
import { set } from "../../../lib/design/index.js";
import type { Finding } from "../../../lib/findings/index.js";
import { type Job, openJob } from "../../../lib/job/index.js";

const demo = openJob("soil-lab");

function asked(job: Job, id: string): Finding {
  const found = job.review.steps
    .filter((step) => id.startsWith(step.id))
    .flatMap((step) => step.ask())
    .find((finding) => finding.id === id);
  if (!found) throw new Error(`nothing is asked under ${id}`);
  return found;
}

const cell = (row: string, column: string) => ({ file: "hardware.csv", row, column }) as const;

test("a screw longer than what it goes through is told, with one that stays inside", () => {
  const { verdict, answer, remedies, tier } = asked(demo, "assembly.points");
  // 1-1/4 in less a flange of 2 mm, laminate of 1.0 and sheet of 9.1: 19.65 mm, which is 0.774 in
  expect(verdict).toBe("fails");
  expect(tier).toBe("handling");
  expect(answer).toMatch(
    /^Screw 1 of cable pass-through 1 on lower.back comes out of lower.back by 0.774 in\./,
  );
  expect(answer).toContain("from the outside lower left front corner of lower");
  expect(remedies[0]?.words).toBe("Take pan screw 8 short there. Its point then stays inside.");
});

test("with the shorter screw it is not told any more, and the next is", () => {
  const job = demo.with(set(cell("brush pass-through", "fastener"), "pan screw 8 short"));
  const { answer } = asked(job, "assembly.points");
  expect(answer).not.toContain("pass-through");
});

test("slides far from the walls that their screws go into are told, with what closes the gap", () => {
  // the bay begins 11-7/8 in from the left, its drawer 1/16 further in, and a slide of 1/2 in stands beside it
  const { verdict, answer, remedies } = asked(demo, "assembly.slides.slides of tool drawer");
  expect(verdict).toBe("fails");
  expect(answer).toContain(
    "A slide of tool drawer stands 11-1/2 in away from lower.left, into which its screws go. So does the other from its own.",
  );
  expect(remedies.map(({ words }) => words)).toEqual([
    "Make tool drawer 20-1/2 in wider. Then both slides lie against their walls.",
    "Or screw a board of 11-1/2 in to lower.left, and the slide to that.",
  ]);
});
