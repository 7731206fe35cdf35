/** What rides in the case, put in and held. */
import type { Holding } from "../../design/index.js";
import { counted } from "../words.js";
import type { Workshop } from "../workshop.js";

/** A step a content. */
export function contentSteps({ parts }: Workshop): string[] {
  return parts.contents.map(({ content: { name, section, held } }) =>
    heldStep(`Put ${name} into ${section}`, held),
  );
}

function heldStep(place: string, held: Holding): string {
  switch (held.by) {
    case "shelf":
      return `${place} on "${held.shelf}", held so that it cannot slide off.`;
    case "floor":
      return `${place} on the floor, wedged or strapped so that it cannot slide.`;
    case "strap":
      return `${place} with ${counted(held.straps, "strap")}, pulled tight.`;
    case "cradle":
      return `${place} in its cradle ${held.shelf === undefined ? "on the floor" : `on "${held.shelf}"`}, lined with ${held.lining.kind}${held.lid ? ", and close its strap or lid" : "; give it a strap or lid first"}.`;
    case "hung":
      return `${place}, hung with ${counted(held.count, "fastener")} (${held.fastener})${held.secondHold ? ", and clip its second hold" : "; give it a second hold first"}.`;
    case "rivets":
      return `${place} with ${counted(held.count, "rivet")} (${held.fastener}) through the ${held.to}.`;
    case "screws":
      return held.foot === undefined
        ? `${place} with ${counted(held.count, "screw")} (${held.fastener}) through the ${held.to}.`
        : `${place} with ${counted(held.count, "screw")} into the inserts of the ${held.to} (${held.fastener}).`;
  }
}
