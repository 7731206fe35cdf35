/** What draws power in a section, and how warm its things may get. */
import type { Battery, Content } from "../../design/index.js";
import type { batteryTime } from "../../inside/index.js";
import { type Power, type Ratio, ratio, type Temperature } from "../../quantity/index.js";
import type { MissingMeasurement } from "../../refusal.js";
import type { ReviewInput } from "../review-input.js";

/** How warm a section may get. */
export interface HeatLimit {
  /** Air outside on the hottest day. */
  readonly outside: Temperature;
  /** The thing that stands least. */
  readonly name: string;
  /** The warmest air it may work in. */
  readonly hottest: Temperature;
}

/** How warm a section may get, or what must be looked up to know. */
export function heatLimit(input: ReviewInput, section: string): HeatLimit | MissingMeasurement {
  const outside = input.case.services.hottest;
  if (outside === undefined) {
    const how = 'look up the hottest day where it works and write "hottest: 95 °F" into services';
    return { measure: "the hottest air outside", how };
  }
  const [first] = tender(input, section);
  if (first) return { outside, ...first };
  return {
    measure: `the warmest air that the things in ${section} may work in`,
    how: 'read it off the sheet of each thing that draws power, and write "hottest" into its needs',
  };
}

/** What stands least comes first. */
function tender(
  { case: { contents } }: ReviewInput,
  section: string,
): readonly { readonly name: string; readonly hottest: Temperature }[] {
  return contents
    .flatMap(({ name, section: where, needs }: Content) =>
      where === section && needs.hottest !== undefined ? [{ name, hottest: needs.hottest }] : [],
    )
    .sort((a, b) => a.hottest - b.hottest);
}

/** Shut sections with something in them that draws power; air comes and goes through an open face. */
export function warmSections({ parts, case: { contents } }: ReviewInput): readonly string[] {
  return parts.sections
    .filter(({ open }) => open.length === 0)
    .map(({ name }) => name)
    .filter((name) => contents.some(({ section, power }) => section === name && (power ?? 0) > 0));
}

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
