/** Tables of the other trials a builder makes. */

import { fitWarmUp, TemperatureRise } from "../../inside/index.js";
import type { Job } from "../../job/index.js";
import { characteristicStrength, tiltFriction, timePerPiece, twistedSamples } from "../../measure/index.js";
import { facingModuli } from "../../model/index.js";
import { type TableView, tableOf } from "../../page/index.js";
import { Force, Pressure, Ratio, ratio, showNumber, Time } from "../../quantity/index.js";
import { type BendResidual, residualsOf, spreadText } from "./bend-strips.js";

/** Twisted offcuts with the shear modulus each gives. */
export function twistTable({ measurements }: Job): TableView {
  return tableOf(
    twistedSamples(measurements.twists).samples,
    [
      { heading: "Offcut", cell: ({ sample }) => sample },
      { heading: "Shear modulus", cell: ({ modulus }) => spreadText(modulus, "GPa") },
      { heading: "Degrees of freedom", cell: ({ modulus }) => modulus.degreesOfFreedom },
    ],
    "Shear modulus in the plane of the sheet, from twisted offcuts. After ± is half the 95 % interval.",
  );
}

/** How far each reading of a twisted offcut lies from its own straight line. */
export function twistResiduals({ measurements }: Job, sample: string): readonly BendResidual[] {
  const rows = measurements.twists.filter((row) => row.sample === sample);
  return residualsOf(rows.map(({ load, drop }) => ({ load, sag: drop })));
}

/** Facings as bent strips, bare and faced, show them. */
export function facingModulusTable({ measurements, stock }: Job): TableView {
  return tableOf(
    facingModuli(stock.sheets, measurements),
    [
      { heading: "Strips of", cell: ({ sheet }) => sheet },
      { heading: "Cut", cell: ({ direction }) => `${direction} the grain` },
      { heading: "Faced on", cell: ({ faced }) => faced },
      { heading: "Modulus of the facing", cell: ({ modulus }) => Pressure.show(modulus.value, gigapascals) },
      {
        heading: "95 % interval",
        cell: ({ modulus: { interval } }) =>
          `${showNumber(Pressure.in(interval.low, "GPa"), 2)} to ${Pressure.show(interval.high, gigapascals)}`,
      },
    ],
    "What the facing adds: strips bent bare against strips bent faced",
  );
}

/** Things tilted on a board until they slid. */
export function tiltTable({ measurements }: Job): TableView {
  const pairs = [...new Set(measurements.tilts.map(({ what, on }) => `${what} on ${on}`))];
  return tableOf(
    pairs.map((pair) => ({
      pair,
      friction: measurements.tilts
        .filter(({ what, on }) => `${what} on ${on}` === pair)
        .map((row) => tiltFriction(row)),
    })),
    [
      { heading: "What on what", cell: ({ pair }) => pair },
      { heading: "Trials", cell: ({ friction }) => friction.length },
      { heading: "Lowest", cell: ({ friction }) => Ratio.show(ratio(Math.min(...friction)), { digits: 2 }) },
      {
        heading: "Mean",
        cell: ({ friction }) =>
          Ratio.show(ratio(friction.reduce((sum, one) => sum + one, 0) / friction.length), { digits: 2 }),
      },
    ],
    "Friction from a tilted board; count on the lowest",
  );
}

/** Work against the clock, a row a work and tool, hand beside powered. */
export function pieceTimes({ measurements }: Job): TableView {
  return tableOf(
    [...measurements.timings].sort((a, b) => a.work.localeCompare(b.work)),
    [
      { heading: "Work", cell: ({ work }) => work },
      { heading: "Tool", cell: ({ tool }) => tool },
      { heading: "A piece is a", cell: ({ unit }) => unit },
      { heading: "One takes", cell: (row) => Time.show(timePerPiece(row), { unit: "min", digits: 2 }) },
      { heading: "Timed", cell: ({ pieces }) => pieces },
    ],
    "Minutes a piece",
  );
}

/** Fasteners by how they were set, with the strength that 95 of 100 exceed. */
export function strengthTable({ measurements }: Job): TableView {
  const name = ({ fastener, sheet, washer, direction }: Job["measurements"]["pulls"][number]): string =>
    `${fastener} in ${sheet}, ${direction === "shear" ? "sheared" : `pulled, ${washer === "yes" ? "with" : "no"} washer`}`;
  const groups = [...new Set(measurements.pulls.map(name))].map((group) => ({
    group,
    loads: measurements.pulls.filter((row) => name(row) === group).map(({ load }) => load),
  }));
  return tableOf(
    groups,
    [
      { heading: "Fastener", cell: ({ group }) => group },
      { heading: "Tests", cell: ({ loads }) => loads.length },
      { heading: "Lowest", cell: ({ loads }) => newtons(Math.min(...loads)) },
      {
        heading: "95 of 100 hold",
        cell: ({ loads }) =>
          loads.length < 3 ? "pull at least 3" : newtons(characteristicStrength({ loads }).strength),
      },
    ],
    "Strength to count on: exceeded by 95 of 100, at 75 % confidence",
  );
}

function newtons(force: number): string {
  return Force.show(Force.si(force), { unit: "N", digits: 3 });
}

const gigapascals = { unit: "GPa", digits: 3 } as const;

/** What the log of thermometers in a closed box comes to, a row a section. */
export function warmUpTable({ measurements: { temperatures } }: Job): TableView {
  const sections = [...new Set(temperatures.map(({ section }) => section))];
  const fits = sections.flatMap((section) => {
    const rows = temperatures.filter((row) => row.section === section);
    const readings = rows.map(({ time, inside, outside }) => ({
      time,
      rise: TemperatureRise.si(inside - outside),
    }));
    return readings.length < 3 ? [] : [{ section, readings: readings.length, fit: fitWarmUp({ readings }) }];
  });
  return tableOf(
    fits,
    [
      { heading: "Section", cell: ({ section }) => section },
      { heading: "Readings", cell: ({ readings }) => readings },
      {
        heading: "Warmer in the end by",
        cell: ({ fit }) => `${kelvins(fit.finalRise)} ± ${kelvins(fit.riseWithin)}`,
      },
      {
        heading: "To 63 % of it in",
        cell: ({ fit }) => Time.show(fit.timeConstant, { unit: "min", digits: 2 }),
      },
    ],
    "A closed box with a known load inside, from its log; three readings at least",
  );
}

function kelvins(rise: TemperatureRise): string {
  return TemperatureRise.show(rise, { digits: 2 });
}
