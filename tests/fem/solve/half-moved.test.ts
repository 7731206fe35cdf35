import { expect, test } from "vitest";
import {
  boxStructure,
  displacementsUnder,
  factoredBox,
  halvesUnder,
  movedUnder,
  workOn,
} from "../../../lib/fem/index.js";
import { allSeams, plyBox } from "../boxes.js";
import { ply } from "../sheets.js";

const problem = plyBox(ply, { seams: allSeams({ slip: 2e7, opening: 2e7, rotational: 500 }) });
const { factors } = factoredBox(boxStructure(problem, 0.3), [
  { where: ([, , z]) => z < 1e-9, dofs: [0, 1, 2] },
]);
/** Some everywhere, some at a few places alone. */
const loads = Array.from({ length: 7 }, (_, load) =>
  Float64Array.from(factors.held, (held, dof) =>
    held === 1 || (load > 3 && dof % 611 !== load) ? 0 : Math.sin(1 + load + 12.9 * dof),
  ),
);
const alone = loads.map((load) => displacementsUnder(factors, load));
const halves = halvesUnder(factors, loads);
const farthest = (moved: Float64Array): number =>
  moved.reduce((most, one) => Math.max(most, Math.abs(one)), 0);

test("loads half solved together move a structure as each does alone, and in any sum", () => {
  expect(halves).toHaveLength(loads.length);
  halves.forEach((half, i) => {
    const off = movedUnder(factors, [{ half, share: 1 }]).map((value, dof) => value - alone[i]![dof]!);
    expect(farthest(off)).toBeLessThan(1e-9 * farthest(alone[i]!));
  });
  const sum = movedUnder(
    factors,
    halves.map((half, i) => ({ half, share: i - 2 })),
  );
  const off = sum.map((value, dof) => value - alone.reduce((all, one, i) => all + (i - 2) * one[dof]!, 0));
  expect(farthest(off)).toBeLessThan(1e-9 * farthest(sum));
});

test("the work of a load on the movement under another is that of its forces", () => {
  loads.forEach((load, i) => {
    alone.forEach((moved, j) => {
      const work = load.reduce((all, force, dof) => all + force * moved[dof]!, 0);
      const size = Math.sqrt(workOn(halves[i]!, halves[i]!) * workOn(halves[j]!, halves[j]!));
      expect(Math.abs(workOn(halves[i]!, halves[j]!) - work)).toBeLessThan(1e-9 * size);
    });
  });
});

test("a load at a place is half solved in few fronts", () => {
  const [whole, few] = [halves[0]!.fronts.length, halves[5]!.fronts.length];
  expect(few).toBeLessThan(whole);
});
