/** Stiffeners as parts: sums by hand on a crate, and the laws that stiffeners keep on any panel. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { reviewCase } from "../../lib/findings/index.js";
import {
  caseSolids,
  firstSag,
  massItems,
  panelSag,
  sagCaseOf,
  sheetModuli,
  shelfMass,
} from "../../lib/model/index.js";
import { Pressure } from "../../lib/quantity/index.js";
import { recipeMarkdown, writeRecipe } from "../../lib/recipe/index.js";
import { type Block, caseWith } from "../design/case-with.js";
import { crateJob } from "../design/crate-job.js";
import { designOf, problemsOf } from "../design/small-job.js";

const crate = designOf(crateJob);
const { parts } = crate;
const review = reviewCase(crate);

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

function massOf(name: string): number {
  return sum(massItems(crate).flatMap((item) => (item.name === name ? [item.mass] : [])));
}

describe("the stiffeners of a crate", () => {
  test("weigh what they measure", () => {
    // Strips of 20 x 30 mm and 500 kg/m3 are 0.3 kg/m; ply of 9 mm and 650 kg/m3 is 5.85 kg/m2.
    expect(massOf("crate.bottom.floor batten")).toBeCloseTo(0.3 * 0.4, 9);
    expect(massOf("crate.left.side rib")).toBeCloseTo(0.3 * 0.3, 9);
    expect(massOf("crate.top.lid doubler")).toBeCloseTo(5.85 * 0.2 * 0.15, 9);
    // 200 x 180 less the window of 120 x 100.
    expect(massOf("crate.back.window frame")).toBeCloseTo(5.85 * (0.2 * 0.18 - 0.12 * 0.1), 9);
  });

  test("stand off their panels, inside or outside", () => {
    const boxOf = (id: string) => parts.strips.find((strip) => strip.id === id)?.box;
    // Flat on the bottom of 9 mm: 20 high, 140 back, 60 from the right seen from below.
    expect(boxOf("crate.bottom.floor batten")?.low).toMatchObject({
      y: expect.closeTo(0.14),
      z: expect.closeTo(0.009),
    });
    expect(boxOf("crate.bottom.floor batten")?.size).toMatchObject({
      x: expect.closeTo(0.4),
      z: expect.closeTo(0.02),
    });
    // On edge outside of the left side: 30 out of it.
    expect(boxOf("crate.left.side rib")?.low.x).toBeCloseTo(-0.03, 9);
    expect(boxOf("crate.left.side rib")?.size).toMatchObject({
      x: expect.closeTo(0.03),
      y: expect.closeTo(0.02),
    });
  });

  test("take glue and screws", () => {
    const glued = new Map(parts.glues.map(({ id, area }) => [id, area]));
    expect(glued.get("crate.bottom.floor batten on crate.bottom")).toBeCloseTo(0.4 * 0.03, 9);
    expect(glued.get("crate.back.window frame on crate.back")).toBeCloseTo(0.2 * 0.18 - 0.12 * 0.1, 9);
    const rows = new Map(parts.fastenings.map(({ id, count }) => [id, count]));
    // 300 less twice 30 is 240, three spaces of at most 80.
    expect(rows.get("crate.left.side rib on crate.left")).toBe(4);
    // The frame: two of 200, 170 in three spaces of 60; two of 100, 70 in two.
    expect(rows.get("crate.back.window frame on crate.back")).toBe(2 * 4 + 2 * 3);
  });

  test("are cut and bought with the rest", () => {
    const [sheet] = review.purchases.sheets;
    const cut = sheet?.plan.sheets.flatMap(({ pieces }) => pieces.map(({ name }) => name)) ?? [];
    expect(cut).toEqual(expect.arrayContaining(["crate.top.lid doubler", "crate.back.window frame"]));
    // Cleats of 1.92 m, and 0.4, 0.3 and 0.2 m: more than one strip of 2.4 m.
    expect(review.bill.lines.find(({ trade }) => trade === "strips")).toMatchObject({ quantity: 2 });
    const glue = sum(parts.glues.map(({ area }) => area));
    const [need] = review.purchases.adhesives;
    // 180 g/m2 on one face, a tenth of it wasted, 1.1 g/mL; half of what is spread stays.
    expect(need?.volume).toBeCloseTo((glue * 0.18) / 0.9 / 1100, 9);
    const dry = massItems(crate).filter(({ group }) => group === "glue");
    expect(sum(dry.map(({ mass }) => mass))).toBeCloseTo(glue * 0.18 * 0.5, 9);
  });

  test("stand in the recipe", () => {
    const { purchases, bill, masses } = review;
    const text = recipeMarkdown(writeRecipe({ ...crate, purchases, bill, findings: [], masses }));
    expect(text).toContain("on the inside of crate.bottom while it lies flat");
    expect(text).toContain("on the outside of crate.left while it lies flat");
  });
});

const held = { fastener: "screw", pitch: 100, "end distance": 20 };

const strips = {
  "strip-stock.csv": `name,length (mm),width (mm),thickness (mm),density (kg/m3),modulus (GPa),price (EUR),supplier
pine 20 x 30,2400,30,20,500,9,4,yard`,
};

describe("stiffeners of shelves and leaves", () => {
  /** A board of 600 x 30 mm on its two ends, carrying 4 kg, with a strip as wide as itself under it. */
  const board = (stiffeners: Block, depth = 30, rest: Block = {}) =>
    designOf(
      caseWith(
        {
          shelves: { board: { size: [600, depth], ...rest } },
          contents: { meter: { size: [200, 30, 120], at: [50, 0, 210] } },
          stiffeners,
          hardware: { handle: null },
        },
        strips,
      ),
    );
  const under: Block = { on: "box.shelf.board", strip: "pine 20 x 30", across: 0, up: 0, length: 600 };
  const shelfOf = (stiffeners: Block, depth?: number) => {
    const design = board(stiffeners, depth);
    const [shelf] = design.parts.shelves;
    if (!shelf) throw new Error("no shelf");
    return { design, shelf };
  };

  test("a glued strip under a narrow shelf bends with it as one beam", () => {
    const { design, shelf } = shelfOf({ batten: { ...under, adhesive: "glue" } });
    const modulus = sheetModuli(shelf.panel.sheet, design.measurements).along.modulus;
    // Two layers as wide as each other: 10 mm of ply over 20 mm of pine, about their common middle.
    const layers = [
      { e: modulus, h: 0.01, y: 0.025 },
      { e: 9e9, h: 0.02, y: 0.01 },
    ];
    const middle = sum(layers.map(({ e, h, y }) => e * h * y)) / sum(layers.map(({ e, h }) => e * h));
    const stiffness = 0.03 * sum(layers.map(({ e, h, y }) => e * (h ** 3 / 12 + h * (y - middle) ** 2)));
    // 4 kg on it, ply of 700 and pine of 500 kg/m3, spread along 600 mm between hinges.
    const weight = 9.80665 * (4 + 0.6 * 0.03 * (0.01 * 700 + 0.02 * 500));
    const sag = (5 * weight * 0.6 ** 3) / (384 * stiffness);
    // Shear through the sheet, which the beam leaves out, adds a few percent.
    expect(firstSag(shelf, design).sag / sag).toBeGreaterThan(1);
    expect(firstSag(shelf, design).sag / sag).toBeLessThan(1.06);
  });

  test("a batten makes a shelf stiffer and heavier, and hangs below it", () => {
    const { design, shelf } = shelfOf(
      { batten: { ...under, up: 140, adhesive: "glue", standing: true } },
      300,
    );
    const bare = shelfOf({}, 300);
    expect(firstSag(shelf, design).sag).toBeLessThan(0.5 * firstSag(bare.shelf, bare.design).sag);
    expect(shelfMass(shelf) - shelfMass(bare.shelf)).toBeCloseTo(0.6 * 0.02 * 0.03 * 500, 9);
    const [strip] = design.parts.strips;
    expect(strip?.box.size).toMatchObject({ x: expect.closeTo(0.6), y: expect.closeTo(0.02) });
    expect((strip?.box.low.z ?? 0) + 0.03).toBeCloseTo(shelf.panel.box.low.z, 9);
  });

  test("a strip on a door is in the door's own axes, is weighed with it and opens with it", () => {
    const design = board({
      "door strip": { ...under, on: "box.left.door", across: 20, up: 30, length: 100, adhesive: "glue" },
    });
    const door = design.parts.panels.find(({ id }) => id === "box.left.door");
    const [strip] = design.parts.strips;
    if (!door || !strip) throw new Error("no door or strip");
    // Seen from outside the left side runs from the back to the front.
    expect(strip.box.low.z - door.box.low.z).toBeCloseTo(0.03, 9);
    expect(door.box.low.y + door.box.size.y - strip.box.low.y - strip.box.size.y).toBeCloseTo(0.02, 9);
    const [swing] = caseSolids(design).movements;
    expect(swing?.parts.has("box.left.door.door strip")).toBe(true);
  });

  test("a shelf rests on ledges that end right under it, and what screws them to the walls bears it", () => {
    const ledge = { kind: "ledge", strip: "pine 20 x 30", across: 60, length: 200, ...held };
    const ledges = (up: number) => ({
      one: { on: "box.left", ...ledge, up },
      other: { on: "box.right", ...ledge, up },
    });
    const open = { sections: { box: { panels: { left: { openings: null } } } } };
    const texts = (up: number): Record<string, string> =>
      caseWith(
        {
          ...open,
          shelves: { board: { "rests on": ["one", "other"] } },
          stiffeners: ledges(up),
          hardware: { handle: null },
        },
        strips,
      );
    const [problem] = problemsOf(texts(150));
    expect(problem).toMatchObject({
      column: "shelves.board.rests on",
      expected: 'the top of "one" at 200 mm, the underside of the shelf',
    });
    const up = 150 + 200 - Number(/[\d.]+/.exec(problem?.value ?? "")?.[0]);
    const design = designOf(texts(up));
    const [found] = reviewCase(design).joints.filter(({ id }) => id === "joints.shelf.board");
    // Two rows of three: 200 less twice 20 in two spaces of 80.
    expect(found?.answer).toMatch(/^It rests on box\.left\.one and box\.right\.other\. 6 fasteners, sheared/);
  });

  test("names that lead to no leaf, shelf or ledge are problems", () => {
    const found = (over: Block) => problemsOf(caseWith(over, strips)).map(({ expected }) => expected);
    const strip = { ...under, adhesive: "glue" };
    expect(found({ stiffeners: { batten: { ...strip, on: "box.shelf.bord" } } })).toEqual([
      'a shelf of box (board); did you mean "board"?',
    ]);
    expect(found({ stiffeners: { batten: { ...strip, on: "box.left.dor" } } })).toEqual([
      'a leaf of box.left (door); did you mean "door"?',
    ]);
    expect(found({ shelves: { board: { "rests on": ["ledge"] } } })).toEqual([
      "a stiffener on an upright face of section box (it has none)",
    ]);
  });
});

