/** What would make a lift lighter. */
import type { Content } from "../../design/index.js";
import type { ReviewInput } from "../../model/index.js";
import { Mass, type ShowStyle } from "../../quantity/index.js";

/** What rides in a section, the heaviest first. */
export function contentsOf({ case: { contents } }: ReviewInput, section: string): readonly Content[] {
  return contents.filter((one) => one.section === section).sort((a, b) => b.mass - a.mass);
}

/** The heaviest things that together are as much. */
function firstOut(contents: readonly Content[], excess: number): string {
  let out = 0;
  const names: string[] = [];
  for (const { name, mass } of contents) {
    if (out >= excess) break;
    out += mass;
    names.push(name);
  }
  const enough = out >= excess ? "" : ", which is not enough";
  return names.length === 0 ? "" : ` (${names.join(", ")}${enough})`;
}

/**
 * What would bring the lift within its limit: things left out, the heaviest first, or more hands.
 *
 * @param excess to be left out of the whole section
 * @param hands people of whom none carries too much; nothing where four are not enough
 */
export function lighter(
  contents: readonly Content[],
  excess: Mass,
  hands: number | undefined,
  style: ShowStyle,
): string {
  const out = `Take out about ${Mass.show(excess, style)}${firstOut(contents, excess)}`;
  return hands === undefined
    ? `${out}, or use a ramp, a lift gate or a hoist: even four people are not enough.`
    : `${out}, lift with ${hands} people, or use a ramp or a lift gate.`;
}
