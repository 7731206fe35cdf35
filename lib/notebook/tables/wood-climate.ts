/** What damp, heat and time do to the ply itself. */
import {
  durationFactor,
  equilibriumMoisture,
  propertyAtMoisture,
  temperatureFactor,
} from "../../material/index.js";
import { type TableView, tableOf } from "../../page/index.js";
import { Pressure, Ratio, ratio, type ShowStyle, Temperature } from "../../quantity/index.js";
import { Refusal } from "../../refusal.js";
import type { ClimateChange } from "./material.js";

/**
 * Green wood over dry wood: bending strength 17 600 G^1.25 over 25 700 G^1.25 psi, modulus 2.36 over 2.80 million G
 * psi; seen in an older Wood Handbook's regressions over all species.
 */
const greenOverDry = { strength: 17_600 / 25_700, stiffness: 2.36 / 2.8 } as const;

/** Drying tells below this moisture in most woods: Wood Handbook, from memory, sure. */
const turningPoint = ratio(0.25);

/** Moisture that the ply comes to before and after, and what it and the warmth leave of strength and stiffness. */
export function woodClimateTable(change: ClimateChange, style: ShowStyle): TableView {
  const states = [
    { when: "before", temperature: change.fromTemperature, humidity: change.fromHumidity },
    { when: "after", temperature: change.toTemperature, humidity: change.toHumidity },
  ];
  return tableOf(
    states.map((state) => ({ ...state, moisture: equilibriumMoisture(state) })),
    [
      { heading: "Air", cell: ({ when }) => when },
      {
        heading: "Climate",
        cell: ({ temperature, humidity }) =>
          `${Temperature.show(temperature, { ...style, digits: 2 })}, ${percent(humidity)}`,
      },
      { heading: "Moisture of the ply", cell: ({ moisture }) => percent(moisture) },
      { heading: "Strength by moisture", cell: ({ moisture }) => atMoisture("strength", moisture) },
      {
        heading: "Stiffness by moisture",
        cell: ({ moisture }) => atMoisture("stiffness", moisture),
      },
      {
        heading: "Strength, kept warm",
        cell: ({ temperature }) => keptWarm("strength", temperature),
      },
      {
        heading: "Stiffness, kept warm",
        cell: ({ temperature }) => keptWarm("stiffness", temperature),
      },
    ],
    "The ply in that air: shares of its value at 12 % moisture and below 100 °F (38 °C), after weeks in it",
  );
}

/** Share of the value at 12 % moisture. */
function atMoisture(property: "strength" | "stiffness", moisture: Ratio): string {
  const dry = Pressure.of(100, "MPa");
  const green = Pressure.si(dry * greenOverDry[property]);
  return withinRange(() => Ratio.si(propertyAtMoisture({ dry, green, moisture, turningPoint }) / dry));
}

function keptWarm(property: "strength" | "stiffness", temperature: Temperature): string {
  return withinRange(() => temperatureFactor({ property, temperature }));
}

/** A rule says nothing beyond its range. */
function withinRange(share: () => Ratio): string {
  try {
    return percent(share());
  } catch (error) {
    if (error instanceof Refusal) return "beyond its rule";
    throw error;
  }
}

/** How much more a brief load may be than one of ten years. */
export function durationTable(): TableView {
  const durations = ["permanent", "ten years", "two months", "seven days", "ten minutes", "impact"] as const;
  return tableOf(
    durations,
    [
      { heading: "The load stays", cell: (duration) => duration },
      { heading: "It may be", cell: (duration) => percent(durationFactor({ duration })) },
    ],
    "Allowable load on wood and its fasteners by how long it stays; never on stiffness",
  );
}

function percent(share: Ratio): string {
  return Ratio.show(share, { unit: "%", digits: 3 });
}
