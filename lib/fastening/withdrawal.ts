/** Nails and screws pulled out of wood, or their heads through it. */
import { type Declaration, type Formula, type FormulaSymbols, formula } from "../formula.js";
import { choice, Density, Force, type Kind, Length, Pressure, Ratio } from "../quantity/index.js";
import { cite } from "../source.js";

/** A nail or lag screw in side grain of dry wood. */
export interface ShankInputs {
  /** The specific gravity, oven-dry. */
  readonly specificGravity: Ratio;
  /** The diameter: of a nail its wire, of a lag screw its shank. */
  readonly diameter: Length;
  /** The length in the wood that holds; of a lag screw its thread without the point. */
  readonly penetration: Length;
}

const inputs: Declaration<ShankInputs, Force>["inputs"] = {
  specificGravity: { symbol: "G", kind: Ratio, meaning: "specific gravity, oven-dry", min: 0.3, max: 0.8 },
  diameter: { symbol: "D", kind: Length, meaning: "diameter", above: 0, max: 0.032 },
  penetration: { symbol: "p", kind: Length, meaning: "in the wood that holds", above: 0 },
};
/** The equations of lag screws fit inches and pounds only. */
const lagInputs: typeof inputs = {
  specificGravity: inputs.specificGravity,
  diameter: { ...inputs.diameter, unit: "in" },
  penetration: { ...inputs.penetration, unit: "in" },
};
const validity = "Side grain of dry wood, never end grain; overhead loads keep a second hold.";
const allowable = { symbol: "W", kind: Force, meaning: "allowable pull, normal duration" } as const;
const ultimate = { symbol: "P", kind: Force, meaning: "average pull at which it comes out" } as const;
const psi = Pressure.of(1, "psi");

/**
 * Allowable withdrawal of a smooth nail: W = 1380 G^(5/2) D p (psi).
 *
 * @example nailWithdrawalAllowable(nailWithdrawalAllowable.read({ specificGravity: 0.5, diameter: "1 mm", penetration: "1 mm" })) // 1.682 N
 */
export const nailWithdrawalAllowable: Formula<ShankInputs, Force> = formula({
  id: "nail.withdrawal.allowable",
  title: "Withdrawal of a nail, allowable",
  equation: String.raw`W = 1380\,\mathrm{psi}\,G^{5/2} D\,p`,
  inputs,
  result: allowable,
  source: [cite("nds", "12.2.3, eq. 12.2-3")],
  validity,
  compute: ({ specificGravity, diameter, penetration }) =>
    1380 * psi * specificGravity ** 2.5 * diameter * penetration,
});

/**
 * Average ultimate withdrawal of a smooth nail: P = 7850 G^(5/2) D p (psi).
 *
 * @example nailWithdrawalUltimate(nailWithdrawalUltimate.read({ specificGravity: 0.62, diameter: "3 mm", penetration: "20 mm" })) // 982.9 N
 */
export const nailWithdrawalUltimate: Formula<ShankInputs, Force> = formula({
  id: "nail.withdrawal.ultimate",
  title: "Withdrawal of a nail, average ultimate",
  equation: String.raw`P = 7850\,\mathrm{psi}\,G^{5/2} D\,p`,
  inputs,
  result: ultimate,
  source: [cite("wood-handbook", "chapter 8, eq. 8-1")],
  validity: `${validity} Soon after driving; wood that dries lets go of half.`,
  compute: ({ specificGravity, diameter, penetration }) =>
    7850 * psi * specificGravity ** 2.5 * diameter * penetration,
});

/**
 * Allowable withdrawal of a lag screw: W = 1800 G^(3/2) D^(3/4) p (lb, in).
 *
 * @example lagWithdrawalAllowable(lagWithdrawalAllowable.read({ specificGravity: 0.5, diameter: "1/4 in", penetration: "2 in" })) // 2.002 kN
 */
export const lagWithdrawalAllowable: Formula<ShankInputs, Force> = formula({
  id: "lag.withdrawal.allowable",
  title: "Withdrawal of a lag screw, allowable",
  equation: String.raw`W = 1800\,G^{3/2} D^{3/4} p`,
  inputs: lagInputs,
  result: { ...allowable, unit: "lbf" },
  source: [cite("nds", "12.2.1, eq. 12.2-1")],
  validity,
  compute: (given) => Force.of(1800 * lagSize(given), "lbf"),
});

