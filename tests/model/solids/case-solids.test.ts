/** Solids of cases: as heavy as the masses say, inside their sections, each key once, and none that is lost. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { scalarProduct, vector3 } from "../../../lib/algebra/matrix3.js";
import { type CaseSolid, caseSolids, massItems } from "../../../lib/model/index.js";
import { physicalInput } from "../../../lib/model/physical.js";
import { areaOf, reachOf } from "../../../lib/shape/index.js";
import { designOf, rolling, smallJob, spoilt } from "../../design/small-job.js";

function solidsOf(texts: Readonly<Record<string, string>>) {
  const input = physicalInput(designOf(texts));
  return { input, ...caseSolids(input) };
}

function volumeOf({ outline, holes, depth }: CaseSolid): number {
  return holes.reduce((area, hole) => area - areaOf(hole), areaOf(outline)) * depth;
}

/** The box round a solid, m. */
function boundsOfSolid({ outline, place, depth }: CaseSolid) {
  const { left, right, bottom, top } = reachOf(outline);
  const corners = [left, right].flatMap((x) =>
    [bottom, top].flatMap((y) => [0, depth].map((z) => [x, y, z] as const)),
  );
  const out = vector3((i) => {
    const [j, k] = [(i + 1) % 3, (i + 2) % 3] as [0 | 1 | 2, 0 | 1 | 2];
    return place.x[j] * place.y[k] - place.x[k] * place.y[j];
  });
  const points = corners.map(([x, y, z]) =>
    vector3((i) => place.origin[i] + x * place.x[i] + y * place.y[i] + z * out[i]),
  );
  const along = (axis: 0 | 1 | 2, pick: (...values: number[]) => number) =>
    pick(...points.map((p) => p[axis]));
  return { low: vector3((i) => along(i, Math.min)), high: vector3((i) => along(i, Math.max)) };
}

const small = solidsOf(smallJob);
const millimetres = (value: number): number => Number((value * 1000).toFixed(6));
const boxOf = (key: string) => {
  const found = small.solids.find((solid) => solid.key === key);
  if (!found) throw new Error(`no solid ${key}`);
  const { low, high } = boundsOfSolid(found);
  return [...low, ...high].map(millimetres);
};

const demoFolder = join(import.meta.dirname, "../../../data/soil-lab");
const demoFiles = [
  "adhesives",
  "bar-stock",
  "facings",
  "fasteners",
  "hardware",
  "sheet-stock",
  "strip-stock",
  "kerfs",
  "suppliers",
];
const demo = Object.fromEntries(
  ["case.yaml", ...demoFiles.map((name) => `${name}.csv`)].map((file) => [
    file,
    readFileSync(join(demoFolder, file), "utf8"),
  ]),
);

describe.each([
  ["the small box", smallJob],
  ["the small box on casters", rolling(smallJob)],
  ["a box faced on both sides", spoilt("case.yaml", "oversize: 10 }", "oversize: 10, sides: both }")],
  ["the demo", demo],
])("the solids of %s", (_, texts) => {
  const { input, solids } = solidsOf(texts);

  test("weigh what the masses say, sheet by sheet and laminate by laminate", () => {
    const masses = massItems(input).filter(({ material }) => material !== undefined);
    expect(masses.length).toBeGreaterThan(6);
    for (const { name, mass, material } of masses) {
      const own = solids.filter((solid) => solid.key === name.replace("facing of", "laminate of"));
      expect(own, name).toHaveLength(1);
      const stock = [...input.stock.sheets, ...input.stock.facings, ...input.stock.strips].find(
        (row) => row.name === material,
      );
      const density = stock?.density ?? Number.NaN;
      expect(
        own.reduce((sum, solid) => sum + volumeOf(solid) * density, 0),
        name,
      ).toBeCloseTo(mass, 9);
    }
  });

  test("have one key each, axes of length 1 that are square, and a depth", () => {
    expect(new Set(solids.map(({ key }) => key)).size).toBe(solids.length);
    for (const { place, depth, key } of solids) {
      expect(scalarProduct(place.x, place.y), key).toBeCloseTo(0, 12);
      expect(scalarProduct(place.x, place.x), key).toBeCloseTo(1, 12);
      expect(depth, key).toBeGreaterThan(0);
    }
  });

  test("keep panels and laminate within the outside of their section", () => {
    for (const solid of solids.filter(({ kind }) => kind === "sheet" || kind === "laminate")) {
      const outside = input.parts.sections.find(({ name }) => name === solid.section)?.outside;
      const { low, high } = boundsOfSolid(solid);
      const [from, size] = [outside?.low, outside?.size];
      const limits = [from?.x, from?.y, from?.z].map(Number);
      const far = [size?.x, size?.y, size?.z].map((length, i) => (limits[i] ?? 0) + Number(length));
      for (const axis of [0, 1, 2] as const) {
        expect(low[axis], solid.key).toBeGreaterThan((limits[axis] ?? 0) - 1e-9);
        expect(high[axis], solid.key).toBeLessThan((far[axis] ?? 0) + 1e-9);
      }
    }
  });

  test("have every fastener with a head and a body, as many as the lists say", () => {
    for (const { id, count, holds } of input.parts.fastenings) {
      if (holds.startsWith("stay ")) continue;
      const own = solids.filter(({ group }) => group === id);
      for (const piece of ["head", "body"] as const)
        expect(own.filter((solid) => solid.piece === piece).length, id).toBe(count);
    }
  });
});

