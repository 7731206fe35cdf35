/** The largest moments of a panel with openings, as formulas: under an even pressure, and under a patch of load. */
import { type Formula, type FormulaSymbols, formula } from "../formula.js";
import { stiffnessFaults } from "../material/index.js";
import {
  Force,
  type Kind,
  Length,
  LineLoad,
  listOf,
  PlateMoment,
  Pressure,
  Ratio,
  recordOf,
} from "../quantity/index.js";
import { cite } from "../source.js";
import { type Outline, outlineFaults, sharpBoxesOf } from "./mesh/index.js";
import type { PanelLoad, PanelProblem } from "./panel/index.js";
import {
  type HeldPanel,
  heldEdgeFaults,
  heldPanelSymbols,
  keptSolution,
  type MeshedPanel,
  meshedPanelProblem,
  type SolvedPanel,
  slimnessFaults,
} from "./panel-formula.js";

/** A place of a panel, from its lower left corner. */
export interface PanelPlace {
  /** From the left edge. */
  readonly x: Length;
  /** From the lower edge. */
  readonly y: Length;
}

const placeKind: Kind<PanelPlace> = recordOf<PanelPlace>("place", { x: Length, y: Length });

/** A panel that single points hold too: a latch, a foot. */
export interface PointedPanel extends MeshedPanel {
  /** Places that cannot move up or down. */
  readonly points: readonly PanelPlace[];
}

/** A panel pressed on one rectangle. */
export interface PatchedPanel extends HeldPanel {
  /** Lower left corner of the rectangle. */
  readonly patch: PanelPlace;
  /** Of the rectangle, along x. */
  readonly patchLength: Length;
  /** Of the rectangle, along y. */
  readonly patchWidth: Length;
  /** Spread evenly over the rectangle. */
  readonly force: Force;
  /** Places that cannot move up or down. */
  readonly points: readonly PanelPlace[];
}

/** What the panel has to bear, each as a size. */
export type LargestMoments = {
  /** Bending along x. */
  readonly alongX: PlateMoment;
  /** Bending along y. */
  readonly alongY: PlateMoment;
  /** Twisting. */
  readonly twist: PlateMoment;
  /** Shear through the sheet at a held edge. */
  readonly edgeShear: LineLoad;
  /** Largest deflection. */
  readonly deflection: Length;
  /** Change of the larger bending moment from a mesh of a third of the elements. */
  readonly meshError: Ratio;
};

const results: FormulaSymbols<LargestMoments> = {
  alongX: { symbol: "M_x", kind: PlateMoment, meaning: "largest bending moment along x" },
  alongY: { symbol: "M_y", kind: PlateMoment, meaning: "largest bending moment along y" },
  twist: { symbol: "M_{xy}", kind: PlateMoment, meaning: "largest twisting moment" },
  edgeShear: { symbol: "Q", kind: LineLoad, meaning: "largest shear at a held edge" },
  deflection: { symbol: "w", kind: Length, meaning: "largest deflection" },
  meshError: {
    symbol: String.raw`\Delta`,
    kind: Ratio,
    meaning: "change from a mesh of a third of the elements",
  },
};

const points = {
  symbol: String.raw`\{x,y\}_j`,
  kind: listOf(placeKind),
  meaning: "places held down, from the lower left corner",
  absent: [],
};

const source = [
  cite("mixed-interpolated-plates", "nine-node element; strains where they are most exact"),
  cite("plates-shells", "eq. (44), moments of a bent plate"),
];

const cornerRule =
  "Rims of openings count in full. Within one thickness of an inside corner without radius, or of a held point, theory has no limit: there the places farther out count (common practice).";

/**
 * The largest moments of a panel under an even pressure.
 *
 * @example panelMoments(panelMoments.read({ length: "1 m", width: "1 m", thickness: "1 mm",
 *   stiffness: { alongX: "100 N·m", alongY: "100 N·m", coupling: "30.0 N·m", twist: "35.0 N·m" },
 *   throughShear: "10 MN/m", left: "hinged", right: "hinged", bottom: "hinged", top: "hinged", openings: [],
 *   pressure: "1 kPa" })) // alongX 47.46 N·m/m, alongY 47.46 N·m/m, twist 31.46 N·m/m, edgeShear 402.9 N/m, deflection 40.71 mm, meshError 0.08764
 */
export const panelMoments: Formula<PointedPanel, LargestMoments> = formula<PointedPanel, LargestMoments>({
  id: "panel.finite-elements.moments",
  takesTime: true,
  title: "Largest moments in a panel by finite elements, uniform load",
  equation: String.raw`(M_x,M_y,M_{xy})=D\,\kappa`,
  inputs: {
    ...heldPanelSymbols,
    pressure: { symbol: "q", kind: Pressure, meaning: "load per area", above: 0 },
    points,
  },
  result: results,
  source,
  validity: `Small deflections. ${cornerRule}`,
  refuse: (inputs) => faultsOf(inputs, inputs.points.length),
  compute: (inputs) => largestMoments(keptSolution(pressedProblem(inputs)), inputs.pressure),
});