/**
 * Average ultimate withdrawal of a lag screw: P = 8100 G^(3/2) D^(3/4) p (lb, in).
 *
 * @example lagWithdrawalUltimate(lagWithdrawalUltimate.read({ specificGravity: 0.42, diameter: "8 mm", penetration: "40 mm" })) // 6.493 kN
 */
export const lagWithdrawalUltimate: Formula<ShankInputs, Force> = formula({
  id: "lag.withdrawal.ultimate",
  title: "Withdrawal of a lag screw, average ultimate",
  equation: String.raw`P = 8100\,G^{3/2} D^{3/4} p`,
  inputs: lagInputs,
  result: { ...ultimate, unit: "lbf" },
  source: [cite("wood-handbook", "chapter 8, eq. 8-13")],
  validity,
  compute: (given) => Force.of(8100 * lagSize(given), "lbf"),
});

/** G^(3/2) D^(3/4) p in inches: an equation that fits only its own units. */
function lagSize({ specificGravity, diameter, penetration }: ShankInputs): number {
  return specificGravity ** 1.5 * Length.in(diameter, "in") ** 0.75 * Length.in(penetration, "in");
}

/** A screw in wood, as the code sees it. */
export interface CodeScrew {
  /** The density of the wood, a low one of the batch. */
  readonly density: Density;
  /** The diameter over the thread. */
  readonly diameter: Length;
  /** The length of thread in the wood. */
  readonly penetration: Length;
}

/** Its symbols. */
export const codeScrew: FormulaSymbols<CodeScrew> = {
  density: {
    symbol: String.raw`\rho`,
    kind: Density,
    meaning: "density, low one of the batch",
    above: 0,
    unit: "kg/m3",
  },
  diameter: {
    symbol: "d",
    kind: Length,
    meaning: "diameter over the thread",
    above: 0,
    max: 0.012,
    unit: "mm",
  },
  penetration: { symbol: "l", kind: Length, meaning: "thread in the wood", above: 0, unit: "mm" },
};

/** Said of screws thinner than the code knows. */
export function thinnerThanCode({ diameter }: CodeScrew): string[] {
  return diameter < 0.006 ? ["below 6 mm the code leaves the value to tests"] : [];
}

/** Pull of one screw square to the grain, N (EN 1995-1-1, eq. 8.38 to 8.40; MPa, mm, kg/m3). */
export function squareWithdrawal({ density, diameter, penetration }: CodeScrew): number {
  const [d, l] = [diameter * 1000, penetration * 1000];
  return 0.52 * d ** -0.5 * l ** -0.1 * density ** 0.8 * d * l * Math.min(d / 8, 1);
}

/** What a screw is driven into. */
export type ScrewBase = "solid wood" | "plywood";

const screwBase: Kind<ScrewBase> = choice("what it is driven into", ["solid wood", "plywood"]);

/** A wood screw driven into side grain. */
export interface ScrewInputs {
  /** The specific gravity, oven-dry. */
  readonly specificGravity: Ratio;
  /** Nominal diameter, over the thread. */
  readonly diameter: Length;
  /** Thread in the wood, without the point. */
  readonly penetration: Length;
  /** What the screw is driven into. */
  readonly base: ScrewBase;
}

type ScrewDeclaration = Pick<Declaration<ScrewInputs, Force>, "inputs" | "warn" | "validity">;

const shared: ScrewDeclaration = {
  inputs: {
    specificGravity: { symbol: "G", kind: Ratio, meaning: "specific gravity, oven-dry", min: 0.3, max: 0.8 },
    diameter: { symbol: "D", kind: Length, meaning: "diameter of the screw", above: 0, max: 0.01 },
    penetration: { symbol: "p", kind: Length, meaning: "thread in the wood", above: 0 },
    base: { symbol: String.raw`\text{base}`, kind: screwBase, meaning: "driven into" },
  },
  validity:
    "Side grain of dry wood, right pilot hole; never in end grain; overhead loads keep a second hold.",
  warn: ({ base, diameter, penetration }) => warnings(base, diameter, penetration),
};

function warnings(base: ScrewBase, diameter: number, penetration: number): string[] {
  return [
    ...(base === "plywood"
      ? ["plywood holds screws less well than solid wood of its weight: pull a few of your own to be sure"]
      : []),
    ...(penetration < 6 * diameter
      ? ["thread shorter than six diameters: outside the tests behind this formula"]
      : []),
  ];
}

