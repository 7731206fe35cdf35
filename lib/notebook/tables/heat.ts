/** Temperatures and ways out of the heat, for the notebook about what rides inside. */

import { HeatConductance, TemperatureRise, warmUp } from "../../inside/index.js";
import type { Job } from "../../job/index.js";
import { dayOfHeat, heatLimit, heatPaths, sectionHeat } from "../../model/index.js";
import { type TableView, tableOf } from "../../page/index.js";
import { hour, Power, Ratio, Temperature, Time } from "../../quantity/index.js";
import type { Limit } from "../chart-parts.js";

/** One quarter of an hour, in the case's own degrees. */
export interface DayRow {
  /** Hour of the day. */
  readonly hour: number;
  /** Temperature, in the case's own degrees. */
  readonly degrees: number;
  /** Where it is that warm. */
  readonly where: "inside" | "inside, in the sun" | "outside";
}

/** Hours of a working day. */
export interface WorkingDay {
  /** Hour at which work begins. */
  readonly from: number;
  /** Hour at which work ends. */
  readonly until: number;
  /** How much cooler the night is, in the case's own degrees. */
  readonly cooler: number;
}

/**
 * Air inside and outside over a day whose hottest hour is that of the services, or 25 °C where nobody said; in the sun
 * too where the services name one.
 */
export function dayRows(job: Job, section: string, { from, until, cooler }: WorkingDay): readonly DayRow[] {
  const degree = degreeUnit(job.case.units);
  const { hottest = Temperature.of(25, "°C"), sun } = job.case.services;
  const readings = dayOfHeat(job, section, {
    from: hour(from),
    until: hour(until),
    hottest,
    swing: degree === "°F" ? (cooler * 5) / 9 : cooler,
  });
  const line = (where: DayRow["where"], of: "inside" | "inSun" | "outside"): readonly DayRow[] =>
    readings.map((reading) => ({
      hour: Time.in(reading.time, "h"),
      degrees: Temperature.in(reading[of], degree),
      where,
    }));
  return [
    ...line("inside", "inside"),
    ...(sun && sun.strength > 0 ? line("inside, in the sun", "inSun") : []),
    ...line("outside", "outside"),
  ];
}

/** The warmest air that the things of a section may work in, as a limit of a chart; none where nobody said. */
export function dayLimits(job: Job, section: string): readonly Limit[] {
  const limit = heatLimit(job, section);
  if ("measure" in limit) return [];
  const value = Temperature.in(limit.hottest, degreeUnit(job.case.units));
  return [{ value, label: `most for the ${limit.name}` }];
}

/** The unit a case's temperatures are charted in. */
export function degreeUnit(units: "inch" | "metric"): "°F" | "°C" {
  return units === "inch" ? "°F" : "°C";
}

/** A point of a log. */
export interface LogRow {
  /** Time since the start, min. */
  readonly minutes: number;
  /** Above the air outside, in the chart's unit. */
  readonly rise: number;
}

/** A section's log with the curve through it. */
export interface WarmUpChart {
  /** Of a difference. */
  readonly unit: "F°" | "K";
  /** The builder's log. */
  readonly rows: readonly LogRow[];
  /** The curve: minutes and rise. */
  readonly line: readonly { readonly x: number; readonly y: number }[];
}

/** The builder's log of a section and the warm-up curve through it; none without a log. */
export function warmUpChart(job: Job, section: string): WarmUpChart | undefined {
  const log = job.measurements.temperatures.filter((row) => row.section === section);
  const heat = sectionHeat(job, section);
  const [first] = log;
  if (!first || heat.from !== "log") return undefined;
  const unit = job.case.units === "inch" ? "F°" : "K";
  const last = Math.max(...log.map(({ time }) => time));
  const finalRise = TemperatureRise.si(first.power / heat.conductance);
  const shown = (rise: number): number => TemperatureRise.in(TemperatureRise.si(rise), unit);
  return {
    unit,
    rows: log.map(({ time, inside, outside }) => ({
      minutes: Time.in(time, "min"),
      rise: shown(inside - outside),
    })),
    line: Array.from({ length: 41 }, (_, i) => {
      const time = Time.si((last * i) / 40);
      return { x: Time.in(time, "min"), y: shown(warmUp({ ...heat, finalRise, time })) };
    }),
  };
}

/** Whether nothing warms a section: it has neither a load that draws power nor sun on it. */
export function nothingWarms(job: Job, section: string): boolean {
  const { sun } = job.case.services;
  return !(sectionHeat(job, section).power > 0) && !(sun && sun.strength > 0);
}

/** By which way how much of the heat leaves a section once it is warm. */
export function heatTable(job: Job, section: string): TableView {
  const paths = heatPaths(job, section);
  const whole = paths.reduce((sum, { conductance }) => sum + conductance, 0);
  const { power } = sectionHeat(job, section);
  const share = (conductance: HeatConductance): Ratio => Ratio.si(conductance / whole);
  return tableOf(
    paths,
    [
      { heading: "Way out", cell: ({ way }) => way },
      {
        heading: "For each degree",
        align: "right",
        cell: ({ conductance }) => HeatConductance.show(conductance, { digits: 2 }),
      },
      {
        heading: "Share",
        align: "right",
        cell: ({ conductance }) => Ratio.show(share(conductance), { unit: "%", digits: 2 }),
      },
      {
        heading: "Heat",
        align: "right",
        cell: ({ conductance }) => Power.show(Power.si(power * share(conductance)), { unit: "W", digits: 2 }),
      },
    ],
    `How ${Power.show(power, { digits: 3 })} leave ${section}`,
  );
}
