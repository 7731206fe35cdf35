/** The ride: cradles, shelves on the road, and straps over a section. */
import { describe, expect, test } from "vitest";
import type { Holding } from "../../lib/design/index.js";
import { type Finding, reviewCase } from "../../lib/findings/index.js";
import { openJob } from "../../lib/job/index.js";
import { type BusinessInput, lashingWays } from "../../lib/model/index.js";
import { Force, Length } from "../../lib/quantity/index.js";

const demo: BusinessInput = openJob("soil-lab-draft");
type Cradle = Extract<Holding, { by: "cradle" }>;

function withCradle(change: (cradle: Cradle) => Cradle): BusinessInput {
  const contents = demo.parts.contents.map((part) => {
    const { held } = part.content;
    return held.by === "cradle" ? { ...part, content: { ...part.content, held: change(held) } } : part;
  });
  return { ...demo, parts: { ...demo.parts, contents } };
}

function cradled(input: BusinessInput): Finding {
  const found = reviewCase(input).fitOut.find(({ id }) => id === "fit-out.hold.field spectrometer");
  if (!found) throw new Error("no finding of the cradle");
  return found;
}

describe("a cradle lined with foam", () => {
  test("holds with walls high enough, enough foam and a lid", () => {
    expect(cradled(demo)).toMatchObject({ verdict: "holds" });
    expect(cradled(demo).answer).toContain("A strap or lid keeps it in.");
  });

  test("with lower walls gives sooner, in proportion to its foam", () => {
    const at = (inches: number) => cradled(withCradle((one) => ({ ...one, rim: Length.of(inches, "in") })));
    expect(at(2).ratio).toBeCloseTo(1.5 * (at(3).ratio ?? 0), 9);
    expect(at(1).verdict).toBe("fails");
  });

  test("without a lid fails whatever its walls", () => {
    const open = cradled(withCradle((one) => ({ ...one, lid: false })));
    expect(open).toMatchObject({ verdict: "fails" });
    expect(open.answer).toContain("Nothing keeps it from jumping out");
  });

  test("that nobody pulled, or of a foam without a curve, is unknown", () => {
    const unpulled = cradled(
      withCradle(({ by, shelf, rim, lining, lid }) => ({
        by,
        ...(shelf ? { shelf } : {}),
        rim,
        lining,
        lid,
      })),
    );
    expect(unpulled).toMatchObject({
      verdict: "unknown",
      missing: { measure: "the push that the cradle of the field spectrometer stands" },
    });
    const strange = cradled(withCradle((one) => ({ ...one, lining: { ...one.lining, kind: "horsehair" } })));
    expect(strange).toMatchObject({
      verdict: "unknown",
      missing: { measure: "a cushion curve of horsehair" },
    });
  });

  test("that comes off sooner than its foam gives says so", () => {
    const weak = cradled(withCradle((one) => ({ ...one, rated: Force.of(5, "lbf") })));
    expect(weak).toMatchObject({ verdict: "fails" });
    expect(weak.answer).toMatch(/^What gives first is the cradle coming off, at \d+ % of what it stands\./);
  });
});

describe("straps over a section", () => {
  const { lashing } = demo.case.journey;
  if (!lashing) throw new Error("the demo has straps");

  test("are asked three ways, and carry the larger of sliding and tipping", () => {
    const ways = lashingWays(demo, "upper", lashing);
    expect(ways.map(({ way }) => way)).toEqual(["forward", "rearward", "sideways"]);
    for (const { slide, tilt, tension, straps } of ways) {
      expect(tension).toBe(Math.max(slide?.value ?? Number.NaN, tilt.value));
      expect((straps?.value ?? 0) * lashing.tension).toBeGreaterThanOrEqual(tension ?? Number.NaN);
    }
  });

  test("flatter straps are never fewer", () => {
    const flat = { ...lashing, angle: lashing.angle / 2 } as typeof lashing;
    lashingWays(demo, "lower", flat).forEach(({ tension }, i) => {
      expect(tension).toBeGreaterThanOrEqual(lashingWays(demo, "lower", lashing)[i]?.tension ?? 0);
    });
  });
});

test("a shelf of which nobody knows its screws is unknown, and says what to test", () => {
  const { travel } = reviewCase(demo);
  const shelves = travel.filter(({ id }) => id.startsWith("travel.shelf."));
  expect(shelves.map(({ id }) => id)).toEqual(["travel.shelf.instrument shelf", "travel.shelf.supply shelf"]);
  for (const { verdict, missing, cautions } of shelves) {
    if (verdict === "unknown") expect(missing?.measure).toContain("strength of wood screw 8");
    expect(cautions.length).toBeGreaterThan(0);
  }
});
