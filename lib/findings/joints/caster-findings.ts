import type { Fastening, HardwarePart } from "../../design/index.js";
import { groupPull, groupStrength } from "../../fastening/index.js";
import {
  fastenerStrength,
  fasteningsOf,
  isKnown,
  type KnownStrength,
  oneOfEach,
  type ReviewInput,
  stackedBalance,
  useInterval,
} from "../../model/index.js";
import { handleForce } from "../../moving/index.js";
import { Force, Length, Moment, Ratio, ratio } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { amount, styleOf } from "../amount.js";
import type { Finding } from "../finding.js";
import { verdictOf } from "../finding.js";
import { guarded, type Reply, unknown } from "../guarded.js";
import { hardwareQuestion } from "./hardware-question.js";

/** A caster that strikes a kerb: pushed sideways as hard as it is borne on, at the height of its wheel. */
export function casterFindings(input: ReviewInput): readonly Finding[] {
  const casters = input.parts.hardware.filter(({ item }) => item.duty === "roll");
  return oneOfEach(input, "roll").flatMap((caster) => {
    const [fastening] = fasteningsOf(caster, input);
    if (!fastening || fastening.at.length === 0) return [];
    const asked = hardwareQuestion(
      "casters",
      caster,
      `Do the fasteners of a ${caster.stock.name} hold when it strikes a kerb?`,
    );
    const strength = fastenerStrength(fastening, "pull", input);
    if (!isKnown(strength)) return [unknown(asked, strength, [kerb])];
    return [
      guarded(asked, () => casterReply(input, caster, fastening, Math.max(1, casters.length - 1), strength), [
        kerb,
      ]),
    ];
  });
}

const kerb = "Lift the case over kerbs: a caster torn out tips the case towards whoever pushes it.";

function casterReply(
  input: ReviewInput,
  { stock }: HardwarePart,
  fastening: Fastening,
  touching: number,
  known: KnownStrength,
): Reply {
  const balance = stackedBalance(input);
  // One of four may hang over a dip, so one fewer bears.
  const load = handleForce.worked({ mass: balance.value.mass, handles: touching, dynamicFactor: ratio(1) });
  const prying = Moment.si(load.value * stock.standing);
  const positions = fastening.at.map(({ u, v }) => ({ x: u, y: v }));
  const still = Moment.si(0);
  const ways = [
    groupPull.worked({ positions, pull: Force.si(-load.value), pryingX: prying, pryingY: still }),
    groupPull.worked({ positions, pull: Force.si(-load.value), pryingX: still, pryingY: prying }),
  ].sort((a, b) => b.value.largest - a.value.largest);
  const [worse] = ways as [(typeof ways)[number]];
  const pull = Force.si(Math.max(0, worse.value.largest));
  const { safetyFactor } = input.case.demands;
  const allowed = groupStrength.worked({ each: known.strength, count: 1, safetyFactor });
  const interval = useInterval(pull, known, 1 / safetyFactor);
  const used = ratio(pull / allowed.value);
  const style = styleOf(input.case);
  return {
    verdict: verdictOf(used, interval),
    answer: `Pushed sideways with ${Force.show(load.value, style)} at ${Length.show(stock.standing, style)} below the case, its most loaded fastener is pulled with ${Force.show(pull, style)} of ${Force.show(allowed.value, style)} (${Ratio.show(used, { unit: "%", digits: 2 })}).`,
    demand: amount(Force, "pull on one fastener", pull),
    capacity: amount(Force, "one fastener allows", allowed.value),
    ratio: used,
    ...(interval ? { interval } : {}),
    because: [balance, load, worse, ...known.because, allowed],
    cautions: [kerb],
    source: [
      cite("common-practice", "a kerb strikes as hard as the caster bears"),
      cite("statics", "prying"),
    ],
  };
}
