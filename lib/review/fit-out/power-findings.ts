import type { Battery } from "../../design/index.js";
import { batteryTime, mainsCaution, meanLoad } from "../../inside/index.js";
import { Current, Power, Time } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { compared } from "../compared.js";
import type { Finding } from "../finding.js";
import { guarded, type Question, type Reply, unknown } from "../guarded.js";
import type { ReviewInput } from "../review-input.js";
import { cableReply, circuitReply, inrushReply, stripCaution } from "./circuit-replies.js";
import { batteryUnder, loadsOf } from "./loads.js";

const batteryCaution =
  "A battery gives hundreds of amperes into a dropped spanner: a fuse at its pole, covered poles, held down, vented if it is lead. Charge it out of the case and watched.";

/** Whether battery, circuit and cable carry what is plugged in. */
export function powerFindings(input: ReviewInput): readonly Finding[] {
  if (loadsOf(input).length === 0) return [];
  const { battery, mains } = input.case.services;
  const missingBattery = {
    measure: "capacity and voltage of the battery, and how long it must last",
    how: 'read them off its label and write the block "battery" into services',
  };
  const missingMains = {
    measure: "the circuit it is plugged into, and the cable to it",
    how: 'ask the fair for breaker and voltage, read the gauge off the cable, and write the block "mains" into services',
  };
  const about = (id: string, question: string): Question => ({
    id: `fit-out.power.${id}`,
    topic: "fit-out",
    subject: id,
    question,
  });
  const ask = <T>(
    question: Question,
    given: T | undefined,
    missing: typeof missingMains,
    cautions: readonly string[],
    reply: (given: T) => Reply,
  ): Finding =>
    given === undefined
      ? unknown(question, missing, cautions)
      : guarded(question, () => reply(given), cautions);
  return [
    ask(
      about("battery", "How long does the battery last?"),
      battery,
      missingBattery,
      [batteryCaution],
      (given) => batteryReply(input, given),
    ),
    ask(
      about("circuit", "Does the circuit carry all loads for hours?"),
      mains,
      missingMains,
      [mainsCaution, stripCaution],
      (given) => circuitReply(input, given),
    ),
    ask(
      about("cable", "Does enough voltage arrive at the end of the cable?"),
      mains,
      missingMains,
      [mainsCaution],
      (given) => cableReply(input, given),
    ),
    ask(
      about("inrush", "Does the breaker stay in when all is switched on at once?"),
      mains,
      missingMains,
      [mainsCaution],
      (given) => inrushReply(input, given),
    ),
  ];
}

function batteryReply(input: ReviewInput, battery: Battery): Reply {
  const load = meanLoad.worked({ loads: loadsOf(input) });
  const line = batteryTime.worked(batteryUnder(battery, load.value.mean));
  return compared({
    kind: Time,
    asked: ["must last", battery.hours],
    there: ["lasts", line.value.time],
    facts: `${Power.show(load.value.mean, { digits: 3 })} on the mean draw ${Current.show(line.value.current, { digits: 2 })} from it: it lasts ${Time.show(line.value.time, { unit: "h", digits: 2 })} of the ${Time.show(battery.hours, { unit: "h", digits: 2 })} wanted.`,
    remedy: "A larger battery, fewer hours, or loads switched off between visitors.",
    because: [load, line],
    cautions: [batteryCaution],
    source: [cite("electricity", "Peukert's law"), cite("common-practice", "usable share of the case file")],
  });
}
