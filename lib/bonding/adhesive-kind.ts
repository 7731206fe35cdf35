import { choice, type Kind } from "../quantity/index.js";

/** Sorts of glue a case is built with. */
export type AdhesiveKind = "contact" | "spray contact" | "wood glue" | "epoxy" | "construction";

/** Sorts of glue, as a kind. */
export const AdhesiveKind: Kind<AdhesiveKind> = choice("kind of adhesive", [
  "contact",
  "spray contact",
  "wood glue",
  "epoxy",
  "construction",
]);
