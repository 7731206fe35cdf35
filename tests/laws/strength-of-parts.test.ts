/** Panes, drawer bottoms, battens, tops in storage and walls under straps: by hand, and by what they must do. */
import { describe, expect, test } from "vitest";
import type { Finding } from "../../lib/findings/index.js";
import { storedSags } from "../../lib/findings/stiffness/stored.js";
import { drawerBottoms } from "../../lib/findings/strength/drawers.js";
import { panesBreak } from "../../lib/findings/strength/panes.js";
import { stiffenersBend } from "../../lib/findings/strength/stiffeners.js";
import { storedOn } from "../../lib/findings/strength/stored.js";
import { strapsOnWalls } from "../../lib/findings/strength/straps.js";
import { crateJob } from "../design/crate-job.js";
import { lidAndDrawers } from "../design/lid-and-drawers-job.js";
import { designOf, smallJob, spoilt } from "../design/small-job.js";

/** A job with one text of one file changed. */
function changed(job: Readonly<Record<string, string>>, file: string, from: string, to: string) {
  const text = job[file] ?? "";
  expect(text).toContain(from);
  return designOf({ ...job, [file]: text.replace(from, to) });
}

const only = (findings: readonly Finding[]): Finding => {
  expect(findings).toHaveLength(1);
  return findings[0]!;
};

describe("a pane", () => {
  const panes = (columns: string) =>
    designOf({
      ...crateJob,
      "pane-stock.csv": `name,length (mm),width (mm),thickness (mm),density (kg/m3),modulus (GPa),poisson,price (EUR),supplier,${columns}`,
    });
  const row = "\nacrylic 3,1000,500,3,1190,3.2,0.3,22,yard";

  test("is stressed as a plate on four edges and held against its plastic over the safety factor", () => {
    const found = only(panesBreak(panes(`plastic${row},acrylic`)));
    // 50 lbf on all of 120 x 100 mm: 0.0627 q a2 of table 8, 6 M / t2, against 110 MPa / 3.
    const stress = (6 * 0.0627 * (222.41 / 0.012) * 0.1 ** 2) / 0.003 ** 2;
    expect(found.ratio).toBeCloseTo(stress / (110e6 / 3), 2);
    expect([found.tier, found.verdict]).toEqual(["safety", "holds"]);
    expect(found.assumes.join(" ")).toContain("a published one of its plastic");
  });

  test("counts what its data sheet says before what its plastic usually stands", () => {
    const found = only(panesBreak(panes(`plastic,strength (MPa)${row},acrylic,20`)));
    expect(found.verdict).toBe("fails");
  });

  test("is unknown, with its caution, until somebody says what it is", () => {
    const found = only(panesBreak(designOf(crateJob)));
    expect(found.missing?.measure).toBe("the bending strength of acrylic 3");
    expect(found.cautions.join()).toContain("cuts whoever leans on it");
  });
});

describe("stiffeners", () => {
  test("bear half of their panel as loose beams of the lowest timber", () => {
    const found = stiffenersBend(designOf(crateJob)).find(({ subject }) => subject === "crate.left.side rib");
    // 500 Pa on half of 300 mm over 300 mm; 20 wide and 30 deep; 1.5 against 0.9 x 14 / 1.3.
    const moment = (500 * 0.15 * 0.3 ** 2) / 8;
    const stress = (1.5 * moment) / ((0.02 * 0.03 ** 2) / 6);
    expect(found?.ratio).toBeCloseTo(stress / ((0.9 * 14e6) / 1.3), 6);
    expect(found?.assumes.join(" ")).toContain("lowest class of softwood");
  });

  test("are asked of where something presses on their panel, and doublers and ledges not at all", () => {
    expect(stiffenersBend(designOf(crateJob)).map(({ subject }) => subject)).toEqual([
      "crate.left.side rib",
      "crate.back.window frame",
    ]);
  });

  test("of a stronger grade use less of it", () => {
    const graded = designOf({
      ...crateJob,
      "strip-stock.csv": `name,length (mm),width (mm),thickness (mm),density (kg/m3),modulus (GPa),strength (MPa),price (EUR),supplier
pine 20 x 30,2400,30,20,500,9,28,4,yard`,
    });
    const [weak] = stiffenersBend(designOf(crateJob));
    const [strong] = stiffenersBend(graded);
    expect(strong?.ratio).toBeCloseTo((weak?.ratio ?? 0) / 2, 9);
  });
});

describe("the bottom of a drawer", () => {
  const loaded = (load: string) =>
    designOf({
      ...lidAndDrawers,
      "case.yaml": (lidAndDrawers["case.yaml"] ?? "").replaceAll("load: 3 kg", `load: ${load}`),
    });

  test("is used twice as much by twice the load, and is not asked of where nothing lies in it", () => {
    const [light] = drawerBottoms(loaded("3 kg"));
    const [heavy] = drawerBottoms(loaded("6 kg"));
    expect(light?.ratio).toBeGreaterThan(0);
    expect(heavy?.ratio).toBeCloseTo(2 * (light?.ratio ?? 0), 9);
    expect(drawerBottoms(loaded("0 kg"))).toEqual([]);
  });
});

describe("what stands on a top in storage", () => {
  const under = (mass: string) =>
    changed(smallJob, "case.yaml", "push: 100 N", `push: 100 N, stored under: ${mass}`);

  test("uses twice as much of it when it weighs twice as much, and twice its sag", () => {
    for (const ask of [storedOn, storedSags]) {
      const [light, heavy] = [only(ask(under("20 kg"))), only(ask(under("40 kg")))];
      expect(heavy.ratio).toBeCloseTo(2 * (light.ratio ?? 0), 6);
    }
  });

  test("sags twice as far in dry air as when it was put there", () => {
    const later = only(storedSags(under("20 kg"))).because.find(({ id }) => id === "sag.longterm");
    expect(later?.inputs.find(({ name }) => name === "creepFactor")?.number).toBe(2);
  });

  test("is not asked of where nobody says what stands there", () => {
    expect(storedOn(designOf(smallJob))).toEqual([]);
  });
});

describe("straps over a section", () => {
  const strapped = (words: string) =>
    changed(
      smallJob,
      "case.yaml",
      "floor: even }",
      `floor: even, lashing: { tension: 1200 N, straps: 1, angle: 90 deg, friction: 0.4${words} } }`,
    );

  test("run where neither of two walls is cut", () => {
    // The back has no opening, the front a window from 60 to 260 and a port from about 400 to 500 across.
    expect(only(strapsOnWalls(strapped(""))).answer).toMatch(
      /Run them over box\.(left|front) and box\.(right|back)/,
    );
  });

  test("ask less of an edge the wider they are", () => {
    const [narrow, wide] = [
      only(strapsOnWalls(strapped(""))),
      only(strapsOnWalls(strapped(", strap width: 50"))),
    ];
    expect(wide.ratio).toBeLessThan(narrow.ratio ?? 0);
    // 1200 N on 25 x 10 mm, times 1.5.
    expect(narrow.answer).toContain("7.2 MPa, counted 1.5 times");
    expect(narrow.assumes.join()).toContain("Nobody said how wide a strap is");
    expect(wide.assumes.join()).not.toContain("how wide");
  });

  test("find no room where openings leave less than their width", () => {
    const found = only(strapsOnWalls(strapped(", strap width: 400")));
    expect([found.verdict, found.ratio]).toEqual(["fails", undefined]);
  });

  test("are not asked of where nobody straps it", () => {
    expect(strapsOnWalls(designOf(spoilt("case.yaml", "push: 100 N", "push: 90 N")))).toEqual([]);
  });
});
