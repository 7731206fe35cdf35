import { type Quantity, type QuantityKind, quantityKind } from "../quantity/index.js";

/** Lifts a second; read and shown as lifts a minute. */
export type LiftRate = Quantity<"lift rate">;
export const LiftRate: QuantityKind<"lift rate"> = quantityKind({
  name: "lift rate",
  units: { "lifts/min": 1 / 60, "lifts/h": 1 / 3600 },
  metric: ["lifts/min"],
  inch: ["lifts/min"],
  example: "0.2 lifts/min or 3 lifts/h",
});