describe("the small box, worked out by hand", () => {
  test("ply 10 mm and laminate 1 mm, the inside 600 x 400 x 500", () => {
    expect(boxOf("box.front")).toEqual([0, 1, 11, 622, 11, 511]);
    expect(boxOf("outside laminate of box.front")).toEqual([0, 0, 11, 622, 1, 511]);
    expect(boxOf("box.shelf.board")).toEqual([11, 11, 211, 611, 311, 221]);
    expect(boxOf("battery")).toEqual([61, 61, 11, 261, 211, 131]);
  });

  test("a bar of 50 mm with a wall of 2 mm: its inner corner on the outside edge, 60 mm off each end", () => {
    expect(boxOf("box.front-left leg on front")).toEqual([-2, -2, 60, 48, 0, 462]);
    expect(boxOf("box.front-left leg on left")).toEqual([-2, 0, 60, 0, 48, 462]);
  });

  test("a rivet of 4 x 18 through 2 + 1 + 10 mm and its washer of 1 mm, 24 mm from the edge, 60 + 20 mm along it", () => {
    const rivet = "box.front-left on box.front 1";
    expect(boxOf(`${rivet} head`)).toEqual([18, -3.68, 74, 30, -2, 86]);
    expect(boxOf(`${rivet} body`)).toEqual([22, -2, 78, 26, 12, 82]);
    expect(boxOf(`${rivet} tail`)).toEqual([21, 12, 77, 27, 16, 83]);
    expect(boxOf(`${rivet} entering`)).toEqual([22, 12, 78, 26, 16, 82]);
  });

  test("a corner of 55 mm, 1 mm thick, over the three faces", () => {
    expect(boxOf("corner 1 on bottom")).toEqual([-1, -1, -1, 54, 54, 0]);
    expect(boxOf("corner 1 on front")).toEqual([-1, -1, 0, 54, 0, 54]);
    expect(boxOf("corner 1 on left")).toEqual([-1, 0, 0, 0, 54, 54]);
  });

  test("a door that is hinged at its left turns outwards", () => {
    const [door] = small.movements;
    expect(door?.id).toBe("box.left.door");
    const movement = door?.movement;
    if (movement?.kind !== "turn") throw new Error("expected a turn");
    // its left is its back, seen from outside; outside is at x = 0
    expect(movement.about.map(millimetres)).toEqual([0, 411 - 120 - 3, 511 - 500 + 120 + 3]);
    expect(movement.axis.map(Math.round).map((value) => value + 0)).toEqual([0, 0, -1]);
    expect(door?.parts.has("outside laminate of box.left.door")).toBe(true);
    expect(door?.parts.has("box.left")).toBe(false);
  });

  test("a caster swivels in a circle as wide as its wheel and offset", () => {
    const { solids } = solidsOf(rolling(smallJob));
    const under = solids.find(({ key }) => key === "wheel 1 under it");
    if (!under) throw new Error("no caster");
    const { low, high } = boundsOfSolid(under);
    // no wheel is named: 0.8 of the 120 mm that it stands
    expect(millimetres(high[0] - low[0])).toBeCloseTo(96, 6);
    expect([low[2], high[2]].map(millimetres)).toEqual([-120, -24]);
  });
});
