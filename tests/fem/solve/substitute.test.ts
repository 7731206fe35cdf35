import { expect, test } from "vitest";
import {
  boxStructure,
  displacementsUnder,
  displacementsUnderMany,
  factoredBox,
} from "../../../lib/fem/index.js";
import { allSeams, plyBox } from "../boxes.js";
import { ply } from "../sheets.js";

test("many loads at once are moved as one by one, however many are left over", () => {
  const problem = plyBox(ply, { seams: allSeams({ slip: 2e7, opening: 2e7, rotational: 500 }) });
  const { factors } = factoredBox(boxStructure(problem, 0.3), [
    { where: ([, , z]) => z < 1e-9, dofs: [0, 1, 2] },
  ]);
  const loads = Array.from({ length: 7 }, (_, load) =>
    Float64Array.from(factors.held, (_held, dof) => Math.sin(1 + load + 12.9 * dof)),
  );
  const together = displacementsUnderMany(factors, loads);
  expect(together).toHaveLength(loads.length);
  loads.forEach((load, i) => {
    const alone = displacementsUnder(factors, load);
    const scale = Math.max(...alone.map(Math.abs));
    const off = alone.map((value, k) => Math.abs(value - together[i]![k]!));
    expect(Math.max(...off)).toBeLessThan(1e-9 * scale);
  });
});
