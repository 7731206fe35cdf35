/** Whether each section with loads stays cool enough, in shade and sun, and enough air gets through it. */
import type { Content, ContentPart, Cooling, Sun } from "../../design/index.js";
import type { WorkedLine } from "../../formula.js";
import {
  AirFlow,
  Altitude,
  airHeat,
  airNeeded,
  Irradiance,
  TemperatureRise,
  warmWait,
} from "../../inside/index.js";
import {
  draughtAt,
  fanThrough,
  type HeatLimit,
  heatLimit,
  outdoorAir,
  type RatioInterval,
  type ReviewInput,
  roomAt,
  type SectionHeat,
  sectionHeat,
  sunOnSection,
  ventsOf,
  wallsOf,
  warmSections,
} from "../../model/index.js";
import { Length, Power, type Ratio, Temperature, Time } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { amount, styleOf } from "../amount.js";
import { heatFigure } from "../figures/heat-figures.js";
import { type Answer, type Question, question, type Subjects } from "../question.js";
import { each, eachContentPart, known, measured, says, where } from "../subjects.js";

const heatCaution =
  "Heat that cannot get out starts fires. Keep chargers and batteries out of a shut case, and put nothing in front of the vents. Fit a thermal cut-out on whatever may run unwatched.";

const makersLimit = cite("common-practice", "warmest air that the maker allows");

const eachWarmSection: Subjects<string> = where(
  says("services"),
  each(warmSections, (section) => section),
);

const limitNeed = known((input, section: string) => heatLimit(input, section));

/** How warm it gets, and what is said of it. */
interface Warmth {
  /** Over the air outside. */
  readonly heat: Pick<SectionHeat, "rise" | "riseWithin">;
  /** How it was worked out. */
  readonly because: readonly WorkedLine[];
  /** The first sentences. */
  readonly facts: string;
  /** What would help. */
  readonly remedy: string;
}

/** Judges a rise by what the tenderest thing stands. */
function warmed(limit: HeatLimit, { heat, because, facts, remedy }: Warmth): Answer {
  const allowed = limit.hottest - limit.outside;
  return {
    demand: amount(TemperatureRise, "rise over the air outside", heat.rise),
    capacity: amount(TemperatureRise, `rise that the ${limit.name} allows`, TemperatureRise.si(allowed)),
    facts,
    remedies: [{ words: remedy }],
    interval: heat.riseWithin === undefined ? undefined : spreadOf(heat.rise, heat.riseWithin, allowed),
    because,
    limit: makersLimit,
    sources: [cite("heat-transfer", "heat balance")],
  };
}

/** "the inverter allows 27 F°, up to 122 °F". */
function allowedRise({ case: build }: ReviewInput, { name, outside, hottest }: HeatLimit): string {
  const style = styleOf(build);
  const allowed = TemperatureRise.show(TemperatureRise.si(hottest - outside), { ...style, digits: 2 });
  return `the ${name} allows ${allowed}, up to ${Temperature.show(hottest, style)}`;
}

function spreadOf(rise: number, within: number, allowed: number): RatioInterval {
  return {
    low: (rise - within) / allowed,
    high: (rise + within) / allowed,
    shares: [{ input: "temperature log", share: 1 }],
  };
}

/** No vent helps where the air outside is too warm itself. */
function unlessTooWarm(input: ReviewInput, limit: HeatLimit, answer: () => Answer): Answer {
  const { outside, hottest, name } = limit;
  if (hottest > outside) return answer();
  const style = styleOf(input.case);
  return {
    plainNo: true,
    facts: `The air outside, ${Temperature.show(outside, style)}, is already as warm as the ${name} may work in, ${Temperature.show(hottest, style)}. There no vent helps, only a cooler place.`,
    demand: amount(Temperature, "air outside", outside),
    capacity: amount(Temperature, `warmest air for the ${name}`, hottest),
    because: [],
    limit: makersLimit,
  };
}

