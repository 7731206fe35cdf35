/** What comes of measurements, in sentences, and how far each reading is off: the fits that the case's answers rest on. */
import type { Design } from "../../design/index.js";
import {
  type BendReading,
  type BentStrip,
  bentStrips,
  characteristicStrength,
  kerfFromCuts,
  lineFit,
  measuredMean,
  outliers,
  residuals,
  sagOverLoad,
  sheetDensity,
  soundHysteresis,
  spreadTrialRate,
} from "../../measure/index.js";
import { sheetModuli } from "../../model/index.js";
import {
  AreaDensity,
  Density,
  Force,
  Length,
  Pressure,
  Ratio,
  ratio,
  type ShowStyle,
} from "../../quantity/index.js";
import { Refusal } from "../../refusal.js";
import type { MeasuringName } from "./view.js";

/** One row as a reading. */
export interface Reading {
  /** How far it is from what the others say; empty where nothing can be said. */
  readonly off: string;
  /** Whether it does not belong to the others. */
  readonly odd: boolean;
}

/** What comes of a table. */
export interface Readings {
  /** One a row, in their order. */
  readonly readings: readonly Reading[];
  /** In sentences, of what was measured last first. */
  readonly told: readonly string[];
}

/** What comes of a table of a case. */
export function readingsOf(name: MeasuringName, design: Design): Readings {
  const { weights, spreads, pulls, kerfs } = design.measurements;
  const style = { system: design.case.units, digits: 3 };
  switch (name) {
    case "bends":
      return bendReadings(design, style);
    case "weights":
      return inGroups(
        weights,
        ({ material }) => material,
        (row) => sheetDensity(row).density,
        meanTold((value) => Density.show(Density.si(value), style), "offcut"),
      );
    case "spreads":
      return inGroups(
        spreads,
        ({ adhesive }) => adhesive,
        spreadTrialRate,
        meanTold(
          (value) => `${AreaDensity.show(AreaDensity.si(value), { unit: "g/m2", digits: 3 })} a face`,
          "trial",
        ),
      );
    case "pulls":
      return inGroups(
        pulls,
        ({ fastener, sheet, washer, direction }) =>
          `${fastener} in ${sheet}, ${direction}${washer === "yes" ? ", with a washer" : ""}`,
        ({ load }) => load,
        (group, loads) => pullTold(group, loads, style),
      );
    case "kerfs":
      return inGroups(
        kerfs,
        ({ blade }) => blade,
        kerfFromCuts,
        meanTold((value) => Length.show(Length.si(value), { unit: "mm", digits: 3 }), "board"),
      );
  }
}

/** Readings of one thing each, told by groups. */
function inGroups<Row>(
  rows: readonly Row[],
  groupOf: (row: Row) => string,
  figureOf: (row: Row) => number,
  tell: (group: string, values: readonly number[]) => readonly string[],
): Readings {
  const values = rows.map(figureOf);
  const groups = rows.map(groupOf);
  const told: string[] = [];
  const readings: Reading[] = rows.map(() => ({ off: "", odd: false }));
  for (const group of new Set(groups.toReversed())) {
    const places = groups.flatMap((one, i) => (one === group ? [i] : []));
    const own = places.map((i) => values[i] ?? 0);
    const odd = oddPlaces(own);
    const middle = own.reduce((sum, one) => sum + one, 0) / own.length;
    places.forEach((place, i) => {
      const share = (own[i] ?? 0) / middle - 1;
      readings[place] = { off: own.length > 1 ? offMean(share) : "", odd: odd.includes(i) };
    });
    told.push(...tell(group, own), ...oddTold(group, odd));
  }
  return { readings, told };
}

function offMean(share: number): string {
  return `${Ratio.show(ratio(Math.abs(share)), { unit: "%", digits: 2 })} ${share < 0 ? "below" : "above"} the mean`;
}

