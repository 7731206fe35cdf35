/** Contents on threaded inserts: they hang on them whichever way the case lies. */
import type { Content, ContentPart, Face } from "../../design/index.js";
import { type CombinedInputs, combinedUse, fastenerTraits } from "../../fastening/index.js";
import {
  type FastenerStrength,
  fastenerStrength,
  isKnown,
  type ReviewInput,
  strengthInterval,
} from "../../model/index.js";
import { handleForce } from "../../moving/index.js";
import { Force, Ratio, ratio } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { amount, styleOf } from "../amount.js";
import type { Finding } from "../finding.js";
import { verdictOf } from "../finding.js";
import { guarded, type Question, type Reply, unknown } from "../guarded.js";
import { groupsHolding } from "./pull-findings.js";

const askew = "An insert that was run in askew or twice holds little: drill beside it and set a new one.";

/** Whether inserts hold what is screwed to them, with a jolt, upright or lying. */
export function insertFindings(input: ReviewInput): readonly Finding[] {
  return input.parts.contents.flatMap((part) => {
    const { name, held } = part.content;
    const [group] = groupsHolding(input, name);
    if (held.by !== "screws" || !group || !fastenerTraits[group.fastener.kind].hasInsert) return [];
    const question: Question = {
      id: `joints.inserts.${name}`,
      topic: "joints",
      subject: `inserts of ${name}`,
      question: `Do the inserts of the ${name} hold it with a jolt, whichever way the case lies?`,
    };
    const [pull, shear] = [fastenerStrength(group, "pull", input), fastenerStrength(group, "shear", input)];
    if (!isKnown(pull)) return [unknown(question, pull, [askew])];
    if (!isKnown(shear)) return [unknown(question, shear, [askew])];
    return [guarded(question, () => insertReply(input, part, held.to, group.count, { pull, shear }))];
  });
}

/** Share of a foot between the outer rows of its screws; common practice. */
const rowsApart = 0.8;

interface OnEach {
  readonly pull: number;
  readonly shear: number;
}

/** Hanging straight off its panel all pull alike; hanging beside it, all shear and the far half is pried out. */
function loadsOn(content: Content, to: Face, weight: number, count: number): readonly [OnEach, OnEach] {
  const { x, y, z } = content.size;
  const sizes: readonly number[] =
    to === "left" || to === "right" ? [x, y, z] : to === "front" || to === "back" ? [y, x, z] : [z, x, y];
  const [depth = 0, ...foot] = sizes;
  const arm = rowsApart * Math.min(...foot);
  const far = Math.max(1, Math.floor(count / 2));
  return [
    { pull: weight / count, shear: 0 },
    { pull: (weight * depth) / 2 / arm / far, shear: weight / count },
  ];
}

function insertReply(
  input: ReviewInput,
  { content }: ContentPart,
  to: Face,
  count: number,
  known: Readonly<Record<"pull" | "shear", FastenerStrength>>,
): Reply {
  const { dynamicFactor, safetyFactor } = input.case.demands;
  const load = handleForce.worked({ mass: content.mass, handles: 1, dynamicFactor });
  const ways = loadsOn(content, to, load.value, count);
  const inputs = (
    { pull, shear }: OnEach,
    now: Readonly<Record<"pull" | "shear", Force>>,
  ): CombinedInputs => ({
    shear: Force.si(shear),
    pull: Force.si(pull),
    shearStrength: Force.si(now.shear / safetyFactor),
    pullStrength: Force.si(now.pull / safetyFactor),
    shank: "threaded",
  });
  const useOf = (now: Readonly<Record<"pull" | "shear", Force>>): number =>
    Math.max(...ways.map((way) => combinedUse(inputs(way, now))));
  const strengths = { pull: known.pull.strength, shear: known.shear.strength };
  const used = ratio(useOf(strengths));
  const interval = strengthInterval(known, useOf);
  const style = styleOf(input.case);
  const percent = Ratio.show(used, { unit: "%", digits: 2 });
  const [, beside] = ways;
  const from = known.pull.from === "tests" ? "your own tests" : "a formula";
  return {
    verdict: verdictOf(used, interval),
    answer: `With a jolt the ${content.name} pulls on its ${count} inserts with ${Force.show(load.value, style)}; beside its panel each is sheared with ${Force.show(Force.si(beside.shear), style)} and the far ones pulled with ${Force.show(Force.si(beside.pull), style)} (${percent} of what they allow); strength from ${from}.`,
    demand: amount(Ratio, "shear and pull together", used),
    capacity: amount(Ratio, "limit", ratio(1)),
    ratio: used,
    ...(interval ? { interval } : {}),
    because: [
      load,
      ...known.pull.because,
      ...known.shear.because,
      ...ways.map((way) => combinedUse.worked(inputs(way, strengths))),
    ],
    cautions: [askew],
    source: [cite("statics", "prying over the foot"), cite("en-1995", "8.3.3, eq. 8.28")],
  };
}
