/** Whether battery, circuit, cable and plug strip carry what is plugged in. */
import type { Battery, PlugStrip } from "../../design/index.js";
import {
  batteryTime,
  batteryWire,
  cableDrop,
  capacityLeft,
  continuousCurrent,
  flexibleCord,
  inrushCurrent,
  loadCurrent,
  mainsCaution,
  meanLoad,
  wireResistance,
  wireSize,
} from "../../inside/index.js";
import { batteryUnder, loadsOf, type ReviewInput } from "../../model/index.js";
import {
  Count,
  Current,
  type Length,
  Power,
  Ratio,
  ratio,
  Temperature,
  Time,
  type Voltage,
} from "../../quantity/index.js";
import { cite } from "../../source.js";
import { amount, counted } from "../amount.js";
import { type Need, type Question, question, type Subjects } from "../question.js";
import { known, measured, says, where, whole } from "../subjects.js";

const batteryCaution =
  "A battery gives hundreds of amperes into a dropped spanner, and melts a wire that is too thin for its fuse. Set a fuse within a hand's length of the pole, and cover both poles. Hold the battery down, and vent it if it is lead. Charge it out of the case and watched.";

/** Of everything that is plugged in. */
export const socketCaution: string = `${mainsCaution} Use one plug strip, never one in another, with its rating above all loads together. Plug no heater into it, and coil no cable that carries load.`;

type Mains = NonNullable<ReviewInput["case"]["services"]["mains"]>;

/** Asked once where something draws power, unless the services name the other source alone. */
function powered(words: string, from: "battery" | "mains"): Subjects<undefined> {
  const other = from === "mains" ? "battery" : "mains";
  const feeds = ({ case: { services } }: ReviewInput): boolean =>
    services[from] !== undefined || services[other] === undefined;
  return where((input) => says("services")(input) && feeds(input) && loadsOf(input).length > 0, whole(words));
}

/** How long the battery lasts. */
export const battery: Question = question({
  id: "fit-out.power.battery",
  about: powered("battery", "battery"),
  ask: "How long does the battery last?",
  tier: "feel",
  cautions: [batteryCaution],
  needs: {
    given: measured(
      (input) => input.case.services.battery,
      "capacity and voltage of the battery, and how long it must last",
      'read them off its label and write the block "battery" into services',
    ),
  },
  answer: (input, { given }) => {
    const load = meanLoad.worked({ loads: loadsOf(input) });
    const line = batteryTime.worked(batteryUnder(given, load.value.mean));
    const { coldest = coolMorning, age = dueForReplacement } = given;
    const left = capacityLeft.worked({ temperature: coldest, age });
    const time = Time.si(left.value * line.value.time);
    const hours = { unit: "h", digits: 2 };
    const unit = input.case.units === "inch" ? "°F" : "°C";
    return {
      demand: amount(Time, "must last", given.hours),
      capacity: amount(Time, "lasts, cold and aged", time),
      facts: `Cold and aged it lasts ${Time.show(time, hours)}; ${Time.show(given.hours, hours)} are wanted. That is at ${Temperature.show(coldest, { unit, digits: 2 })}, with ${Ratio.show(age, { unit: "%", digits: 2 })} of its capacity left. Loads of ${Power.show(load.value.mean, { digits: 3 })} on average draw ${Current.show(line.value.current, { digits: 2 })}; new and warm it lasts ${Time.show(line.value.time, hours)}.`,
      remedies: [
        {
          words: "Use a larger battery, run it for fewer hours, or switch loads off while nobody needs them.",
        },
      ],
      because: [load, line, left],
      limit: cite("ieee-485", "temperature correction and ageing factor"),
      sources: [
        cite("electricity", "Peukert's law"),
        cite("common-practice", "usable share of the case file"),
      ],
      assumed: batteryAssumed(given),
    };
  },
});

/** Taken where the case file says nothing: a cool morning, and the capacity at which batteries are replaced. */
const coolMorning: Temperature = Temperature.of(10, "°C");
const dueForReplacement: Ratio = ratio(0.8);

