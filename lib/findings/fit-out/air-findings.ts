import type { Cooling } from "../../design/index.js";
import { AirFlow, Altitude, airHeat, airNeeded, TemperatureRise } from "../../inside/index.js";
import {
  draughtAt,
  fanThrough,
  type HeatLimit,
  heatLimit,
  outdoorAir,
  type ReviewInput,
  sectionHeat,
  ventsOf,
  wallsOf,
  warmSections,
} from "../../model/index.js";
import { Power, type Ratio } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { styleOf } from "../amount.js";
import { compared } from "../compared.js";
import type { Finding } from "../finding.js";
import { guarded, type Question, type Reply, unknown } from "../guarded.js";
import { heatCaution } from "./heat-reply.js";

/** Whether vents or a fan let through the air that carries the loads' heat away. */
export function airFindings(input: ReviewInput): readonly Finding[] {
  return input.case.services.cooling
    .filter(({ section }) => warmSections(input).includes(section))
    .map((cooling) => {
      const { section } = cooling;
      const question: Question = {
        id: `fit-out.air.${section}`,
        topic: "fit-out",
        subject: section,
        question: `Does enough air get through ${section}?`,
      };
      const limit = heatLimit(input, section);
      if ("measure" in limit) return unknown(question, limit, [heatCaution]);
      return guarded(question, () => airReply(input, cooling, limit), [heatCaution]);
    });
}

/** At the rise that is allowed the walls let some heat out; the air must carry the rest. */
function airReply(input: ReviewInput, cooling: Cooling, limit: HeatLimit): Reply {
  const air = outdoorAir(input);
  const allowed = TemperatureRise.si(limit.hottest - limit.outside);
  const vents = ventsOf(input, cooling);
  const through = cooling.fan
    ? fanThrough(input, cooling.fan, vents)
    : draughtAt(vents, limit.outside, allowed);
  const { power } = sectionHeat(input, cooling.section);
  const byWalls = Power.si(
    Math.min(power, wallsBeside(input, cooling.section, through.flow, air.thinness) * allowed),
  );
  const needed = airNeeded.worked({
    power: Power.si(power - byWalls),
    rise: allowed,
    thinness: air.thinness,
  });
  const style = { system: input.case.units, digits: 2 } as const;
  const mover = cooling.fan ? "its fan moves" : "warmth alone drives";
  return compared({
    kind: AirFlow,
    asked: ["air that carries the heat away", needed.value],
    there: [cooling.fan ? "air the fan moves" : "air that warmth drives", through.flow],
    facts: `Of ${Power.show(power, style)} the walls let out ${Power.show(byWalls, style)} once it is as warm inside as it may get; the rest takes ${AirFlow.show(needed.value, style)} of air ${placeWords(input)}, and ${mover} ${AirFlow.show(through.flow, style)} through the vents.`,
    remedy: "Larger vents, further apart, or a fan.",
    because: [...air.because, needed, ...through.because],
    cautions: [heatCaution],
    source: [cite("ashrae", "p. 25.13, eq. 37"), cite("heat-transfer", "heat balance of a stream")],
  });
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
