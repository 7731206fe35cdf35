import type { Kind, ShowStyle } from "../quantity/index.js";
import type { Amount } from "./finding.js";

/** A value of a kind under a name. */
export function amount<T>(kind: Kind<T>, meaning: string, value: T): Amount {
  return { meaning, show: (style?: ShowStyle) => kind.show(value, style) };
}

/** The units a case is shown in, with inch fractions to a sixteenth. */
export function styleOf({ units }: { readonly units: "inch" | "metric" }): ShowStyle {
  return { system: units, denominator: 16, digits: 3 };
}