/** Readings that a line through the others, in the order they were taken, would not expect. */
function oddPlaces(values: readonly number[]): readonly number[] {
  const points = { x: values.map((_, i) => ratio(i)), y: values.map((one) => ratio(one)) };
  try {
    return outliers(points, lineFit(points));
  } catch (error) {
    if (error instanceof Refusal) return [];
    throw error;
  }
}

function oddTold(group: string, odd: readonly number[]): readonly string[] {
  return odd.map((i) => `Take reading ${i + 1} of ${group} again: it does not belong to the others.`);
}

function meanTold(show: (value: number) => string, one: string) {
  return (group: string, values: readonly number[]): readonly string[] => {
    const [first = 0] = values;
    if (values.length === 1)
      return [`${group}: ${show(first)}. It is from one ${one}: another one tells how far it scatters.`];
    const { mean, interval } = measuredMean(values.map((value) => ratio(value)));
    return [
      `${group}: ${show(mean)}, between ${show(interval.low)} and ${show(interval.high)}, from ${values.length} ${one}s.`,
    ];
  };
}

function pullTold(group: string, loads: readonly number[], style: ShowStyle): readonly string[] {
  const show = (load: number): string => Force.show(Force.si(load), style);
  try {
    const { strength, median } = characteristicStrength({ loads: loads.map((one) => Force.si(one)) });
    return [
      `${group}: ${show(strength)} to count on. Half of ${loads.length} tests hold more than ${show(median)}.`,
    ];
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return [`${group}: nothing to count on yet, ${error.message.replace(/^[^:]*: /, "")}.`];
  }
}

/** Strips with their lines, what cannot be fitted, and what the case's answers use of them. */
function bendReadings({ measurements, stock }: Design, style: ShowStyle): Readings {
  const { bends } = measurements;
  const { strips, problems } = bentStrips(bends);
  const byName = new Map(strips.map((one) => [one.strip, one]));
  const readings = bends.map((row): Reading => {
    const strip = byName.get(row.strip);
    if (!strip) return { off: "", odd: false };
    const own = bends.filter((one) => one.strip === row.strip);
    const at = own.indexOf(row);
    const [off = 0] = residuals(sagOverLoad(own), strip.fit).slice(at);
    const { line = -1 } = row as BendReading;
    return { off: `${fine(Math.abs(off))} off the line`, odd: strip.oddLines.includes(line) };
  });
  const tested = stock.sheets.filter(({ name }) => bends.some(({ sheet }) => sheet === name));
  const used = tested.flatMap((sheet) => {
    const moduli = sheetModuli(sheet, measurements);
    return (["along", "across"] as const).flatMap((way) => {
      const { from, modulus, strips: count } = moduli[way];
      return from === "measured"
        ? [
            `Answers use ${Pressure.show(modulus, style)} ${way} the grain of ${sheet.name}, from ${count} strips.`,
          ]
        : [];
    });
  });
  return {
    readings,
    told: [
      ...strips.toReversed().flatMap((one) => stripTold(one, style)),
      ...problems.map(
        ({ value, row, expected }) => `${value ?? ""}, row ${row ?? ""}: expected ${expected}.`,
      ),
      ...used,
    ],
  };
}

/** In millimetres, as gauges have them. */
function fine(length: number): string {
  return Length.show(Length.si(length), { unit: "mm", digits: 2 });
}

function stripTold(strip: BentStrip, style: ShowStyle): readonly string[] {
  const { modulus, fit, oddLines, hysteresis } = strip;
  const show = (value: Pressure): string => Pressure.show(value, style);
  const { low, high } = modulus.interval;
  return [
    `${strip.strip}: ${show(modulus.value)}, between ${show(low)} and ${show(high)}. Its readings scatter by ${fine(fit.residualDeviation)}.`,
    ...oddLines.map((line) => `Read row ${line} again: it does not belong to the line of ${strip.strip}.`),
    ...(hysteresis !== undefined && hysteresis > soundHysteresis
      ? [
          `${strip.strip} sags ${Ratio.show(hysteresis, { unit: "%", digits: 2 })} more on the way back: look at rests and gauge.`,
        ]
      : []),
  ];
}