function batteryAssumed({ coldest, age }: Battery): readonly string[] {
  return [
    ...(coldest === undefined
      ? [
          'A cool morning of 10 °C (50 °F) is taken; write the coldest of yours into the battery as "coldest".',
        ]
      : []),
    ...(age === undefined
      ? [
          'Age is taken to have left 80 %, at which batteries are replaced; write what a test gave as "age left".',
        ]
      : []),
  ];
}

const onBattery: Subjects<undefined> = {
  each: (input) => (loadsOf(input).length > 0 && input.case.services.battery ? [undefined] : []),
  id: () => undefined,
  words: () => "battery wire",
};

const wireNeeds = {
  battery: measured(
    (input: ReviewInput) => input.case.services.battery,
    "the battery",
    'write the block "battery" into services',
  ),
  gauge: measured(
    (input: ReviewInput) => input.case.services.battery?.wireGauge,
    "the gauge of the wire from the battery",
    'read it off its jacket and write it into the battery as "wire gauge: 10"',
  ),
};

/** All loads at once, drawn from the battery. */
function batteryCurrent(input: ReviewInput, { voltage, efficiency }: Battery) {
  const load = meanLoad.worked({ loads: loadsOf(input) });
  const current = loadCurrent.worked({ power: load.value.peak, supply: voltage, powerFactor: efficiency });
  return { load, current };
}

/** Whether the wire from the battery carries all loads, and its fuse blows before the wire melts. */
export const batteryFuse: Question = question({
  id: "fit-out.power.dc-fuse",
  about: onBattery,
  ask: "Does the wire from the battery carry all loads, and its fuse blow before the wire?",
  tier: "safety",
  cautions: [batteryCaution],
  assumes: [
    "Its insulation is made for 75 °C or more, and the inverter draws by its efficiency at full load.",
  ],
  needs: {
    ...wireNeeds,
    fuse: measured(
      (input: ReviewInput) => input.case.services.battery?.fuse,
      "the rating of the fuse at the battery's pole",
      'read it off the fuse and write it into the battery as "fuse: 20 A"; where there is none, set one first',
    ),
  },
  answer: (input, given) => {
    const { load, current } = batteryCurrent(input, given.battery);
    const wire = batteryWire.worked({ gauge: given.gauge });
    const { carries, fuse } = wire.value;
    const tooLarge = given.fuse / fuse >= current.value / carries;
    const fused = `The fuse at the battery is ${amperes(given.fuse)}; wire of gauge ${given.gauge} may stand behind ${amperes(fuse)}.`;
    const loaded = `All loads together draw ${amperes(current.value)} from the battery; its wire carries ${amperes(carries)}.`;
    return {
      demand: tooLarge
        ? amount(Current, "fuse at the battery", given.fuse)
        : amount(Current, "all loads on", current.value),
      capacity: tooLarge
        ? amount(Current, "largest fuse of that wire", fuse)
        : amount(Current, "the wire carries for hours", carries),
      facts: (tooLarge ? [fused, loaded] : [loaded, fused]).join(" "),
      remedies: [{ words: "Use a thicker wire, or a smaller fuse that still carries all loads." }],
      because: [load, current, wire],
      limit: cite("cfr-183", "183.425, table 5, and 183.455"),
    };
  },
});

/** Whether enough voltage arrives behind the wire from the battery. */
export const batteryDrop: Question = question({
  id: "fit-out.power.dc-drop",
  about: onBattery,
  ask: "Does enough of the battery's voltage arrive at what it feeds?",
  tier: "feel",
  cautions: [batteryCaution],
  needs: {
    ...wireNeeds,
    length: measured(
      (input: ReviewInput) => input.case.services.battery?.wireLength,
      "the length of the wire from the battery, one way",
      'measure it with a string and write it into the battery as "wire length"',
    ),
  },
  answer: (input, given) => {
    const { load, current } = batteryCurrent(input, given.battery);
    const lines = droppedBy(current.value, given.battery.voltage, given);
    const percent = { unit: "%", digits: 2 };
    const { share } = lines.drop.value;
    return {
      demand: amount(Ratio, "voltage lost", share),
      capacity: amount(Ratio, "at most", allowedDrop),
      facts: `With all loads on, the wire takes ${Ratio.show(share, percent)} of the voltage; ${Ratio.show(allowedDrop, percent)} is the usual aim.`,
      remedies: [{ words: "Use a shorter or a thicker wire." }],
      because: [load, current, ...lines.because, lines.drop],
      limit: cite("common-practice", "3 % where a steady voltage matters, 10 % elsewhere"),
      sources: [cite("bs-7671", "table 4Ab")],
    };
  },
});