/** The panel under 1 Pa. */
export function pressedProblem(inputs: PointedPanel): PanelProblem {
  const problem = meshedPanelProblem({ ...inputs, pressure: Pressure.si(1) });
  return { ...problem, heldPoints: heldAt(inputs.points) };
}

/**
 * The largest moments of a panel that one rectangle presses on: a foot, a knee, a hand, a thing thrown at it.
 *
 * @example panelPatchMoments(panelPatchMoments.read({ length: "1 m", width: "1 m", thickness: "1 mm",
 *   stiffness: { alongX: "100 N·m", alongY: "100 N·m", coupling: "30.0 N·m", twist: "35.0 N·m" },
 *   throughShear: "10 MN/m", left: "hinged", right: "hinged", bottom: "hinged", top: "hinged", openings: [],
 *   patch: { x: "0.4 m", y: "0.4 m" }, patchLength: "0.2 m", patchWidth: "0.2 m", force: "1 kN" })) // alongX 210 N·m/m, alongY 210 N·m/m, twist 59.08 N·m/m, edgeShear 569.9 N/m, deflection 108.8 mm, meshError 0.0009465
 */
export const panelPatchMoments: Formula<PatchedPanel, LargestMoments> = formula<PatchedPanel, LargestMoments>(
  {
    id: "panel.finite-elements.patch",
    takesTime: true,
    title: "Largest moments in a panel by finite elements, load on a rectangle",
    equation: String.raw`(M_x,M_y,M_{xy})=D\,\kappa,\quad q=\frac{F}{uv}`,
    inputs: {
      ...heldPanelSymbols,
      patch: { symbol: "x_F, y_F", kind: placeKind, meaning: "lower left corner of the rectangle" },
      patchLength: { symbol: "u", kind: Length, meaning: "rectangle along x", above: 0 },
      patchWidth: { symbol: "v", kind: Length, meaning: "rectangle along y", above: 0 },
      force: { symbol: "F", kind: Force, meaning: "force on it", above: 0 },
      points,
    },
    result: results,
    source: [...source, cite("plates-shells", "art. 37, load spread over a rectangle")],
    validity: `Small deflections; the rectangle no smaller than the sheet is thick. ${cornerRule}`,
    refuse: (inputs) => [
      ...faultsOf({ ...inputs, pressure: Pressure.si(1) }, inputs.points.length),
      ...patchFaults(inputs),
    ],
    compute: (inputs) => largestMoments(keptSolution(patchProblem(inputs)), inputs.force),
  },
);

function faultsOf(inputs: MeshedPanel, pointCount: number): string[] {
  return [
    ...stiffnessFaults(inputs.stiffness),
    ...outlineFaults(meshedPanelProblem(inputs).outline),
    ...slimnessFaults(inputs),
    ...(pointCount > 0 ? [] : heldEdgeFaults(inputs)),
  ];
}

function patchFaults({ length, width, patch: { x, y }, patchLength, patchWidth }: PatchedPanel): string[] {
  const within = x >= 0 && y >= 0 && x + patchLength <= length && y + patchWidth <= width;
  return within ? [] : ["the rectangle must lie on the panel"];
}

/** The panel under 1 N on the rectangle. */
export function patchProblem(inputs: PatchedPanel): PanelProblem {
  const problem = meshedPanelProblem({ ...inputs, pressure: Pressure.si(1) });
  return { ...problem, heldPoints: heldAt(inputs.points), loads: patchLoads(inputs, problem.outline) };
}

/** Straight lines of a mesh follow the rectangle and its middle third; a mesh that curved openings shape stays as it is. */
function patchLoads(
  { patch: { x, y }, patchLength, patchWidth }: PatchedPanel,
  outline: Outline,
): readonly PanelLoad[] {
  const over = { left: x, bottom: y, width: patchLength, height: patchWidth };
  if (!sharpBoxesOf(outline)) return [{ kind: "spread", over, force: 1 }];
  const [width, height] = [patchLength / 3, patchWidth / 3];
  const middle = { left: x + width, bottom: y + height, width, height };
  return [
    { kind: "patch", over, force: 1 },
    { kind: "patch", over: middle, force: 0 },
  ];
}

function heldAt(places: readonly PanelPlace[]): PanelProblem["heldPoints"] {
  return places.map((at) => ({ at }));
}

/** What a panel solved under a load of 1 has to bear under so many Pa or N. */
export function largestMoments({ value, forces, forcesError }: SolvedPanel, load: number): LargestMoments {
  return {
    alongX: PlateMoment.si(load * forces.alongX),
    alongY: PlateMoment.si(load * forces.alongY),
    twist: PlateMoment.si(load * forces.twist),
    edgeShear: LineLoad.si(load * forces.edgeShear),
    deflection: Length.si(load * Math.abs(value)),
    meshError: Ratio.si(forcesError),
  };
}
