/** What rides inside: cushions, loads, run time and platforms. */
import { glueAllows, styleOf } from "../../findings/index.js";
import { batteryTime, gluePull, inrushCurrent, loadCurrent, platformPull } from "../../inside/index.js";
import type { Job } from "../../job/index.js";
import {
  batteryUnder,
  curveFor,
  type Drop,
  dropOf,
  handlingsOf,
  loadsOf,
  type ProtectedOrRemoved,
  protectedOrRemoved,
  sectionBalance,
} from "../../model/index.js";
import { staticStress } from "../../moving/index.js";
import { type TableView, tableOf } from "../../page/index.js";
import {
  Area,
  Current,
  Force,
  Length,
  Mass,
  Moment,
  Power,
  Pressure,
  Ratio,
  ratio,
  Time,
} from "../../quantity/index.js";
import { Refusal } from "../../refusal.js";
import { lengthUnit } from "./chart-units.js";
import { mostWanting, tallySentence } from "./tally.js";

/** Every content: where, how heavy, how held, what it draws. */
export function contentsTable({ case: description }: Job): TableView {
  const style = styleOf(description);
  return tableOf(
    description.contents,
    [
      { heading: "Thing", cell: ({ name }) => name },
      { heading: "In", cell: ({ section }) => section },
      { heading: "Mass", cell: ({ mass }) => Mass.show(mass, style) },
      { heading: "Held by", cell: ({ held }) => held.by },
      { heading: "Draws", cell: ({ power }) => (power === undefined ? "" : Power.show(power)) },
      {
        heading: "Share of the time",
        cell: ({ duty }) => (duty === undefined ? "" : Ratio.show(duty, { unit: "%" })),
      },
      {
        heading: "Stands",
        cell: ({ needs }) => (needs.fragility === undefined ? "" : `${Ratio.show(needs.fragility)} g`),
      },
    ],
    "What rides inside",
  );
}

/** Every fragile content, left in the case or carried by itself, by how roughly it is handled. */
export function protectedTable(job: Job): TableView {
  const style = styleOf(job.case);
  const words = ({ height, deceleration }: Drop): string =>
    `${Length.show(height, style)}, ${deceleration === undefined ? "no curve" : `${Ratio.show(deceleration, { digits: 2 })} g`}`;
  return tableOf(
    protectedOrRemoved(job),
    [
      { heading: "Thing", cell: ({ content }) => content },
      { heading: "Stands", cell: ({ fragility }) => `${Ratio.show(fragility)} g` },
      { heading: "Handled", cell: ({ handling }) => handling },
      { heading: "In the case: drop, stopped with", cell: ({ inCase }) => words(inCase) },
      { heading: "By itself on like foam", cell: ({ byItself }) => words(byItself) },
      { heading: "Better", cell: betterPlace },
    ],
    "Protected in the case, or taken out",
  );
}

function betterPlace({ fragility, inCase, byItself }: ProtectedOrRemoved): string {
  const survives = ({ deceleration }: Drop): boolean =>
    deceleration !== undefined && deceleration <= fragility;
  if (survives(inCase)) return "in the case";
  if (survives(byItself)) return "by itself";
  const known = inCase.deceleration !== undefined || byItself.deceleration !== undefined;
  return known ? "neither: more foam" : "not known yet: foam and its curve";
}

/** One point of a cushion chart. */
export interface CushionRow {
  /** On the foam, in the chart's unit. */
  readonly stress: number;
  /** In gravities. */
  readonly deceleration: number;
  /** The curve, or the thing that rests on it. */
  readonly what: string;
}

/** A cushion curve and where one content works on it. */
export interface CushionChart {
  /** Name of the thing. */
  readonly content: string;
  /** Of the stress, in the case's own. */
  readonly unit: "psi" | "kPa";
  /** The curve and the place on it. */
  readonly rows: readonly CushionRow[];
  /** Deceleration that it stands, where somebody knows it. */
  readonly stands?: number;
  /** The curve by itself, for a line. */
  readonly line: readonly { readonly x: number; readonly y: number }[];
}

/** The curve of the first content that lies on foam with a known curve; none where there is no such content. */
export function cushionChart(job: Job): CushionChart | undefined {
  const unit = job.case.units === "inch" ? "psi" : "kPa";
  for (const { name, mass, section, needs } of job.case.contents) {
    const { foam } = needs;
    const whole = sectionBalance(job, section).value.mass;
    const { handling = "usual" } = job.case.journey;
    if (!foam || !handlingsOf(whole).includes(handling)) continue;
    const drop = dropOf(whole, handling).value;
    const curve = curveOrNone(job, foam, drop);
    if (!curve) continue;
    const stress = Pressure.in(staticStress({ mass, area: Area.si(foam.padWidth * foam.padDepth) }), unit);
    const line = curve.map((point) => ({
      x: Pressure.in(point.stress, unit),
      y: point.deceleration as number,
    }));
    const style = styleOf(job.case);
    const what = `${foam.kind} ${Length.show(foam.thickness, style)} thick, drop ${Length.show(curve[0]?.drop ?? drop, style)}`;
    const rows = line.map(({ x, y }) => ({ stress: x, deceleration: y, what }));
    return {
      content: name,
      unit,
      ...(needs.fragility === undefined ? {} : { stands: needs.fragility as number }),
      line,
      rows: [...rows, { stress, deceleration: between(line, stress), what: `the ${name}` }],
    };
  }
  return undefined;
}

