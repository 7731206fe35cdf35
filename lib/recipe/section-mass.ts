/** What a section weighs, without and with what rides in it. */
import { Mass } from "../quantity/index.js";
import { total } from "./words.js";
import type { Workshop } from "./workshop.js";

/** Mass of a section without and with what rides in it; undefined where nothing was reckoned. */
export function sectionMass({ masses }: Workshop, name: string): { empty: Mass; loaded: Mass } | undefined {
  const items = masses?.filter((item) => item.section === name);
  if (!items || items.length === 0) return undefined;
  const sum = (some: typeof items): Mass => Mass.si(total(some, ({ mass }) => mass));
  return { empty: sum(items.filter(({ group }) => group !== "contents")), loaded: sum(items) };
}
