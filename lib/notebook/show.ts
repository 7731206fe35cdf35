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
 * The same in the builder's own units.
 *
 * @example const show = showIn({ system: "inch", denominator: 16 })
 */
export function showIn(style: ShowStyle): Show {
  return (...things) => display(withStills(things.flatMap((thing) => toViews(thing, style))));
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
