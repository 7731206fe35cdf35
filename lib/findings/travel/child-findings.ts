import { footprint, pastBase, type ReviewInput, tippingArm } from "../../model/index.js";
import { childOnDrawer, edgeLoadLimit } from "../../moving/index.js";
import { Length, Mass } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { styleOf } from "../amount.js";
import { compared } from "../compared.js";
import type { Finding } from "../finding.js";
import { guarded, type Question, type Reply } from "../guarded.js";
import { tippingCaution } from "./standing-findings.js";

type Side = "left" | "right" | "front" | "back";

/** Whether the stacked case stands with a child on each drawer or door that is open. */
export function childFindings(input: ReviewInput): readonly Finding[] {
  return openThings(input).map((thing) => childFinding(input, thing));
}

/** A drawer or a door, and how far out of the case its edge comes. */
interface OpenThing {
  readonly name: string;
  readonly side: Side;
  readonly out: Length;
}

function openThings({ parts, case: { contents } }: ReviewInput): OpenThing[] {
  const doors = parts.panels.flatMap(({ role, id, face, width, height, leaf }): OpenThing[] => {
    if (role !== "leaf" || !leaf || face === undefined || face === "top" || face === "bottom") return [];
    return [{ name: id, side: face, out: leaf.hinge === "left" || leaf.hinge === "right" ? width : height }];
  });
  const drawers = contents.flatMap(({ name, needs: { opensBy, opensTo = "front" } }): OpenThing[] => {
    if (opensBy === undefined || opensTo === "top" || opensTo === "bottom") return [];
    return [{ name, side: opensTo, out: opensBy }];
  });
  return [...doors, ...drawers];
}

function childFinding(input: ReviewInput, thing: OpenThing): Finding {
  const question: Question = {
    id: `travel.child.${thing.name}`,
    topic: "travel",
    subject: thing.name,
    question: `Does the stacked case stand with a child on the open ${thing.name}?`,
  };
  return guarded(question, () => childReply(input, thing), [tippingCaution]);
}

function childReply(input: ReviewInput, { name, side, out }: OpenThing): Reply {
  const standing = footprint(input);
  const overhang = Length.si(out + pastBase(input, side));
  const line = edgeLoadLimit.worked({
    mass: standing.balance.value.mass,
    halfBase: tippingArm(standing, side),
    overhang,
  });
  const style = styleOf(input.case);
  return compared({
    kind: Mass,
    asked: ["child of the published test", childOnDrawer.mass],
    there: ["mass that tips it", line.value],
    facts: `${Mass.show(line.value, style)} on the edge of the open ${name}, ${Length.show(overhang, style)} past the casters, tips it to the ${side}.`,
    remedy: "Lock it when nobody stands by, fix the case to a wall or table, or set out a foot below it.",
    because: [standing.balance, line],
    cautions: [tippingCaution],
    source: [childOnDrawer.source, cite("statics", "moments about the tipping edge")],
  });
}
