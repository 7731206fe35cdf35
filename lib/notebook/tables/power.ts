/** Loads, currents and run time, for the notebook about what rides inside. */

import { batteryTime, inrushCurrent, loadCurrent } from "../../inside/index.js";
import type { Job } from "../../job/index.js";
import { batteryUnder, loadsOf } from "../../model/index.js";
import { type TableView, tableOf } from "../../page/index.js";
import { Current, Power, Ratio, ratio, Time } from "../../quantity/index.js";

/** How long the battery lasts under one load. */
export interface RunRow {
  readonly load: number;
  readonly hours: number;
}

/** Run time from a quarter of all loads to twice all of them; empty without a battery or a load. */
export function runRows(job: Job): readonly RunRow[] {
  const { battery } = job.case.services;
  const all = loadsOf(job).reduce((sum, { power }) => sum + power, 0);
  if (!battery || !(all > 0)) return [];
  return Array.from({ length: 15 }, (_, i) => {
    const load = Power.si((all * (i + 2)) / 8);
    return { load, hours: Time.in(batteryTime(batteryUnder(battery, load)).time, "h") };
  });
}

/** Every load with its duty, and the current it draws from the socket, running and at the first moment. */
export function loadsTable(job: Job): TableView {
  const { mains } = job.case.services;
  const running = (power: Power): Current | undefined =>
    mains && loadCurrent({ power, supply: mains.voltage, powerFactor: mains.powerFactor });
  const loads = job.case.contents.flatMap(({ name, power, duty = ratio(1), needs }) =>
    power === undefined || !(power > 0) ? [] : [{ name, power, duty, factor: needs.coldStart }],
  );
  const amperes = (current: Current | undefined): string =>
    current === undefined ? "not known" : Current.show(current, { unit: "A", digits: 2 });
  return tableOf(
    loads,
    [
      { heading: "Thing", cell: ({ name }) => name },
      { heading: "Draws", align: "right", cell: ({ power }) => Power.show(power, { unit: "W", digits: 3 }) },
      { heading: "Share of the time", align: "right", cell: ({ duty }) => Ratio.show(duty, { unit: "%" }) },
      {
        heading: "On the mean",
        align: "right",
        cell: ({ power, duty }) => Power.show(Power.si(power * duty), { unit: "W", digits: 3 }),
      },
      { heading: "From the socket", align: "right", cell: ({ power }) => amperes(running(power)) },
      {
        heading: "At switching on",
        align: "right",
        cell: ({ power, factor }) => {
          const current = running(power);
          return amperes(
            current === undefined || factor === undefined ? undefined : inrushCurrent({ current, factor }),
          );
        },
      },
    ],
    "What draws power",
  );
}
