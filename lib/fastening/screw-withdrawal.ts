/** How hard a wood screw may be pulled out of side grain. */
import { type Declaration, type Formula, formula } from "../formula.js";
import { choice, type Density, Force, type Kind, Length, Pressure, Ratio } from "../quantity/index.js";
import { cite } from "../source.js";
import { codeScrew, squareWithdrawal, thinnerThanCode } from "./square-withdrawal.js";

/** What a screw is driven into. */
export type ScrewBase = "solid wood" | "plywood";

const screwBase: Kind<ScrewBase> = choice("what it is driven into", ["solid wood", "plywood"]);

/** A wood screw driven into side grain. */
export interface ScrewInputs {
  readonly specificGravity: Ratio;
  /** Nominal diameter, over the thread. */
  readonly diameter: Length;
  /** Thread in the wood, without the point. */
  readonly penetration: Length;
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
  readonly density: Density;
  readonly diameter: Length;
  readonly penetration: Length;
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
