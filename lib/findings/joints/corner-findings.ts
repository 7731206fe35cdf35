import { groupStrength } from "../../fastening/index.js";
import {
  fastenerStrength,
  fasteningsOf,
  isKnown,
  type KnownStrength,
  oneOfEach,
  type ReviewInput,
  sectionBalance,
  useInterval,
} from "../../model/index.js";
import { handleForce } from "../../moving/index.js";
import { Force, Ratio, ratio } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { amount, styleOf } from "../amount.js";
import type { Finding } from "../finding.js";
import { verdictOf } from "../finding.js";
import { guarded, type Reply, unknown } from "../guarded.js";
import { hardwareQuestion } from "./hardware-question.js";

const notADrop =
  "A real drop is harder than a jolt: this is setting down in a hurry, not falling off a truck.";

/** A section set down on one corner: its weight with a jolt, shared by all fasteners of that corner. */
export function cornerFindings(input: ReviewInput): readonly Finding[] {
  return oneOfEach(input, "protect").flatMap((corner) => {
    const groups = fasteningsOf(corner, input);
    const [first] = groups;
    if (!first) return [];
    const asked = hardwareQuestion(
      "corners",
      corner,
      `Do the fasteners of a ${corner.stock.name} hold when ${corner.section} comes down on it?`,
    );
    const strength = fastenerStrength(first, "shear", input);
    if (!isKnown(strength)) return [unknown(asked, strength, [notADrop])];
    const count = groups.reduce((sum, group) => sum + group.count, 0);
    return [guarded(asked, () => cornerReply(input, corner.section, count, strength), [notADrop])];
  });
}

function cornerReply(input: ReviewInput, section: string, count: number, known: KnownStrength): Reply {
  const { dynamicFactor, safetyFactor } = input.case.demands;
  const balance = sectionBalance(input, section);
  const load = handleForce.worked({ mass: balance.value.mass, handles: 1, dynamicFactor });
  const allowed = groupStrength.worked({ each: known.strength, count, safetyFactor });
  const interval = useInterval(load.value, known, count / safetyFactor);
  const used = ratio(load.value / allowed.value);
  const style = styleOf(input.case);
  return {
    verdict: verdictOf(used, interval),
    answer: `All of ${section} on one corner, with a jolt, is ${Force.show(load.value, style)}; its ${count} fasteners allow ${Force.show(allowed.value, style)} (${Ratio.show(used, { unit: "%", digits: 2 })}).`,
    demand: amount(Force, "on one corner", load.value),
    capacity: amount(Force, "its fasteners allow", allowed.value),
    ratio: used,
    ...(interval ? { interval } : {}),
    because: [balance, load, ...known.because, allowed],
    cautions: [notADrop],
    source: [cite("common-practice", "all weight on one corner for a moment")],
  };
}
