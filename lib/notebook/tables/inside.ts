/** Tables, chart rows and the answer of the notebook about what rides inside. */

import { styleOf } from "../../findings/index.js";
import type { Job } from "../../job/index.js";
import {
  curveFor,
  type Drop,
  dropOf,
  handlingsOf,
  type ProtectedOrRemoved,
  protectedOrRemoved,
  sectionBalance,
} from "../../model/index.js";
import { staticStress } from "../../moving/index.js";
import { type TableView, tableOf } from "../../page/index.js";
import { Area, Length, Mass, Power, Pressure, Ratio } from "../../quantity/index.js";
import { Refusal } from "../../refusal.js";
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
  const stands = ({ deceleration }: Drop): boolean => deceleration !== undefined && deceleration <= fragility;
  if (stands(inCase)) return "in the case";
  if (stands(byItself)) return "by itself";
  const known = inCase.deceleration !== undefined || byItself.deceleration !== undefined;
  return known ? "neither: more foam" : "not known yet: foam and its curve";
}

/** One point of a cushion chart. */
export interface CushionRow {
  readonly stress: number;
  readonly deceleration: number;
  readonly what: string;
}

/** A cushion curve and where one content works on it. */
export interface CushionChart {
  readonly content: string;
  /** Of the stress, in the case's own. */
  readonly unit: "psi" | "kPa";
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
export function insideAnswer({ review: { fitOut } }: Job): string {
  return mostWanting(fitOut) ? tallySentence(fitOut) : "What rides inside stays put, cool and powered.";
}
