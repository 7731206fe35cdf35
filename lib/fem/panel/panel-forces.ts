/** What a bent panel has to bear inside: its largest moments, and the shear at its held edges. */

import { at as entry } from "../../algebra/lists.js";
import { apart, type Point2 } from "../../shape/index.js";
import { dofsPerNode, type Sheet } from "../element/index.js";
import { sharpCorners } from "../mesh/index.js";
import type { HeldLine, PanelProblem } from "./panel-problem.js";
import { reactions } from "./panel-results.js";
import { across, sidesOnLine } from "./panel-supports.js";
import type { DeflectedPanel } from "./solve-panel.js";
import { momentsOf, type Strains, strainFields, strainSamples, strainsAt } from "./strain-field.js";

/** The largest of each, as sizes. */
export interface PanelForces {
  /** Bending moment along x, N. */
  readonly alongX: number;
  /** Bending moment along y, N. */
  readonly alongY: number;
  /** Twisting moment, N. */
  readonly twist: number;
  /** Shear through the sheet at a held edge, N/m; nothing where no edge is held. */
  readonly edgeShear: number;
}

/**
 * The largest moments of a bent panel, rims of openings included. Within one thickness of an inside corner without
 * radius, or of a held point, a plate's moments have no limit and mean nothing: there the places farther out count.
 */
export function panelForcesOf(panel: DeflectedPanel): PanelForces {
  const { mesh, problem } = panel.structure;
  const limitless = limitlessPlaces(problem);
  const reach = thicknessOf(problem);
  const counts = (at: Point2): boolean => !limitless.some((place) => apart(place, at) < reach);
  const most = { alongX: 0, alongY: 0, twist: twistOf(panel, counts) };
  for (const field of strainFields(panel)) {
    for (let node = 0; node < mesh.x.length; node++) {
      if (!field.covers[node] || !counts({ x: entry(mesh.x, node), y: entry(mesh.y, node) })) continue;
      const [x, y] = momentsInSheet(problem.sheet, field.sheet, strainsAt(field, node));
      most.alongX = Math.max(most.alongX, Math.abs(x));
      most.alongY = Math.max(most.alongY, Math.abs(y));
    }
  }
  return { ...most, edgeShear: edgeShearOf(panel, limitless) };
}

/** Twisting fades within a thickness of an edge that is free to turn, so nodes there say too little: seen inside elements. */
function twistOf(panel: DeflectedPanel, counts: (at: Point2) => boolean): number {
  let most = 0;
  panel.structure.sheets.forEach((sheet, element) => {
    for (const { dx, dy, values } of strainSamples(panel, element, { x: 0, y: 0 })) {
      const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = values;
      if (!counts({ x: dx, y: dy })) continue;
      const [, , twist] = momentsInSheet(panel.structure.problem.sheet, sheet, [a, b, c, d, e, f]);
      most = Math.max(most, Math.abs(twist));
    }
  });
  return most;
}

/**
 * Moments in the panel's own sheet. Under a stiffener it is stretched too, and counts as bent so much more that its
 * worse face is strained as much.
 */
function momentsInSheet(own: Sheet, here: Sheet, strains: Strains): readonly [number, number, number] {
  if (here === own) return momentsOf(own, strains);
  const half = (own.faces[0] - own.faces[1]) / 2;
  const [ex, ey, exy, kx, ky, kxy] = strains;
  const bent = (stretch: number, bend: number): number => bend + (Math.sign(bend) * Math.abs(stretch)) / half;
  return momentsOf(own, [0, 0, 0, bent(ex, kx), bent(ey, ky), bent(exy, kxy)]);
}

function limitlessPlaces({ outline, regions, heldPoints }: PanelProblem): readonly Point2[] {
  return [...sharpCorners(outline, regions), ...heldPoints.map(({ at }) => at)];
}

function thicknessOf({ sheet: { faces } }: PanelProblem): number {
  return faces[0] - faces[1];
}

/** What the held edges push back with, on each metre, at the middle of each side of the mesh. */
function edgeShearOf(panel: DeflectedPanel, limitless: readonly Point2[]): number {
  const { mesh, problem } = panel.structure;
  if (problem.heldLines.length === 0) return 0;
  const back = reactions(panel);
  const reach = thicknessOf(problem);
  const on = ({ from, to }: HeldLine): number[] =>
    sidesOnLine(mesh, from, to).map(([a, middle, b]) => {
      const place = (node: number): Point2 => ({ x: entry(mesh.x, node), y: entry(mesh.y, node) });
      const skip = [from, to, ...limitless].some((corner) => apart(corner, place(middle)) < reach);
      const share = (2 / 3) * apart(place(a), place(b));
      return skip ? 0 : Math.abs(entry(back, dofsPerNode * middle + across.w)) / share;
    });
  return Math.max(0, ...problem.heldLines.flatMap(on));
}
