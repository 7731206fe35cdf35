import type { Battery, Mains, PlugStrip } from "../../design/index.js";
import { batteryTime, mainsCaution, meanLoad } from "../../inside/index.js";
import { batteryUnder, loadsOf, type ReviewInput } from "../../model/index.js";
import { Current, Power, Time } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { compared } from "../compared.js";
import type { Finding } from "../finding.js";
import { guarded, type Question, type Reply, unknown } from "../guarded.js";
import {
  cableReply,
  circuitReply,
  inrushReply,
  loadsWithoutStart,
  socketsReply,
  stripCaution,
  stripReply,
} from "./circuit-replies.js";

const batteryCaution =
  "A battery gives hundreds of amperes into a dropped spanner: a fuse at its pole, covered poles, held down, vented if it is lead. Charge it out of the case and watched.";

/** What must be known, and how to get it. */
const missing = {
  battery: {
    measure: "capacity and voltage of the battery, and how long it must last",
    how: 'read them off its label and write the block "battery" into services',
  },
  mains: {
    measure: "the circuit it is plugged into, and the cable to it",
    how: 'ask the fair for breaker and voltage, read the gauge off the cable, and write the block "mains" into services',
  },
  strip: {
    measure: "rating and sockets of the plug strip",
    how: 'read the amperes off its label, count its sockets, and write the block "plug strip" into mains',
  },
};

/** Whether battery, circuit, cable and plug strip carry what is plugged in. */
export function powerFindings(input: ReviewInput): readonly Finding[] {
  if (loadsOf(input).length === 0) return [];
  return [batteryFinding(input), ...circuitFindings(input), ...stripFindings(input), inrushFinding(input)];
}

function about(id: string, question: string): Question {
  return { id: `fit-out.power.${id}`, topic: "fit-out", subject: id, question };
}

function batteryFinding(input: ReviewInput): Finding {
  const question = about("battery", "How long does the battery last?");
  const { battery } = input.case.services;
  return battery === undefined
    ? unknown(question, missing.battery, [batteryCaution])
    : guarded(question, () => batteryReply(input, battery), [batteryCaution]);
}

function circuitFindings(input: ReviewInput): readonly Finding[] {
  const circuit = about("circuit", "Does the circuit carry all loads for hours?");
  const cable = about("cable", "Does enough voltage arrive at the end of the cable?");
  return [
    onMains(input, circuit, [mainsCaution, stripCaution], (mains) => circuitReply(input, mains)),
    onMains(input, cable, [mainsCaution], (mains) => cableReply(input, mains)),
  ];
}

function stripFindings(input: ReviewInput): readonly Finding[] {
  const rating = about("strip", "Does the plug strip carry all loads?");
  const sockets = about("sockets", "Does each load have a socket of its own?");
  return [
    onStrip(input, rating, (given, strip) => stripReply(input, given, strip)),
    onStrip(input, sockets, (_, strip) => socketsReply(input, strip)),
  ];
}

function onStrip(
  input: ReviewInput,
  question: Question,
  reply: (mains: Mains, strip: PlugStrip) => Reply,
): Finding {
  const cautions = [mainsCaution, stripCaution];
  const mains = input.case.services.mains;
  const strip = mains?.strip;
  return mains && strip
    ? guarded(question, () => reply(mains, strip), cautions)
    : unknown(question, mains ? missing.strip : missing.mains, cautions);
}

function inrushFinding(input: ReviewInput): Finding {
  const question = about("inrush", "Does the breaker stay in when all is switched on at once?");
  const open = loadsWithoutStart(input);
  if (open.length > 0) {
    const how =
      'read the inrush current off the sheet of each, over its running current, and write "cold start" into its needs: 10 to 15 for filament lamps, up to 50 for lamp drivers';
    return unknown(question, { measure: `the first current of ${open.join(", ")}`, how }, [mainsCaution]);
  }
  return onMains(input, question, [mainsCaution], (mains) => inrushReply(input, mains));
}

function onMains(
  input: ReviewInput,
  question: Question,
  cautions: readonly string[],
  reply: (mains: Mains) => Reply,
): Finding {
  const { mains } = input.case.services;
  return mains === undefined
    ? unknown(question, missing.mains, cautions)
    : guarded(question, () => reply(mains), cautions);
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
