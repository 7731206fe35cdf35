/** How hard a head, tail or washer may be pulled before it comes through the wood. */
import { type Formula, formula } from "../formula.js";
import { Density, Force, Length, Pressure, Ratio } from "../quantity/index.js";
import { cite } from "../source.js";

/** Wood weighed at some moisture. */
export interface SpecificGravityInputs {
  /** As it stands. */
  readonly density: Density;
  /** Moisture content as a share of the dry mass. */
  readonly moisture: Ratio;
}

/**
 * Specific gravity on oven-dry mass, as withdrawal formulas want it: G = rho / (1000 (1 + M)). The
 * volume is taken as it stands, so G comes out a few percent below the all-dry figure: on the safe side.
 *
 * @example specificGravity(specificGravity.read({ density: "680 kg/m3", moisture: 0.12 })) // 0.6071
 */
export const specificGravity: Formula<SpecificGravityInputs, Ratio> = formula({
  id: "wood.specific.gravity",
  title: "Specific gravity of wood from its density",
  equation: String.raw`G = \frac{\rho}{1000\,(1 + M)}`,
  inputs: {
    density: { symbol: String.raw`\rho`, kind: Density, meaning: "density as it stands", above: 0 },
    moisture: { symbol: "M", kind: Ratio, meaning: "moisture content", min: 0, max: 0.3 },
  },
  result: { symbol: "G", kind: Ratio, meaning: "specific gravity, oven-dry mass" },
  source: [cite("wood-handbook", "chapter 4, density and specific gravity")],
  validity: "Below fibre saturation; glue in plywood counts as wood.",
  compute: ({ density, moisture }) => density / 1000 / (1 + moisture),
});

/** A round head or washer on the face of a board. */
export interface PullThroughInputs {
  readonly specificGravity: Ratio;
  /** Of the head, tail or washer that bears on the wood. */
  readonly headDiameter: Length;
  readonly thickness: Length;
}

const unanchored =
  "a code value for nail and screw heads, used here for rivets: pull a few of your own to be sure";

/**
 * Head pull-through, allowable: W_H = 690 pi D_H G^2 t psi for boards up to 2.5 D_H thick, beyond that
 * 1725 pi D_H^2 G^2 psi.
 *
 * @example headPullThrough(headPullThrough.read({ specificGravity: 0.5, headDiameter: ".375 in", thickness: "2 in" })) // 847.5 N
 */
export const headPullThrough: Formula<PullThroughInputs, Force> = formula({
  id: "wood.head.pullthrough",
  title: "Head pull-through in wood, allowable",
  equation: String.raw`W_H = 690\,\mathrm{psi}\,\pi\,D_H\,G^2\,\min(t,\,2.5\,D_H)`,
  inputs: {
    specificGravity: { symbol: "G", kind: Ratio, meaning: "specific gravity, oven-dry", min: 0.3, max: 0.8 },
    headDiameter: { symbol: "D_H", kind: Length, meaning: "diameter of head or washer", above: 0 },
    thickness: { symbol: "t", kind: Length, meaning: "thickness of the board", above: 0 },
  },
  result: { symbol: "W_H", kind: Force, meaning: "allowable pull, normal duration" },
  source: [cite("nds", "12.2.5, eq. 12.2-6")],
  validity: "Round heads of nails and screws; a design value that carries its own margin.",
  warn: () => [unanchored],
  compute: ({ specificGravity: gravity, headDiameter, thickness }) =>
    Pressure.of(690, "psi") * Math.PI * headDiameter * gravity ** 2 * Math.min(thickness, 2.5 * headDiameter),
});