/** Whether the air of each section with loads stays cool enough for what works in it, in the shade. */
export const shade: Question = question({
  id: "fit-out.heat",
  about: eachWarmSection,
  ask: (section) => `Does ${section} stay cool enough for what works in it, in the shade?`,
  tier: "safety",
  cautions: [heatCaution],
  needs: { limit: limitNeed },
  answer: (input, { limit }, section) =>
    unlessTooWarm(input, limit, () => {
      const heat = sectionHeat(input, section);
      const style = styleOf(input.case);
      const inside = Temperature.si(limit.outside + heat.rise);
      const from =
        heat.from === "log" ? "by your own log" : "worked out from walls and vents; log it once to be sure";
      const soon = tooWarmAfter(heat, limit);
      const facts = [
        `Its loads, ${Power.show(heat.power, { digits: 3 })} on average, warm it by ${TemperatureRise.show(heat.rise, { ...style, digits: 2 })}; ${allowedRise(input, limit)}. That makes ${Temperature.show(inside, style)} inside, ${from}.`,
        ...(soon ? [`Switched on cold, it is too warm after ${Time.show(soon.value, { digits: 2 })}.`] : []),
      ].join(" ");
      const because = soon ? [...heat.because, soon] : heat.because;
      return warmed(limit, {
        heat,
        because,
        facts,
        remedy: "Cut larger vents, fit a fan, or keep it switched on for less of the time.",
      });
    }),
  figure: (input, section) => heatFigure(input, section),
});

/** When a case that gets too warm in the end passes the limit. */
function tooWarmAfter(
  { rise, capacity, conductance }: SectionHeat,
  { outside, hottest }: HeatLimit,
): ReturnType<typeof warmWait.worked> | undefined {
  const allowed = hottest - outside;
  if (allowed <= 0 || allowed >= rise) return undefined;
  return warmWait.worked({ finalRise: rise, allowed: TemperatureRise.si(allowed), capacity, conductance });
}

/** Whether each section with loads stays cool enough in the sun. */
export const sun: Question = question({
  id: "fit-out.sun",
  about: eachWarmSection,
  ask: (section) => `Does ${section} stay cool enough in the sun?`,
  tier: "safety",
  cautions: [
    heatCaution,
    "A dark face in the sun burns a hand and softens contact adhesive; a shut case in a parked vehicle gets hotter still. The handbook counts on some wind: in still air reckon with half as much again. Shade it, and take batteries and instruments out.",
  ],
  needs: {
    limit: limitNeed,
    shining: measured(
      (input) => input.case.services.sun,
      "the sun that it stands in",
      'write the block "sun" into services: its facing, light or dark, and the strength, 900 W/m2 on a clear summer day or 0 W/m2 where it only ever stands in the shade',
    ),
  },
  answer: (input, { limit, shining }, section) =>
    unlessTooWarm(input, limit, () => lit(input, section, limit, shining)),
  figure: (input, section) => {
    const strength = input.case.services.sun?.strength;
    const words = strength ? `sun, ${Irradiance.show(strength, styleOf(input.case))}` : undefined;
    return heatFigure(input, section, words);
  },
});

function lit(input: ReviewInput, section: string, limit: HeatLimit, shining: Sun): Answer {
  const { strength, facing } = shining;
  const falling = sunOnSection(input, section, shining, limit.outside);
  const heat = sectionHeat(input, section, falling.heat);
  const style = styleOf(input.case);
  const inside = Temperature.si(limit.outside + heat.rise);
  const sunWords =
    strength === 0
      ? "No sun falls on it where it stands."
      : `Sun of ${Irradiance.show(strength, style)} makes its ${facing} face up to ${Temperature.show(falling.face, style)} hot and sends ${Power.show(falling.heat, { digits: 2 })} in.`;
  return warmed(limit, {
    heat,
    because: [...falling.because, ...heat.because],
    facts: `With its loads it gets ${TemperatureRise.show(heat.rise, { ...style, digits: 2 })} warmer than the air; ${allowedRise(input, limit)}. That makes ${Temperature.show(inside, style)} inside. ${sunWords}`,
    remedy: "Shade it, use a light facing, cut larger vents, or fit a fan.",
  });
}

/** Whether vents or a fan let through the air that carries the loads' heat away. */
export const air: Question = question({
  id: "fit-out.air",
  about: each(
    (input) => input.case.services.cooling.filter(({ section }) => warmSections(input).includes(section)),
    ({ section }) => section,
  ),
  ask: ({ section }) => `Does enough air get through ${section}?`,
  tier: "safety",
  cautions: [heatCaution],
  needs: { limit: known((input, { section }: Cooling) => heatLimit(input, section)) },
  answer: (input, { limit }, cooling) => unlessTooWarm(input, limit, () => aired(input, cooling, limit)),
  figure: (input, { section }) => heatFigure(input, section),
});

