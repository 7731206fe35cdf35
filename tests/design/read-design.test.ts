import { describe, expect, test } from "vitest";
import { caseWith } from "./case-with.js";
import { designOf, problemsOf, smallJob } from "./small-job.js";

describe("a sound job", () => {
  const { case: box, stock, measurements } = designOf(smallJob);

  test("is read with bare numbers in the file's unit and currency", () => {
    const [section] = box.sections;
    expect(section?.inside).toEqual({ width: 0.6, depth: 0.4, height: 0.5 });
    expect(box.business.readyMade).toEqual({ amount: 900, currency: "EUR" });
    expect(box.demands.allowedSag).toBeCloseTo(1 / 180, 12);
  });

  test("lengths with a unit of their own mean that unit", () => {
    const text = (smallJob["case.yaml"] ?? "").replace("depth: 400", "depth: 1 ft 4 in");
    expect(designOf({ ...smallJob, "case.yaml": text }).case.sections[0]?.inside.depth).toBeCloseTo(
      0.4064,
      10,
    );
  });

  test("inch files read fractions as inches", () => {
    const text = (smallJob["case.yaml"] ?? "")
      .replace("lengths: mm", "lengths: in")
      .replaceAll(
        /\{ width: 600, depth: 400, height: 500 \}/g,
        '{ width: 30-1/2, depth: "24 1/4", height: 22.5 }',
      );
    const read = problemsOf({ ...smallJob, "case.yaml": text });
    expect(read.map(({ column }) => column)).not.toContain("sections.box.inside.width");
  });

  test("panels and edges take over the build", () => {
    const { panels, edges } = box.sections[0] ?? { panels: undefined, edges: undefined };
    expect(panels?.top).toMatchObject({
      sheet: "ply 10",
      grain: "across",
      facing: { facing: "lam 1", adhesive: "glue", sides: "outside", oversize: 0.01 },
      openings: [],
    });
    expect(edges?.["front-left"]).toMatchObject({
      through: "front",
      extrusion: { bar: "angle 50", setBack: 0.06 },
    });
    expect(edges?.["top-front"]?.through).toBe("top");
    expect(edges?.["bottom-right"]?.through).toBe("bottom");
  });

  test("tables keep what a builder left blank blank", () => {
    expect(stock.hardware.map(({ rated }) => rated)).toEqual([undefined, 500, 300]);
    expect(stock.sheets[0]?.veneers).toEqual([0.002, 0.002, 0.002, 0.002, 0.002]);
  });

  test("measurements may be absent", () => {
    expect(Object.values(measurements).flat()).toEqual([]);
  });

  test("a table of measurements with a header and no rows is no problem", () => {
    const kerfs = "blade,before (mm),after (mm),offcuts (mm),cuts,use";
    expect(designOf({ ...smallJob, "kerfs.csv": kerfs }).measurements.kerfs).toEqual([]);
  });
});

describe("overrides", () => {
  test("an edge that says only which panel runs through is held as its build says", () => {
    const bare = { build: { edges: "none" }, hardware: { corner: null } };
    const { parts } = designOf(
      caseWith({ ...bare, sections: { box: { edges: { "top-front": { through: "front" } } } } }),
    );
    expect(parts.bars).toEqual([]);
    expect(parts.panels.find(({ id }) => id === "box.front")?.height).toBeGreaterThan(0.51);
  });

  const withSection = (lines: string): Record<string, string> => ({
    ...smallJob,
    "case.yaml": (smallJob["case.yaml"] ?? "").replace("    panels:\n", `${lines}    panels:\n`),
  });

  test("a section's build overrides the case's, field by field", () => {
    const texts = withSection(
      "    build: { sheet: ply 15, facing: { sides: both }, edges: { pitch: 80 } }\n",
    );
    const [section] = designOf(texts).case.sections;
    expect(section?.panels.back).toMatchObject({
      sheet: "ply 15",
      facing: { facing: "lam 1", sides: "both" },
    });
    expect(section?.edges["top-back"]?.extrusion).toMatchObject({ bar: "angle 50", pitch: 0.08 });
  });

  test("an edge overrides who runs through and its bar; none leaves it out", () => {
    const texts = withSection(
      "    edges: { front-left: { through: neither, bar: seat 50 }, top-back: { bar: none } }\n",
    );
    const edges = designOf(texts).case.sections[0]?.edges;
    expect(edges?.["front-left"]).toMatchObject({
      through: "neither",
      extrusion: { bar: "seat 50", pitch: 0.1 },
    });
    expect(edges?.["top-back"]).toEqual({ through: "top" });
  });

  test("a facing of none leaves the panel bare", () => {
    const text = (smallJob["case.yaml"] ?? "").replace(
      "      front:\n",
      "      front:\n        facing: none\n",
    );
    const front = designOf({ ...smallJob, "case.yaml": text }).case.sections[0]?.panels.front;
    expect(front).not.toHaveProperty("facing");
  });
});
