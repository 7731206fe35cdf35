/** Words about doors in their openings. */
import type { HungLeaf } from "../../design/index.js";
import type { Rule } from "../rule.js";

/** The gaps to the leaves that a leaf meets: "4.0 mm at the left". */
export function gapsBeside({ clearance, between, meets }: HungLeaf, rule: Rule): readonly string[] {
  return Object.keys(meets).map((side) => `${rule.fine(between ?? clearance)} at the ${side}`);
}
