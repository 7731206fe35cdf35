import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { contestsOf, generalAnswer } from "../../lib/command/bench/solvers/contests.js";
import { deckText, gridLines, printedDisplacements } from "../../lib/command/bench/solvers/deck.js";
import { effortFor, growthPower } from "../../lib/command/bench/solvers/equal-accuracy.js";
import { runProcess } from "../../lib/command/bench/solvers/general-solver.js";
import { oneFile } from "../../lib/command/bench/solvers/one-file.js";

import { noGeneralSolver } from "../general-solver.js";

const file = join(import.meta.dirname, "../reference/fe/public-cases.json");
const { cases } = JSON.parse(readFileSync(file, "utf8")) as { readonly cases: readonly unknown[] };
const contests = contestsOf(cases);
const contest = (name: string): (typeof contests)[number] => contests.find((one) => one.name === name)!;

describe("decks for the general solver", () => {
  test("are written for every case of straight rows", () => {
    expect(contests.map(({ name }) => name)).toEqual([
      "P1",
      "P3",
      "P4",
      "P6",
      "P8",
      ...["B1", "B2", "B3"].flatMap((box) => [`${box} racking`, `${box} twist`]),
    ]);
  });

  test("lines run where they must and are no farther apart than asked, within a half", () => {
    const places = fc.array(fc.double({ min: 1, max: 999, noNaN: true }), { maxLength: 6 });
    fc.assert(
      fc.property(places, fc.double({ min: 5, max: 100, noNaN: true }), (musts, size) => {
        const lines = gridLines(1000, musts, size);
        expect(lines).toEqual([...lines].sort((a, b) => a - b));
        expect([lines[0], lines.at(-1)]).toEqual([0, 1000]);
        for (const must of musts) expect(lines).toContain(must);
        for (let i = 1; i < lines.length; i++)
          expect(lines[i]! - lines[i - 1]!).toBeLessThan(1.5 * size + 1e-9);
      }),
    );
  });

  test("a closed box has as many nodes as its corners, sides and faces ask for", () => {
    // Euler: corners - sides + faces = 2 on a closed surface; a side and a corner are a node each.
    const { grid } = contest("B1 racking").deck(60);
    const faces = grid.elements.length;
    expect(grid.nodes.length).toBe(2 + 2 * faces - faces + 2 * faces);
  });

  test.each([
    ["P4", [0, 0, 50]],
    ["B2 racking", [500, 0, 0]],
    ["B3 twist", [0, 0, 0]],
  ] as const)("the forces of %s add up, and those of a twist turn nothing as a whole", (name, whole) => {
    const { forces, grid } = contest(name).deck(40);
    const sum = (of: (node: number, way: number, force: number) => number): number =>
      forces.reduce((total, force) => total + of(...force), 0);
    whole.forEach((force, axis) => {
      expect(sum((_, way, each) => (way === axis + 1 ? each : 0))).toBeCloseTo(force, 9);
    });
    if (name === "B3 twist") {
      const about = (axis: 0 | 1): number => sum((node, _, each) => each * grid.nodes[node]![axis]);
      expect([about(0), about(1)].map((moment) => Math.abs(moment) < 1e-6)).toEqual([true, true]);
    }
  });

  test("number from 1, with eight nodes an element that exist", () => {
    const deck = contest("P1").deck(100);
    const lines = deckText(deck).split("\n");
    const block = (start: string): string[] => {
      const from = lines.findIndex((line) => line.startsWith(start)) + 1;
      return lines.slice(
        from,
        lines.findIndex((line, i) => i >= from && line.startsWith("*")),
      );
    };
    const nodes = block("*NODE").map((line) => line.split(", ").map(Number));
    const elements = block("*ELEMENT").map((line) => line.split(", ").map(Number));
    expect(nodes.map(([number]) => number)).toEqual(deck.grid.nodes.map((_, i) => i + 1));
    expect(elements).toHaveLength(deck.grid.elements.length);
    for (const [, ...corners] of elements) {
      expect(corners).toHaveLength(8);
      expect(corners.every((node) => node >= 1 && node <= nodes.length)).toBe(true);
    }
  });

  test("the printed answer is read, and nothing printed is an error", () => {
    const printed =
      "\n displacements (vx,vy,vz) for set ALL and time  0.1E+01\n\n 1 1.0E-01 0.0 -2.5E+00\n 2 0 0 1\n";
    expect(printedDisplacements(printed)).toEqual([
      [0.1, 0, -2.5],
      [0, 0, 1],
    ]);
    expect(() => printedDisplacements("*ERROR")).toThrow("the general solver printed no displacements");
  });
});

