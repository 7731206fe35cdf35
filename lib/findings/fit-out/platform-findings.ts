import type { ShelfPart } from "../../design/index.js";
import { gluePull, platformPull } from "../../inside/index.js";
import { fastenerStrength, isKnown, type ReviewInput, shelfMass } from "../../model/index.js";
import { Force, Length, Moment, Pressure, standardGravity } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { styleOf } from "../amount.js";
import { compared } from "../compared.js";
import type { Finding } from "../finding.js";
import { guarded, type Question, type Reply, unknown } from "../guarded.js";

/** Said with every shelf that could come down. */
export const shelfCaution: string =
  "A platform that tears off the wall drops what stands on it: a strut under its front edge costs nothing.";

/** Across the face veneer plywood gives at about 1 to 2 MPa; a quarter of the lower, common practice, no source. */
export const glueAllows: Pressure = Pressure.of(0.25, "MPa");

/** Whether screws, and glue alone, hold a platform that stands out from the wall. */
export function platformFindings(input: ReviewInput, part: ShelfPart): readonly Finding[] {
  return [screwFinding(input, part), glueFinding(input, part)];
}

function about(part: ShelfPart, by: "screws" | "glue"): Question {
  const { name } = part.shelf;
  return {
    id: `fit-out.platform.${by}.${name}`,
    topic: "fit-out",
    subject: name,
    question: `Do the ${by} at the back of the ${name} hold it with a jolt?`,
  };
}

/** Everything on the platform and itself, with a jolt, at the middle of its depth. */
function loadOf(input: ReviewInput, part: ShelfPart): { readonly load: Force; readonly reach: Length } {
  return {
    load: Force.si(shelfMass(part) * standardGravity * input.case.demands.dynamicFactor),
    reach: Length.si(part.panel.height / 2),
  };
}

function screwFinding(input: ReviewInput, part: ShelfPart): Finding {
  const question = about(part, "screws");
  const group = input.parts.fastenings.find(({ holds }) => holds === part.shelf.name);
  if (!group)
    return unknown(question, { measure: "its fasteners", how: "name them in the case file" }, [shelfCaution]);
  const strength = fastenerStrength(group, "pull", input);
  if (!isKnown(strength)) return unknown(question, strength, [shelfCaution]);
  return guarded(question, () => screwReply(input, part, strength.strength), [shelfCaution]);
}

function screwReply(input: ReviewInput, part: ShelfPart, strength: Force): Reply {
  const lever = part.shelf.bracket ?? Length.si(part.panel.sheet.thickness / 2);
  const line = platformPull.worked({ ...loadOf(input, part), lever, screws: part.shelf.joint.count });
  const allowed = Force.si(strength / input.case.demands.safetyFactor);
  const style = styleOf(input.case);
  return compared({
    kind: Force,
    asked: ["pull on each screw", line.value],
    there: ["one screw allows", allowed],
    facts: `A jolt pulls each screw with ${Force.show(line.value, style)}.`,
    remedy:
      'Set a cleat or brackets under it and write their height as "bracket": they give the screws a lever.',
    because: [line],
    cautions: [shelfCaution],
    source: [
      cite("common-practice", "safety factor of the case file"),
      cite("statics", "moments about the bearing edge"),
    ],
  });
}

function glueFinding(input: ReviewInput, part: ShelfPart): Finding {
  return guarded(about(part, "glue"), () => glueReply(input, part), [shelfCaution]);
}

function glueReply(input: ReviewInput, part: ShelfPart): Reply {
  const { load, reach } = loadOf(input, part);
  const line = gluePull.worked({
    moment: Moment.si(load * reach),
    length: part.panel.width,
    depth: part.shelf.bracket ?? part.panel.sheet.thickness,
  });
  const style = styleOf(input.case);
  return compared({
    kind: Pressure,
    asked: ["pull at the edge of the glue", line.value],
    there: ["plywood's face allows", glueAllows],
    facts: `${part.shelf.bracket ? "Glued over its bracket alone" : "Glued at its back edge alone"} it would pull the face veneer with ${Pressure.show(line.value, style)}.`,
    remedy: "Never glue alone: a cleat, brackets or a strut.",
    because: [line],
    cautions: [shelfCaution],
    source: [
      cite("common-practice", "a quarter of plywood's strength across its face"),
      cite("strength-of-materials", "flexure formula"),
    ],
  });
}
