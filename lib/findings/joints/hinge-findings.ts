import type { HardwarePart, PanelPart } from "../../design/index.js";
import { type CombinedInputs, combinedUse } from "../../fastening/index.js";
import {
  densityOf,
  fastenerStrength,
  fasteningsOf,
  isKnown,
  type KnownStrength,
  oneOfEach,
  type ReviewInput,
  strengthInterval,
} from "../../model/index.js";
import { Force, Mass, newton, Ratio, ratio, standardGravity } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { amount, styleOf } from "../amount.js";
import type { Finding } from "../finding.js";
import { verdictOf } from "../finding.js";
import { guarded, type Reply, unknown } from "../guarded.js";
import { hardwareQuestion } from "./hardware-question.js";

const leaned = "Somebody will lean on an open door: give it a stay.";

/** A door that hangs open on its hinges: its weight, and the couple that pulls the upper hinge off. */
export function hingeFindings(input: ReviewInput): readonly Finding[] {
  return oneOfEach(input, "hinge").flatMap((hinge) => {
    const leaf = input.parts.panels.find(({ id, role }) => role === "leaf" && hinge.panels.includes(id));
    const groups = fasteningsOf(hinge, input);
    const [first] = groups;
    const hinges = input.parts.hardware.filter(
      ({ item, panels }) => item.duty === "hinge" && leaf && panels.includes(leaf.id),
    );
    if (!leaf || !first) return [];
    const asked = hardwareQuestion(
      "hinges",
      hinge,
      `Do the hinges of ${leaf.id} hold the open door, with a jolt?`,
    );
    const [shear, pull] = [fastenerStrength(first, "shear", input), fastenerStrength(first, "pull", input)];
    if (!isKnown(shear)) return [unknown(asked, shear, [leaned])];
    if (!isKnown(pull)) return [unknown(asked, pull, [leaned])];
    const fewest = Math.min(...groups.map(({ count }) => count));
    return [guarded(asked, () => hingeReply(input, leaf, hinges, fewest, shear, pull), [leaned])];
  });
}

function hingeReply(
  input: ReviewInput,
  leaf: PanelPart,
  hinges: readonly HardwarePart[],
  fasteners: number,
  shear: KnownStrength,
  pull: KnownStrength,
): Reply {
  const { dynamicFactor, safetyFactor } = input.case.demands;
  const apart = spacingOf(hinges);
  if (apart <= 0) throw new RangeError("two hinges apart from each other are needed to hold a door");
  const weight = leafMass(input, leaf) * standardGravity * dynamicFactor;
  const arm = Math.min(leaf.width, leaf.height) / 2;
  const each = { shear: weight / hinges.length / fasteners, pull: (weight * arm) / apart / fasteners };
  const useOf = (strengths: { readonly shear: Force; readonly pull: Force }): CombinedInputs => ({
    shear: newton(each.shear),
    pull: newton(each.pull),
    shearStrength: Force.si(strengths.shear / safetyFactor),
    pullStrength: Force.si(strengths.pull / safetyFactor),
    shank: "smooth",
  });
  const line = combinedUse.worked(useOf({ shear: shear.strength, pull: pull.strength }));
  const interval = strengthInterval({ shear, pull }, (now) => combinedUse(useOf(now)));
  const style = styleOf(input.case);
  return {
    verdict: verdictOf(line.value, interval),
    answer: `The open door puts ${Force.show(newton(each.shear), style)} of shear and ${Force.show(newton(each.pull), style)} of pull on each fastener of a hinge: ${Ratio.show(line.value, { unit: "%", digits: 2 })} of what they allow together.`,
    demand: amount(Ratio, "shear and pull together", line.value),
    capacity: amount(Ratio, "limit", ratio(1)),
    ratio: line.value,
    ...(interval ? { interval } : {}),
    because: [...shear.because, ...pull.because, line],
    cautions: [leaned],
    source: [
      cite("common-practice", "safety factor of the case file"),
      cite("statics", "couple of two hinges"),
    ],
  };
}

/** Sheet and facing of a door leaf. */
function leafMass(input: ReviewInput, { netArea, sheet, facing }: PanelPart): Mass {
  const faced = facing ? facing.stock.thickness * densityOf(input, facing.stock) : 0;
  return Mass.si(netArea * (sheet.thickness * densityOf(input, sheet) + faced));
}

/** Between the outermost hinges, along the panel they hang on. */
function spacingOf(hinges: readonly HardwarePart[]): number {
  const places = hinges.flatMap(({ on }) => (on ? [on] : []));
  const reach = (axis: "u" | "v"): number =>
    Math.max(...places.map((at) => at[axis])) - Math.min(...places.map((at) => at[axis]));
  return places.length < 2 ? 0 : Math.max(reach("u"), reach("v"));
}
