import { host } from "#host";
import { type Json, type Showable, toViews, type View } from "../page/index.js";
import type { ShowStyle } from "../quantity/index.js";
import { type Recipe, recipeMime, recipeViews } from "../recipe/index.js";
import { type Bundle, bookBundle, screenBundle, withStills } from "./bundle.js";

/** Shows things in a notebook, in order, as one output. */
export type Show = (...things: readonly Showable[]) => void;

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
    for (const thing of eachOf(things)) {
      try {
        views.push(...withStills(toViews(thing, style)).map(told));
      } catch (error) {
        faults.push(error);
      }
    }
    if (views.length > 0 || faults.length === 0) display(views);
    if (faults.length > 0) throw faults[0];
  };
}

/** A table without rows is told in a sentence. */
function told(view: View): View {
  return view.kind === "table" && view.rows.length === 0 && view.caption !== undefined
    ? { kind: "sentence", text: `${view.caption}: none.` }
    : view;
}

/** The things of lists within lists. */
function eachOf(things: readonly Showable[]): readonly Showable[] {
  return things.flatMap((thing) => (Array.isArray(thing) ? eachOf(thing as readonly Showable[]) : [thing]));
}

/** Shows a recipe, and hands it whole to the book, which prints it on pages of its own. */
export function showRecipe(recipe: Recipe): void {
  display(recipeViews(recipe), { [recipeMime]: recipe as unknown as Json });
}

let runtimeSent = false;

function display(views: readonly View[], forBook: Bundle = {}): void {
  const write = host.display.writer();
  if (host.display.inBook() || !write) {
    const bundle = { ...bookBundle(views), ...forBook };
    if (write) write({ data: bundle, metadata: {}, transient: {} }, false);
    else console.log(bundle["text/plain"]);
    return;
  }
  const needsRuntime = !runtimeSent && views.some(({ kind }) => kind === "chart");
  write({ data: screenBundle(views, needsRuntime), metadata: {}, transient: {} }, false);
  runtimeSent ||= needsRuntime;
}
