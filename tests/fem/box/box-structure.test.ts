/** What a change of a box's sheets does to its movements, against boxes that have the changed sheets. */
import { expect, test } from "vitest";
import {
  boxStructure,
  factoredBox,
  moved,
  overPatch,
  type Sheet,
  sheetSlope,
  wayOfForce,
  workOfChange,
} from "../../../lib/fem/index.js";
import { plyBox } from "../boxes.js";
import { ply } from "../sheets.js";

/** Of a sheet that bends along its grain more stiffly by a share. */
function along(share: number): Sheet {
  const { bending, membrane } = ply;
  const first = (matrix: Sheet["bending"]): Sheet["bending"] => [
    [share * matrix[0][0], matrix[0][1], matrix[0][2]],
    matrix[1],
    matrix[2],
  ];
  return { ...ply, bending: first(bending), membrane: first(membrane) };
}

function pressed(sheet: Sheet) {
  const structure = boxStructure(plyBox(sheet), 0.3);
  const held = factoredBox(structure, [{ where: ([, , z]) => z < 1e-9, dofs: [0, 1, 2] }]);
  const on = overPatch(structure, "top", { left: 0, bottom: 0, width: 1, height: 1 });
  const push = { on, force: [30, 0, -100] } as const;
  const answer = moved(held, [push]);
  return {
    structure,
    displacement: answer.displacement,
    way: wayOfForce(answer, push) * Math.hypot(30, 100),
  };
}

test("a stiffer grain moves a box less by the work done through the change of its sheets", () => {
  const step = 1e-3;
  const { structure, displacement, way } = pressed(along(1));
  const slope = sheetSlope(along(1 - step), along(1 + step), 2 * step);
  const faces = Object.fromEntries(structure.faces.map(({ name }) => [name, slope]));
  const byWork = -workOfChange(structure, faces, displacement, displacement);
  const byDifference = (pressed(along(1 + step)).way - pressed(along(1 - step)).way) / (2 * step);
  expect(byWork / byDifference).toBeCloseTo(1, 4);
  expect(byWork).toBeLessThan(0);
  expect(way).toBeGreaterThan(0);
});
