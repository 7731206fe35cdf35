/** Points of screws against what they go into, and slides against the walls that hold them; figures by hand from the demo's files. */
import { expect, test } from "vitest";
import { remove, set } from "../../../lib/design/index.js";
import type { Finding } from "../../../lib/findings/index.js";
import { type Job, openJob } from "../../../lib/job/index.js";

const demo = openJob("soil-lab");

const cell = (row: string, column: string) => ({ file: "hardware.csv", row, column }) as const;

/** The demo with long screws in its pass-through. */
const longScrewed = demo.with(set(cell("brush pass-through", "fastener"), "wood screw 8"));
/** The demo without the boards beside its drawers. */
const boardless = demo.with(remove("stiffeners.left upright"), remove("stiffeners.right upright"));

function asked(job: Job, id: string): Finding {
  const found = job.review.steps
    .filter((step) => id.startsWith(step.id))
    .flatMap((step) => step.ask())
    .find((finding) => finding.id === id);
  if (!found) throw new Error(`nothing is asked under ${id}`);
  return found;
}

test("a screw longer than what it goes through is told, with one that stays inside", () => {
  const { verdict, answer, remedies, tier } = asked(longScrewed, "assembly.points");
  // 1-1/4 in less a flange of 1.5 mm, laminate of 1.0 and sheet of 9.1: 20.15 mm, which is 0.793 in
  expect(verdict).toBe("fails");
  expect(tier).toBe("strength");
  expect(answer).toMatch(
    /^Screw 1 of cable pass-through 1 on lower.back comes out of lower.back by 0.793 in\./,
  );
  expect(answer).toContain("from the outside lower left front corner of lower");
  expect(remedies[0]?.words).toBe("Take pan screw 8 short there. Its point then stays inside.");
});

test("with the shorter screw every point stays inside", () => {
  const job = longScrewed.with(set(cell("brush pass-through", "fastener"), "pan screw 8 short"));
  expect(asked(job, "assembly.points").verdict).toBe("holds");
});

test("slides far from the walls that their screws go into are told, with what closes the gap", () => {
  // the bay begins 11-7/8 in from the left, its drawer 1/16 further in, and a slide of 1/2 in stands beside it
  const { verdict, answer, remedies } = asked(boardless, "assembly.slides.slides of tool drawer");
  expect(verdict).toBe("fails");
  expect(answer).toContain(
    "A slide of tool drawer stands 11-1/2 in away from lower.left, into which its screws go. So does the other from its own.",
  );
  expect(remedies.map(({ words }) => words)).toEqual([
    "Make tool drawer 20-1/2 in wider. Then both slides lie against their walls.",
    "Or stand a board on edge beside tool drawer, fixed to the floor, and screw the slide to that.",
  ]);
});

test("slides are screwed to the boards that stand beside them, and lie against these", () => {
  const { parts } = demo;
  const slides = parts.hardware.filter(({ item }) => item.duty === "slide");
  expect(slides.map(({ panels }) => panels)).toEqual(
    slides.map(() => ["lower.bottom.left upright", "lower.bottom.right upright"]),
  );
  const groups = parts.fastenings.filter(({ holds }) => holds === "slides of tool drawer");
  expect(groups.map(({ panel, count }) => [panel, count])).toEqual([
    ["lower.bottom.left upright", 2],
    ["lower.bottom.right upright", 2],
    ["lower.drawer.tool drawer.left side", 2],
    ["lower.drawer.tool drawer.right side", 2],
  ]);
  expect(asked(demo, "assembly.slides.slides of tool drawer").verdict).toBe("holds");
});

test("a board that does not stand beside the whole slide's middle leaves it to the wall", () => {
  const short = demo.with(set("stiffeners.left upright.length", "3 in"));
  const [slides] = short.parts.hardware.filter(({ item }) => item.duty === "slide");
  expect(slides?.panels).toEqual(["lower.left", "lower.bottom.right upright"]);
});
