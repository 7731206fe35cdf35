/** Drops of fragile contents: whose table the height is from, and edges and corners. */
import { expect, test } from "vitest";
import type { FoamBed } from "../../lib/design/index.js";
import { type Finding, reviewCase } from "../../lib/findings/index.js";
import { openJob } from "../../lib/job/index.js";
import { type BusinessInput, dropOf, handlingsOf } from "../../lib/model/index.js";
import { Area, Length, pound } from "../../lib/quantity/index.js";

const demo: BusinessInput = openJob("soil-lab-draft");

function withFoam(change: (foam: FoamBed) => FoamBed, handling = demo.case.journey.handling): BusinessInput {
  const contents = demo.case.contents.map((one) =>
    one.needs.foam ? { ...one, needs: { ...one.needs, foam: change(one.needs.foam) } } : one,
  );
  const journey = { ...demo.case.journey, ...(handling ? { handling } : {}) };
  return { ...demo, case: { ...demo.case, contents, journey } };
}

function travelOf(input: BusinessInput, id: string): Finding {
  const found = reviewCase(input).travel.find((finding) => finding.id === id);
  if (!found) throw new Error(`no finding ${id}`);
  return found;
}

const onEdge = "travel.drop-edge.field spectrometer";

test("pads scaled as the flat one make every edge land as hard as the flat", () => {
  const alike = withFoam(({ padWidth, padDepth, ...rest }) => ({
    ...rest,
    padWidth,
    padDepth,
    sides: Area.si(padWidth * padDepth),
    ends: Area.si(padWidth * padDepth),
  }));
  const flat = travelOf(alike, "travel.drop.field spectrometer").ratio ?? Number.NaN;
  expect(travelOf(alike, onEdge).ratio).toBeCloseTo(flat, 9);
});

test("a stiffer pad beside it never lands softer on its edge", () => {
  const sides = (inches: number): number =>
    travelOf(
      withFoam((foam) => ({ ...foam, sides: Area.of(inches, "in2") })),
      onEdge,
    ).ratio ?? Number.NaN;
  expect(sides(200)).toBeGreaterThan(sides(100));
  expect(sides(100)).toBeGreaterThan(sides(60));
});

test("foam beside it that nobody measured leaves edges and corners unknown", () => {
  const bare = withFoam(({ kind, thickness, padWidth, padDepth }) => ({
    kind,
    thickness,
    padWidth,
    padDepth,
  }));
  expect(travelOf(bare, onEdge)).toMatchObject({
    verdict: "unknown",
    missing: { measure: "the foam beside it" },
  });
  expect(travelOf(bare, "travel.drop.field spectrometer").verdict).toBe("holds");
});

test("a parcel is judged by the parcel test, one too heavy for it is unknown", () => {
  const parcel = withFoam((foam) => foam, "parcel");
  expect(travelOf(parcel, "travel.drop.field spectrometer").answer).toContain("From 12 in");
  expect(travelOf(parcel, "travel.drop.field spectrometer").source[0]).toMatchObject({ source: "ista-1a" });
  expect(handlingsOf(pound(160))).toEqual(["careful", "usual", "rough"]);
  expect(() => dropOf(pound(160), "parcel")).toThrow("a parcel weighs at most 150 lb, got 160 lb");
});

test("what nobody drops by hand falls on one edge", () => {
  expect(dropOf(pound(200), "usual").id).toBe("drop.height");
  expect(dropOf(pound(201), "usual").id).toBe("drop.rotation.height");
});

test("a foam too thin for it is told how thick it should be", () => {
  const thin = withFoam((foam) => ({ ...foam, thickness: Length.of(1, "in") }));
  const { verdict, answer } = travelOf(thin, "travel.drop.field spectrometer");
  expect(verdict).toBe("fails");
  expect(answer).toMatch(
    /At its best pressure .+ of this foam would do, on a pad of .+; or carry it by itself/,
  );
});
