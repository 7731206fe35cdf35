/** How far in a hand presses what is glued; figures by hand from the demo's files. */
import { expect, test } from "vitest";
import { remove, set } from "../../../lib/design/index.js";
import { glueReach } from "../../../lib/findings/assembly/glue.js";
import { openJob } from "../../../lib/job/index.js";
import { gluedFaces } from "../../../lib/model/index.js";
import { caseOrder } from "../../../lib/plan/index.js";
import { Length } from "../../../lib/quantity/index.js";

const demo = openJob("soil-lab");

test("laminate is pressed from both sides of the bench, half its shorter side at the most", () => {
  const [farthest] = gluedFaces(demo);
  // The top's piece is 24 in deep inside, 2 x 9.1 mm of sheet and 2 of laminate more, and 1/2 in of oversize each way.
  const laminate = demo.parts.facings.find(({ panel }) => panel === "lower.top");
  expect(farthest?.far).toBeCloseTo(Number(laminate?.height) / 2, 9);
  expect(Length.in(Length.si(Number(farthest?.far)), "in")).toBeGreaterThan(12);
});

test("boards on the floor are as far in as their middle", () => {
  const board = gluedFaces(demo).find(({ part }) => part === "lower.bottom.left upright");
  // 1-1/8 in from the front edge and 9-5/8 long: its middle is 5-15/16 in from the nearest edge.
  expect(Length.in(Length.si(Number(board?.far)), "in")).toBeCloseTo(5.9375, 6);
});

test("an arm shorter than half a panel does not get there, one that is longer does", () => {
  const [usual] = glueReach(demo);
  expect(usual?.verdict).toBe("holds");
  const short = set({ file: "tools.csv", row: "lath with tape on its end", column: "use" }, "arm");
  const [finding] = glueReach(demo.with(short));
  // 300 mm of reach against 12-5/8 in
  expect(finding?.verdict).toBe("fails");
});

test("a batten on the panel that closes a section is glued on the bench, and in nobody's way before", () => {
  const batten =
    '{ on: lower.top, sheet: birch ply 1/2, width: 6, runs: across, across: 2, up: 7-1/2, length: 26, adhesive: "wood glue" }';
  const lath = "tool,use,diameter (mm),length (mm)\nlath,stick,20,450\n";
  const draft = openJob("soil-lab-draft").with(
    { kind: "edits", edits: [{ file: "tools.csv", at: 0, old: "", now: lath }] },
    set("build.edges.stagger", "true"),
    set("shelves.instrument shelf.sliding", "false"),
    remove("shelves.instrument shelf.slides rated"),
    remove("contents.inverter"),
  );
  const stiff = draft.with(set("stiffeners", `{ batten: ${batten} }`));
  expect(caseOrder(draft).choices.get("lower")?.last).toBe("lower.top");
  expect(caseOrder(stiff).choices.get("lower")?.last).toBe("lower.top");
  // What goes in from above goes in before the top is put on, and the batten comes with the top.
  expect(glueReach(stiff)[0]?.verdict).toBe("holds");
  const keys = caseOrder(stiff).order;
  const at = (key: string): number =>
    keys.kind === "found" ? keys.steps.findIndex((step) => step.key === key) : -1;
  expect(at("put on lower.top.batten")).toBeLessThan(at("close lower"));
});

test("a case of screws alone is not asked", () => {
  const bare = demo.with(
    set("build.facing", "none"),
    remove("stiffeners.left upright.adhesive"),
    remove("stiffeners.right upright.adhesive"),
  );
  expect(glueReach(bare)).toEqual([]);
});
