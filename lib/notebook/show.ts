import { host } from "#host";
import {
  type ChartSpec,
  chartInUnits,
  inUnits,
  isView,
  type Json,
  pictured,
  type Showable,
  toViews,
  unitChanges,
  type View,
} from "../page/index.js";
import type { ShowStyle } from "../quantity/index.js";
import { type Recipe, recipeMime, recipeViews } from "../recipe/index.js";
import { isSweep, type Sweep, sweepTable } from "./ask/sweep.js";
import { type Bundle, bookBundle, screenBundle, withStills } from "./bundle.js";

/** What can be shown: also a sweep, as the table of what was tried. */
export type Shown = Showable | Sweep | readonly Shown[];

/** Shows things in a notebook, in order, as one output. */
export type Show = (...things: readonly Shown[]) => void;

/**
 * Shows worked lines, findings, tables, charts, drawings, answers, sentences, and lists of them, in
 * metric units. Under plain Node it prints text.
 *
 * @example show(tipAngle.worked({ halfBase: mm(300), height: mm(700) }), "A sentence.")
 * @throws TypeError for anything that cannot be shown
 */
export const show: Show = showIn({});

/**
 * The same in the builder's own units. A thing that cannot be drawn fails after all others have been shown.
 *
 * @example const show = showIn({ system: "inch", denominator: 16 })
 */
export function showIn(style: ShowStyle): Show {
  return (...things) => {
    const views: View[] = [];
    const faults: unknown[] = [];
    const all = eachOf(things);
    const drawn = pictured(all);
    for (const thing of all) {
      try {
        views.push(...viewsOf(thing, style, drawn));
      } catch (error) {
        faults.push(error);
      }
    }
    if (views.length > 0 || faults.length === 0) display(views);
    if (faults.length > 0) throw faults[0];
  };
}

function viewsOf(
  thing: Showable | Sweep,
  style: ShowStyle,
  drawn: ReturnType<typeof pictured>,
): readonly View[] {
  const views = toViews(isSweep(thing) ? sweepTable(thing) : thing, style, drawn);
  return withStills(views.map((view) => readIn(view, style))).map(told);
}

/** A chart in the reader's units, where a reader is known; words that are a value by themselves change with it. */
function readIn(view: View, { system }: ShowStyle): View {
  if (view.kind !== "chart" || system === undefined) return view;
  const changed = unitChanges[system];
  const value = /^-?[\d\u202f./-]+[ \u00a0]\S+$/;
  const said = (text: string): string => (value.test(text) ? inUnits(text, changed, []) : text);
  return { ...view, spec: chartInUnits(view.spec, changed, said) as ChartSpec };
}

/** A table without rows is told in a sentence. */
function told(view: View): View {
  return view.kind === "table" && view.rows.length === 0 && view.caption !== undefined
    ? { kind: "sentence", text: `${view.caption}: none.` }
    : view;
}

/** The things of lists within lists. */
function eachOf(things: readonly Shown[]): readonly (Showable | Sweep)[] {
  return things.flatMap((thing) =>
    Array.isArray(thing) ? eachOf(thing as readonly Shown[]) : [thing as Showable | Sweep],
  );
}

/** The units in which the last value of a cell is shown: those of the job that was opened last. */
let readersStyle: ShowStyle = {};

/** Tells in which units to show what says nothing of its own: those of a job just opened. */
export function showInUnitsOf(style: ShowStyle): void {
  readersStyle = style;
}

/**
 * Shows things in the units of the job opened last, in metric ones before any is.
 *
 * @throws TypeError for anything that cannot be shown
 */
export const showHere: Show = (...things) => showIn(readersStyle)(...things);

/** A finding, a worked line, a table, a chart, a sweep, or a list of them, as the last value of a cell. */
function lastValue(value: unknown): Bundle | undefined {
  if (!isShown(value)) return undefined;
  const all = eachOf([value]);
  const drawn = pictured(all);
  return bundleOf(all.flatMap((thing) => viewsOf(thing, readersStyle, drawn)));
}

function isShown(value: unknown): value is Shown {
  if (Array.isArray(value))
    return value.length > 0 && value.every((one) => typeof one === "object" && isShown(one));
  if (typeof value !== "object" || value === null) return false;
  const isLine = "equation" in value && "results" in value;
  return isSweep(value) || isLine || ("verdict" in value && "question" in value) || isView(value);
}

host.display.showLastValues(lastValue);

/** Shows a recipe, and hands it whole to the book, which prints it on pages of its own. */
export function showRecipe(recipe: Recipe): void {
  display(recipeViews(recipe), { [recipeMime]: recipe as unknown as Json });
}

let runtimeSent = false;

function display(views: readonly View[], forBook: Bundle = {}): void {
  const write = host.display.writer();
  const bundle = bundleOf(views, forBook);
  if (write) write({ data: bundle, metadata: {}, transient: {} }, false);
  else console.log(bundle["text/plain"]);
}

function bundleOf(views: readonly View[], forBook: Bundle = {}): Bundle {
  if (host.display.inBook() || !host.display.writer()) return { ...bookBundle(views), ...forBook };
  const needsRuntime = !runtimeSent && views.some(({ kind }) => kind === "chart");
  runtimeSent ||= needsRuntime;
  return screenBundle(views, needsRuntime);
}
