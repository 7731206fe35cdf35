/** A working as a worker writes it, made fit for this page: its equations set, its styles as the page's policy has them. */
import { mathmlOf } from "../../page/mathml.js";

/**
 * Markup of this library with its equations set (`lib/page/mathml-later.ts` left them as TeX) and its inline styles laid
 * aside, which the policy would not let in.
 */
export function fitForPage(markup: string): string {
  const made = document.createElement("template");
  made.innerHTML = withoutStyles(markup);
  for (const place of made.content.querySelectorAll<HTMLElement>("[data-tex]")) {
    const { tex = "", displayed } = place.dataset;
    place.outerHTML = withoutStyles(mathmlOf(tex, displayed === "true"));
  }
  return made.innerHTML;
}

/** In this markup a bare quotation mark stands round attributes alone. */
function withoutStyles(markup: string): string {
  return markup.replaceAll(' style="', ' data-style="');
}

/** Gives what stands in a place the styles that were laid aside. */
export function putStyles(place: HTMLElement): void {
  for (const styled of place.querySelectorAll<HTMLElement | SVGElement | MathMLElement>("[data-style]"))
    styled.style.cssText = styled.dataset.style ?? "";
}
