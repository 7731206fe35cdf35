/** A panel with openings by finite elements, as a formula: shear through the thickness included. */
import { type Formula, type FormulaSymbols, formula } from "../formula.js";
import { keptForAll } from "../kept/index.js";
import { OrthotropicStiffness, stiffnessFaults } from "../material/index.js";
import { choice, Length, listOf, MembraneStiffness, Pressure, Ratio } from "../quantity/index.js";
import { outlineKind, type Shape } from "../shape/index.js";
import { cite } from "../source.js";
import type { Sheet } from "./element/index.js";
import { outlineFaults } from "./mesh/index.js";
import {
  type HeldLine,
  meshChange,
  type PanelForces,
  type PanelProblem,
  panelForcesOf,
  type TrustedDeflection,
  trustedDeflection,
} from "./panel/index.js";

/** How an edge is held. */
export type HeldEdge = "free" | "hinged" | "clamped";

/** How the four edges are held. */
export interface HeldEdges {
  /** Edge at x = 0. */
  readonly left: HeldEdge;
  /** Edge at x = length. */
  readonly right: HeldEdge;
  /** Edge at y = 0. */
  readonly bottom: HeldEdge;
  /** Edge at y = width. */
  readonly top: HeldEdge;
}

/** A panel with its openings and what holds it. */
export interface HeldPanel extends HeldEdges {
  /** Side along x. */
  readonly length: Length;
  /** Side along y. */
  readonly width: Length;
  /** Thickness of the panel, for the row of elements along its rims. */
  readonly thickness: Length;
  /** With x along `length`. */
  readonly stiffness: OrthotropicStiffness;
  /** Shear modulus through the thickness times the thickness, any correction included. */
  readonly throughShear: MembraneStiffness;
  /** None may touch another; one that reaches the rim is a notch. */
  readonly openings: readonly Shape[];
}

/** A panel under a pressure on what is left of it. */
export interface MeshedPanel extends HeldPanel {
  /** On what is left of the panel. */
  readonly pressure: Pressure;
}

/** Where the panel sags most, and the estimated mesh error. */
export type MeshedPanelAnswer = {
  readonly largestDeflection: Length;
  /** Where, from the left edge. */
  readonly atX: Length;
  /** Where, from the lower edge. */
  readonly atY: Length;
  /** Change from a mesh of a third of the elements. */
  readonly meshError: Ratio;
};

const edge = choice("edge support", ["free", "hinged", "clamped"]);

/** Elements of the formula's mesh: a third of the usual, still within 1 %, so that many panels take little time. */
export const formulaElementTarget = 45;

/** Sides and thickness below which nobody cuts a panel, and above which elements are too slim to trust, m. */
const leastSide = 1e-3;
const leastThickness = 1e-6;
const slimmest = 1000;

/** The symbols of a panel with its openings and what holds it. */
export const heldPanelSymbols: FormulaSymbols<HeldPanel> = {
  length: { symbol: "a", kind: Length, meaning: "side along x", min: leastSide },
  width: { symbol: "b", kind: Length, meaning: "side along y", min: leastSide },
  thickness: { symbol: "t", kind: Length, meaning: "panel thickness", min: leastThickness },
  stiffness: { symbol: "D", kind: OrthotropicStiffness, meaning: "bending stiffness of the panel" },
  throughShear: {
    symbol: "S",
    kind: MembraneStiffness,
    meaning: "stiffness against shear through the thickness",
    above: 0,
  },
  left: { symbol: "x=0", kind: edge, meaning: "left edge" },
  right: { symbol: "x=a", kind: edge, meaning: "right edge" },
  bottom: { symbol: "y=0", kind: edge, meaning: "lower edge" },
  top: { symbol: "y=b", kind: edge, meaning: "upper edge" },
  openings: {
    symbol: String.raw`\{x,y,w,h,r\}_k`,
    kind: listOf(outlineKind),
    meaning: "openings from the lower left corner",
  },
};

/**
 * A panel with openings under a pressure, by finite elements.
 *
 * @example meshedPanelUniform(meshedPanelUniform.read({ length: "1 m", width: "1 m", thickness: "1 mm",
 *   stiffness: { alongX: "100 N·m", alongY: "100 N·m", coupling: "30.0 N·m", twist: "35.0 N·m" },
 *   throughShear: "10 MN/m", left: "hinged", right: "hinged", bottom: "hinged", top: "hinged", openings: [],
 *   pressure: "10 Pa" })) // largestDeflection 0.4071 mm, atX 500 mm, atY 500 mm, meshError 9.33e-5
 */
export const meshedPanelUniform: Formula<MeshedPanel, MeshedPanelAnswer> = formula<
  MeshedPanel,
  MeshedPanelAnswer
