import { Length } from "../quantity/index.js";
import type { Case } from "./case.js";

/** Shows a length in the units of the case's pages: to a 64th of an inch, or to a tenth of a millimetre. */
export type Ruler = (length: number) => string;

/** The ruler of a case. */
export function rulerOf({ units }: Pick<Case, "units">): Ruler {
  if (units === "inch")
    return (length) => Length.show(Length.si(length), { system: "inch", denominator: 64 });
  return (length) => `${Number((length * 1000).toFixed(1))} mm`;
}
