import type { Sun } from "../../design/index.js";
import { Irradiance, TemperatureRise } from "../../inside/index.js";
import {
  type HeatLimit,
  heatLimit,
  type ReviewInput,
  sectionHeat,
  sunOnSection,
  warmSections,
} from "../../model/index.js";
import { Power, Temperature } from "../../quantity/index.js";
import { styleOf } from "../amount.js";
import type { Finding } from "../finding.js";
import { guarded, type Question, type Reply, unknown } from "../guarded.js";
import { heatCaution, warmthReply } from "./heat-reply.js";

const sunCaution =
  "A dark face in the sun burns a hand and softens contact adhesive; a shut case in a parked vehicle gets hotter still. The handbook counts on some wind: in still air reckon with half as much again. Shade it, and take batteries and instruments out.";

/** Whether each section with loads stays cool enough in the sun. */
export function sunFindings(input: ReviewInput): readonly Finding[] {
  const cautions = [heatCaution, sunCaution];
  return warmSections(input).map((section) => {
    const question: Question = {
      id: `fit-out.sun.${section}`,
      topic: "fit-out",
      subject: section,
      question: `Does ${section} stay cool enough in the sun?`,
    };
    const limit = heatLimit(input, section);
    if ("measure" in limit) return unknown(question, limit, cautions);
    const { sun } = input.case.services;
    if (!sun) {
      const how =
        'write the block "sun" into services: its facing, light or dark, and the strength, 900 W/m2 on a clear summer day or 0 W/m2 where it only ever stands in the shade';
      return unknown(question, { measure: "whether it stands in the sun", how }, cautions);
    }
    return guarded(question, () => ({ ...sunReply(input, section, limit, sun), cautions }), cautions);
  });
}

function sunReply(input: ReviewInput, section: string, limit: HeatLimit, sun: Sun): Reply {
  const lit = sunOnSection(input, section, sun, limit.outside);
  const heat = sectionHeat(input, section, lit.heat);
  const style = styleOf(input.case);
  const inside = Temperature.si(limit.outside + heat.rise);
  return warmthReply(
    input,
    limit,
    { ...heat, because: [...lit.because, ...heat.because] },
    {
      facts: `${Irradiance.show(sun.strength)} of sun make a ${sun.facing} facing up to ${Temperature.show(lit.face, style)} hot and send ${Power.show(lit.heat, { digits: 2 })} in: with its loads it gets ${TemperatureRise.show(heat.rise, { ...style, digits: 2 })} warmer than the air, ${Temperature.show(inside, style)}; the ${limit.name} may work in ${Temperature.show(limit.hottest, style)}.`,
      remedy: "Shade, a light facing, larger vents or a fan.",
    },
  );
}
