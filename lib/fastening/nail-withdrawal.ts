/** Nails and lag screws pulled out of side grain. */
import { type Declaration, type Formula, formula } from "../formula.js";
import { Force, Length, Pressure, Ratio } from "../quantity/index.js";
import { cite } from "../source.js";

/** A nail or lag screw in side grain of dry wood. */
export interface ShankInputs {
  readonly specificGravity: Ratio;
  /** Of a nail its wire, of a lag screw its shank. */
  readonly diameter: Length;
  /** In the wood that holds; of a lag screw its thread without the point. */
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
