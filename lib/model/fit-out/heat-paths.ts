import { airHeat, HeatConductance } from "../../inside/index.js";
import { Temperature } from "../../quantity/index.js";
import type { ReviewInput } from "../review-input.js";
import { fanThrough } from "./cooled.js";
import { draughtAt } from "./draught.js";
import { type SectionHeat, sectionHeat } from "./heat.js";
import { outdoorAir } from "./outdoors.js";
import { ventsOf } from "./vents-of.js";
import { freeFaces, wallOf } from "./wall-heat.js";

/** One way that heat takes out of a section. */
export interface HeatPath {
  /** As a table names it. */
  readonly way: string;
  readonly conductance: HeatConductance;
}

/**
 * Ways out of the heat of a section once it is warm: each wall, the air, and what the builder's log shows beyond them.
 *
 * @throws RangeError where a formula refuses its inputs
 */
export function heatPaths(input: ReviewInput, section: string): readonly HeatPath[] {
  const heat = sectionHeat(input, section);
  const reckoned = [
    ...freeFaces(input, section).map((panel) => ({
      way: `${panel.face ?? panel.id} wall`,
      conductance: wallOf(panel).value,
    })),
    ...airPath(input, section, heat),
  ];
  const rest = heat.conductance - reckoned.reduce((sum, { conductance }) => sum + conductance, 0);
  const beyond = { way: "beyond that, by the log", conductance: HeatConductance.si(rest) };
  return heat.from === "log" && rest > 0 ? [...reckoned, beyond] : reckoned;
}

function airPath(input: ReviewInput, section: string, { rise }: SectionHeat): readonly HeatPath[] {
  const cooling = input.case.services.cooling.find((one) => one.section === section);
  if (!cooling || !(rise > 0)) return [];
  const vents = ventsOf(input, cooling);
  const { flow } = cooling.fan
    ? fanThrough(input, cooling.fan, vents)
    : draughtAt(vents, input.case.services.hottest ?? Temperature.of(25, "°C"), rise);
  const conductance = HeatConductance.si(airHeat * outdoorAir(input).thinness * flow);
  return [{ way: cooling.fan ? "air of the fan" : "air through the vents", conductance }];
}