/** What a two-wire run loses at a current. */
function droppedBy(
  current: Current,
  supply: Voltage,
  { gauge, length }: { readonly gauge: number; readonly length: Length },
) {
  const wire = wireSize.worked({ gauge });
  const warm = { temperature: warmCopper, stranding: flexibleCord };
  const resistance = wireResistance.worked({ area: wire.value.area, length, ...warm });
  const drop = cableDrop.worked({ current, oneWay: resistance.value, supply });
  return { because: [wire, resistance], drop };
}

const mains: Need<unknown, Mains> = measured(
  (input) => input.case.services.mains,
  "the circuit it is plugged into, and the cable to it",
  'ask whoever runs the place for breaker and voltage, read the gauge off the cable, and write the block "mains" into services',
);

const strip: Need<unknown, PlugStrip> = measured(
  (input) => input.case.services.mains?.strip,
  "rating and sockets of the plug strip",
  'read the amperes off its label, count its sockets, and write the block "plug strip" into mains',
);

/** What all loads draw together. */
function fullCurrent(input: ReviewInput, { voltage, powerFactor }: Mains) {
  const load = meanLoad.worked({ loads: loadsOf(input) });
  const current = loadCurrent.worked({ power: load.value.peak, supply: voltage, powerFactor });
  return { load, current };
}

/** A current in amperes, beside the rating that it is held against. */
function amperes(value: Current): string {
  return Current.show(value, { unit: "A", digits: 2 });
}

/** Whether the circuit carries all loads for hours. */
export const circuit: Question = question({
  id: "fit-out.power.circuit",
  about: powered("circuit", "mains"),
  ask: "Does the circuit carry all loads for hours?",
  tier: "safety",
  cautions: [socketCaution],
  needs: { mains },
  answer: (input, given) => {
    const { breaker } = given.mains;
    const { load, current } = fullCurrent(input, given.mains);
    const allowed = continuousCurrent.worked({ breaker });
    return {
      demand: amount(Current, "all loads on", current.value),
      capacity: amount(Current, "for three hours or more", allowed.value),
      facts: `All loads together draw ${amperes(current.value)}; a circuit of ${Current.show(breaker)} carries ${Current.show(allowed.value)} for hours, if nothing else is on it.`,
      remedies: [{ words: "Ask for a second circuit." }],
      because: [load, current, allowed],
      limit: cite("nec", "210.20(A)"),
    };
  },
});

/** Copper under load, and the usual aim. */
const warmCopper: Temperature = Temperature.of(75, "°C");
const allowedDrop: Ratio = ratio(0.03);

/** Whether enough voltage arrives. */
export const voltage: Question = question({
  id: "fit-out.power.cable",
  about: powered("cable", "mains"),
  ask: "Does enough voltage arrive at the end of the cable?",
  tier: "feel",
  cautions: [socketCaution],
  needs: { mains },
  answer: (input, given) => {
    const { gauge, length, voltage: supply } = given.mains;
    const { load, current } = fullCurrent(input, given.mains);
    const { because, drop } = droppedBy(current.value, supply, { gauge, length });
    const percent = { unit: "%", digits: 2 };
    return {
      demand: amount(Ratio, "voltage lost", drop.value.share),
      capacity: amount(Ratio, "at most", allowedDrop),
      facts: `The cable takes ${Ratio.show(drop.value.share, percent)} of the voltage; ${Ratio.show(allowedDrop, percent)} is the usual aim.`,
      remedies: [{ words: "Use a shorter or a thicker cable." }],
      because: [load, current, ...because, drop],
      limit: cite("nec", "210.19, informational note: 3 % in a branch circuit"),
      sources: [cite("bs-7671", "table 4Ab")],
    };
  },
});

