/** Whether a case goes together: what is told of the small box and of boxes spoilt for it. */
import { describe, expect, test } from "vitest";
import { reviewCase } from "../../../lib/findings/index.js";
import { designOf, rolling, smallJob, spoilt } from "../../design/small-job.js";

function told(texts: Readonly<Record<string, string>>, id: string) {
  const found = reviewCase(designOf(texts)).assembly.find((finding) => finding.id === id);
  return `${found?.verdict ?? "not asked"}: ${found?.answer ?? ""}`;
}

const staggered = spoilt("case.yaml", "set back: 60 }", "set back: 60, stagger: true }");

describe("rivets of two legs", () => {
  test("meet inside the corner where both legs have the same places", () => {
    // tails of 6 mm, 11 to 15.2 mm deep, pass 24 mm from the edge, and meet 14 mm from it: 1.2 mm and more
    expect(told(smallJob, "assembly.inside")).toMatch(/^holds: No two fasteners meet/);
    const narrow = spoilt(
      "bar-stock.csv",
      "angle 50,2500,0.4,12,counter,50,2,0",
      "angle 50,2500,0.4,12,counter,30,2,0",
    );
    expect(told(narrow, "assembly.inside")).toMatch(
      /^fails: Rivet .* share .* mm of space\. .* half a pitch/,
    );
  });

  test("pass each other half a pitch apart", () => {
    const long = {
      ...staggered,
      "fasteners.csv": (smallJob["fasteners.csv"] ?? "").replace(
        "rivet 4,rivet,4,12,18",
        "rivet 4,rivet,4,12,26",
      ),
    };
    expect(told(long, "assembly.inside")).toMatch(/^holds/);
  });
});

test("the rivets of one leg stand between those of the other where the case staggers them", () => {
  const { parts } = designOf(staggered);
  const along = (id: string) =>
    parts.fastenings.find((one) => one.id === id)?.at.map(({ y }) => Math.round(y * 1e4 + 1e-6) / 10);
  // the front is 500 high from 11 mm up: 60 + 20 mm off both ends, five rivets 90.5 mm apart
  expect(along("box.front-left on box.front")).toEqual([69, 159.5, 250, 340.5, 431]);
  expect(along("box.front-left on box.left")).toEqual([114.3, 204.8, 295.3, 385.8]);
});

test("what stands on caster bolts is told, with a board that was tried", () => {
  const texts = rolling(smallJob);
  const low = {
    ...texts,
    "case.yaml": (texts["case.yaml"] ?? "").replace(
      "battery: { in: box, mass: 9 kg, at: [50, 50, 0]",
      "battery: { in: box, mass: 9 kg, at: [30, 20, 0]",
    ),
  };
  expect(told(low, "assembly.under-contents")).toMatch(
    /^fails: Battery .* on a board of .*\. Then none share space/,
  );
});

test("a shelf that slides out through a closed front is told", () => {
  const sliding = spoilt(
    "case.yaml",
    "support: two ends, sliding: false",
    "support: two ends, sliding: true",
  );
  expect(told(sliding, "assembly.way.board")).toMatch(/^fails: .*box\.front/);
});

test("a door turns free of its frame", () => {
  expect(told(smallJob, "assembly.way.box.left.door")).toMatch(/^holds: Nothing stands in its way/);
});

test("a hinge off the gap stands in its door's way, and is told where it belongs", () => {
  const hinged = (across: number) => ({
    ...smallJob,
    "case.yaml": (smallJob["case.yaml"] ?? "").replace(
      "hardware:\n",
      `hardware:\n  door hinge: { item: hinge, duty: hinge, places: [{ on: box.left, from: bottom-left, across: ${across}, up: 200 }] }\n`,
    ),
  });
  // The opening begins at 120 mm and the leaf 3 mm further.
  expect(told(hinged(121.5), "assembly.way.box.left.door")).toMatch(/^holds/);
  expect(told(hinged(114), "assembly.way.box.left.door")).toMatch(
    /^fails: .* Set the middle of door hinge 1 over the gap, 121\.5 mm from the left edge of the panel\./,
  );
});

test("nothing is asked of sections where there is one", () => {
  expect(told(smallJob, "assembly.stack.box")).toBe("not asked: ");
});
