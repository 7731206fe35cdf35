import { TemperatureRise, warmWait } from "../../inside/index.js";
import {
  type HeatLimit,
  heatLimit,
  type ReviewInput,
  type SectionHeat,
  sectionHeat,
  warmSections,
} from "../../model/index.js";
import { Power, Temperature, Time } from "../../quantity/index.js";
import { styleOf } from "../amount.js";
import type { Finding } from "../finding.js";
import { guarded, type Question, type Reply, unknown } from "../guarded.js";
import { heatCaution, warmthReply } from "./heat-reply.js";

/** Whether the air of each section with loads stays cool enough for what works in it, in the shade. */
export function heatFindings(input: ReviewInput): readonly Finding[] {
  return warmSections(input).map((section) => {
    const question: Question = {
      id: `fit-out.heat.${section}`,
      topic: "fit-out",
      subject: section,
      question: `Does ${section} stay cool enough for what works in it, in the shade?`,
    };
    const limit = heatLimit(input, section);
    if ("measure" in limit) return unknown(question, limit, [heatCaution]);
    return guarded(question, () => heatReply(input, section, limit), [heatCaution]);
  });
}

function heatReply(input: ReviewInput, section: string, limit: HeatLimit): Reply {
  const heat = sectionHeat(input, section);
  const style = styleOf(input.case);
  const inside = Temperature.si(limit.outside + heat.rise);
  const from =
    heat.from === "log" ? "by your own log" : "reckoned from walls and vents: log it once to be sure";
  const soon = tooWarmAfter(heat, limit);
  const facts = [
    `${Power.show(heat.power, { digits: 3 })} on the mean warm it by ${TemperatureRise.show(heat.rise, { ...style, digits: 2 })} to ${Temperature.show(inside, style)} (${from}); the ${limit.name} may work in ${Temperature.show(limit.hottest, style)}.`,
    ...(soon ? [`Switched on cold it is that warm after ${Time.show(soon.value, { digits: 2 })}.`] : []),
  ].join(" ");
  const because = soon ? [...heat.because, soon] : heat.because;
  return warmthReply(
    input,
    limit,
    { ...heat, because },
    {
      facts,
      remedy: "Larger vents, a fan, or a lower duty.",
    },
  );
}

/** When a case that gets too warm in the end passes the limit. */
function tooWarmAfter(
  { rise, capacity, conductance }: SectionHeat,
  { outside, hottest }: HeatLimit,
): ReturnType<typeof warmWait.worked> | undefined {
  const allowed = hottest - outside;
  if (allowed <= 0 || allowed >= rise) return undefined;
  return warmWait.worked({ finalRise: rise, allowed: TemperatureRise.si(allowed), capacity, conductance });
}