/** Whether the plug strip carries all loads. */
export const stripRating: Question = question({
  id: "fit-out.power.strip",
  about: powered("strip", "mains"),
  ask: "Does the plug strip carry all loads?",
  tier: "safety",
  cautions: [socketCaution],
  needs: { mains, strip },
  answer: (input, given) => {
    const { rated } = given.strip;
    const { load, current } = fullCurrent(input, given.mains);
    return {
      demand: amount(Current, "all loads on", current.value),
      capacity: amount(Current, "the strip is rated for", rated),
      facts: `All loads together draw ${amperes(current.value)}; the strip is rated for ${Current.show(rated)}.`,
      remedies: [{ words: "Use a strip with a higher rating on a circuit of its own." }],
      because: [load, current],
      limit: cite("ul-1363", "marked rating; never one strip in another"),
    };
  },
});

/** Whether each load has a socket of its own. */
export const sockets: Question = question({
  id: "fit-out.power.sockets",
  about: powered("sockets", "mains"),
  ask: "Does each load have a socket of its own?",
  tier: "safety",
  cautions: [socketCaution],
  needs: { mains, strip },
  answer: (input, given) => {
    const loads = loadsOf(input);
    return {
      demand: amount(Count, "plugs", loads.length),
      capacity: amount(Count, "sockets of one strip", given.strip.sockets),
      facts: `${counted(loads.length, "thing draws", "things draw")} power, and the strip has ${counted(given.strip.sockets, "socket", "sockets")}.`,
      remedies: [{ words: "Use a longer strip: one strip plugged into another overloads the first." }],
      rests: "the things that draw power in the case file, and the sockets counted",
      because: [],
      limit: cite("ul-1363", "strips are not to be plugged into each other"),
    };
  },
});

/** A breaker trips at once at five times its rating or more; common practice, its curve decides. */
const instantTrip = 5;

/** The power of each load with what its first current is over its running one. */
const coldStarts = known(({ case: { contents } }) => {
  const loads = contents.filter(({ power = 0 }) => power > 0);
  const open = loads.filter(({ needs }) => needs.coldStart === undefined).map(({ name }) => name);
  if (open.length > 0)
    return {
      measure: `the first current of ${open.slice(0, 2).join(", ")}${open.length > 2 ? ` and ${open.length - 2} more` : ""}`,
      how: 'read the inrush current off the sheet of each, over its running current, and write "cold start" into its needs: 10 to 15 for filament lamps, up to 50 for lamp drivers',
    };
  return loads.flatMap(({ power, needs: { coldStart } }) =>
    power === undefined || coldStart === undefined ? [] : [{ power, factor: coldStart }],
  );
});

/** Whether the breaker stays in at the start. */
export const inrush: Question = question({
  id: "fit-out.power.inrush",
  about: powered("inrush", "mains"),
  ask: "Does the breaker stay in when all is switched on at once?",
  tier: "feel",
  cautions: [socketCaution],
  needs: { starts: coldStarts, mains },
  answer: (_, given) => {
    const { voltage: supply, powerFactor, breaker } = given.mains;
    const lines = given.starts.map(({ power, factor }) =>
      inrushCurrent.worked({ current: loadCurrent({ power, supply, powerFactor }), factor }),
    );
    const together = Current.si(lines.reduce((sum, { value }) => sum + value, 0));
    const allowed = Current.si(instantTrip * breaker);
    return {
      demand: amount(Current, "all switched on at once", together),
      capacity: amount(Current, "breaker trips at once at", allowed),
      facts: `Switched on together they draw ${Current.show(together, { digits: 2 })} for a moment; a breaker of ${Current.show(breaker)} may trip at ${Current.show(allowed)}.`,
      remedies: [{ words: "Switch on one after another." }],
      because: lines,
      limit: cite("common-practice", "instant trip at five times the rating"),
    };
  },
});