/** At the rise that is allowed the walls let some heat out; the air must carry the rest. */
function aired(input: ReviewInput, cooling: Cooling, limit: HeatLimit): Answer {
  const { section, fan } = cooling;
  const outdoors = outdoorAir(input);
  const allowed = TemperatureRise.si(limit.hottest - limit.outside);
  const vents = ventsOf(input, cooling);
  const through = fan ? fanThrough(input, fan, vents) : draughtAt(vents, limit.outside, allowed);
  const { power } = sectionHeat(input, section);
  const { thinness } = outdoors;
  const wallHeat = wallsBeside(input, section, through.flow, thinness) * allowed;
  const byWalls = Power.si(Math.min(power, wallHeat));
  const needed = airNeeded.worked({ power: Power.si(power - byWalls), rise: allowed, thinness });
  const style = { system: input.case.units, digits: 2 } as const;
  const mover = fan ? "its fan moves" : "warmth alone drives";
  return {
    demand: amount(AirFlow, "air that carries the heat away", needed.value),
    capacity: amount(AirFlow, fan ? "air the fan moves" : "air that warmth drives", through.flow),
    facts: `It takes ${AirFlow.show(needed.value, style)} of air ${placeWords(input)}, and ${mover} ${AirFlow.show(through.flow, style)} through the vents. Once it is as warm inside as it may get, the walls let out ${Power.show(byWalls, style)} of ${Power.show(power, style)}; that air carries the rest.`,
    remedies: [{ words: "Cut larger vents further apart, or fit a fan." }],
    because: [...outdoors.because, needed, ...through.because],
    limit: cite("ashrae", "p. 25.13, eq. 37"),
    sources: [cite("heat-transfer", "heat balance of a stream")],
  };
}

/** How high the case works: "at 900 m". */
function placeWords({ case: { services, units } }: ReviewInput): string {
  const { altitude } = services;
  return altitude === undefined ? "near the sea" : `at ${Altitude.show(altitude, styleOf({ units }))}`;
}

/** What the walls pass for each degree: by the log, which counts walls and air together, or reckoned. */
function wallsBeside(input: ReviewInput, section: string, flow: AirFlow, thinness: Ratio): number {
  const { from, conductance } = sectionHeat(input, section);
  return from === "log" ? Math.max(0, conductance - airHeat * thinness * flow) : wallsOf(input, section);
}

/** What hangs from the top and draws power. */
function isLamp({ held, power }: Content): boolean {
  return held.by === "hung" && (power ?? 0) > 0;
}

/** Whether lamps that hang from the top, and whatever else wants it, keep free of what is below them. */
export const clearance: Question = question({
  id: "fit-out.clear",
  about: eachContentPart((content) => content.needs.keepClear !== undefined || isLamp(content)),
  ask: ({ content }) => `Is what lies under the ${content.name} far enough from its heat?`,
  tier: "safety",
  cautions: [
    "A lamp close to anything that burns sets it alight: keep the distance on its label, nothing over it, and cold before it is packed.",
  ],
  needs: {
    keepClear: measured(
      (_, { content }: ContentPart) => content.needs.keepClear,
      ({ content }) => `how much free way the ${content.name} wants`,
      'read the distance to lit things off its label (a lamp with rays and metres) and write "keep clear" into its needs',
    ),
  },
  answer: (input, { keepClear }, { content, box }) => {
    const { section, name } = content;
    const room = roomAt(input, { section, name, box }, "bottom");
    const style = styleOf(input.case);
    return {
      demand: amount(Length, "free way its label wants", keepClear),
      capacity: amount(Length, "free below it", room),
      facts: `It hangs ${Length.show(room, style)} above what is under it; its label wants ${Length.show(keepClear, style)}.`,
      remedies: [{ words: "Use a cooler lamp, or move what stands under it." }],
      rests: "the places of things in the case file, and the distance on the label",
      because: [],
      limit: cite("iec-60598", "marking, least distance to lit things"),
    };
  },
});