/**
 * Allowable withdrawal of a wood screw, normal duration: W = 2850 G^2 D p (psi). Ultimate is about 5.5 times that.
 *
 * @example screwWithdrawalAllowable(screwWithdrawalAllowable.read({ specificGravity: 0.5, diameter: ".190 in",
 *   penetration: "1 in", base: "solid wood" })) // 602.2 N
 */
export const screwWithdrawalAllowable: Formula<ScrewInputs, Force> = formula({
  ...shared,
  id: "screw.withdrawal.allowable",
  title: "Withdrawal of a wood screw, allowable",
  equation: String.raw`W = 2850\,\mathrm{psi}\,G^2\,D\,p`,
  result: { symbol: "W", kind: Force, meaning: "allowable pull, normal duration" },
  source: [cite("nds", "12.2.2, eq. 12.2-2")],
  compute: ({ specificGravity, diameter, penetration }) =>
    Pressure.of(2850, "psi") * specificGravity ** 2 * diameter * penetration,
});

/**
 * Average ultimate withdrawal of a wood screw: p = 15 700 G^2 D L (psi). Half of all screws hold less.
 *
 * @example screwWithdrawalUltimate(screwWithdrawalUltimate.read({ specificGravity: 0.5, diameter: ".190 in",
 *   penetration: "1 in", base: "solid wood" })) // 3.317 kN
 */
export const screwWithdrawalUltimate: Formula<ScrewInputs, Force> = formula({
  ...shared,
  id: "screw.withdrawal.ultimate",
  title: "Withdrawal of a wood screw, average ultimate",
  equation: String.raw`P = 15\,700\,\mathrm{psi}\,G^2\,D\,p`,
  result: { symbol: "P", kind: Force, meaning: "average pull at which it comes out" },
  source: [cite("wood-handbook", "chapter 8, eq. 8-10")],
  compute: ({ specificGravity, diameter, penetration }) =>
    Pressure.of(15_700, "psi") * specificGravity ** 2 * diameter * penetration,
});

/** A screw after the European code. */
export interface CharacteristicScrewInputs {
  /** The density of the wood as it stands. */
  readonly density: Density;
  /** The diameter of the screw. */
  readonly diameter: Length;
  /** The length of thread in the wood. */
  readonly penetration: Length;
  /** What the screw is driven into. */
  readonly base: ScrewBase;
}

/**
 * Characteristic withdrawal of a screw square to the grain: F = f_ax d l k_d with
 * f_ax = 0.52 d^-0.5 l^-0.1 rho^0.8 (MPa, mm, kg/m3) and k_d = min(d / 8, 1).
 *
 * @example screwWithdrawalCharacteristic(screwWithdrawalCharacteristic.read({ density: "350 kg/m3",
 *   diameter: "4 mm", penetration: "30 mm", base: "solid wood" })) // 1.204 kN
 */
export const screwWithdrawalCharacteristic: Formula<CharacteristicScrewInputs, Force> = formula({
  id: "screw.withdrawal.characteristic",
  title: "Withdrawal of a screw, characteristic",
  equation: String.raw`F = 0.52\,d^{-0.5}\,l^{-0.1}\,\rho^{0.8}\;d\,l\,\min(d/8,\,1)`,
  inputs: {
    ...codeScrew,
    base: { symbol: String.raw`\text{base}`, kind: screwBase, meaning: "driven into" },
  },
  result: { symbol: "F", kind: Force, meaning: "pull that 95 % of screws hold", unit: "N" },
  source: [cite("en-1995", "8.7.2, eq. 8.38 to 8.40")],
  validity: "Before load-duration and safety factors; the code gives it for 6 mm to 12 mm in softwood.",
  warn: (inputs) => [
    ...warnings(inputs.base, inputs.diameter, inputs.penetration),
    ...thinnerThanCode(inputs),
  ],
  compute: (inputs) => squareWithdrawal(inputs),
});

/** Wood weighed at some moisture. */
export interface SpecificGravityInputs {
  /** The density of the wood as it stands. */
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
  /** The specific gravity, oven-dry. */
  readonly specificGravity: Ratio;
  /** The diameter of the head, tail or washer that bears on the wood. */
  readonly headDiameter: Length;
  /** The thickness of the board. */
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
