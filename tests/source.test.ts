import { expect, test } from "vitest";
import { cite, showCitation } from "../lib/source.js";

test.each([
  [
    cite("plates-shells", "table 8"),
    "S. Timoshenko, S. Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed. (1959), table 8",
  ],
  [cite("ashrae", "p. 25.13"), "ASHRAE Handbook Fundamentals (1997), p. 25.13"],
  [cite("astm-d395", "method B"), "ASTM D395 Rubber property - compression set, method B"],
  [cite("statics", "equal shares"), "Equilibrium of forces and moments, any text on statics, equal shares"],
  [cite("common-practice", ""), "Common practice in the trade, no source"],
])("a citation names its author once: %o", (citation, shown) => {
  expect(showCitation(citation)).toBe(shown);
});
