/** What would make a lift lighter. */
import type { Content } from "../../design/index.js";
import { Mass, type ShowStyle } from "../../quantity/index.js";
import type { ReviewInput } from "../review-input.js";

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

/** What would bring the lift within its limit: things left out, the heaviest first, or more hands. */
export function lighter(
  contents: readonly Content[],
  people: number,
  share: Mass,
  limit: Mass,
  style: ShowStyle,
): string {
  const out = Mass.show(Mass.si((share - limit) * people), style);
  const enough = Math.ceil((people * share) / limit);
  const hands = enough % 2 === 0 ? enough : enough + 1;
  const first = firstOut(contents, (share - limit) * people);
  return `Take out about ${out}${first}, lift with ${hands} people, or use a ramp or a lift gate.`;
}
