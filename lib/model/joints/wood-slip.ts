/** How stiffly a screw holds a panel to the wood behind it. */
import type { Fastening } from "../../design/index.js";
import { slipStiffness } from "../../fastening/index.js";
import { Density, type SpringRate } from "../../quantity/index.js";
import type { ReviewInput } from "../review-input.js";
import { sheetUnder } from "./fastener-strength.js";

/** Force over slip of one fastener through a panel into wood behind it: of two densities the root of their product. */
export function woodSlip(input: ReviewInput, row: Fastening): SpringRate {
  const { density } = sheetUnder(row, input);
  const mean = Density.si(Math.sqrt(density * (row.into?.density ?? density)));
  return slipStiffness({ density: mean, diameter: row.fastener.diameter, shank: "screw, bolt or drilled" });
}
