/** How a deflection answers to the make-up of a panel, from one more load case: no second factoring, no second mesh. */
import { bendingStiffness, elementStiffness, isCoupled, type Sheet } from "../element/index.js";
import type { Spot } from "../mesh/index.js";
import { displacementsUnder, timesPieces } from "../solve/index.js";
import { panelForces } from "./panel-load.js";
import { piecesOf } from "./panel-structure.js";
import { across } from "./panel-supports.js";
import type { DeflectedPanel } from "./solve-panel.js";

/**
 * Slopes of a deflection: how much it changes when the panel's own make-up changes, dw = -l^T dK u, where u is how the
 * panel bends and l how a force of 1 at the place bends it (the adjoint method, any text on design sensitivity). Exact
 * for small changes; strips of another make-up stay as they are.
 *
 * @param panel bent
 * @param at where it is looked at
 * @param changes of the make-up, as differences of stiffness
 * @returns one slope a change, m
 */
export function deflectionSlopes(
  panel: DeflectedPanel,
  at: Spot,
  changes: readonly Sheet[],
): readonly number[] {
  const { structure, factors, displacement } = panel;
  const { problem, mesh, sheets } = structure;
  const coupled = sheets.some(isCoupled) || changes.some(isCoupled);
  const kinds = coupled ? [0, 1, 2, 3, 4] : [across.w, across.turnX, across.turnY];
  const own = sheets.map((sheet) => sheet === problem.sheet);
  const answer = displacementsUnder(factors, panelForces(structure, [{ kind: "point", at, force: 1 }]));
  return changes.map((change) => {
    const pieces = piecesOf(
      mesh,
      sheets.map(() => change),
      kinds,
      coupled ? elementStiffness : bendingStiffness,
    );
    const pull = timesPieces(
      pieces.filter((_, element) => own[element]),
      displacement,
    );
    return -pull.reduce((sum, force, freedom) => sum + force * answer[freedom]!, 0);
  });
}
