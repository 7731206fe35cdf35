/** Whether the joints of shelves and platforms hold when the road pushes them, as it pushes the case. */
import type { Fastening, ShelfPart } from "../../design/index.js";
import { groupStrength } from "../../fastening/index.js";
import {
  fastenerStrength,
  isKnown,
  type KnownStrength,
  type ReviewInput,
  shelfMass,
} from "../../model/index.js";
import { type RideWay, rideWays, shelfRide } from "../../moving/index.js";
import { Force } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { styleOf } from "../amount.js";
import { compared } from "../compared.js";
import type { Finding } from "../finding.js";
import { guarded, type Question, type Reply, unknown } from "../guarded.js";

const shelfCaution =
  "A shelf that tears loose on the road takes all that stands on it along: a stop or a strap in front of what is heavy, whatever the joint allows.";

/** Whether each shelf stays on its joints, braking, starting and turning. */
export function shelfRoadFindings(input: ReviewInput): readonly Finding[] {
  return input.parts.shelves.map((part) => {
    const { name } = part.shelf;
    const question: Question = {
      id: `travel.shelf.${name}`,
      topic: "travel",
      subject: name,
      question: `Do the joints of the ${name} hold when the ${input.case.journey.vehicle} brakes, starts and turns?`,
    };
    return shelfFinding(input, question, part);
  });
}

function shelfFinding(input: ReviewInput, question: Question, part: ShelfPart): Finding {
  const groups = input.parts.fastenings.filter(({ holds }) => holds === part.shelf.name);
  const [first] = groups;
  if (!first) {
    const missing = { measure: "its fasteners", how: "name them in the case file" };
    return unknown(question, missing, [shelfCaution]);
  }
  // out of the wall it stands out from, along the walls it lies between
  const direction = part.shelf.support === "back only" ? "pull" : "shear";
  const strength = fastenerStrength(first, direction, input);
  if (!isKnown(strength)) return unknown(question, strength, [shelfCaution]);
  return guarded(question, () => shelfReply(input, part, { groups, strength }), [shelfCaution]);
}

interface Joint {
  readonly groups: readonly Fastening[];
  readonly strength: KnownStrength;
}

const roadWords: Readonly<Record<RideWay, string>> = {
  forward: "Braking",
  rearward: "Starting",
  sideways: "Turning",
};

function shelfReply(input: ReviewInput, part: ShelfPart, { groups, strength }: Joint): Reply {
  const count = groups.reduce((sum, group) => sum + group.count, 0);
  const lines = rideWays.map((way) => ({
    way,
    line: shelfRide.worked({ mass: shelfMass(part), count, way }),
  }));
  const [worst] = lines.sort((a, b) => b.line.value - a.line.value);
  if (!worst) throw new RangeError("shelf ride: no way was found");
  const allowed = groupStrength.worked({
    each: strength.strength,
    count: 1,
    safetyFactor: input.case.demands.safetyFactor,
  });
  const style = styleOf(input.case);
  return compared({
    kind: Force,
    asked: ["on each fastener", worst.line.value],
    there: ["one fastener allows", allowed.value],
    facts: `${roadWords[worst.way]} puts ${Force.show(worst.line.value, style)} on each of ${count} fasteners, its weight counted in; one allows ${Force.show(allowed.value, style)}.`,
    remedy: "More or larger fasteners, a cleat under it, or a stop in front of it.",
    because: [worst.line, ...strength.because, allowed],
    cautions: [shelfCaution],
    source: [
      cite("en-12195", "table 2, along the floor and 1.0 downwards"),
      cite("common-practice", "safety factor of the case file"),
    ],
  });
}
