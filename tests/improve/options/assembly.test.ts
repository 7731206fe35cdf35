/** Offers about space: a shelf whose slides lie against nothing. */
import { expect, test } from "vitest";
import { set } from "../../../lib/design/index.js";
import { optionsFor } from "../../../lib/improve/options/index.js";
import { withOptions } from "../../../lib/improve/trial.js";
import { type Job, openJob } from "../../../lib/job/index.js";

const slidesOf = ({ review }: Job) =>
  review.steps.filter(({ id }) => id === "assembly.slides").flatMap(({ ask }) => ask());

/** The demo with its instrument shelf on slides, an inch short of either wall beside them. */
const short = openJob("soil-lab").with(
  set("shelves.instrument shelf.sliding", "true"),
  set("shelves.instrument shelf.slides", "drawer slide 16"),
  set("shelves.instrument shelf.size", "[27, 17]"),
  set("shelves.instrument shelf.at", "[1-1/2, 2, 8-1/2]"),
);

test("slides without a wall are offered a wider shelf, with which they lie against theirs", () => {
  const [finding] = slidesOf(short).filter(({ id }) => id.includes("instrument shelf"));
  expect(finding?.verdict).toBe("fails");
  const options = optionsFor(short, finding ? [finding] : []);
  const wider = options.find(({ lever }) => lever === "shelves.instrument shelf.size");
  // 30 in inside, less half an inch for the slide on either side, less the slip that is left
  expect(wider?.words).toMatch(
    /^Make the instrument shelf 1\.99 in wider|^Make the instrument shelf 2 in wider/,
  );
  const mended = withOptions(short, wider ? [wider] : []);
  const [after] = mended ? slidesOf(mended).filter(({ id }) => id.includes("instrument shelf")) : [];
  expect(after?.verdict).toBe("holds");
});

test("or a shelf that does not slide, of which nobody asks that", () => {
  const [finding] = slidesOf(short).filter(({ id }) => id.includes("instrument shelf"));
  const fixed = optionsFor(short, finding ? [finding] : []).find(({ lever }) => lever.endsWith(".sliding"));
  const still = withOptions(short, fixed ? [fixed] : []);
  expect(still && slidesOf(still).some(({ id }) => id.includes("instrument shelf"))).toBe(false);
});
