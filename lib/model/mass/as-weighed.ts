/** Masses as the scale had them, of a case that is built. */
import type { AsBuiltRow } from "../../design/index.js";
import { Mass } from "../../quantity/index.js";

/** What has a mass, and where it counts. */
export interface Massive {
  /** The section it belongs to. */
  readonly section: string;
  /** The part of the case it counts with; "contents" rides inside. */
  readonly group: string;
  /** Its mass. */
  readonly mass: Mass;
}

/** What a section weighed as built; undefined where it was not on the scale. */
export function weighedAs(
  rows: readonly AsBuiltRow[],
  section: string,
  which: "weight empty" | "weight loaded",
): Mass | undefined {
  return rows.find(({ what, of, mass }) => what === which && of === section && mass !== undefined)?.mass;
}

/** Sum of masses. */
export function massOfAll(items: readonly Massive[]): number {
  return items.reduce((sum, { mass }) => sum + mass, 0);
}

/**
 * Items of every section with what the scale said more or less spread over them by their mass: over the section's own
 * parts where it was weighed empty, over what rides in it where it was weighed loaded too, over both where only loaded.
 */
export function asWeighed<Item extends Massive>(
  items: readonly Item[],
  rows: readonly AsBuiltRow[],
): readonly Item[] {
  if (!rows.some(({ what, mass }) => what.startsWith("weight") && mass !== undefined)) return items;
  const sections = [...new Set(items.map(({ section }) => section))];
  const factors = new Map(sections.map((section) => [section, factorsOf(section, items, rows)]));
  return items.map((item) => {
    const factor = factors.get(item.section)?.[item.group === "contents" ? "load" : "own"] ?? 1;
    return { ...item, mass: Mass.si(item.mass * factor) };
  });
}

function factorsOf(section: string, items: readonly Massive[], rows: readonly AsBuiltRow[]) {
  const mine = items.filter((item) => item.section === section);
  const own = massOfAll(mine.filter(({ group }) => group !== "contents"));
  const load = massOfAll(mine) - own;
  const [empty, loaded] = [
    weighedAs(rows, section, "weight empty"),
    weighedAs(rows, section, "weight loaded"),
  ];
  const share = (real: number, planned: number): number => (planned > 0 && real > 0 ? real / planned : 1);
  if (empty === undefined) {
    const both = loaded === undefined ? 1 : share(loaded, own + load);
    return { own: both, load: both };
  }
  return { own: share(empty, own), load: loaded === undefined ? 1 : share(loaded - empty, load) };
}
