import type { Mains, PlugStrip } from "../../design/index.js";
import {
  cableDrop,
  continuousCurrent,
  flexibleCord,
  inrushCurrent,
  loadCurrent,
  mainsCaution,
  meanLoad,
  wireResistance,
  wireSize,
} from "../../inside/index.js";
import { loadsOf, type ReviewInput } from "../../model/index.js";
import { Count, Current, Power, Ratio, ratio, Temperature } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { compared } from "../compared.js";
import type { Reply } from "../guarded.js";

/** Said with every circuit. */
export const stripCaution: string =
  "One plug strip, never one in another, with its rating above all loads together; no heater on it; coil no cable that carries load.";

function fullCurrent(input: ReviewInput, { voltage, powerFactor }: Mains) {
  const load = meanLoad.worked({ loads: loadsOf(input) });
  const current = loadCurrent.worked({ power: load.value.peak, supply: voltage, powerFactor });
  return { load, current };
}

/** Whether the circuit carries all loads for hours. */
export function circuitReply(input: ReviewInput, mains: Mains): Reply {
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

/** Whether the plug strip carries all loads. */
export function stripReply(input: ReviewInput, mains: Mains, { rated }: PlugStrip): Reply {
  const { load, current } = fullCurrent(input, mains);
  return compared({
    kind: Current,
    asked: ["all loads on", current.value],
    there: ["the strip is rated for", rated],
    facts: `All loads together draw ${Current.show(current.value, { digits: 2 })}; the strip is rated for ${Current.show(rated)}.`,
    remedy: "A strip with a higher rating on a circuit of its own.",
    because: [load, current],
    cautions: [mainsCaution, stripCaution],
    source: [cite("ul-1363", "marked rating; never one strip in another")],
  });
}

/** Whether each load has a socket of its own. */
export function socketsReply(input: ReviewInput, { sockets }: PlugStrip): Reply {
  const loads = loadsOf(input);
  return compared({
    kind: Count,
    asked: ["plugs", loads.length],
    there: ["sockets of one strip", sockets],
    facts: `${loads.length} things draw power (${loads.map(({ name }) => name).join(", ")}); the strip has ${sockets} sockets.`,
    remedy: "A longer strip: one strip plugged into another overloads the first.",
    because: [],
    cautions: [mainsCaution, stripCaution],
    source: [cite("ul-1363", "strips are not to be plugged into each other")],
  });
}

/** Copper under load, and the usual aim. */
const warmCopper = Temperature.of(75, "°C");
const allowedDrop = ratio(0.03);

/** Whether enough voltage arrives. */
export function cableReply(input: ReviewInput, mains: Mains): Reply {
  const { load, current } = fullCurrent(input, mains);
  const wire = wireSize.worked({ gauge: mains.gauge });
  const resistance = wireResistance.worked({
    area: wire.value.area,
    length: mains.length,
    temperature: warmCopper,
    stranding: flexibleCord,
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
    source: [
      cite("nec", "210.19, informational note: 3 % in a branch circuit"),
      cite("bs-7671", "table 4Ab"),
    ],
  });
}

/** A breaker trips at once at five times its rating or more; common practice, its curve decides. */
const instantTrip = 5;

/** Loads whose first current nobody looked up. */
export function loadsWithoutStart({ case: { contents } }: ReviewInput): readonly string[] {
  return contents
    .filter(({ power = 0, needs }) => power > 0 && needs.coldStart === undefined)
    .map(({ name }) => name);
}

/** Whether the breaker stays in at the start. */
export function inrushReply(input: ReviewInput, mains: Mains): Reply {
  const lines = input.case.contents.flatMap(({ power = Power.si(0), needs: { coldStart } }) => {
    if (!(power > 0) || coldStart === undefined) return [];
    const running = loadCurrent({ power, supply: mains.voltage, powerFactor: mains.powerFactor });
    return [inrushCurrent.worked({ current: running, factor: coldStart })];
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