describe.skipIf(noGeneralSolver)("through the general solver", () => {
  test.each(["P6", "P3", "B2 racking"])(
    "%s comes out as published, within its mesh's error",
    { timeout: 600_000 },
    async (name) => {
      const found = contest(name);
      const { value, cost } = await generalAnswer(found, 50);
      expect(Math.abs(Math.abs(value) / found.expected - 1)).toBeLessThan(0.006);
      expect(cost.memory).toBeGreaterThan(0);
    },
  );
});

describe("equal accuracy", () => {
  const runs = [1, 0.5, 0.25].map((size) => ({ error: size ** 2, time: size ** -3, memory: 10 / size }));

  test("lies on the power law of the meshes", () => {
    const effort = effortFor(runs, 0.1)!;
    expect(effort.time).toBeCloseTo(0.1 ** -1.5, 9);
    expect(effort.memory).toBeCloseTo(10 * 0.1 ** -0.5, 9);
    expect(effort.sure).toBe("");
  });

  test("is carried on beyond the finest mesh, and says so", () => {
    expect(effortFor(runs, 0.01)).toMatchObject({ sure: "about" });
    expect(effortFor(runs, 0.01)!.time).toBeCloseTo(0.01 ** -1.5, 6);
  });

  test("is at most what the coarsest mesh takes", () => {
    expect(effortFor(runs, 2)).toEqual({ time: 1, memory: 10, sure: "at most" });
  });

  test("is unknown when finer meshes are no better", () => {
    expect(
      effortFor(
        [
          { error: 0.1, time: 1, memory: 1 },
          { error: 0.2, time: 2, memory: 1 },
        ],
        0.01,
      ),
    ).toBeUndefined();
  });

  test("the power of growth is that of a power law", () => {
    expect(growthPower([1, 3, 10].map((x) => [x, 7 * x ** 1.3] as const))).toBeCloseTo(1.3, 12);
  });
});

test("a script and what it imports run as one file, each module once", async () => {
  const folder = mkdtempSync(join(tmpdir(), "casewright-test-"));
  try {
    writeFileSync(join(folder, "inner.js"), 'console.log("inner runs"); export const ten = 10;');
    writeFileSync(join(folder, "middle.js"), 'export * from "./inner.js"; export const two = 2;');
    writeFileSync(
      join(folder, "entry.js"),
      'import { basename } from "node:path"; import { ten } from "./inner.js"; ' +
        'import("./middle.js").then(({ ten: again, two }) => console.log(basename("a/b"), ten, again, two));',
    );
    writeFileSync(join(folder, "one.cjs"), await oneFile(join(folder, "entry.js")));
    for (const name of ["inner", "middle", "entry"]) rmSync(join(folder, `${name}.js`));
    const { output } = await runProcess(process.execPath, ["one.cjs"], folder);
    expect(output.split("\n")).toEqual(["inner runs", "b 10 10 2", ""]);
  } finally {
    rmSync(folder, { recursive: true });
  }
});

test("a program that fails is an error with what it said", async () => {
  const failing = runProcess(process.execPath, ["-e", "console.log('no deck'); process.exit(3)"], ".");
  await expect(failing).rejects.toThrow(/ended with 3: no deck/);
});
