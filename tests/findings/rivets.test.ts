/** Screws into the edge of a sheet are not held to the rule of rivets. */
import { expect, test } from "vitest";
import { edgeDistances, screwedIntoEdges } from "../../lib/findings/joints/rivets.js";
import { crateJob } from "../design/crate-job.js";
import { designOf, smallJob } from "../design/small-job.js";

test("a sheet of 2.5 diameters takes them, a thinner one does not", () => {
  // Screws of 4 mm into ply of 9: 10 mm wanted.
  const [thin] = screwedIntoEdges(designOf(crateJob));
  expect([thin?.subject, thin?.verdict, thin?.ratio?.toFixed(6)]).toEqual([
    "crate.back-right",
    "fails",
    (10 / 9).toFixed(6),
  ]);
  const thinner = (crateJob["fasteners.csv"] ?? "").replace("screw 4,screw,4,8", "screw 4,screw,3.5,7");
  const [fits] = screwedIntoEdges(designOf({ ...crateJob, "fasteners.csv": thinner }));
  expect([fits?.verdict, fits?.ratio?.toFixed(6)]).toEqual(["holds", (8.75 / 9).toFixed(6)]);
});

test("they are left out of the distances of rivets, and nothing is asked where there are none", () => {
  const design = designOf(crateJob);
  expect(edgeDistances(design)[0]?.answer).not.toContain("crate.back-right");
  expect(screwedIntoEdges(designOf(smallJob))).toEqual([]);
});
