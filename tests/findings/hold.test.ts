/** What is fixed to a wall is held as on a wall, and a strength meets its safety factor once. */
import { describe, expect, test } from "vitest";
import type { Content } from "../../lib/design/index.js";
import { bounces } from "../../lib/findings/fit-out/bounce.js";
import { holds } from "../../lib/findings/fit-out/hold.js";
import { outwardHandles } from "../../lib/findings/joints/handle-outward.js";
import { handles, sidewaysHandles } from "../../lib/findings/joints/handles.js";
import { kerbs } from "../../lib/findings/joints/hardware.js";
import { openJob } from "../../lib/job/index.js";
import { fastenerStrength, type ReviewInput } from "../../lib/model/index.js";
import { Force } from "../../lib/quantity/index.js";

const draft: ReviewInput = openJob("soil-lab-draft");

function inverterWith(change: (content: Content) => Content): ReviewInput {
  const contents = draft.parts.contents.map((part) =>
    part.content.name === "inverter" ? { ...part, content: change(part.content) } : part,
  );
  return { ...draft, parts: { ...draft.parts, contents } };
}

function pulled(input: ReviewInput): string {
  return holds(input).find(({ subject }) => subject === "inverter")?.answer ?? "";
}

describe("a thing of 5 lb on four inserts", () => {
  const on = (to: "back" | "front" | "left" | "top" | "bottom") =>
    pulled(
      inverterWith((content) =>
        content.held.by === "screws" ? { ...content, held: { ...content.held, to } } : content,
      ),
    );

  test("on the back is thrown off it by braking, and pried off by its weight", () => {
    // 5 lbf (0.8 / 4 + 1 x 3.5 in / (2 x 0.8 x 5 in x 2)) = 2.09 lbf, by hand.
    expect(on("back")).toMatch(
      /^Braking and its weight take .* of what its 4 fasteners allow\. They pull each far one off the back with 2\.09 lbf/,
    );
  });

  test("on the front by starting, on a side by turning, under the top by its weight", () => {
    expect(on("front")).toMatch(/^(Starting|Braking|Turning) and its weight .* off the front/);
    expect(on("left")).toMatch(/off the left/);
    expect(on("top")).toMatch(/Braking and its weight .* off the top/);
  });

  test("on the bottom stands on its own weight", () => {
    expect(on("bottom")).toMatch(
      /^Braking takes .* of what its 4 fasteners allow\. It pushes each with 1 lbf /,
    );
    expect(on("bottom")).not.toContain("0 lbf each");
  });
});

describe("the safety factor", () => {
  const [bolts] = draft.parts.fastenings.filter(({ holds: held }) => held.startsWith("caster"));
  if (!bolts) throw new Error("the draft's casters are bolted");

  test("is taken once of a code's allowable: the figure is the allowable again behind it", () => {
    const strength = fastenerStrength(bolts, "pull", draft);
    if ("measure" in strength) throw new Error("a bolt's pull is known by formula");
    expect(strength.figure).toBe("allowable");
    // An outside reckoning has 192 lbf for these bolts, by the code.
    expect(Force.in(Force.si(strength.strength / draft.case.demands.safetyFactor), "lbf")).toBeCloseTo(
      192,
      0,
    );
  });

  test("leaves the caster at the kerb what the code allows", () => {
    const [kerb] = kerbs(draft);
    expect(kerb?.verdict).toBe("holds");
    expect(kerb?.answer).toMatch(/of 192 lbf/);
  });
});

describe("a bounce upwards", () => {
  const of = (input: ReviewInput, name: string) => bounces(input).find(({ subject }) => subject === name);

  test("throws up what nothing holds down", () => {
    // 300 rounds a minute on a circle of 1 in: (2 pi 5)2 x 0.0127 / 9.80665 = 1.278, by hand.
    expect(of(draft, "storage bay crate")).toMatchObject({ verdict: "fails", tier: "safety" });
    expect(of(draft, "storage bay crate")?.ratio).toBeCloseTo(1.278, 3);
  });

  test("pulls straps with what it has over gravity, and what hangs with all of it", () => {
    expect(of(draft, "battery box")?.ratio).toBeCloseTo((0.278 * 34) / 2 / 120, 3);
    expect(of(draft, "lamp")?.answer).toContain("pulls on it with 7.97 lbf");
    expect(of(draft, "reagent box")?.verdict).toBe("unknown");
    expect(of(draft, "reagent box")?.cautions.length).toBeGreaterThan(0);
  });

  test("pulls at what is screwed down with what it has over gravity, and shears and pries on a wall", () => {
    // 0.278 x 7 lb, off the bottom; 2.278 x 5 lb on four inserts, along the back.
    expect(of(draft, "sample rack")?.answer).toContain("pulls on it with 1.95 lbf");
    expect(of(draft, "inverter")?.answer).toMatch(/off the back with .*, and shear each with 2\.85 lbf/);
  });

  const cradled = (change: { readonly lid?: boolean; readonly lidRated?: Force }) => {
    const contents = draft.case.contents.map((content) =>
      content.held.by === "cradle" ? { ...content, held: { ...content.held, ...change } } : content,
    );
    return of({ ...draft, case: { ...draft.case, contents } }, "field spectrometer");
  };

  test("throws a thing out of an open cradle, and pulls at a lid with what it has over gravity", () => {
    expect(cradled({ lid: false })?.ratio).toBeCloseTo(1.278, 3);
    expect(cradled({})).toMatchObject({
      verdict: "unknown",
      missing: { measure: "what the strap or lid over the field spectrometer stands" },
    });
    expect(cradled({ lidRated: Force.of(40, "lbf") })?.ratio).toBeCloseTo((0.278 * 14) / 40, 3);
    expect(cradled({ lidRated: Force.of(3, "lbf") })?.verdict).toBe("fails");
  });

  test("is not asked of a case that nobody moves", () => {
    expect(bounces({ ...draft, case: { ...draft.case, leftOut: ["journey"] } })).toEqual([]);
  });
});

test("slanting arms pull a handle off with the tangent of 30 degrees of its load", () => {
  const [lower] = outwardHandles(draft);
  // 161.9 lb with a jerk of 2 on two handles; tan 30 = 0.57735.
  expect(lower?.answer).toMatch(/bears 162 lbf along .* is pulled off with 93\.[56] lbf/);
});

test("an arm that slants along the panel pulls a handle with the secant of 30 degrees of its load", () => {
  const upright = handles(draft).map(({ ratio = Number.NaN }) => ratio);
  const slanting = sidewaysHandles(draft).map(({ ratio }) => ratio);
  expect(slanting.length).toBe(2);
  upright.forEach((ratio, i) => {
    expect(slanting[i]).toBeCloseTo((ratio * 2) / Math.sqrt(3), 9);
  });
  expect(sidewaysHandles(draft).map(({ verdict }) => verdict)).toEqual(["fails", "fails"]);
});

test("handles whose strength nobody knows are not known pulled sideways; a case without any is not asked", () => {
  const measurements = { ...draft.measurements, pullTests: [] };
  const bare = { ...draft.parts, fastenings: [] };
  const [open] = sidewaysHandles({ ...draft, measurements, parts: bare });
  expect(open?.verdict).toBe("unknown");
  expect(open?.cautions.length).toBeGreaterThan(0);
  const none = { ...draft.parts, hardware: draft.parts.hardware.filter(({ item }) => item.duty !== "lift") };
  expect(sidewaysHandles({ ...draft, parts: none })).toEqual([]);
});
