import { Temperature } from "../quantity/index.js";
import type { AdhesiveKind } from "./adhesive-kind.js";

/**
 * Heat at which each sort of glue begins to let go under a lasting pull; common practice, no source. The label
 * of the very adhesive outranks it.
 */
export const heatLimits: Readonly<Record<AdhesiveKind, Temperature>> = {
  contact: Temperature.of(70, "°C"),
  "spray contact": Temperature.of(60, "°C"),
  "wood glue": Temperature.of(60, "°C"),
  epoxy: Temperature.of(55, "°C"),
  construction: Temperature.of(70, "°C"),
};

/** What the inside of a closed vehicle comes to on a hot sunny day; common practice, no source. */
export const closedVehicle: Temperature = Temperature.of(65, "°C");