>({
  id: "panel.finite-elements.uniform",
  takesTime: true,
  title: "Panel with openings by finite elements, uniform load",
  equation: String.raw`\int \kappa^T D\,\delta\kappa + \gamma^T S\,\delta\gamma\;dA = \int q\,\delta w\;dA`,
  inputs: {
    ...heldPanelSymbols,
    pressure: { symbol: "q", kind: Pressure, meaning: "load per area", above: 0 },
  },
  result: {
    largestDeflection: { symbol: "w", kind: Length, meaning: "largest deflection" },
    atX: { symbol: "x_w", kind: Length, meaning: "where, along x" },
    atY: { symbol: "y_w", kind: Length, meaning: "where, along y" },
    meshError: {
      symbol: String.raw`\Delta`,
      kind: Ratio,
      meaning: "change from a mesh of a third of the elements",
    },
  },
  source: [
    cite("mixed-interpolated-plates", "nine-node element"),
    cite("finite-element-cases", "panels P1 to P8, sheet that shears"),
  ],
  validity:
    "Small deflections (below the thickness; beyond, the panel is stiffer than this says). Hinged edges are held down and free to turn every way. Edge extrusions and battens are left out.",
  refuse: (inputs) => [
    ...stiffnessFaults(inputs.stiffness),
    ...slimnessFaults(inputs),
    ...outlineFaults(meshedPanelProblem(inputs).outline),
    ...heldEdgeFaults(inputs),
  ],
  compute: (inputs) => {
    const { value, at, meshError } = keptSolution(
      meshedPanelProblem({ ...inputs, pressure: Pressure.si(1) }),
    );
    return { largestDeflection: inputs.pressure * value, atX: at.x, atY: at.y, meshError };
  },
});

/** Panels kept: those of a large case, and of some edits before. */
const mostPanels = 240;

/** What a panel answers under one load, on two meshes. */
export interface SolvedPanel extends Omit<TrustedDeflection, "panel" | "coarse"> {
  /** The largest moments and shear. */
  readonly forces: PanelForces;
  /** Change of the larger bending moment from the coarser mesh, as a share. */
  readonly forcesError: number;
}

/**
 * A panel solved once, for all that is asked of it. Ask with a load of 1 (Pa or N): deflection, moments and shear grow
 * with the load.
 */
export const keptSolution: (problem: PanelProblem) => SolvedPanel = keptForAll(
  "panel bent",
  mostPanels,
  (problem) => {
    const { value, at, meshError, panel, coarse } = trustedDeflection(problem, formulaElementTarget);
    const forces = panelForcesOf(panel);
    const [fine, rough] = [forces, panelForcesOf(coarse)].map(({ alongX, alongY }) =>
      Math.max(alongX, alongY),
    );
    return { value, at, meshError, forces, forcesError: meshChange(fine ?? 0, rough ?? 0) };
  },
);

/** Why a panel's edges do not hold it. */
export function heldEdgeFaults({ left, right, bottom, top }: HeldEdges): string[] {
  const edges = [left, right, bottom, top];
  const held = edges.includes("clamped") || edges.filter((one) => one === "hinged").length >= 2;
  return held ? [] : ["the panel needs a clamped edge or two hinged edges to stay in place"];
}

/** What is wrong with a panel so slim that its elements would be. */
export function slimnessFaults({ length, width }: Pick<HeldPanel, "length" | "width">): string[] {
  const times = Math.max(length, width) / Math.min(length, width);
  return times <= slimmest
    ? []
    : [`length and width may differ ${slimmest} times at most, not ${Math.round(times)}`];
}

/** The panel as the solver wants it. */
export function meshedPanelProblem(inputs: MeshedPanel): PanelProblem {
  const { length, width, openings, pressure } = inputs;
  return {
    name: "the panel",
    outline: { length, width, cutouts: openings.map((shape, i) => ({ name: `opening ${i + 1}`, shape })) },
    sheet: bentSheet(inputs),
    regions: [],
    heldLines: heldLines(inputs),
    heldPoints: [],
    loads: [{ kind: "pressure", pressure }],
    masses: [],
    places: [],
  };
}

/** A sheet known by its bending stiffness only; in its plane it is as stiff as if it were one material. */
export function bentSheet({
  stiffness,
  throughShear,
  thickness,
}: Pick<MeshedPanel, "stiffness" | "throughShear" | "thickness">): Sheet {
  const { alongX, alongY, coupling, twist } = stiffness;
  const scaled = (by: number): Sheet["bending"] => [
    [by * alongX, by * coupling, 0],
    [by * coupling, by * alongY, 0],
    [0, 0, by * twist],
  ];
  return {
    membrane: scaled(12 / thickness ** 2),
    coupling: scaled(0),
    bending: scaled(1),
    shear: [throughShear, 0, throughShear],
    mass: [0, 0, 0],
    faces: [thickness / 2, -thickness / 2],
  };
}

function heldLines({ length, width, left, right, bottom, top }: MeshedPanel): readonly HeldLine[] {
  const lines = [
    { from: { x: 0, y: 0 }, to: { x: 0, y: width }, edge: left },
    { from: { x: length, y: 0 }, to: { x: length, y: width }, edge: right },
    { from: { x: 0, y: 0 }, to: { x: length, y: 0 }, edge: bottom },
    { from: { x: 0, y: width }, to: { x: length, y: width }, edge: top },
  ];
  return lines.flatMap(({ from, to, edge: kind }) => (kind === "free" ? [] : [{ from, to, hold: { kind } }]));
}
