import type { Battery } from "../../design/index.js";
import type { batteryTime } from "../../inside/index.js";
import { type Power, type Ratio, ratio } from "../../quantity/index.js";
import type { ReviewInput } from "../review-input.js";

/** Everything that draws power, in the case or in one section. */
export function loadsOf(
  { case: { contents } }: ReviewInput,
  where?: string,
): readonly { readonly name: string; readonly power: Power; readonly duty: Ratio }[] {
  return contents.flatMap(({ name, section, power, duty = ratio(1) }) =>
    power !== undefined && power > 0 && (where ?? section) === section ? [{ name, power, duty }] : [],
  );
}

/** A battery under a load, as the run time formula takes it. */
export function batteryUnder(battery: Battery, load: Power): Parameters<typeof batteryTime>[0] {
  const { capacity, ratedTime, peukert, voltage, efficiency, usable } = battery;
  return { capacity, ratedTime, peukert, voltage, efficiency, usable, load };
}