/** Sag of the small job's back under 1 kPa with some stiffeners. */
function sagWith(stiffeners: Block): number {
  const design = designOf(caseWith({ stiffeners, hardware: { handle: null } }, strips));
  const panel = design.parts.panels.find(({ id }) => id === "box.back");
  if (!panel) throw new Error("no back");
  return panelSag(sagCaseOf(panel, Pressure.si(1000), "hinged", design)).sag;
}

/** The mesh may say so much either way. */
const mesh = 1.015;

const batten = fc.record({
  across: fc.integer({ min: 20, max: 200 }),
  up: fc.integer({ min: 20, max: 400 }),
  length: fc.integer({ min: 60, max: 380 }),
  standing: fc.boolean(),
  side: fc.constantFrom("inside", "outside"),
  glued: fc.boolean(),
});

function placed({ glued, ...place }: { readonly glued: boolean } & Block): Block {
  return { on: "box.back", strip: "pine 20 x 30", ...place, ...(glued ? { adhesive: "glue" } : held) };
}

describe("laws of stiffeners", () => {
  const bare = sagWith({});

  test("a batten never makes a panel sag more, wherever it lies", () => {
    fc.assert(
      fc.property(batten, (one) => {
        expect(sagWith({ one: placed(one) })).toBeLessThan(bare * mesh);
      }),
      { numRuns: 12 },
    );
  });

  test("a doubler never makes it sag more, and a thicker one less", () => {
    const doubled = (sheet: string): number =>
      sagWith({
        one: { on: "box.back", sheet, width: 200, length: 300, across: 150, up: 150, adhesive: "glue" },
      });
    expect(doubled("ply 10")).toBeLessThan(bare);
    expect(doubled("ply 15")).toBeLessThan(doubled("ply 10"));
  });

  test("a batten on screws sags between none and a glued one", () => {
    const middle = { across: 30, up: 235, length: 540 };
    const glued = sagWith({ one: placed({ ...middle, glued: true }) });
    const screwed = sagWith({ one: placed({ ...middle, glued: false }) });
    expect(glued).toBeLessThan(screwed);
    expect(screwed).toBeLessThan(bare);
  });

  test("mirrored, it answers the same", () => {
    fc.assert(
      fc.property(batten, (one) => {
        const left = sagWith({ one: placed({ ...one, from: "bottom-left" }) });
        const right = sagWith({ one: placed({ ...one, from: "bottom-right" }) });
        expect(left / right).toBeGreaterThan(1 / mesh);
        expect(left / right).toBeLessThan(mesh);
      }),
      { numRuns: 5 },
    );
  });
});

describe("what a stiffener must keep to", () => {
  const expected = (one: Block): readonly string[] =>
    problemsOf(caseWith({ stiffeners: { one: { on: "box.front", sheet: "ply 10", ...one } } })).map(
      (problem) => problem.expected,
    );
  const glued = { adhesive: "glue", width: 50, length: 100 };

  test("something that holds it, a place, and a width", () => {
    expect(expected({ width: 40, round: "window" })).toEqual(["an adhesive, a fastener or both"]);
    expect(expected({ ...glued, up: 10 })).toEqual([
      "across, up and length, or the opening that it is round",
    ]);
    expect(expected({ adhesive: "glue", round: "window" })).toEqual(["a width of its sheet"]);
  });

  test("the inside of its panel, clear of openings", () => {
    expect(expected({ ...glued, across: 5, up: 20 })[0]).toContain("past its left side");
    expect(expected({ ...glued, across: 50, up: 220 })).toEqual(['a place clear of the opening "window"']);
  });

  test("an opening that is there", () => {
    expect(expected({ ...glued, round: "widow" })).toEqual([
      'an opening of box.front (window, port); did you mean "window"?',
    ]);
  });
});
