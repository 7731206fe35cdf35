import type { ShelfPart } from "../../design/index.js";
import { Frequency, sagFrequency } from "../../inside/index.js";
import { firstSag, type ReviewInput, roomAt } from "../../model/index.js";
import { Length } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { fineAmount, showFine, styleOf } from "../amount.js";
import { compared } from "../compared.js";
import type { Finding } from "../finding.js";
import { guarded, type Question, type Reply } from "../guarded.js";
import { platformFindings, shelfCaution } from "./platform-findings.js";
import { vehicleBand } from "./rattle-findings.js";
import { slideFinding } from "./slide-findings.js";

/** Whether shelves keep clear of what is under them with a jolt, slides carry, and platforms stay on the wall. */
export function shelfRideFindings(input: ReviewInput): readonly Finding[] {
  return input.parts.shelves.flatMap((part) => [
    joltFinding(input, part),
    ...(part.shelf.sliding ? [slideFinding(input, part)] : []),
    ...(part.shelf.support === "back only" ? platformFindings(input, part) : []),
  ]);
}

function joltFinding(input: ReviewInput, part: ShelfPart): Finding {
  const { name } = part.shelf;
  const question: Question = {
    id: `fit-out.jolt.${name}`,
    topic: "fit-out",
    subject: name,
    question: `Does the ${name} strike what is under it when the ${input.case.journey.vehicle} jolts?`,
  };
  return guarded(question, () => joltReply(input, part), [shelfCaution]);
}

/** A jolt multiplies the sag as it multiplies the load; on its own spring it also swings. */
function joltReply(input: ReviewInput, part: ShelfPart): Reply {
  const { sag, because } = firstSag(part, input);
  const hum = sagFrequency.worked({ sag });
  const jolted = Length.si(input.case.demands.dynamicFactor * sag);
  const room = roomAt(
    input,
    { section: part.shelf.section, name: part.shelf.name, box: part.panel.box },
    "bottom",
  );
  const style = styleOf(input.case);
  const shakes =
    hum.value < vehicleBand
      ? "within what a vehicle shakes with: hold things down on it"
      : "above what a vehicle shakes with";
  return {
    ...compared({
      kind: Length,
      asked: ["sag with a jolt", jolted],
      there: ["free under it", room],
      facts: `A jolt bends it ${showFine(jolted, style)} with ${showFine(room, style)} free under it; it swings at about ${Frequency.show(hum.value, { digits: 2 })}, ${shakes}. The published road figure is its weight alone, 1.0 downwards; the jerk of the case file, ${input.case.demands.dynamicFactor}, covers bumps.`,
      remedy: "A lip or a batten under its front edge stiffens it.",
      because: [...because, hum],
      cautions: [shelfCaution],
      source: [
        cite("common-practice", "jerk of the case file"),
        cite("en-12195", "table 2: 1.0 downwards on the road"),
        cite("vibration", "natural frequency from static deflection"),
      ],
    }),
    demand: fineAmount("sag with a jolt", jolted),
    capacity: fineAmount("free under it", room),
  };
}
