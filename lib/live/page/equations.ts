/** Sets the equations that a worker wrote as TeX: `lib/page/mathml-later.ts`. */
import { mathmlOf } from "../../page/mathml.js";

/** Markup of this library with its equations set. */
export function withEquations(markup: string): string {
  const made = document.createElement("template");
  made.innerHTML = markup;
  for (const place of made.content.querySelectorAll<HTMLElement>("[data-tex]")) {
    const { tex = "", displayed } = place.dataset;
    place.outerHTML = mathmlOf(tex, displayed === "true");
  }
  return made.innerHTML;
}
