/** Equations as a worker of the live page writes them: as TeX, which the page sets where somebody looks at them. */
import { html } from "./html.js";

/** Markup that says what equation stands there, and whether on its own line. */
export function mathmlOf(tex: string, isDisplayed: boolean): string {
  return String(html`<code data-tex="${tex}" data-displayed="${String(isDisplayed)}">${tex}</code>`);
}
