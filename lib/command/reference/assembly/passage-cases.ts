/** Runs cases of things that pass an opening, or do not. */
import { passage } from "../../../assembly/index.js";
import { casesOf, nameOf } from "../cutting-cases.js";
import type { ReferenceOutcome } from "../outcome.js";
import { expectedOf, outlineOf, seenFromBehind, vectorOf } from "./outline-in-file.js";

/** One row a case, and one seen from the other side, which changes nothing. */
export function passageOutcomes(content: unknown): readonly ReferenceOutcome[] {
  return casesOf(content).flatMap((one) => {
    const item = nameOf(one);
    const thing = vectorOf(one.thing, `"thing" of ${item}`);
    const opening = outlineOf(one.opening, `opening of ${item}`);
    const { passes } = expectedOf(one);
    if (typeof passes !== "boolean")
      throw new TypeError(`${item}: expected true or false in "passes", got ${JSON.stringify(passes)}`);
    return [
      { result: "passes", shape: opening },
      { result: "from behind", shape: seenFromBehind(opening) },
    ].map(({ result, shape }): ReferenceOutcome => {
      const ours = passage(thing, shape);
      const [way] = ours.attitudes;
      const turned = way ? `, turned ${((180 * way.angle) / Math.PI).toFixed(1)} deg` : "";
      return {
        ...{ item, result, expected: words(passes), ours: words(ours.passes) + turned },
        ...{
          error: "–",
          tolerance: "0.01 mm",
          holds: ours.passes === passes,
          known: String(one.known ?? ""),
        },
      };
    });
  });
}

function words(passes: boolean): string {
  return passes ? "passes" : "does not";
}