function curveOrNone(
  job: Job,
  foam: Parameters<typeof curveFor>[1],
  drop: Length,
): ReturnType<typeof curveFor> | undefined {
  try {
    return curveFor(job, foam, drop);
  } catch (error) {
    if (error instanceof Refusal) return undefined;
    throw error;
  }
}

/** On the line, or at its nearer end. */
function between(line: CushionChart["line"], x: number): number {
  const next = line.findIndex((point) => point.x >= x);
  const [low, high] = [line[next - 1], line[next]];
  if (!low || !high) return (next === 0 ? line[0] : line.at(-1))?.y ?? 0;
  return low.y + ((high.y - low.y) * (x - low.x)) / (high.x - low.x);
}

/** What holds and what does not, in one sentence. */
export function insideAnswer(job: Job): string {
  const { fitOut } = job.review;
  if (nothingInside(job)) return "Nothing rides inside and nothing draws power, so there is nothing to ask.";
  return mostWanting(fitOut)
    ? tallySentence(fitOut)
    : "What rides inside stays put, and nothing asked about it fails.";
}

/** Whether nothing rides inside, and neither heat nor power is at stake: the chapter then does not apply. */
export function nothingInside({ case: { contents, services } }: Job): boolean {
  const { battery, mains, cooling } = services;
  return contents.length === 0 && battery === undefined && mains === undefined && cooling.length === 0;
}

/** Whether a shelf of the case stands out from the wall, held at its back only. */
export function hasPlatform({ parts }: Pick<Job, "parts">): boolean {
  return parts.shelves.some(({ shelf }) => shelf.support === "back only");
}

/** How long the battery lasts under one load. */
export interface RunRow {
  /** Mean load, W. */
  readonly load: number;
  /** Run time, h. */
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
        heading: "On average",
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

/** A platform to try, sizes as text: "8 in". */
export interface TriedPlatform {
  /** Thing on it with a jolt. */
  readonly load: string;
  /** From the wall to the middle of the thing. */
  readonly reach: string;
  /** Along the wall. */
  readonly width: string;
  /** Screws at its upper edge. */
  readonly screws: number;
}

/** One height of bracket. */
export interface BracketRow {
  /** In the case's own unit: in or mm. */
  readonly height: number;
  /** On each screw. */
  readonly pull: number;
}

/** Pull on each screw for brackets up to twice as high as the reach. */
export function bracketRows(job: Job, platform: TriedPlatform): readonly BracketRow[] {
  const { load, reach, screws } = read(platform);
  const force = job.case.units === "inch" ? "lbf" : "N";
  return Array.from({ length: 16 }, (_, i) => {
    const lever = Length.si((reach * (i + 1)) / 8);
    const pull = platformPull({ load, reach, lever, screws });
    return { height: Length.in(lever, lengthUnit(job)), pull: Force.in(pull, force) };
  });
}

/** Pull of the screws, and of the glue. */
export type PlatformLines = readonly [
  ReturnType<typeof platformPull.worked>,
  ReturnType<typeof gluePull.worked>,
];

/** The worked lines of screws and of glue with one height of bracket. */
export function platformLines(platform: TriedPlatform, bracket: string): PlatformLines {
  const { load, reach, width, screws } = read(platform);
  const lever = Length.read(bracket);
  return [
    platformPull.worked({ load, reach, lever, screws }),
    gluePull.worked({ moment: Moment.si(load * reach), length: width, depth: lever }),
  ];
}

/** What the glue line of that bracket comes to, in a sentence. */
export function glueSentence({ case: description }: Job, platform: TriedPlatform, bracket: string): string {
  const [, glue] = platformLines(platform, bracket);
  const style = styleOf(description);
  const holds = glue.value <= glueAllows;
  return `Glued alone it pulls the face veneer with ${Pressure.show(glue.value, style)}; plywood's face allows ${Pressure.show(glueAllows, style)}${holds ? "" : ": never glue alone"}.`;
}

function read({ load, reach, width, screws }: TriedPlatform): {
  readonly load: Force;
  readonly reach: Length;
  readonly width: Length;
  readonly screws: number;
} {
  return { load: Force.read(load), reach: Length.read(reach), width: Length.read(width), screws };
}
