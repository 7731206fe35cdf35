/** Extrusions: long enough for their rivets, and cut back from the metal corners. */
import { type EdgeBar, hasRoomForRivets } from "../derive/bars.js";
import type { CornerSpot } from "../derive/corners.js";
import { sameness } from "../derive/outline.js";
import type { CasePath } from "../read/case-text.js";
import { buildPaths, type Fault } from "./fault.js";
import type { Ruler } from "./ruler.js";

/** Where a word about a bar stands, at its edge or in a build. */
export function barWord({ section, edge }: EdgeBar, word: string): Pick<Fault, "path" | "inheritedFrom"> {
  const path: CasePath = ["sections", section.section.name, "edges", edge, word];
  return { path, inheritedFrom: buildPaths(section.section.name, ["edges", word]) };
}

/** The faults of one bar. */
export function checkBars(bar: EdgeBar, ruler: Ruler): Fault[] {
  const { endDistance } = bar.extrusion;
  if (hasRoomForRivets(bar)) return [];
  const word = bar.length > 2 * sameness ? "end distance" : "set back";
  const expected =
    `set-backs and end distances (${ruler(endDistance)}) that leave room for rivets ` +
    `on the ${ruler(bar.edgeLength)} of ${bar.id}`;
  return [{ ...barWord(bar, word), expected }];
}

/** A bar that reaches under a corner's metal. */
export function checkSetBacks(
  { stock, section, id }: CornerSpot,
  bars: readonly EdgeBar[],
  ruler: Ruler,
): Fault[] {
  const leg = Math.max(stock.width, stock.height);
  return bars
    .filter((bar) => bar.section === section && bar.extrusion.setBack < leg - sameness)
    .map((bar) => {
      const expected = `at least ${ruler(leg)}, the leg of the corner "${id.replace(/ \d+$/, "")}"`;
      return { ...barWord(bar, "set back"), value: ruler(bar.extrusion.setBack), expected };
    });
}
