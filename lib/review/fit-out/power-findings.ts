import type { Battery, Mains } from "../../design/index.js";
import {
  batteryTime,
  cableDrop,
  continuousCurrent,
  inrushCurrent,
  loadCurrent,
  mainsCaution,
  meanLoad,
  wireResistance,
  wireSize,
} from "../../inside/index.js";
import { Current, Power, Ratio, ratio, Temperature, Time } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { compared } from "../compared.js";
import type { Finding } from "../finding.js";
import { guarded, type Question, type Reply, unknown } from "../guarded.js";
import type { ReviewInput } from "../review-input.js";

const batteryCaution =
  "A battery gives hundreds of amperes into a dropped spanner: a fuse at its pole, covered poles, held down, vented if it is lead. Charge it out of the case and watched.";
const stripCaution =
  "One plug strip, never one in another, with its rating above all loads together; no heater on it; coil no cable that carries load.";

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

/** Everything that draws power. */
export function loadsOf({
  case: { contents },
}: ReviewInput): readonly { readonly name: string; readonly power: Power; readonly duty: Ratio }[] {
  return contents.flatMap(({ name, power, duty = ratio(1) }) =>
    power !== undefined && power > 0 ? [{ name, power, duty }] : [],
  );
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

/** A battery under a load, as the run time formula takes it. */
export function batteryUnder(battery: Battery, load: Power): Parameters<typeof batteryTime>[0] {
  const { capacity, ratedTime, peukert, voltage, efficiency, usable } = battery;
  return { capacity, ratedTime, peukert, voltage, efficiency, usable, load };
}

function fullCurrent(input: ReviewInput, { voltage, powerFactor }: Mains) {
  const load = meanLoad.worked({ loads: loadsOf(input) });
  const current = loadCurrent.worked({ power: load.value.peak, supply: voltage, powerFactor });
  return { load, current };
}

function circuitReply(input: ReviewInput, mains: Mains): Reply {
  const { load, current } = fullCurrent(input, mains);
  const allowed = continuousCurrent.worked({ breaker: mains.breaker });
  return compared({
    kind: Current,
    asked: ["all loads on", current.value],
    there: ["for three hours or more", allowed.value],
    facts: `All loads together draw ${Current.show(current.value, { digits: 2 })}; a circuit of ${Current.show(mains.breaker)} carries ${Current.show(allowed.value)} for hours, if nothing else is on it.`,
    remedy: "Ask for a second circuit.",
    because: [load, current, allowed],
    cautions: [mainsCaution, stripCaution],
    source: [cite("nec", "210.20(A)")],
  });
}

/** Copper under load, and the usual aim; common practice, recommended in notes to NEC 210.19. */
const warmCopper = Temperature.of(75, "°C");
const allowedDrop = ratio(0.03);

function cableReply(input: ReviewInput, mains: Mains): Reply {
  const { load, current } = fullCurrent(input, mains);
  const wire = wireSize.worked({ gauge: mains.gauge });
  const resistance = wireResistance.worked({
    area: wire.value.area,
    length: mains.length,
    temperature: warmCopper,
  });
  const drop = cableDrop.worked({ current: current.value, oneWay: resistance.value, supply: mains.voltage });
  const percent = { unit: "%", digits: 2 };
  return compared({
    kind: Ratio,
    asked: ["voltage lost", drop.value.share],
    there: ["at most", allowedDrop],
    facts: `The cable takes ${Ratio.show(drop.value.share, percent)} of the voltage; ${Ratio.show(allowedDrop, percent)} is the usual aim.`,
    remedy: "A shorter or a thicker cable.",
    because: [load, current, wire, resistance, drop],
    cautions: [mainsCaution],
    source: [cite("common-practice", "3 % in a branch circuit, as the notes of the NEC recommend")],
  });
}

/** A breaker trips at once at five times its rating or more; common practice, its curve decides. */
const instantTrip = 5;

function inrushReply(input: ReviewInput, mains: Mains): Reply {
  const lines = input.case.contents.flatMap(({ power, needs }) => {
    if (power === undefined || !(power > 0)) return [];
    const running = loadCurrent({ power, supply: mains.voltage, powerFactor: mains.powerFactor });
    return [inrushCurrent.worked({ current: running, factor: needs.coldStart ?? ratio(1) })];
  });
  const together = Current.si(lines.reduce((sum, { value }) => sum + value, 0));
  const allowed = Current.si(instantTrip * mains.breaker);
  return compared({
    kind: Current,
    asked: ["all switched on at once", together],
    there: ["breaker trips at once at", allowed],
    facts: `Switched on together they draw ${Current.show(together, { digits: 2 })} for a moment; a breaker of ${Current.show(mains.breaker)} may trip at ${Current.show(allowed)}.`,
    remedy: "Switch on one after another.",
    because: lines,
    cautions: [mainsCaution],
    source: [cite("common-practice", "instant trip at five times the rating")],
  });
}
