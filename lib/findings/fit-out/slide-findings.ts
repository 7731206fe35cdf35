import type { ShelfPart } from "../../design/index.js";
import { type ReviewInput, shelfMass } from "../../model/index.js";
import { handleForce } from "../../moving/index.js";
import { Force, ratio } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { styleOf } from "../amount.js";
import { compared } from "../compared.js";
import type { Finding } from "../finding.js";
import { guarded, type Question, type Reply, unknown } from "../guarded.js";

const slideCaution =
  "What slides out pinches fingers, and leaning on it tips the case: lock it for the road, one platform out at a time, casters braked.";

/** Whether the slides of a platform carry it when it is pulled out. */
export function slideFinding(input: ReviewInput, part: ShelfPart): Finding {
  const { name, slidesRated } = part.shelf;
  const question: Question = {
    id: `fit-out.slide.${name}`,
    topic: "fit-out",
    subject: name,
    question: `Do the slides carry the ${name} when it is pulled out?`,
  };
  if (slidesRated === undefined) {
    const how = 'read the load of the pair off their sheet and write "slides rated" into the shelf';
    return unknown(question, { measure: `the load that the slides of the ${name} are made for`, how }, [
      slideCaution,
    ]);
  }
  return guarded(question, () => slideReply(input, part, slidesRated), [slideCaution]);
}

/** A hand that leans on it counts like a jolt. */
function slideReply(input: ReviewInput, part: ShelfPart, rated: Force): Reply {
  const line = handleForce.worked({
    mass: shelfMass(part),
    handles: 1,
    dynamicFactor: ratio(input.case.demands.dynamicFactor),
  });
  const style = styleOf(input.case);
  return compared({
    kind: Force,
    asked: ["shelf and load with a jolt", line.value],
    there: ["the pair of slides is made for", rated],
    facts: `Shelf and load come to ${Force.show(line.value, style)} with a jolt; the slides are made for ${Force.show(rated, style)}.`,
    remedy: "Stronger slides, or lighter things on it.",
    because: [line],
    cautions: [slideCaution],
    source: [cite("common-practice", "load that the maker of the slides states, pulled out")],
  });
}
