/**
 * The public finite-element cases, and others of our own run through the same general-purpose solver: rounded windows,
 * an L, ports near an edge, strips, battens, grain at an angle. Every value inside its band, deflections far inside.
 */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { finiteElementOutcomes } from "../../lib/command/reference/fe/fe-cases.js";
import type { ReferenceOutcome } from "../../lib/command/reference/outcome.js";

interface NamedCase {
  readonly id: string;
  readonly kind: string;
}

const cases = ["public-cases.json", "own-cases.json"].flatMap((name) => {
  const text = readFileSync(join(import.meta.dirname, "../reference/fe", name), "utf8");
  return (JSON.parse(text) as { readonly cases: readonly NamedCase[] }).cases;
});
const outcomes = new Map<string, readonly ReferenceOutcome[]>();

describe.each(cases)("$id", (found) => {
  test("every value is inside its band", { timeout: 600_000 }, () => {
    const rows = finiteElementOutcomes({ cases: [found] });
    outcomes.set(found.id, rows);
    expect(rows.length).toBeGreaterThan(10);
    expect(rows.filter(({ holds }) => !holds)).toEqual([]);
    expect(rows.filter(({ meshError }) => meshError === undefined)).toEqual([]);
  });
});

test("the median error of the deflections is below 0.5 %", () => {
  const errors = [...outcomes.values()]
    .flat()
    .filter(({ result }) => /^w(max|@|ork)/.test(result))
    .map(({ error }) => Math.abs(Number.parseFloat(error)))
    .sort((a, b) => a - b);
  expect(errors.length).toBeGreaterThan(80);
  expect(errors[errors.length >> 1]).toBeLessThan(0.5);
});

describe("variants of the files", () => {
  const box = cases.find(({ id }) => id === "B2") as unknown as BoxLike;
  const stiffness = (found: BoxLike): number =>
    500 /
    Number(
      finiteElementOutcomes({ cases: [found] }).find(
        ({ item, result }) => item.endsWith("racking") && result === "work_displacement",
      )?.ours,
    );

  test("angles along the edges stiffen a box, a round hole in a side softens it", {
    timeout: 600_000,
  }, () => {
    const bare = stiffness(box);
    const angled = stiffness({ ...box, edge_angle: { width: 25, thickness: 1.5, E: 70000, nu: 0.33 } });
    const holed = stiffness({
      ...box,
      geometry: { ...box.geometry, cutouts: [{ face: "x1", type: "circle", u: 250, v: 200, r: 120 }] },
    });
    expect(angled).toBeGreaterThan(1.05 * bare);
    expect(holed).toBeLessThan(0.97 * bare);
  });

  test("a case of another kind is refused", () => {
    expect(() => finiteElementOutcomes({ cases: [{ kind: "shell" }] })).toThrow(
      'expected cases of kind panel or box, got "shell"',
    );
  });
});

interface BoxLike {
  readonly kind: string;
  readonly geometry: Readonly<Record<string, unknown>>;
  readonly edge_angle: unknown;
}
